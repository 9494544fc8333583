package pairdown.format.gpx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import pairdown.format.source.LogSource;
import pairdown.format.source.TrackFormat;
import pairdown.format.source.Xml;
import pairdown.format.source.XmlFragments;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * GPX 1.1, and 1.0 as far as tracks go. All tracks and segments of a file make one track: where one
 * ends there is a gap. A file that is no longer XML is read point by point from where it breaks.
 */
public final class GpxFormat implements TrackFormat {
    private static final String POINT = "trkpt";

    @Override
    public String key() {
        return "gpx";
    }

    @Override
    public boolean recognises(byte[] head) {
        return Xml.rootIs(head, "gpx");
    }

    @Override
    public Track read(LogSource source) throws IOException, UnusableInputException {
        GpxPoints points = new GpxPoints(source);
        Optional<Long> brokenAt = whole(source, points);
        if (brokenAt.isPresent()) {
            points.noteBreak(brokenAt.get(), afterBreak(source, points));
        }
        return points.finish();
    }

    /** Reads the file as XML; the line where it stops being that, if it does. */
    private static Optional<Long> whole(LogSource source, GpxPoints points)
            throws IOException, UnusableInputException {
        try (InputStream in = source.open()) {
            XMLStreamReader xml = Xml.open(in);
            try {
                while (xml.hasNext()) {
                    if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                        points.element(xml, Xml.localName(xml), 0);
                    }
                }
            } catch (XMLStreamException e) {
                Xml.rethrowInput(e);
                return Optional.of(Xml.line(xml));
            } finally {
                xml.close();
            }
        } catch (XMLStreamException e) {
            Xml.rethrowInput(e);
            return Optional.of(1L);
        }
        return Optional.empty();
    }

    /** Reads the points behind a break one by one; how many there were. */
    private static int afterBreak(LogSource source, GpxPoints points)
            throws IOException, UnusableInputException {
        int before = points.seen();
        int index = 0;
        int found = 0;
        try (InputStream in = source.open()) {
            XmlFragments fragments = new XmlFragments(in, POINT);
            while (fragments.next()) {
                if (index++ >= before) {
                    found += fragment(fragments, points) ? 1 : 0;
                }
            }
        }
        return found;
    }

    private static boolean fragment(XmlFragments fragments, GpxPoints points) throws IOException {
        try {
            XMLStreamReader xml = Xml.open(new ByteArrayInputStream(fragments.bytes()));
            xml.nextTag();
            points.element(xml, POINT, fragments.line());
            xml.close();
            return true;
        } catch (XMLStreamException e) {
            points.skip(fragments.line(), "point is damaged");
            return false;
        }
    }
}
