package pairdown.format.csv;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.format.Hostile;
import pairdown.format.source.LogSource;

/** A column map made up by a fuzzer, laid over a log that is sound. */
class ColumnMapFuzzTest {
    private static final byte[] LOG =
            """
            written by nobody
            T,A,B,C
            0.0,74,12000,2031-05-14 17:02:11
            0.1,75,11990,2031-05-14 17:02:12
            """
                    .getBytes(StandardCharsets.UTF_8);

    @MethodSource("maps")
    @FuzzTest
    void map(byte[] json) {
        Hostile.check(
                json.length,
                () -> {
                    LogSource log = LogSource.of("log.csv", LOG);
                    return CsvFormat.read(log, ColumnMap.parse("columns.json", json));
                });
    }

    static Stream<byte[]> maps() {
        return Stream.of(
                        """
                        {"skipRows": 1, "delimiter": ",", "decimal": ".",
                         "time": {"column": "T", "as": "seconds"},
                         "channels": {"bladeAngle_deg": {"column": "A", "scale": 2, "offset": -1},
                          "height_m": {"column": "B", "unit": "ft", "datum": "pressure"}}}
                        """,
                        """
                        {"skipRows": 1, "time": {"column": "C", "as": "local",
                         "zone": "Africa/Windhoek", "date": "2031-05-14"},
                         "channels": {"indicatedAirspeed_mps": {"column": "A", "unit": "kt"}}}
                        """,
                        """
                        {"time": {"column": "T", "as": "gps-seconds-of-week", "week": 2446},
                         "channels": {"height_m": {"column": "B", "datum": "msl"}}}
                        """)
                .map(json -> json.getBytes(StandardCharsets.UTF_8));
    }
}
