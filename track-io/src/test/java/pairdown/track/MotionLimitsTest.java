package pairdown.track;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MotionLimitsTest {
    /** Level flight for a minute, then a dive that pulls 4 m/s² up to its sink, then a canopy. */
    private static double sink_mps(double t_s, double dive_mps) {
        double in_s = t_s - 60;
        if (in_s < 0) {
            return 0;
        }
        return in_s < 60 ? Math.min(dive_mps, 4 * in_s) : Math.max(5, dive_mps - 8 * (in_s - 60));
    }

    private static Track log(double rate_Hz, double dive_mps, double limit_mps, boolean speeds) {
        Random noise = new Random(7);
        Track.Builder rows = new Track.Builder();
        double height_m = 4000;
        double step_s = 1 / rate_Hz;
        for (int i = 0; i < 200 * rate_Hz; i++) {
            double t_s = i * step_s;
            double sink_mps = sink_mps(t_s, dive_mps);
            height_m -= sink_mps * step_s;
            if (sink_mps > limit_mps) {
                continue;
            }
            rows.row(t_s)
                    .set(Channel.LATITUDE, 46 + t_s * 3e-4)
                    .set(Channel.LONGITUDE, 7)
                    .set(Channel.HEIGHT, height_m + 0.1 * noise.nextGaussian());
            if (speeds) {
                rows.set(Channel.VELOCITY_DOWN, sink_mps + 0.2 * noise.nextGaussian());
            }
        }
        return rows.build(
                Optional.of(Instant.parse("2031-05-14T15:00:00Z")),
                HeightDatum.ELLIPSOID,
                LogReport.whole("made", "csv"));
    }

    @ParameterizedTest
    @CsvSource({
        "5, 18, 10, true",
        "5, 18, 15, true",
        "1, 18, 15, true",
        "1, 18, 15, false",
        "1, 30, 20, false",
        "5, 30, 20, true",
        "10, 70, 50, true"
    })
    void aDiveLostBeyondAReceiversLimitIsSaid(
            double rate_Hz, double dive_mps, double limit_mps, boolean speeds) {
        List<String> hints = MotionLimits.hints(log(rate_Hz, dive_mps, limit_mps, speeds));
        assertEquals(1, hints.size(), hints::toString);
        assertTrue(hints.get(0).contains(String.format("%.0f m/s", limit_mps)), hints.get(0));
        assertTrue(hints.get(0).startsWith("a gap begins"), hints.get(0));
    }

    @Test
    void aWholeLogOfADiveSaysNothing() {
        assertEquals(List.of(), MotionLimits.hints(log(5, 18, 99, true)));
        assertEquals(List.of(), MotionLimits.hints(log(1, 18, 99, false)));
    }

    @ParameterizedTest
    @CsvSource({"20, 30", "59, 64", "64, 80", "90, 100", "125, 135", "61.5, 70"})
    void aGapOfTheSkyInALogThatShowsTheDiveIsNone(double from_s, double to_s) {
        Track whole = log(5, 18, 99, true);
        Track.Builder rows = new Track.Builder();
        for (int i = 0; i < whole.size(); i++) {
            if (whole.time_s(i) > from_s && whole.time_s(i) < to_s) {
                continue;
            }
            rows.row(whole.time_s(i));
            for (Channel c :
                    List.of(
                            Channel.LATITUDE,
                            Channel.LONGITUDE,
                            Channel.HEIGHT,
                            Channel.VELOCITY_DOWN)) {
                rows.set(c, whole.value(c, i));
            }
        }
        Track torn = rows.build(whole.epoch(), whole.datum(), whole.report());
        assertEquals(1, Gaps.of(torn).size());
        assertEquals(List.of(), MotionLimits.hints(torn));
    }
}
