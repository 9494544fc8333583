package pairdown.track;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class UnusableInputExceptionTest {
    private static final Path DAY = Path.of("/home/anna/day 1");
    private static final Path SLASH = Path.of("/");

    private static UnusableInputException of(String what, Path where) {
        return new UnusableInputException(what, where.toString(), "mend it");
    }

    @Test
    void aMessageForOthersNamesWhatIsInTheFolderAlone() {
        Path log = DAY.resolve("a.gpx");
        assertEquals("a.gpx: is odd; mend it", of("is odd", log).messageFor(DAY, ""));
        assertEquals(
                Path.of("day1", "a.gpx") + ": is odd; mend it",
                of("is odd", log).messageFor(DAY, "day1"));
        assertEquals(
                "day1: has none (" + Path.of("day1", "a.gpx") + "); mend it",
                of("has none (" + log + ")", DAY).messageFor(DAY, "day1"));
        assertEquals("day 1: has none; mend it", of("has none", DAY).messageFor(DAY, ""));
    }

    @Test
    void anotherPathThatEndsAlikeIsLeftAsItIs() {
        Path relative = Path.of("day");
        String typed = "'" + Path.of("other", "day", "a.gpx") + "' is odd";
        assertEquals(
                "a.gpx: " + typed + "; mend it",
                of(typed, relative.resolve("a.gpx")).messageFor(relative, ""));
        assertEquals(
                "a.gpx: is odd; mend it", of("is odd", Path.of("a.gpx")).messageFor(SLASH, ""));
    }
}
