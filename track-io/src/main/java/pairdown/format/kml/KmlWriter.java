package pairdown.format.kml;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairdown.format.source.Decimal;
import pairdown.format.source.NamedTracksWriter;
import pairdown.format.source.Segments;
import pairdown.format.source.Text;
import pairdown.geodesy.Geoid;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;

/**
 * Writes KML: one {@code gx:Track} for each stretch without a gap, in a {@code gx:MultiTrack},
 * heights absolute (above the geoid, as KML has them), the other channels as arrays beside the
 * coordinates.
 */
public final class KmlWriter implements NamedTracksWriter {
    private static final int DEGREE_DECIMALS = 9;
    private static final int DECIMALS = 4;

    @Override
    public String key() {
        return "kml";
    }

    @Override
    public void write(Track track, OutputStream out) throws IOException {
        List<Channel> extras = Segments.extras(track);
        write(out, extras, w -> placemark(w, track, "", extras));
    }

    @Override
    public void write(Map<String, Track> byName, OutputStream out) throws IOException {
        Set<Channel> all = EnumSet.noneOf(Channel.class);
        byName.values().forEach(track -> all.addAll(Segments.extras(track)));
        write(
                out,
                List.copyOf(all),
                w -> {
                    for (Map.Entry<String, Track> named : byName.entrySet()) {
                        Track track = named.getValue();
                        String name = "<name>" + Text.xml(named.getKey()) + "</name>\n";
                        placemark(w, track, name, Segments.extras(track));
                    }
                });
    }

    @FunctionalInterface
    private interface Placemarks {
        void writeTo(Writer w) throws IOException;
    }

    private static void write(OutputStream out, List<Channel> extras, Placemarks placemarks)
            throws IOException {
        Writer w = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        w.write(
                """
                <?xml version="1.0" encoding="UTF-8"?>
                <kml xmlns="http://www.opengis.net/kml/2.2" xmlns:gx="http://www.google.com/kml/ext/2.2">
                <Document>
                <Schema id="channels">
                """);
        for (Channel channel : extras) {
            w.write("<gx:SimpleArrayField name=\"" + channel.key() + "\" type=\"float\"/>\n");
        }
        w.write("</Schema>\n");
        placemarks.writeTo(w);
        w.write("</Document>\n</kml>\n");
        w.flush();
    }

    private static void placemark(Writer w, Track track, String name, List<Channel> extras)
            throws IOException {
        w.write("<Placemark>\n" + name + "<gx:MultiTrack>\n");
        w.write("<altitudeMode>absolute</altitudeMode>\n<gx:interpolate>0</gx:interpolate>\n");
        for (List<Integer> segment : Segments.of(track)) {
            segment(w, track, segment, extras);
        }
        w.write("</gx:MultiTrack>\n</Placemark>\n");
    }

    private static void segment(Writer w, Track track, List<Integer> rows, List<Channel> extras)
            throws IOException {
        w.write("<gx:Track>\n<altitudeMode>absolute</altitudeMode>\n");
        for (int row : rows) {
            w.write("<when>" + Segments.instant(track, row) + "</when>\n");
        }
        for (int row : rows) {
            double msl_m = aboveGeoid_m(track, row);
            w.write("<gx:coord>");
            w.write(Decimal.of(track.value(Channel.LONGITUDE, row), DEGREE_DECIMALS) + " ");
            w.write(Decimal.of(track.value(Channel.LATITUDE, row), DEGREE_DECIMALS));
            w.write(Double.isNaN(msl_m) ? "" : " " + Decimal.of(msl_m, DECIMALS));
            w.write("</gx:coord>\n");
        }
        if (!extras.isEmpty()) {
            arrays(w, track, rows, extras);
        }
        w.write("</gx:Track>\n");
    }

    /** KML has no place for a receiver's own separation: its sea level is EGM96. */
    private static double aboveGeoid_m(Track track, int row) {
        return EllipsoidHeight.of(track, row)
                - Geoid.egm96()
                        .undulation_m(
                                track.value(Channel.LATITUDE, row),
                                track.value(Channel.LONGITUDE, row));
    }

    private static void arrays(Writer w, Track track, List<Integer> rows, List<Channel> extras)
            throws IOException {
        w.write("<ExtendedData>\n<SchemaData schemaUrl=\"#channels\">\n");
        for (Channel channel : extras) {
            w.write("<gx:SimpleArrayData name=\"" + channel.key() + "\">\n");
            for (int row : rows) {
                double value = track.value(channel, row);
                w.write(
                        Double.isNaN(value)
                                ? "<gx:value/>\n"
                                : "<gx:value>" + Decimal.of(value, DECIMALS) + "</gx:value>\n");
            }
            w.write("</gx:SimpleArrayData>\n");
        }
        w.write("</SchemaData>\n</ExtendedData>\n");
    }
}
