package pairdown.format;

import io.jenetics.jpx.GPX;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/**
 * The fixes of a sound log counted without this project's readers: by a pattern over the text of an
 * NMEA or IGC file, by jpx 3.1.0 in a GPX file, by the JDK's document tree in a KML file.
 */
final class PlainCounts {
    /** Degrees, and the height in metres that stands beside them, NaN where none does. */
    record Fix(double latitude_deg, double longitude_deg, double height_m) {}

    private static final Pattern NMEA =
            Pattern.compile(
                    "\\$..(?:RMC,([\\d.]+),A|GGA,([\\d.]+))"
                            + ",(\\d\\d)([\\d.]+),([NS]),(\\d{3})([\\d.]+),([EW])"
                            + "(?:,[1-8],\\d*,[\\d.]*,(-?[\\d.]+),M)?");
    private static final Pattern IGC =
            Pattern.compile(
                    "(?m)^B\\d{6}(\\d\\d)(\\d{5})([NS])(\\d{3})(\\d{5})([EW])A.{5}(.{5})([^\\r\\n]*)");
    private static final Pattern FURTHER = Pattern.compile("(?m)^I.*(\\d\\d)\\1LAD(\\d\\d)\\2LOD");

    private PlainCounts() {}

    static List<Fix> of(String file, byte[] bytes) throws Exception {
        String kind = file.replaceAll("\\.gz$", "").replaceAll(".*\\.", "");
        return switch (kind) {
            case "nmea" -> nmea(text(bytes));
            case "igc" -> igc(text(file.endsWith(".gz") ? unpacked(bytes) : bytes));
            case "gpx" -> gpx(bytes);
            case "kml" -> kml(bytes);
            default -> throw new IllegalArgumentException("no count for " + file);
        };
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static byte[] unpacked(byte[] bytes) throws IOException {
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return in.readAllBytes();
        }
    }

    /** One fix for each time of day that an RMC marked A or a GGA with a quality has. */
    private static List<Fix> nmea(String text) {
        Map<String, Fix> byTime = new LinkedHashMap<>();
        Matcher m = NMEA.matcher(text);
        while (m.find()) {
            boolean rmc = m.group(1) != null;
            if (!rmc && m.group(9) == null) {
                continue;
            }
            Fix fix =
                    new Fix(
                            signed(m.group(5), m.group(3), Double.parseDouble(m.group(4))),
                            signed(m.group(8), m.group(6), Double.parseDouble(m.group(7))),
                            rmc ? Double.NaN : Double.parseDouble(m.group(9)));
            byTime.merge(
                    rmc ? m.group(1) : m.group(2),
                    fix,
                    (first, second) -> Double.isNaN(first.height_m()) ? second : first);
        }
        return List.copyOf(byTime.values());
    }

    /** One fix for each B record marked A, the same record twice being one. */
    private static List<Fix> igc(String text) {
        Matcher further = FURTHER.matcher(text);
        boolean decimals = further.find();
        int lad = decimals ? Integer.parseInt(further.group(1)) - 36 : 0;
        int lod = decimals ? Integer.parseInt(further.group(2)) - 36 : 0;
        Map<String, Fix> byRecord = new LinkedHashMap<>();
        Matcher m = IGC.matcher(text);
        while (m.find()) {
            String more = m.group(8);
            String north = m.group(2) + (decimals ? more.charAt(lad) : "0");
            String east = m.group(5) + (decimals ? more.charAt(lod) : "0");
            byRecord.put(
                    m.group(),
                    new Fix(
                            signed(m.group(3), m.group(1), Double.parseDouble(north) / 1e4),
                            signed(m.group(6), m.group(4), Double.parseDouble(east) / 1e4),
                            Double.parseDouble(m.group(7))));
        }
        return List.copyOf(byRecord.values());
    }

    private static double signed(String hemisphere, String degrees, double minutes) {
        double value = Integer.parseInt(degrees) + minutes / 60;
        return hemisphere.equals("S") || hemisphere.equals("W") ? -value : value;
    }

    private static List<Fix> gpx(byte[] bytes) throws IOException {
        return GPX.Reader.of(GPX.Reader.Mode.LENIENT)
                .read(new ByteArrayInputStream(bytes))
                .tracks()
                .flatMap(track -> track.segments())
                .flatMap(segment -> segment.points())
                .map(
                        point ->
                                new Fix(
                                        point.getLatitude().doubleValue(),
                                        point.getLongitude().doubleValue(),
                                        point.getElevation().orElseThrow().doubleValue()))
                .toList();
    }

    /** As many as there are both instants and coordinates. */
    private static List<Fix> kml(byte[] bytes) throws Exception {
        Document kml =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(bytes));
        NodeList coordinates = kml.getElementsByTagName("gx:coord");
        int instants = kml.getElementsByTagName("when").getLength();
        List<Fix> fixes = new ArrayList<>();
        for (int i = 0; i < Math.min(instants, coordinates.getLength()); i++) {
            String[] parts = coordinates.item(i).getTextContent().split(" ", -1);
            fixes.add(
                    new Fix(
                            Double.parseDouble(parts[1]),
                            Double.parseDouble(parts[0]),
                            Double.parseDouble(parts[2])));
        }
        return fixes;
    }
}
