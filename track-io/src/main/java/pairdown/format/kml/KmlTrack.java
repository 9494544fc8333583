package pairdown.format.kml;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import pairdown.format.source.Doubles;
import pairdown.format.source.Longs;
import pairdown.format.source.Notes;
import pairdown.format.source.Numbers;
import pairdown.format.source.PointNames;
import pairdown.format.source.Rows;
import pairdown.format.source.Xml;
import pairdown.time.IsoTime;
import pairdown.track.Channel;

/**
 * One {@code Track}: instants and coordinates in two lists, or by turns. Where the lists differ in
 * length only the pairs from the start are used, with a warning: which one is missing can't be
 * told.
 */
final class KmlTrack {
    /** Elements whose text is read. */
    private static final Set<String> TOLD = Set.of("when", "coord", "value", "altitudeMode");

    private final Rows rows;
    private final Notes notes;
    private final Longs whens = new Longs();
    private final Longs whenLines = new Longs();
    private final Doubles coordinates = new Doubles();
    private final Longs whensBefore = new Longs();
    private final Map<Channel, Doubles> arrays = new EnumMap<>(Channel.class);
    private boolean aboveGround;

    KmlTrack(Rows rows, Notes notes) {
        this.rows = rows;
        this.notes = notes;
        rows.beginTrack();
    }

    /** Reads from the start of the element to its end, and makes its rows. */
    void read(XMLStreamReader xml) throws XMLStreamException {
        int depth = 1;
        String name = "";
        boolean told = false;
        StringBuilder text = new StringBuilder();
        Optional<Doubles> array = Optional.empty();
        while (depth > 0) {
            switch (xml.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    depth++;
                    name = Xml.localName(xml);
                    text.setLength(0);
                    told = TOLD.contains(name);
                    if (name.equals("SimpleArrayData")) {
                        array = array(Xml.attribute(xml, "name"));
                    }
                }
                case XMLStreamConstants.CHARACTERS -> {
                    if (told) {
                        text.append(Xml.text(xml));
                    }
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    depth--;
                    if (told) {
                        end(name, text.toString(), array, xml);
                    }
                    told = false;
                }
                default -> {}
            }
        }
        emit();
    }

    private Optional<Doubles> array(String name) {
        return PointNames.channel(name).map(c -> arrays.computeIfAbsent(c, x -> new Doubles()));
    }

    private void end(String name, String text, Optional<Doubles> array, XMLStreamReader xml) {
        switch (name) {
            case "when" -> when(text, Xml.line(xml));
            case "coord" -> coordinate(text);
            case "value" -> array.ifPresent(a -> a.add(Numbers.parse(text)));
            case "altitudeMode" -> aboveGround = text.strip().equals("relativeToGround");
            default -> {}
        }
    }

    /** An instant in words. */
    void when(String text, long line) {
        whens.add(IsoTime.utc_ns(text));
        whenLines.add(line);
    }

    /** Longitude, latitude and height in words. */
    void coordinate(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        int at = 0;
        for (int i = 0; i < 3; i++) {
            while (at < bytes.length && parts(bytes[at])) {
                at++;
            }
            int from = at;
            while (at < bytes.length && !parts(bytes[at])) {
                at++;
            }
            coordinates.add(Numbers.parse(bytes, from, at, (byte) '.'));
        }
        whensBefore.add(whens.size());
    }

    private static boolean parts(byte b) {
        return (b >= 0 && b <= ' ') || b == ',';
    }

    /** Whether instants and coordinates are complete, since what comes behind them has begun. */
    boolean isPlaced() {
        return !arrays.isEmpty() && whens.size() == whensBefore.size();
    }

    /** Makes a row of a coordinate and an instant, by their numbers. */
    void pair(int coordinate, int when) {
        row(coordinate, when, whensBefore.size());
    }

    /** Makes rows of what was read. */
    void emit() {
        int places = whensBefore.size();
        boolean byTurns = places > 1 && alternations() > places / 2;
        int pairs = byTurns ? places : Math.min(places, whens.size());
        if (!byTurns && places != whens.size()) {
            notes.warn(
                    "a track has "
                            + whens.size()
                            + " times and "
                            + places
                            + " coordinates: the first "
                            + pairs
                            + " of each were paired, the rest dropped; if one is missing in the middle,"
                            + " what follows is shifted");
            for (int i = pairs; i < whens.size(); i++) {
                notes.skip(whenLines.get(i), "time without a coordinate");
            }
        }
        arrays.forEach(
                (channel, values) -> {
                    if (values.size() != places) {
                        notes.warn(channel.key() + " not used: not one value for each coordinate");
                    }
                });
        for (int i = 0; i < pairs; i++) {
            int when = byTurns ? (int) whensBefore.get(i) - 1 : i;
            if (when >= 0 && (!byTurns || i == 0 || when != (int) whensBefore.get(i - 1) - 1)) {
                row(i, when, places);
            }
        }
        if (aboveGround) {
            notes.warn("heights are above the ground, whose height the log does not say: not used");
        }
    }

    /** How many coordinates come after an instant of their own. */
    private int alternations() {
        int alternations = 0;
        for (int i = 0; i < whensBefore.size(); i++) {
            boolean own = whensBefore.get(i) > (i > 0 ? whensBefore.get(i - 1) : 0);
            alternations += own ? 1 : 0;
        }
        return alternations;
    }

    private void row(int i, int when, int places) {
        long line = whenLines.get(when);
        if (whens.get(when) == IsoTime.NONE) {
            notes.skip(line, "unreadable time");
            return;
        }
        double lon = coordinates.get(3 * i);
        double lat = coordinates.get(3 * i + 1);
        if (Double.isNaN(lon) || Double.isNaN(lat)) {
            notes.skip(line, "coordinate left empty or no number");
            return;
        }
        rows.begin(whens.get(when), line);
        if (rows.position(lat, lon)) {
            rows.set(Channel.HEIGHT, aboveGround ? Double.NaN : coordinates.get(3 * i + 2));
            arrays.forEach(
                    (channel, values) -> {
                        if (values.size() == places) {
                            rows.set(channel, values.get(i));
                        }
                    });
        }
    }
}
