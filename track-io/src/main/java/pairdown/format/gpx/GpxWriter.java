package pairdown.format.gpx;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import pairdown.format.source.Decimal;
import pairdown.format.source.NamedTracksWriter;
import pairdown.format.source.Segments;
import pairdown.format.source.Text;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;

/**
 * Writes GPX 1.1: a track with a segment for each stretch without a gap, {@code ele} above sea
 * level with the separation it goes with in {@code geoidheight}, and every other channel under its
 * own name as an extension, because the schema has no place for it.
 */
public final class GpxWriter implements NamedTracksWriter {
    /** The namespace of the extensions. */
    static final String NAMESPACE = "urn:pairdown:channels:1";

    private static final int DEGREE_DECIMALS = 9;
    private static final int DECIMALS = 4;

    @Override
    public String key() {
        return "gpx";
    }

    @Override
    public void write(Track track, OutputStream out) throws IOException {
        write(out, w -> track(w, track, ""));
    }

    @Override
    public void write(Map<String, Track> byName, OutputStream out) throws IOException {
        write(
                out,
                w -> {
                    for (Map.Entry<String, Track> named : byName.entrySet()) {
                        String name = "<name>" + Text.xml(named.getKey()) + "</name>\n";
                        track(w, named.getValue(), name);
                    }
                });
    }

    @FunctionalInterface
    private interface Tracks {
        void writeTo(Writer w) throws IOException;
    }

    private static void write(OutputStream out, Tracks tracks) throws IOException {
        Writer w = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        w.write(
                """
                <?xml version="1.0" encoding="UTF-8"?>
                <gpx version="1.1" creator="Pairdown" xmlns="http://www.topografix.com/GPX/1/1"
                     xmlns:pd="%s">
                """
                        .formatted(NAMESPACE));
        tracks.writeTo(w);
        w.write("</gpx>\n");
        w.flush();
    }

    private static void track(Writer w, Track track, String name) throws IOException {
        w.write("<trk>\n" + name);
        List<Channel> extras = Segments.extras(track);
        for (List<Integer> segment : Segments.of(track)) {
            w.write("<trkseg>\n");
            for (int row : segment) {
                point(w, track, row, extras);
            }
            w.write("</trkseg>\n");
        }
        w.write("</trk>\n");
    }

    private static void point(Writer w, Track track, int row, List<Channel> extras)
            throws IOException {
        w.write("<trkpt lat=\"");
        w.write(Decimal.of(track.value(Channel.LATITUDE, row), DEGREE_DECIMALS));
        w.write("\" lon=\"");
        w.write(Decimal.of(schemaLongitude(track.value(Channel.LONGITUDE, row)), DEGREE_DECIMALS));
        w.write("\">");
        double msl_m = EllipsoidHeight.msl_m(track, row);
        if (!Double.isNaN(msl_m)) {
            element(w, "ele", msl_m);
        }
        w.write("<time>" + Segments.instant(track, row) + "</time>");
        if (!Double.isNaN(msl_m)) {
            element(w, "geoidheight", EllipsoidHeight.undulation_m(track, row));
        }
        extensions(w, track, row, extras);
        w.write("</trkpt>\n");
    }

    /** The schema wants −180 ≤ longitude < 180. */
    private static double schemaLongitude(double longitude_deg) {
        return Math.abs(longitude_deg - 180) < 0.5 * Math.pow(10, -DEGREE_DECIMALS)
                ? -180
                : longitude_deg;
    }

    private static void extensions(Writer w, Track track, int row, List<Channel> extras)
            throws IOException {
        boolean open = false;
        for (Channel channel : extras) {
            double value = track.value(channel, row);
            if (Double.isNaN(value)) {
                continue;
            }
            if (!open) {
                w.write("<extensions>");
                open = true;
            }
            element(w, "pd:" + channel.key(), value);
        }
        if (open) {
            w.write("</extensions>");
        }
    }

    private static void element(Writer w, String name, double value) throws IOException {
        w.write("<" + name + ">" + Decimal.of(value, DECIMALS) + "</" + name + ">");
    }
}
