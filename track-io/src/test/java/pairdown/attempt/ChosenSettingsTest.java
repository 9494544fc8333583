package pairdown.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.track.UnusableInputException;

class ChosenSettingsTest {
    private static final Tuning USUAL = new Tuning(5, 3, new Near(0.9, 30), 0.95);

    @TempDir private Path folder;

    record Near(double share, double time_s) {}

    record Tuning(double jerk_m2ps5, int passes, Near near, double confidence) {
        Tuning {
            if (near.share > 1) {
                throw new IllegalArgumentException("share is above 1");
            }
        }
    }

    private ChosenSettings chosen(String settings) throws IOException, UnusableInputException {
        Path day = Files.createDirectories(folder.resolve("day/one"));
        Files.writeString(
                day.resolve("attempt.json"),
                """
                {"participants": [{"id": "a", "role": "lead", "logs": [{"file": "a.gpx"}]}],
                 "settings": %s}
                """
                        .formatted(settings));
        return AttemptFolder.open(day).settings();
    }

    private static Tuning over(ChosenSettings chosen) throws UnusableInputException {
        return chosen.over(Tuning.class, USUAL, "confidence"::equals);
    }

    @Test
    void chosenNumbersStandInsteadOfTheUsualOnesAndAreSaid() throws Exception {
        ChosenSettings chosen =
                chosen("{\"jerk_m2ps5\": 8, \"passes\": 2, \"near\": {\"time_s\": 12.5}}");
        assertEquals(new Tuning(8, 2, new Near(0.9, 12.5), 0.95), over(chosen));
        assertEquals(
                List.of(
                        "jerk_m2ps5 is set to 8, usually 5",
                        "passes is set to 2, usually 3",
                        "near.time_s is set to 12.5, usually 30"),
                chosen.notes(USUAL));
    }

    @Test
    void aNameMayHaveItsGroupBeforeIt() throws Exception {
        assertEquals(12, over(chosen("{\"near.time_s\": 12}")).near().time_s());
    }

    @Test
    void withNothingChosenAllIsAsUsual() throws Exception {
        assertSame(USUAL, over(chosen("{}")));
        assertSame(USUAL, over(ChosenSettings.NONE));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    {"jrk_m2ps5": 8}            | no setting "jrk_m2ps5"      | jerk_m2ps5, passes
                    {"near": {"share_": 8}}     | no setting "near.share_"    | share, time_s
                    {"far": {"time_s": 8}}      | no setting "far.time_s"     | near
                    {"near": 8}                 | no setting "near"           | near
                    {"jerk_m2ps5": {"x": 8}}    | no setting "jerk_m2ps5.x"   | near
                    {"a/b": 8}                  | no setting "a/b"            | near
                    {"jerk_m2ps5": "8 m"}       | must be a number            | unit is in its name
                    {"jerk_m2ps5": [8]}         | must be a number            | unit is in its name
                    {"jerk_m2ps5": 0}           | is set to 0, usually 5      | hundred times
                    {"jerk_m2ps5": -5}          | is set to -5, usually 5     | hundred times
                    {"jerk_m2ps5": 501}         | is set to 501, usually 5    | hundred times
                    {"passes": 2.5}             | is no count                 | whole number
                    {"confidence": 0.9}         | fixed                       | leave it out
                    {"near": {"share": 1.5}}    | share is above 1            | mend
                    """)
    void whatMakesNoSenseIsRefusedWithLineAndMend(String settings, String what, String mend) {
        UnusableInputException e =
                assertThrows(UnusableInputException.class, () -> over(chosen(settings)));
        String said = String.valueOf(e.getMessage());
        assertTrue(said.contains(what), said);
        assertTrue(said.contains(mend), said);
        assertTrue(said.contains("attempt.json:2"), said);
    }

    @Test
    void theNearestSeasonAboveSetsWhatTheAttemptDoesNot() throws Exception {
        Files.writeString(
                folder.resolve("season.json"),
                "{\"settings\": {\"jerk_m2ps5\": 9, \"passes\": 4, \"season\": {\"x\": 1}}}");
        ChosenSettings chosen = chosen("{\"passes\": 2}");
        assertEquals(new Tuning(9, 2, USUAL.near(), 0.95), over(chosen));
        Files.writeString(folder.resolve("day/season.json"), "{\"title\": \"no numbers\"}");
        assertEquals(new Tuning(5, 2, USUAL.near(), 0.95), over(chosen("{\"passes\": 2}")));
    }

    @Test
    void resultsOfASeasonAreNoTeamsFile() throws Exception {
        Files.writeString(folder.resolve("season.json"), "{\"settings\": {\"passes\": 4}}");
        Files.createDirectories(folder.resolve("day"));
        Files.writeString(
                folder.resolve("day/season.json"),
                "{\"format\": \"pairdown-season\", \"settings\": {\"passes\": 1}}");
        assertEquals(4, over(chosen("{}")).passes());
    }

    @Test
    void aSeasonsFileThatCantBeReadStopsWhatRestsOnIt() throws Exception {
        Files.writeString(folder.resolve("season.json"), "{\"settings\": ");
        String said =
                String.valueOf(
                        assertThrows(UnusableInputException.class, () -> chosen("{}"))
                                .getMessage());
        assertTrue(said.contains("season.json:1"), said);
    }
}
