package pairdown.format;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pairdown.format.source.Decimal;
import pairdown.track.Channel;
import pairdown.track.Flights;
import pairdown.track.LogReport;
import pairdown.track.Skipped;
import pairdown.track.Track;

/** All that was read of a small log, as lines a person can check against the file beside it. */
final class TrackText {
    private static final int DECIMALS = 3;
    private static final int DEGREE_DECIMALS = 7;

    private TrackText() {}

    static String of(Track track) {
        List<String> lines = new ArrayList<>();
        LogReport report = track.report();
        lines.add(
                report.format()
                        + ", "
                        + track.epoch().map(e -> "from " + e).orElse("its own zero")
                        + (track.has(Channel.HEIGHT) ? ", heights " + track.datum().key() : ""));
        lines.add(
                "time_s "
                        + track.channels().stream()
                                .map(Channel::key)
                                .collect(Collectors.joining(" ")));
        for (int row = 0; row < track.size(); row++) {
            lines.add(row(track, row));
        }
        int flights = Flights.of(track).size();
        if (flights > 1) {
            lines.add(flights + " flights");
        }
        if (report.skippedCount() > 0) {
            lines.add(report.skippedCount() + " skipped");
        }
        for (Skipped skipped : report.skipped()) {
            lines.add("line " + skipped.line() + ": " + skipped.reason());
        }
        report.events().forEach(e -> lines.add("event " + number(e.time_s(), 3) + " " + e.text()));
        report.warnings().forEach(warning -> lines.add("note: " + warning));
        return String.join("\n", lines) + "\n";
    }

    private static String row(Track track, int row) {
        StringBuilder line = new StringBuilder(number(track.time_s(row), DECIMALS));
        for (Channel channel : track.channels()) {
            boolean degrees = channel == Channel.LATITUDE || channel == Channel.LONGITUDE;
            line.append(' ')
                    .append(
                            number(
                                    track.value(channel, row),
                                    degrees ? DEGREE_DECIMALS : DECIMALS));
        }
        return line.toString();
    }

    private static String number(double value, int decimals) {
        return Double.isNaN(value) ? "-" : Decimal.of(value, decimals);
    }
}
