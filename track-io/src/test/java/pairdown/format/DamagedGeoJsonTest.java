package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.track.Channel;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** A feature keeps its times and its places in two lists: a loss must never shift the one. */
class DamagedGeoJsonTest {
    private static final int FIXES = 60;

    /** Fix number i stands at second i, latitude −24.5 + i / 10 000 and is i m/s fast. */
    private static String feature(boolean timesFirst, int from) {
        String places =
                "\"geometry\":{\"type\":\"LineString\",\"coordinates\":[%s]}"
                        .formatted(
                                list(
                                        from,
                                        i -> "[15.5, -24.%04d, %d]".formatted(5000 + i, 900 + i)));
        String times =
                "\"properties\":{\"name\":\"a, [b]\",\"coordTimes\":[%s],\"speed\":[%s]}"
                        .formatted(list(from, DamagedGeoJsonTest::time), list(from, i -> "" + i));
        String lists = timesFirst ? times + "," + places : places + "," + times;
        return "{\"type\":\"Feature\"," + lists + "}";
    }

    private static String time(int i) {
        return "\"2031-05-14T15:%02d:%02dZ\"".formatted(i / 60, i % 60);
    }

    private static String list(int from, IntFunction<String> item) {
        return IntStream.range(from, from + FIXES)
                .mapToObj(item)
                .collect(Collectors.joining(",\n"));
    }

    private static Track read(String text) throws Exception {
        return TestLogs.read(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static String withRubbish(String text, int at, int length) {
        StringBuilder rubbish = new StringBuilder(text);
        for (int i = 0; i < length; i++) {
            rubbish.setCharAt(at + i, (char) ((i * 37 + 1) % 256));
        }
        return rubbish.toString();
    }

    private static void assertNothingShifted(Track track) {
        double zero_s = track.epoch().orElseThrow().getEpochSecond() % 3600;
        for (int row = 0; row < track.size(); row++) {
            if (!track.hasPosition(row)) {
                continue;
            }
            double i = zero_s + track.time_s(row);
            assertEquals(-24.5 - i / 1e4, track.value(Channel.LATITUDE, row), 1e-9);
            assertEquals(900 + i, track.value(Channel.HEIGHT, row), 1e-3);
            double speed_mps = track.value(Channel.GROUND_SPEED, row);
            assertTrue(Double.isNaN(speed_mps) || Math.abs(speed_mps - i) < 1e-3, "speed of " + i);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void placesBeforeAndBehindRubbishAreKeptAndTheLostOnesCounted(boolean timesFirst)
            throws Exception {
        String text = feature(timesFirst, 0);
        Track track = read(withRubbish(text, text.indexOf("-24.5020"), 60));
        assertNothingShifted(track);
        assertTrue(track.size() >= FIXES - 5 && track.size() < FIXES, track.size() + " fixes");
        assertEquals(FIXES - track.size(), track.report().skippedCount());
        assertTrue(track.report().warnings().get(0).startsWith("cut or damaged at line"));
        assertTrue(track.has(Channel.GROUND_SPEED) == false, "an array beside lost places");
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void timesBeforeAndBehindRubbishAreKeptAndTheLostOnesCounted(boolean timesFirst)
            throws Exception {
        String text = feature(timesFirst, 0);
        Track track = read(withRubbish(text, text.indexOf(time(20)) + 4, 60));
        assertNothingShifted(track);
        assertTrue(track.size() >= FIXES - 5 && track.size() < FIXES, track.size() + " fixes");
        assertTrue(track.has(Channel.GROUND_SPEED), "speeds stand beside places, not times");
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theFeaturesBehindADamagedOneAreKept(boolean timesFirst) throws Exception {
        String text =
                "{\"type\":\"FeatureCollection\",\"features\":[%s,\n%s]}"
                        .formatted(feature(timesFirst, 0), feature(timesFirst, FIXES));
        Track track = read(withRubbish(text, text.indexOf("-24.5020"), 60));
        assertNothingShifted(track);
        assertTrue(track.size() >= 2 * FIXES - 5, track.size() + " fixes");
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFeatureCutInItsSecondListKeepsWhatIsBefore(boolean timesFirst) throws Exception {
        String text = feature(timesFirst, 0);
        String cut = timesFirst ? "-24.5020" : time(20);
        Track track = read(text.substring(0, text.indexOf(cut)));
        assertNothingShifted(track);
        assertEquals(20, track.size());
        assertEquals(FIXES - 20, track.report().skippedCount());
    }

    /** Bytes overwritten or cut out, wherever, so that it can be seen. */
    @Test
    void noDamageAnywhereShiftsAFix() throws Exception {
        Random random = new Random(20310514);
        int kept = 0;
        int trials = 600;
        for (int trial = 0; trial < trials; trial++) {
            String text = feature(trial % 2 == 0, 0);
            int at = random.nextInt(text.length() - 100);
            int length = 1 + random.nextInt(99);
            String damaged = withRubbish(text, at, length);
            if (trial % 3 == 0) {
                damaged = damaged.substring(0, at + 3) + damaged.substring(at + length);
            }
            kept += fixesKept(damaged);
        }
        assertTrue(kept > 0.85 * trials * FIXES, kept + " kept");
    }

    private static int fixesKept(String text) throws Exception {
        try {
            Track track = read(text);
            assertNothingShifted(track);
            return TestLogs.fixes(track);
        } catch (UnusableInputException e) {
            return 0;
        }
    }
}
