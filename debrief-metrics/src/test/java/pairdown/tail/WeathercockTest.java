package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * An aircraft that turns back into the air, as all do: q̇ = 1.5·η·δ − 2·q − 4·α and α̇ = q − α/0.7
 * s, in degrees and seconds, flown by a hand that never answers a soft tail. Short-period stiffness
 * and lift lag of that size are usual for light turboprops (common practice, no published source).
 */
class WeathercockTest {
    private static final int SEEDS = 10;
    private static final double STEP_S = 0.1;
    private static final int FINE = 10;
    private static final double REVERSE_S = 200;
    private static final double LOST_S = 260;
    private static final double BACK_S = 265;
    private static final double END_S = 320;
    private static final double EFFECT_DPS2 = 1.5;
    private static final double STANDING = 0.5;
    private static final double LOST = 0.15;
    private static final double SPEED_MPS = 40;
    private static final double LIFT_S = 0.7;
    private static final double STICK_PCT = 5;

    /** Of the angle of attack: 0.7 m/s. */
    private static final double UPDRAUGHT_DEG = 1;

    private final Map<Channel, List<Double>> rows = new EnumMap<>(Channel.class);

    private void log(Channel channel, double value) {
        rows.computeIfAbsent(channel, c -> new ArrayList<>()).add(value);
    }

    private static double effectiveness(double t_s) {
        if (t_s < REVERSE_S) {
            return 1;
        }
        return t_s >= LOST_S && t_s < BACK_S ? LOST : STANDING;
    }

    private void fly(long seed) {
        fly(seed, 1);
    }

    /**
     * @param hand how much the stick moves in reverse, of what it moves before
     */
    private void fly(long seed, double hand) {
        Random random = new Random(seed);
        double keep = Math.exp(-STEP_S / 0.35);
        double stick = 0;
        double gust = 0;
        double q = 0;
        double alpha = 0;
        for (int k = 0; k * STEP_S < END_S; k++) {
            double t_s = k * STEP_S;
            double before = stick;
            double moves = t_s < REVERSE_S ? STICK_PCT : STICK_PCT * hand;
            stick = keep * stick + moves * Math.sqrt(1 - keep * keep) * random.nextGaussian();
            gust = keep * gust + UPDRAUGHT_DEG * Math.sqrt(1 - keep * keep) * random.nextGaussian();
            for (int j = 0; j < FINE; j++) {
                double held = before + (stick - before) * j / FINE;
                double turn = EFFECT_DPS2 * effectiveness(t_s) * held - 2 * q - 4 * (alpha + gust);
                q += turn * STEP_S / FINE;
                alpha += (q - alpha / LIFT_S) * STEP_S / FINE;
            }
            log(Channel.ELEVATOR, stick + 0.5 * random.nextGaussian());
            log(Channel.PITCH_RATE, q + 0.2 * random.nextGaussian());
            double lift = SPEED_MPS / 9.80665 * Math.toRadians(alpha + gust) / LIFT_S;
            log(Channel.NORMAL_LOAD, 0.95 + lift + 0.01 * random.nextGaussian());
            log(
                    Channel.POWER_LEVER,
                    t_s < REVERSE_S ? 40 : t_s >= LOST_S && t_s < BACK_S ? -80 : -60);
            log(Channel.INDICATED_AIRSPEED, SPEED_MPS);
        }
    }

    private TailControl analyse() {
        Map<Channel, Series> series = new EnumMap<>(Channel.class);
        rows.forEach((channel, values) -> series.put(channel, series(values)));
        return TailAnalysis.analyse(
                TailInput.of("lead", series, List.of(new Span(REVERSE_S - 5, END_S - STEP_S))));
    }

    private static Series series(List<Double> values) {
        double[] time_s = new double[values.size()];
        float[] value = new float[values.size()];
        for (int i = 0; i < value.length; i++) {
            time_s[i] = i * STEP_S;
            value[i] = values.get(i).floatValue();
        }
        return Series.of(time_s, value, false);
    }

    @Test
    void aHandThatHardlyMovesLeavesDivesUnjudgedAndThatIsSaid() {
        fly(1, 0.05);
        String said = String.join(" | ", analyse().notes());
        assertTrue(said.contains("moved too little to judge"), said);
        rows.clear();
        fly(1);
        assertFalse(String.join(" | ", analyse().notes()).contains("moved too little"));
    }

    @Test
    void aSoftTailThatNobodyFightsIsFound() {
        int found = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            rows.clear();
            fly(seed);
            TailControl tail = analyse();
            assertEquals(STANDING, tail.standingEffectiveness().orElseThrow(), 0.08);
            assertTrue(tail.episodes().size() <= 1, "seed " + seed);
            for (Episode e : tail.episodes()) {
                found++;
                assertEquals(LOST_S, e.span().start_s(), 3 * e.startSigma_s());
                assertEquals(BACK_S, e.span().end_s(), 1.5);
                assertTrue(e.precededBy().isPresent());
            }
        }
        assertTrue(found >= SEEDS - 1, found + " of " + SEEDS);
    }
}
