package pairdown.format.nmea;

import java.io.IOException;
import java.io.InputStream;
import java.util.function.BiPredicate;
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
        return any(
                head,
                (found, sentence) ->
                        (found == Sentence.Found.SOUND || found == Sentence.Found.UNCHECKED)
                                && NmeaReader.isUsed(sentence.type()));
    }

    /** Whether there are sentences at all: with a checksum that fits, of any kind. */
    public static boolean hasSentences(byte[] head) {
        return any(head, (found, sentence) -> found == Sentence.Found.SOUND);
    }

    /** Whether there are sentences of positions or times whose checksums do not fit. */
    public static boolean hasDamagedSentences(byte[] head) {
        return any(
                head,
                (found, sentence) ->
                        found == Sentence.Found.DAMAGED && NmeaReader.isUsed(sentence.type()));
    }

    private static boolean any(byte[] head, BiPredicate<Sentence.Found, Sentence> wanted) {
        Sentence sentence = new Sentence();
        return ByteLines.of(head, LONGEST)
                .anyMatch(line -> wanted.test(sentence.find(line), sentence));
    }

    @Override
    public Track read(LogSource source) throws IOException, UnusableInputException {
        try (InputStream in = source.open()) {
            return new NmeaReader(source).read(new ByteLines(in, LONGEST));
        }
    }
}
