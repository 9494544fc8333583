package pairdown.format.gpx;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import pairdown.format.source.LogSource;
import pairdown.format.source.Notes;
import pairdown.format.source.Numbers;
import pairdown.format.source.PointNames;
import pairdown.format.source.Rows;
import pairdown.format.source.Text;
import pairdown.format.source.Xml;
import pairdown.time.IsoTime;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** Turns the track points of a GPX file into rows. */
final class GpxPoints {
    private final LogSource source;
    private final Notes notes = new Notes();
    private final Rows rows;
    private final Map<Channel, Double> values = new EnumMap<>(Channel.class);
    private String time = "";
    private boolean noFix;
    private boolean separationSeen;
    private boolean heightSeen;
    private int seen;
    private int timeless;

    GpxPoints(LogSource source) {
        this.source = source;
        this.rows = new Rows(source, "gpx", notes);
    }

    /** Track points read to their end so far, used or not. */
    int seen() {
        return seen;
    }

    void skip(long line, String reason) {
        notes.skip(line, reason);
    }

    /** Takes in the element a parser is at, if it is a track point; the parser moves to its end. */
    void element(XMLStreamReader xml, String name, long linesBefore) throws XMLStreamException {
        if (name.equals("trk")) {
            rows.beginTrack();
        }
        if (!name.equals("trkpt")) {
            return;
        }
        long line = linesBefore > 0 ? linesBefore : Xml.line(xml);
        String latitude = Xml.attribute(xml, "lat");
        String longitude = Xml.attribute(xml, "lon");
        values.clear();
        time = "";
        noFix = false;
        children(xml);
        seen++;
        row(line, latitude, longitude);
    }

    private void children(XMLStreamReader xml) throws XMLStreamException {
        int depth = 1;
        String name = "";
        while (depth > 0) {
            switch (xml.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    depth++;
                    name = Xml.localName(xml);
                }
                case XMLStreamConstants.CHARACTERS -> {
                    if (!name.isEmpty()) {
                        child(name, Xml.text(xml));
                    }
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    depth--;
                    name = "";
                }
                default -> {}
            }
        }
    }

    private void child(String name, String text) {
        switch (name) {
            case "time" -> time = text;
            case "ele" -> put(Channel.HEIGHT, text);
            case "fix" -> fix(text.strip());
            case "vspeed", "verticalSpeed", "climb" ->
                    values.put(Channel.VELOCITY_DOWN, -Numbers.parse(text));
            default -> PointNames.channel(name).ifPresent(channel -> put(channel, text));
        }
    }

    private void put(Channel channel, String text) {
        values.put(channel, Numbers.parse(text));
    }

    private void fix(String text) {
        noFix = text.equals("none");
        double type =
                switch (text) {
                    case "2d" -> 2;
                    case "3d" -> 3;
                    case "dgps", "pps" -> 4;
                    default -> Double.NaN;
                };
        values.put(Channel.FIX_TYPE, type);
    }

    private void row(long line, String latitude, String longitude) {
        long t_ns = IsoTime.utc_ns(time);
        if (t_ns == IsoTime.NONE) {
            timeless += time.isBlank() ? 1 : 0;
            notes.skip(
                    line,
                    time.isBlank() ? "point without a time" : "no time in " + Text.quote(time));
            return;
        }
        if (noFix) {
            notes.skip(line, "no fix");
            return;
        }
        double lat = Numbers.parse(latitude);
        double lon = Numbers.parse(longitude);
        if (Double.isNaN(lat) || Double.isNaN(lon)) {
            notes.skip(line, "no place in " + Text.quote(latitude + ", " + longitude));
            return;
        }
        rows.begin(t_ns, line);
        if (rows.position(lat, lon)) {
            values.forEach(rows::set);
            heightSeen |= values.containsKey(Channel.HEIGHT);
            Optional<Double> separation = Optional.ofNullable(values.get(Channel.GEOID_SEPARATION));
            separationSeen |= separation.isPresent();
        }
    }

    /** Says that the file broke, and how it was read on. */
    void noteBreak(long line, int pointsAfter) {
        notes.warn(
                pointsAfter > 0
                        ? "damaged at line "
                                + line
                                + "; "
                                + pointsAfter
                                + " whole points after it were read"
                        : "cut or damaged at line "
                                + line
                                + "; the whole points before it were read");
    }

    Track finish() throws UnusableInputException {
        if (rows.size() == 0 && timeless > 0) {
            throw source.unusable(
                    "its points have no times", "export it with times; a drawn route has none");
        }
        if (rows.size() == 0 && seen == 0) {
            throw source.unusable("holds no track points", "export the track, not way points");
        }
        if (heightSeen && !separationSeen) {
            notes.warn("GPX leaves open what heights are measured from: taken as sea level");
        }
        return rows.finish(true, separationSeen ? HeightDatum.MSL : HeightDatum.UNKNOWN);
    }
}
