package pairdown.format.igc;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import pairdown.format.source.ByteLines;
import pairdown.format.source.LogSource;
import pairdown.format.source.TrackFormat;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** FAI/IGC Technical Specification for GNSS Flight Recorders, second edition, AL8. */
public final class IgcFormat implements TrackFormat {
    private static final int LONGEST = 4096;

    @Override
    public String key() {
        return "igc";
    }

    /** A B record, or the A and H records that come before one. */
    @Override
    public boolean recognises(byte[] head) {
        ByteLines lines = new ByteLines(new ByteArrayInputStream(head), LONGEST);
        boolean manufacturer = false;
        try {
            while (lines.next()) {
                if (IgcFix.isFix(lines)) {
                    return true;
                }
                if (lines.number() == 1 && lines.latin1().matches("A[A-Z0-9]{3}.*")) {
                    manufacturer = true;
                }
                if (manufacturer && lines.latin1().matches("H[FOPS][A-Z]{3}.*")) {
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
            return new IgcReader(source).read(new ByteLines(in, LONGEST));
        }
    }
}
