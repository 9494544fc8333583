package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.vector.Vec3;

class WholeSecondsTest {
    private static final double CUT_S = 1 / Math.sqrt(12);

    /** Places a second apart, each as late as told, with noise. */
    private static double jitter_s(double cut_s, double noise_m) {
        Random random = new Random(8);
        int n = 400;
        double[] time_s = new double[n];
        double[][] position_m = new double[3][n];
        for (int i = 0; i < n; i++) {
            time_s[i] = i;
            Vec3 at = SmootherTest.place(i + cut_s * random.nextDouble());
            position_m[0][i] = at.x() + noise_m * random.nextGaussian();
            position_m[1][i] = at.y() + noise_m * random.nextGaussian();
        }
        return WholeSeconds.jitter_s(time_s, position_m);
    }

    @Test
    void timesCutAnyhowAreKnownToThatOfAWholeSecond() {
        assertEquals(CUT_S, jitter_s(1, 0.5), 0.02);
    }

    @Test
    void fixesOnTheSecondAreKnownToWhatTheirNoiseLeavesOpen() {
        assertEquals(0.5 / 40, jitter_s(0, 0.5), 0.003);
    }

    @Test
    void aShortOrSlowLogTellsNothing() {
        assertEquals(CUT_S, WholeSeconds.jitter_s(new double[10], new double[3][10]));
    }

    /** A plain log at one second, its times cut or not. */
    private static SmoothedTrajectory smoothed(double cut_s) throws Exception {
        Random random = new Random(5);
        LogFixture log = new LogFixture().format("igc");
        for (int i = 0; i < 300; i++) {
            Vec3 noise =
                    new Vec3(
                            0.5 * random.nextGaussian(),
                            0.5 * random.nextGaussian(),
                            0.5 * random.nextGaussian());
            log.fix(i, SmootherTest.place(i + cut_s * (random.nextDouble() - 0.5)).plus(noise));
        }
        return Smoother.smooth(
                log.build(), LogFixture.FRAME, SmootherSettings.DEFAULT, JerkProfile.constant(1));
    }

    private static double normalisedVelocity(SmoothedTrajectory track) {
        double sum = 0;
        int n = 0;
        for (double t = 20; t < 280; t += 0.7, n++) {
            State s = track.at(t);
            Vec3 off = s.velocity_mps().minus(SmootherTest.velocity(t));
            sum += Math.pow(off.x() / s.velocitySigma_mps().x(), 2) / 2;
            sum += Math.pow(off.y() / s.velocitySigma_mps().y(), 2) / 2;
        }
        return sum / n;
    }

    @Test
    void velocitiesOfEitherHaveSigmasOfTheirOwnSize() throws Exception {
        for (double cut_s : new double[] {0, 1}) {
            double nees = normalisedVelocity(smoothed(cut_s));
            assertTrue(nees > 0.3 && nees < 1.6, "cut by up to " + cut_s + " s: " + nees);
        }
    }

    @Test
    void unevenTimesAreNoOutliers() throws Exception {
        int rejected = smoothed(1).rejected().size();
        assertTrue(rejected <= 3, rejected + " of 300 fixes were refused");
    }
}
