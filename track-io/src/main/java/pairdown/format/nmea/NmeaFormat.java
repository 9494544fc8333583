package pairdown.format.nmea;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import pairdown.format.source.ByteLines;
import pairdown.format.source.LogSource;
import pairdown.format.source.TrackFormat;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** NMEA 0183 as receivers write it to a log. */
public final class NmeaFormat implements TrackFormat {
    /** Proprietary sentences are longer than the standard's 82 characters. */
    private static final int LONGEST = 4096;

    @Override
    public String key() {
        return "nmea";
    }

    @Override
    public boolean recognises(byte[] head) {
        ByteLines lines = new ByteLines(new ByteArrayInputStream(head), LONGEST);
        Sentence sentence = new Sentence();
        try {
            while (lines.next()) {
                Sentence.Found found = sentence.find(lines);
                boolean readable =
                        found == Sentence.Found.SOUND || found == Sentence.Found.UNCHECKED;
                if (readable && NmeaReader.isUsed(sentence.type())) {
                    return true;
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("memory can't fail", e);
        }
        return false;
    }

    @Override
    public Track read(LogSource source) throws IOException, UnusableInputException {
        try (InputStream in = source.open()) {
            return new NmeaReader(source).read(new ByteLines(in, LONGEST));
        }
    }
}
