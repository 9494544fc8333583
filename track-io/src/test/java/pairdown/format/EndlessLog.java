package pairdown.format;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.LongFunction;

/**
 * A log of any length made while it is read: a beginning with a fix, records that are no fixes over
 * and over, and an end. Nothing of it is held.
 */
final class EndlessLog extends InputStream {
    /**
     * @param fixes how many a whole log of this kind has
     */
    record Kind(String begin, String filler, String end, int fixes) {}

    static final Map<String, Kind> KINDS =
            Map.of(
                    "csv",
                    new Kind(
                            "time,lat,lon\n2031-05-14T15:02:11Z,-24.5,15.5\n",
                            "receiver restarted,,\n#,a comment that no logger should write\n",
                            "2031-05-14T15:02:12Z,-24.5001,15.5\n",
                            2),
                    "nmea",
                    new Kind(
                            epoch("150211.00", "30.0000"),
                            "$GPRMC,,V,,,,,,,,,,N*53\r\n$GPGSV,1,1,00*79\r\n",
                            epoch("150212.00", "30.0060"),
                            2),
                    "igc",
                    new Kind(
                            "AXXX000\r\nHFDTE140531\r\nB1502112430000S01530000EA0100001100\r\n",
                            "LXXXsomething of the maker's own\r\nF150212010203040506\r\n",
                            "B1502122430006S01530000EA0100001100\r\n",
                            2),
                    "gpx",
                    new Kind(
                            "<gpx version=\"1.1\"><wpt lat=\"1\" lon=\"2\"/><trk><trkseg>"
                                    + point("11", "-24.5"),
                            "</trkseg></trk><trk><extensions><note>none</note></extensions>\n"
                                    + "<!-- nothing --><trkseg>",
                            point("12", "-24.5001") + "</trkseg></trk></gpx>\n",
                            2),
                    "kml",
                    new Kind(
                            "<kml><Document>" + placemark("11", "-24.5"),
                            "<Placemark><name>a place</name><Point><coordinates>1,2,3</coordinates>"
                                    + "</Point></Placemark>\n",
                            placemark("12", "-24.5001") + "</Document></kml>\n",
                            2),
                    "geojson",
                    new Kind(
                            "{\"type\":\"FeatureCollection\",\"features\":["
                                    + feature("11", "-24.5"),
                            ",{\"type\":\"Feature\",\"properties\":{\"name\":\"a place\"},"
                                    + "\"geometry\":{\"type\":\"Polygon\",\"bbox\":[1,2,3,4]}}\n",
                            "," + feature("12", "-24.5001") + "]}\n",
                            2));

    private final LongFunction<String> filler;
    private final byte[] end;
    private final long bytes;
    private final long[] marks;
    private final Runnable atMark;
    private byte[] part;
    private int inPart;
    private long parts;
    private long at;
    private int nextMark;
    private boolean atEnd;

    /**
     * @param filler its parts between begin and end, by their number
     * @param bytes how long it is, to a part
     * @param atMark what is done when so many bytes of {@code marks} have been read
     */
    EndlessLog(
            String begin,
            LongFunction<String> filler,
            String end,
            long bytes,
            Runnable atMark,
            long... marks) {
        this.part = begin.getBytes(StandardCharsets.US_ASCII);
        this.filler = filler;
        this.end = end.getBytes(StandardCharsets.US_ASCII);
        this.bytes = bytes;
        this.atMark = atMark;
        this.marks = marks;
    }

    static EndlessLog of(Kind kind, long bytes, Runnable atMark, long... marks) {
        return new EndlessLog(kind.begin(), i -> kind.filler(), kind.end(), bytes, atMark, marks);
    }

    private static String epoch(String time, String minutes) {
        return TestLogs.sentence(
                        "GPRMC," + time + ",A,24" + minutes + ",S,01530.0000,E,9,,140531,,,A")
                + "\r\n";
    }

    private static String point(String second, String latitude) {
        return "<trkpt lat=\"%s\" lon=\"15.5\"><time>2031-05-14T15:02:%sZ</time></trkpt>\n"
                .formatted(latitude, second);
    }

    private static String placemark(String second, String latitude) {
        return ("<Placemark><gx:Track><when>2031-05-14T15:02:%sZ</when><gx:coord>15.5 %s 900"
                        + "</gx:coord></gx:Track></Placemark>\n")
                .formatted(second, latitude);
    }

    private static String feature(String second, String latitude) {
        return ("{\"type\":\"Feature\",\"properties\":{\"time\":\"2031-05-14T15:02:%sZ\"},"
                        + "\"geometry\":{\"type\":\"Point\",\"coordinates\":[15.5,%s]}}\n")
                .formatted(second, latitude);
    }

    @Override
    public int read() {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] to, int from, int count) {
        if (nextMark < marks.length && at >= marks[nextMark]) {
            nextMark++;
            atMark.run();
        }
        if (inPart == part.length && !next()) {
            return -1;
        }
        int n = Math.min(count, part.length - inPart);
        System.arraycopy(part, inPart, to, from, n);
        inPart += n;
        at += n;
        return n;
    }

    private boolean next() {
        if (atEnd) {
            return false;
        }
        atEnd = at >= bytes;
        part = atEnd ? end : filler.apply(parts++).getBytes(StandardCharsets.US_ASCII);
        inPart = 0;
        return part.length > 0;
    }
}
