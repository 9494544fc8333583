package pairdown.attempt;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.format.Hostile;

/** A manifest made up by a fuzzer. */
class AttemptFileFuzzTest {
    private static final Path FOLDER = Path.of("attempts", "2031-05-14-03");

    @MethodSource("manifests")
    @FuzzTest
    void manifest(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        Hostile.check(
                bytes.length,
                () -> AttemptFile.of(FOLDER, JsonFile.parse(Path.of("attempt.json"), text)));
    }

    static Stream<byte[]> manifests() {
        return Stream.of(
                        """
                        {"attempt": "2031-05-14-03", "title": "Third load, 30 m gate",
                         "participants": [
                          {"id": "lead", "role": "lead",
                           "logs": [{"file": "lead.nmea"},
                                    {"file": "lead.csv", "columns": "systems.columns.json"}],
                           "slots": {"left": {"ahead_m": 0.4, "right_m": -6.2, "above_m": 0.9}},
                           "antenna": {"ahead_m": 1.1, "right_m": 0, "above_m": "1.2 m"},
                           "mass": "2300 kg"},
                          {"id": "blue", "role": "flyer", "slot": "left",
                           "logs": [{"file": "blue.csv",
                            "clock": {"offset": "-2.4 s", "zero": "2031-05-14T15:02:11.350Z"}}]}],
                         "gate": "30 m"}
                        """,
                        """
                        {"participants": [{"id": "a", "role": "camera", "logs": [{"file": "a.csv"}]}],
                         "target": {"airspeed": "85 mph", "airspeedKind": "calibrated",
                          "sink": "3500 ft/min", "airspeedTolerance": "1.5 m/s", "hold": "10 s"},
                         "matched": {"horizontal": "1.5 m/s", "vertical": "1.0 m/s", "dwell": "3 s"},
                         "limits": {"breakOffHeight": "5500 ft", "breakOffDatum": "agl",
                          "field": "1200 ft", "maximumAirspeed": "140 mph",
                          "closure": {"braking_mps2": 0.5, "reaction": "1 s", "margin": "2 m"},
                          "minimumSeparation": "30 m"},
                         "air": {"qnh": "1018 hPa", "temperatureDeviation": "6 C",
                          "wind": [{"height": "1000 m", "from_deg": 270, "speed": "12 kt"}]}}
                        """)
                .map(json -> json.getBytes(StandardCharsets.UTF_8));
    }
}
