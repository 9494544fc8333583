package pairdown.format.igc;

import java.io.IOException;
import java.io.InputStream;
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
        boolean named = ByteLines.of(head, LONGEST).anyMatch(IgcFormat::namesARecorder);
        return ByteLines.of(head, LONGEST)
                .anyMatch(
                        line ->
                                IgcFix.isFix(line)
                                        || (named && line.latin1().matches("H[FOPS][A-Z]{3}.*")));
    }

    private static boolean namesARecorder(ByteLines line) {
        return line.number() == 1 && line.latin1().matches("A[A-Z0-9]{3}.*");
    }

    @Override
    public Track read(LogSource source) throws IOException, UnusableInputException {
        try (InputStream in = source.open()) {
            return new IgcReader(source).read(new ByteLines(in, LONGEST));
        }
    }
}
