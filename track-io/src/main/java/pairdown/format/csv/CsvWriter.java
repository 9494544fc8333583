package pairdown.format.csv;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import pairdown.format.source.Decimal;
import pairdown.format.source.Segments;
import pairdown.format.source.TrackWriter;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.Track;

/**
 * Writes CSV: a column for the time and one for each channel, under the channel's name; the
 * height's says what it is measured from. Every row is written, with or without a position.
 */
public final class CsvWriter implements TrackWriter {
    private static final int DEGREE_DECIMALS = 9;
    private static final int DECIMALS = 4;
    private static final int TIME_DECIMALS = 6;

    @Override
    public String key() {
        return "csv";
    }

    @Override
    public boolean allowsRelativeTime() {
        return true;
    }

    @Override
    public boolean allowsNoPositions() {
        return true;
    }

    @Override
    public void write(Track track, OutputStream out) throws IOException {
        Writer w = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        w.write(track.hasAbsoluteTime() ? "time" : "elapsed_s");
        for (Channel channel : track.channels()) {
            w.write("," + header(channel, track.datum()));
        }
        w.write("\n");
        for (int row = 0; row < track.size(); row++) {
            w.write(
                    track.hasAbsoluteTime()
                            ? Segments.instant(track, row).toString()
                            : Decimal.of(track.time_s(row), TIME_DECIMALS));
            for (Channel channel : track.channels()) {
                double value = track.value(channel, row);
                w.write(',');
                w.write(Double.isNaN(value) ? "" : Decimal.of(value, decimals(channel)));
            }
            w.write("\n");
        }
        w.flush();
    }

    private static String header(Channel channel, HeightDatum datum) {
        if (channel != Channel.HEIGHT) {
            return channel.key();
        }
        return switch (datum) {
            case ELLIPSOID -> "heightEllipsoid_m";
            case MSL -> "heightMsl_m";
            case UNKNOWN -> "height_m";
        };
    }

    private static int decimals(Channel channel) {
        return channel == Channel.LATITUDE || channel == Channel.LONGITUDE
                ? DEGREE_DECIMALS
                : DECIMALS;
    }
}
