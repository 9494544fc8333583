package pairdown.format.kml;

import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import pairdown.format.source.LogSource;
import pairdown.format.source.Notes;
import pairdown.format.source.Rows;
import pairdown.format.source.TrackFormat;
import pairdown.format.source.Xml;
import pairdown.track.HeightDatum;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * KML with tracks: {@code gx:Track} and the {@code Track} of KML 2.3, in a {@code MultiTrack} or by
 * themselves. Everything else in a file is a picture, not a log.
 */
public final class KmlFormat implements TrackFormat {
    @Override
    public String key() {
        return "kml";
    }

    @Override
    public boolean recognises(byte[] head) {
        return Xml.rootIs(head, "kml");
    }

    @Override
    public Track read(LogSource source) throws IOException, UnusableInputException {
        Notes notes = new Notes();
        Rows rows = new Rows(source, key(), notes);
        long line = 1;
        try (InputStream in = source.open()) {
            XMLStreamReader xml = Xml.open(in);
            KmlTrack track = new KmlTrack(rows, notes);
            try {
                while (xml.hasNext()) {
                    if (xml.next() == XMLStreamConstants.START_ELEMENT
                            && Xml.localName(xml).equals("Track")) {
                        track = new KmlTrack(rows, notes);
                        track.read(xml);
                        track = new KmlTrack(rows, notes);
                    }
                }
            } catch (XMLStreamException e) {
                Xml.rethrowInput(e);
                line = Xml.line(xml);
                track.emit();
                notes.warn(
                        "cut or damaged at line " + line + "; what was whole before it was read");
            } finally {
                xml.close();
            }
        } catch (XMLStreamException e) {
            Xml.rethrowInput(e);
            throw source.unusable(line, "is no XML", "copy it anew");
        }
        if (rows.size() == 0 && notes.skippedCount() == 0) {
            throw source.unusable(
                    "holds no track with times", "export it as a track; a drawn line has no times");
        }
        return rows.finish(true, HeightDatum.MSL);
    }
}
