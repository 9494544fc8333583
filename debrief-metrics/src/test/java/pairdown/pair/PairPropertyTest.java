package pairdown.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.DoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import pairdown.air.Wind;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.time.Span;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * What must not change: with who is called the lead, with the clock's zero, with the world turned.
 */
class PairPropertyTest {
    private static final double END_S = 30;
    private static final String SEED = "20310514";

    private static Vec3 lead_m(double t_s) {
        return new Vec3(3 * t_s, 33 * t_s, 2500 - 17.8 * t_s);
    }

    private static Vec3 flyer_m(double t_s, double side_m, double swing_m) {
        return lead_m(t_s)
                .plus(
                        new Vec3(
                                side_m + swing_m * Math.sin(0.3 * t_s),
                                -60 + 1.5 * t_s,
                                20 - 0.4 * t_s));
    }

    private static PairInput input(Trajectory lead, Trajectory flyer) {
        PairInput in = Scene.input(lead, flyer);
        return Scene.with(in, Wind.none(List.of()), in.slotArm(), in.matched());
    }

    @Property(tries = 20, seed = SEED)
    void swappingTheTwoKeepsSeparationAndClosure(
            @ForAll @DoubleRange(min = -50, max = 50) double side_m,
            @ForAll @DoubleRange(min = 0, max = 8) double swing_m) {
        KnownMotion a = KnownMotion.of(END_S, 5, PairPropertyTest::lead_m);
        KnownMotion b = KnownMotion.of(END_S, 5, t_s -> flyer_m(t_s, side_m, swing_m));
        RelativeMotion ab = RelativeMotion.of(input(a, b), PairSettings.DEFAULT);
        RelativeMotion ba = RelativeMotion.of(input(b, a), PairSettings.DEFAULT);
        for (double t_s = 1; t_s < END_S; t_s += 2.3) {
            RelativeState x = ab.at(t_s);
            RelativeState y = ba.at(t_s);
            assertEquals(x.separation_m(), y.separation_m(), 1e-9);
            assertEquals(x.separationSigma_m(), y.separationSigma_m(), 1e-6);
            assertEquals(x.closureRate_mps(), y.closureRate_mps(), 1e-9);
        }
    }

    @Property(tries = 20, seed = SEED)
    void aNewZeroOfTheClockShiftsInstantsAndNothingElse(
            @ForAll @DoubleRange(min = -9000, max = 90000) double shift_s,
            @ForAll @DoubleRange(min = -50, max = 50) double side_m) {
        KnownMotion a = KnownMotion.of(END_S, 5, PairPropertyTest::lead_m);
        KnownMotion b = KnownMotion.of(END_S, 5, t_s -> flyer_m(t_s, side_m, 5));
        PairDebrief now = PairAnalysis.analyse(input(a, b));
        PairDebrief later =
                PairAnalysis.analyse(input(new Shifted(a, shift_s), new Shifted(b, shift_s)));
        Approach x = now.closest().orElseThrow();
        Approach y = later.closest().orElseThrow();
        assertEquals(x.time_s() + shift_s, y.time_s(), 2e-3);
        assertEquals(x.separation_m().value(), y.separation_m().value(), 1e-4);
        assertEquals(now.matched().total_s(), later.matched().total_s(), 1e-4);
        assertEquals(
                now.leastGap().orElseThrow().gap_m().orElseThrow().value(),
                later.leastGap().orElseThrow().gap_m().orElseThrow().value(),
                1e-4);
    }

    @Property(tries = 20, seed = SEED)
    void aTurnedWorldChangesNoFigure(
            @ForAll @DoubleRange(min = 0, max = 360) double turn_deg,
            @ForAll @DoubleRange(min = -50, max = 50) double side_m) {
        DoubleFunction<Vec3> a = PairPropertyTest::lead_m;
        DoubleFunction<Vec3> b = t_s -> flyer_m(t_s, side_m, 5);
        Mat3 turn = about(turn_deg);
        PairDebrief straight = PairAnalysis.analyse(input(of(a), of(b)));
        PairDebrief turned =
                PairAnalysis.analyse(
                        input(
                                of(t_s -> turn.times(a.apply(t_s))),
                                of(t_s -> turn.times(b.apply(t_s)))));
        Approach x = straight.closest().orElseThrow();
        Approach y = turned.closest().orElseThrow();
        // The ellipsoid is no sphere: a millimetre a kilometre from the frame's origin.
        assertEquals(x.separation_m().value(), y.separation_m().value(), 1e-3);
        assertEquals(x.ahead_m(), y.ahead_m(), 2e-2);
        assertEquals(x.right_m(), y.right_m(), 2e-2);
        assertEquals(x.above_m(), y.above_m(), 2e-2);
        assertEquals(straight.matched().total_s(), turned.matched().total_s(), 1e-2);
    }

    private static KnownMotion of(DoubleFunction<Vec3> place_m) {
        return KnownMotion.of(END_S, 5, place_m);
    }

    private static Mat3 about(double turn_deg) {
        double c = Math.cos(Math.toRadians(turn_deg));
        double s = Math.sin(Math.toRadians(turn_deg));
        return Mat3.ofRows(new Vec3(c, -s, 0), new Vec3(s, c, 0), new Vec3(0, 0, 1));
    }

    /** A trajectory some time later. */
    private record Shifted(Trajectory of, double by_s) implements Trajectory {
        @Override
        public double start_s() {
            return of.start_s() + by_s;
        }

        @Override
        public double end_s() {
            return of.end_s() + by_s;
        }

        private double then_s(double t_s) {
            return Math.max(of.start_s(), Math.min(of.end_s(), t_s - by_s));
        }

        @Override
        public State at(double t_s) {
            return of.at(then_s(t_s));
        }

        @Override
        public void read(double t_s, double[] into) {
            of.read(then_s(t_s), into);
        }

        @Override
        public List<Span> gaps() {
            return List.of();
        }

        @Override
        public int fixCount() {
            return of.fixCount();
        }

        @Override
        public double fixTime_s(int i) {
            return of.fixTime_s(i) + by_s;
        }
    }
}
