package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/** Drawn errors against those the smoother makes on flights drawn from its own model. */
class VelocityErrorDrawTest {
    private static final double SECONDS = 300;
    private static final double DT = 0.2;
    private static final double Q = 5;
    private static final int FLIGHTS = 6;

    @Test
    void withVelocitiesErrorsAreAsLargeAndLastAsLongAsTheSmoothersOwn() {
        agree(true);
    }

    @Test
    void withPositionsAloneErrorsAreAsLargeAndLastAsLongAsTheSmoothersOwn() {
        agree(false);
    }

    private static void agree(boolean velocities) {
        double[] own = new double[2];
        double[] drawn = new double[2];
        for (int seed = 1; seed <= FLIGHTS; seed++) {
            ModelFlight flight = new ModelFlight(SECONDS, DT, Q, ModelStudy.NOISE, seed);
            SmoothedTrajectory smoothed = smoothed(flight, velocities);
            VelocityErrorDraw draw =
                    new VelocityErrorDraw(smoothed, new Span(0, SECONDS), new Random(seed));
            add(own, i -> smoothed.at(i * DT).velocity_mps().minus(truth(flight, i)));
            add(drawn, i -> draw.at(i * DT));
        }
        assertEquals(own[0], drawn[0], 0.1 * own[0], "size");
        assertEquals(own[1], drawn[1], 0.15 * own[1], "size of means over a second");
    }

    private static Vec3 truth(ModelFlight flight, int i) {
        return new Vec3(flight.truth[0][i][1], flight.truth[1][i][1], flight.truth[2][i][1]);
    }

    /** Mean squares of the error and of its mean over a second, away from the ends. */
    private static void add(double[] squares, IntFunction<Vec3> error_mps) {
        for (int i = 50; i < SECONDS / DT - 50; i++) {
            Vec3 sum = Vec3.ZERO;
            for (int k = -2; k <= 2; k++) {
                sum = sum.plus(error_mps.apply(i + k));
            }
            squares[0] += error_mps.apply(i).normSquared();
            squares[1] += sum.times(0.2).normSquared();
        }
    }

    private static SmoothedTrajectory smoothed(ModelFlight flight, boolean velocities) {
        Fixes fixes = flight.fixes(ModelStudy.NOISE);
        if (!velocities) {
            for (float[] variances : fixes.velocityVariance_m2ps2) {
                Arrays.fill(variances, Float.POSITIVE_INFINITY);
            }
            for (double[] values : fixes.velocity_mps) {
                Arrays.fill(values, Double.NaN);
            }
        }
        return Smoother.smooth(
                new LogFixture().fix(0, Vec3.ZERO).build(),
                LogFixture.FRAME,
                fixes,
                SmootherSettings.DEFAULT.withReceiver(ModelStudy.NOISE).withoutTuning(),
                JerkProfile.constant(Q));
    }
}
