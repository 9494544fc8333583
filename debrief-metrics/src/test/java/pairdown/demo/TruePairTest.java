package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import pairdown.atmosphere.Atmosphere;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Role;
import pairdown.demo.truth.TrueAir;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.time.Span;
import pairdown.vector.Vec3;

class TruePairTest {
    private static final LeverArm SLOT = new LeverArm(0, -7, 0);
    private static final double END_S = 120;

    private static Truth truth(DoubleFunction<Vec3> lead_m, DoubleFunction<Vec3> flyer_m) {
        return new Truth(
                Instant.parse("2031-05-14T15:00:00Z"),
                LocalFrame.at(Geodetic.ofDegrees(-30, 127, 0)),
                new TrueAir(Atmosphere.STANDARD, -19, h -> Vec3.ZERO),
                List.of(
                        body("lead", Role.LEAD, lead_m, OptionalDouble.empty()),
                        body("blue", Role.FLYER, flyer_m, OptionalDouble.of(10))),
                List.of(),
                List.of(),
                List.of());
    }

    private static TrueBody body(
            String id, Role role, DoubleFunction<Vec3> place_m, OptionalDouble exit_s) {
        int n = (int) (END_S / 0.02) + 1;
        Vec3[] p = new Vec3[n];
        Vec3[] v = new Vec3[n];
        for (int i = 0; i < n; i++) {
            p[i] = place_m.apply(i * 0.02);
            v[i] = place_m.apply(i * 0.02 + 1e-3).minus(place_m.apply(i * 0.02 - 1e-3)).times(500);
        }
        TrueMotion motion = new TrueMotion(0, 0.02, p, v);
        return new TrueBody(id, role, motion, Map.of(), 90, exit_s, OptionalDouble.empty());
    }

    private static Vec3 straight_m(double t) {
        return new Vec3(0, 34 * t, 3000 - 17.8 * t);
    }

    @Test
    void aFlyByIsClosestWhereGeometrySaysAndNeverMatched() {
        // Passing 20 m to the left at 5 m/s, abeam at 60 s.
        TruePair pair =
                new TruePair(
                        truth(
                                TruePairTest::straight_m,
                                t -> straight_m(t).plus(new Vec3(-20, 5 * (t - 60), 0))),
                        "lead",
                        "blue",
                        SLOT);
        assertEquals(60, pair.closest_s(), 0.03);
        assertEquals(20, pair.separation_m(60), 1e-6);
        assertEquals(13, pair.gap_m(60), 1e-6);
        assertEquals(5 * 15 / Math.hypot(20, 15), pair.closure_mps(57), 1e-3);
        assertEquals(List.of(), pair.matched(1.5, 1.0));
        assertEquals(60, pair.leaving_s(1.5, 1.0), 0.03);
    }

    @Test
    void oneThatStaysForTwentySecondsIsMatchedForTwentySeconds() {
        // 3 m/s off, still from 40 to 60 s, off again.
        DoubleFunction<Vec3> come =
                t -> new Vec3(-60 + 3 * Math.min(0, t - 40) + 3 * Math.max(0, t - 60), 0, 0);
        TruePair pair =
                new TruePair(
                        truth(TruePairTest::straight_m, t -> straight_m(t).plus(come.apply(t))),
                        "lead",
                        "blue",
                        SLOT);
        List<Span> windows = pair.matched(1.5, 1.0);
        assertEquals(1, windows.size());
        assertEquals(40, windows.get(0).start_s(), 0.2);
        assertEquals(60, windows.get(0).end_s(), 0.4);
    }

    @Test
    void stationKeepingInATurnIsMatchedThoughTheVelocitiesDiffer() {
        // 3°/s with 100 m radius between them: velocities differ by 5.2 m/s.
        double w = Math.toRadians(3);
        DoubleFunction<Vec3> lead =
                t -> new Vec3(650 * Math.cos(w * t), -650 * Math.sin(w * t), 3000 - 17.8 * t);
        DoubleFunction<Vec3> flyer =
                t -> new Vec3(750 * Math.cos(w * t), -750 * Math.sin(w * t), 3000 - 17.8 * t);
        TruePair pair = new TruePair(truth(lead, flyer), "lead", "blue", SLOT);
        List<Span> windows = pair.matched(1.5, 1.0);
        assertEquals(1, windows.size());
        assertTrue(windows.get(0).duration_s() > 100, windows::toString);
    }

    @Test
    void theClosingLimitAtThirtyMetresIsThatOfTheTable() {
        // Check values for the defaults: 2.4 m/s at 10 m, 4.8 at 30, 9.4 at 100.
        for (double[] row : new double[][] {{10, 2.4}, {30, 4.8}, {100, 9.4}}) {
            DoubleFunction<Vec3> beside = t -> straight_m(t).plus(new Vec3(-7 - row[0], 0, 0));
            TruePair pair =
                    new TruePair(truth(TruePairTest::straight_m, beside), "lead", "blue", SLOT);
            assertEquals(row[1], pair.limit_mps(50, ClosureSettings.DEFAULT), 0.05);
        }
    }

    @Test
    void heightsAreAboveSeaLevel() {
        TruePair pair =
                new TruePair(
                        truth(TruePairTest::straight_m, TruePairTest::straight_m),
                        "lead",
                        "blue",
                        SLOT);
        assertEquals(3000 - 17.8 * 20 + 19, pair.msl_m(20), 0.1);
    }
}
