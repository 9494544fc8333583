package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.Stream;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import pairdown.vector.Vec3;

class PosteriorResponseTest {
    private static final ReceiverNoise NOISE = ModelStudy.NOISE;

    /** Covariances between instants are those of the dense problem with the instants put in. */
    @Test
    void errorsAtTwoInstantsGoTogetherAsInTheDenseSolution() {
        ModelFlight flight = new ModelFlight(12, 0.2, 5, NOISE, 3);
        SmoothedTrajectory track =
                Smoother.smooth(
                        new LogFixture().fix(0, Vec3.ZERO).build(),
                        LogFixture.FRAME,
                        flight.fixes(NOISE),
                        SmootherSettings.DEFAULT.withReceiver(NOISE).withoutTuning(),
                        JerkProfile.constant(5));
        assertEquals(0, track.rejected().size());
        double[] anchors = {4.9, 5.7, 7.1};
        double[] asked = {0.3, 4.1, 5.1, 6.3, 11.9};
        PosteriorResponse response = PosteriorResponse.of(track, anchors);
        double[] times =
                Stream.of(times(flight), anchors, asked)
                        .flatMapToDouble(Arrays::stream)
                        .sorted()
                        .distinct()
                        .toArray();
        RealMatrix dense = dense(flight, times).covariance();
        for (double t : asked) {
            int k = Arrays.binarySearch(times, t);
            for (int j = 0; j < anchors.length; j++) {
                int m = Arrays.binarySearch(times, anchors[j]);
                assertEquals(
                        dense.getEntry(4 * k, 4 * m),
                        response.covariance(t, 0, j, false),
                        1e-3,
                        "position at " + t + " with " + anchors[j]);
                assertEquals(
                        dense.getEntry(4 * k + 1, 4 * m),
                        response.covariance(t, 0, j, true),
                        1e-3,
                        "velocity at " + t + " with " + anchors[j]);
            }
        }
    }

    private static double[] times(ModelFlight flight) {
        double[] times = new double[flight.size];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * flight.dt;
        }
        return times;
    }

    private static DenseSmoother dense(ModelFlight flight, double[] times) {
        DenseSmoother dense = new DenseSmoother(times.length);
        double[] sigma = {
            ForwardPass.START_SIGMA_M,
            ForwardPass.START_SIGMA_MPS,
            ForwardPass.START_SIGMA_MPS2,
            NOISE.levelBias_m()
        };
        dense.prior(new double[4], sigma);
        double[] fixes = times(flight);
        for (int k = 0; k < times.length; k++) {
            if (k > 0) {
                double dt = times[k] - times[k - 1];
                dense.step(
                        k - 1,
                        DenseSmoother.transition(dt, NOISE.biasTime_s()),
                        DenseSmoother.processNoise(dt, 5, NOISE.levelBias_m(), NOISE.biasTime_s()));
            }
            if (Arrays.binarySearch(fixes, times[k]) >= 0) {
                dense.measure(k, new double[] {1, 0, 0, 1}, 0, 0.04);
                dense.measure(k, new double[] {0, 1, 0, 0}, 0, 0.01);
            }
        }
        return dense;
    }
}
