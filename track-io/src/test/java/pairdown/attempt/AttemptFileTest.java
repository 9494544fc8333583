package pairdown.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.track.UnusableInputException;

class AttemptFileTest {
    private static final String FULL =
            """
            {
              "attempt": "2031-05-14-03",
              "title": "Third load, 30 m gate",
              "participants": [
                {"id": "lead", "role": "lead",
                 "logs": [{"file": "lead.nmea"},
                          {"file": "lead-systems.csv", "columns": "systems.columns.json",
                           "clock": {"zero": "2031-05-14T15:02:11.350Z"}}],
                 "slots": {"left": {"ahead_m": 0.4, "right_m": -6.2, "above_m": 0.9}},
                 "antenna": {"ahead_m": 1.1, "right_m": 0.0, "above_m": 1.2},
                 "mass": "2300 kg"},
                {"id": "amber", "role": "flyer", "slot": "left",
                 "logs": [{"file": "amber.gpx", "clock": {"offset": "-2.4 s"}}]}
              ],
              "target": {"airspeed": "85 mph", "sink": "3500 ft/min"},
              "matched": {"vertical": "200 ft/min"},
              "gate": "30 m",
              "limits": {"breakOffHeight": "5500 ft", "breakOffDatum": "agl", "field": "1200 ft",
                         "maximumAirspeed": "140 mph", "closure": {"braking_mps2": 0.4},
                         "minimumSeparation": "30 m"},
              "air": {"qnh": "30.06 inHg", "temperatureDeviation": "9 F",
                      "wind": [{"height": "1000 m", "from_deg": 270, "speed": "12 kt"}]}
            }
            """;

    @TempDir private Path folder;

    private Attempt read(String json) throws IOException, UnusableInputException {
        Files.writeString(folder.resolve("attempt.json"), json);
        return AttemptFolder.open(folder);
    }

    private String complaint(String json) {
        return String.valueOf(
                assertThrows(UnusableInputException.class, () -> read(json)).getMessage());
    }

    @Test
    void brokenJsonIsToldInTheParsersWordsWithoutItsOwnAffairs() {
        for (String text : List.of("{\"participants\": [}", "{\"participants\": [")) {
            String said =
                    String.valueOf(
                            assertThrows(
                                            UnusableInputException.class,
                                            () -> JsonFile.parse(Path.of("attempt.json"), text))
                                    .getMessage());
            assertTrue(said.startsWith("attempt.json:1: not valid JSON: "), said);
            assertFalse(said.contains("Source") || said.contains("Feature"), said);
        }
    }

    @Test
    void aFullManifestIsReadWithItsUnits() throws Exception {
        Attempt a = read(FULL);

        assertEquals("2031-05-14-03", a.id());
        assertEquals(30, a.gate_m().orElseThrow());
        Participant lead = a.lead().orElseThrow();
        assertEquals(new LeverArm(0.4, -6.2, 0.9), lead.slots().get("left"));
        assertEquals(new LeverArm(1.1, 0, 1.2), lead.antenna().orElseThrow());
        assertEquals(2300, lead.mass_kg().orElseThrow());
        assertEquals(
                Instant.parse("2031-05-14T15:02:11.350Z"),
                lead.logs().get(1).clock().zero().orElseThrow());
        assertEquals(
                folder.resolve("systems.columns.json"), lead.logs().get(1).columns().orElseThrow());
        assertEquals(-2.4, a.flyers().get(0).logs().get(0).clock().offset_s().orElseThrow());
        Target target = a.target().orElseThrow();
        // 85 mph and 3,500 ft/min by arithmetic from NIST SP 811's factors.
        assertEquals(37.9984, target.airspeed_mps(), 1e-9);
        assertEquals(17.78, target.sink_mps(), 1e-9);
        assertEquals(AirspeedKind.CALIBRATED, target.kind());
        assertEquals(10, target.hold_s());
        assertEquals(1.016, a.matched().vertical_mps(), 1e-9);
        assertEquals(1.5, a.matched().horizontal_mps());
        BreakOff breakOff = a.limits().breakOff().orElseThrow();
        assertEquals(BreakOff.Datum.AGL, breakOff.datum());
        assertEquals(1676.4, breakOff.height_m(), 1e-9);
        assertEquals(365.76, breakOff.field_m(), 1e-9);
        assertEquals(0.4, a.limits().closure().braking_mps2());
        assertEquals(2, a.limits().closure().margin_m());
        assertEquals(5, a.air().temperatureDeviation_C().orElseThrow(), 1e-9);
        assertEquals(1017.95, a.air().qnh_hPa().orElseThrow(), 0.01);
        assertEquals(6.1733, a.air().wind().get(0).speed_mps(), 1e-4);
        assertTrue(a.notes().isEmpty(), () -> a.notes().toString());
    }

    @Test
    void whatHasNoDefaultIsAbsent() throws Exception {
        Attempt a = read("{\"participants\": [{\"id\": \"x\", \"role\": \"lead\", \"logs\": []}]}");

        assertTrue(a.gate_m().isEmpty());
        assertTrue(a.target().isEmpty());
        assertTrue(a.limits().breakOff().isEmpty());
        assertTrue(a.limits().minimumSeparation_m().isEmpty());
        assertEquals(MatchedSettings.DEFAULT, a.matched());
        assertEquals(ClosureSettings.DEFAULT, a.limits().closure());
        assertEquals(folder.getFileName().toString(), a.id());
    }

    @Test
    void anUnknownUnitNamesTheLineAndTheKnownUnits() {
        String said = complaint(FULL.replace("\"30 m\",", "\"30 furlong\","));

        assertTrue(said.contains("attempt.json:17"), said);
        assertTrue(said.contains("furlong"), said);
        assertTrue(said.contains("ft/min") && said.contains("NM"), said);
    }

    @Test
    void aMisspeltLimitIsSaidWithItsLine() throws Exception {
        Attempt a = read(FULL.replace("\"maximumAirspeed\"", "\"maximumAirsped\""));

        assertTrue(a.limits().maximumAirspeed_mps().isEmpty());
        assertEquals(1, a.notes().size());
        assertTrue(a.notes().get(0).contains("maximumAirsped"), a.notes().get(0));
        assertTrue(a.notes().get(0).contains("attempt.json:19"), a.notes().get(0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    "amber.gpx"      | "../amber.gpx"    | outside
                    "amber.gpx"      | "/etc/amber.gpx"  | outside
                    "role": "flyer"  | "role": "lead"    | second lead
                    "role": "flyer"  | "role": "wing"    | unknown role
                    "id": "amber"    | "id": "lead"      | two participants
                    "slot": "left"   | "slot": "right"   | no slot
                    "85 mph"         | "85 ft"           | no speed
                    "30 m"           | "-30 m"           | above zero
                    "agl"            | "qfe"             | unknown datum
                    "2031-05-14T15:02:11.350Z" | "3 pm"  | no instant
                    """)
    void nonsenseIsOneLineThatSaysWhat(String good, String bad, String expected) {
        String said = complaint(FULL.replace(good, bad));

        assertTrue(said.contains(expected), said);
        assertTrue(said.matches("(?s).*attempt\\.json:\\d+: .*; .*"), said);
        assertEquals(1, said.lines().count());
    }

    @Test
    void brokenJsonNamesItsLine() {
        String said = complaint("{\n\"participants\": [\n}");

        assertTrue(said.contains("attempt.json:3"), said);
    }

    @Test
    void aFolderThatIsNotThereIsOneLine() {
        UnusableInputException thrown =
                assertThrows(
                        UnusableInputException.class,
                        () -> AttemptFolder.open(folder.resolve("nowhere")));
        String said = String.valueOf(thrown.getMessage());

        assertTrue(said.contains("no such folder"), said);
    }
}
