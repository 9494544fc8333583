package pairdown.format.kml;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
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
        Optional<Break> broken = whole(source, rows, notes);
        if (broken.isPresent()) {
            afterBreak(source, rows, notes, broken.get());
        }
        if (rows.size() == 0 && notes.skippedCount() == 0) {
            throw source.unusable(
                    "holds no track with times", "export it as a track; a drawn line has no times");
        }
        return rows.finish(true, HeightDatum.MSL);
    }

    /** Where a file stops being XML, and how many tracks it had before. */
    private record Break(long line, int tracks) {}

    /** Reads the file as XML, as far as it is that. */
    private static Optional<Break> whole(LogSource source, Rows rows, Notes notes)
            throws IOException, UnusableInputException {
        int tracks = 0;
        KmlTrack track = new KmlTrack(rows, notes);
        try (InputStream in = source.open()) {
            XMLStreamReader xml = Xml.open(in);
            try {
                while (xml.hasNext()) {
                    if (xml.next() == XMLStreamConstants.START_ELEMENT
                            && Xml.localName(xml).equals("Track")) {
                        track = new KmlTrack(rows, notes);
                        track.read(xml);
                        track = new KmlTrack(rows, notes);
                        tracks++;
                    }
                }
            } catch (XMLStreamException e) {
                Xml.rethrowInput(e);
                if (track.isPlaced()) {
                    track.emit();
                    tracks++;
                }
                return Optional.of(new Break(Xml.line(xml), tracks));
            } finally {
                xml.close();
            }
        } catch (XMLStreamException e) {
            Xml.rethrowInput(e);
            return Optional.of(new Break(1, tracks));
        }
        return Optional.empty();
    }

    private static void afterBreak(LogSource source, Rows rows, Notes notes, Break broken)
            throws IOException, UnusableInputException {
        try (InputStream in = source.open()) {
            int fixes = new KmlFragments(in, rows, notes).read(broken.tracks());
            notes.warn(
                    "cut or damaged at line "
                            + broken.line()
                            + "; what was whole before it was read"
                            + (fixes == 0 ? "" : ", and " + fixes + " of the fixes from there on"));
        }
    }
}
