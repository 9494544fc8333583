package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A script's unset variable must not make a verb read or write the folder it happens to be in. */
class EmptyNamesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "debrief|",
                "debrief|attempt|--out|",
                "debrief|attempt|--out= ",
                "debrief|attempt|--share|",
                "season|",
                "season|folder|--out|",
                "inspect|",
                "inspect|a.csv|--columns|",
                "draft|",
                "convert||--to|gpx|--out|a.gpx",
                "convert|a.csv|--to|gpx|--out|",
                "still||--at|closest|--out|a.png",
                "still|attempt|--at|closest|--out|",
                "clip|attempt|--from|closest|--to|closest|--out|",
                "demo|"
            })
    void anEmptyNameIsWrongUsage(String line) {
        Said said = Said.by((Object[]) line.split("\\|", -1));
        assertEquals(ExitStatus.USAGE, said.status(), said.err());
        assertEquals("", said.out());
        assertEquals(1, said.errLines().size(), said.err());
        assertTrue(said.err().contains("is empty, name a file or a folder"), said.err());
        assertTrue(said.err().contains("; see: pairdown "), said.err());
    }
}
