package pairdown.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pairdown.track.Skipped;

class TranslationTest {
    private static final Translation ENGLISH = new Translation(Words.of(Locale.ENGLISH));

    /** A made-up language that turns its sentences round. */
    private static final Translation OTHER =
            new Translation(
                    Words.of(
                            Locale.GERMANY,
                            Map.of(
                                    "said.wind.rough", "vento rough {1} ({0}, {2}°)",
                                    "said.wind.climb", "supren",
                                    "said.clock.shifted", "horloĝo {0} s",
                                    "said.episode.strong", "forta: {0}, {1} s",
                                    "said.sign.lost", "perdita",
                                    "said.sign.stop", "halto",
                                    "said.episode.notJudged", "ne juĝita")));

    @Test
    void aSentenceIsKnownByItsEnglishAndToldWithItsNamesAndNumbers() {
        assertEquals(
                "vento rough lead (supren, 143°)",
                OTHER.of("the climb of lead turns through 143° at most: its wind is rough"));
    }

    @Test
    void numbersAreWrittenAsTheReaderDoes() {
        assertEquals(
                "horloĝo −2,41 s",
                OTHER.of("the clock was shifted by -2.41 s to fit its shared ride"));
    }

    @Test
    void partsOfASentenceAreToldOneByOne() {
        assertEquals(
                "forta: perdita, halto, 3,2 s; ne juĝita",
                OTHER.of(
                        "strong: lost effectiveness, elevator near its stop over 3.2 s;"
                                + " effectiveness could not be judged"));
    }

    @Test
    void whatIsNotKnownStaysAsItIs() {
        String odd = "amber.gpx: whatever, it is; so it is";
        assertEquals(odd, OTHER.of(odd));
        assertFalse(Translation.knows("something nobody ever says"));
    }

    @Test
    void englishIsToldAsItIsButForItsMinus() {
        for (String said :
                new String[] {
                    "the climb of lead turns through 143° at most: its wind is rough",
                    "lead–amber: 8.4 s between exit and opening have no fix of one of them; a closer"
                            + " approach there would not show",
                    "0: 2031-05-16-02 was not on the gate",
                    "tail episode 1, strong: lost effectiveness over 3.2 s; effectiveness down to 0.31"
                            + " of forward thrust, where this descent stood at 0.46; preceded about"
                            + " 0.8 s (± 0.3 s) by power lever -20 to -55 %, towards reverse"
                }) {
            assertTrue(Translation.knows(said), said);
            assertEquals(said.replace(" -", " −"), ENGLISH.of(said));
        }
    }

    /** No two texts are the same English: which of them a sentence is could not be told. */
    @Test
    void everySentenceIsThereOnce() {
        Words words = Words.of(Locale.ENGLISH);
        long texts =
                words.keys().stream()
                        .filter(k -> k.startsWith("said."))
                        .map(words::get)
                        .distinct()
                        .count();
        assertEquals(words.keys().stream().filter(k -> k.startsWith("said.")).count(), texts);
    }

    /** What was lost is told with its line, in the reader's words. */
    @Test
    void theFirstRecordLostIsTold() {
        assertEquals(
                "line 812 is not used: latitude 95.2 is outside ±90",
                ENGLISH.lost(
                                List.of(
                                        new Skipped(812, "latitude 95.2 is outside ±90"),
                                        new Skipped(813, "no fix")))
                        .orElseThrow());
        assertEquals(
                "a record is not used: no fix",
                ENGLISH.lost(List.of(new Skipped(0, "no fix"))).orElseThrow());
        assertTrue(ENGLISH.lost(List.of()).isEmpty());
        for (String reason :
                new String[] {
                    "duplicate of an earlier record",
                    "position held since line 40 while moving",
                    "checksum does not fit: '$GPRMC,1'",
                    "half a position: no latitude",
                    "height_m 99999 can't be"
                }) {
            assertTrue(Translation.knows(reason), reason);
        }
    }
}
