package pairdown.motion;

import java.util.Locale;
import pairdown.vector.Vec3;

/**
 * Flights drawn from the model, against the posterior Cramér–Rao bound. Run as a program for many
 * seeds; a few run in the build.
 *
 * <p>The bound at an epoch is the diagonal of the inverse information matrix with the true noise
 * ({@link DenseSmoother}, which agrees with {@link AxisTrack}'s covariance in {@code
 * AxisSmootherTest}); mean squares over all epochs are compared.
 */
public final class ModelStudy {
    private static final double SECONDS = 600;
    private static final double DT = 0.2;
    private static final double Q = 5;
    private static final int STRIDE = 5;
    static final ReceiverNoise NOISE =
            new ReceiverNoise(0.2, 0.35, 0.8, 1.35, 45, 0.10, 0.18, 0, 0);

    private double positionError2;
    private double positionBound2;
    private double velocityError2;
    private double velocityBound2;
    private double normalised;
    private long count;

    private ModelStudy() {}

    /** Seeds {@code from} to {@code to} (exclusive), with the noise factors found from each log. */
    static ModelStudy of(int from, int to) {
        ModelStudy study = new ModelStudy();
        for (int seed = from; seed < to; seed++) {
            study.add(new ModelFlight(SECONDS, DT, Q, NOISE, seed));
        }
        return study;
    }

    private void add(ModelFlight flight) {
        SmootherSettings settings = SmootherSettings.DEFAULT.withReceiver(NOISE);
        SmoothedTrajectory found = smooth(flight, settings);
        SmoothedTrajectory knowing = smooth(flight, settings.withoutTuning());
        double[] values = new double[Trajectory.VALUES];
        for (int i = 0; i < flight.size; i += STRIDE) {
            double t = i * flight.dt;
            found.read(t, values);
            for (int axis = 0; axis < 3; axis++) {
                AxisCovariance bound = knowing.covariance(axis, t);
                AxisCovariance c = found.covariance(axis, t);
                double dp = values[axis] - flight.truth[axis][i][0];
                double dv = values[axis + 3] - flight.truth[axis][i][1];
                positionError2 += dp * dp;
                positionBound2 += bound.position_m2();
                velocityError2 += dv * dv;
                velocityBound2 += bound.velocity_m2ps2();
                normalised += nees(c, dp, dv);
                count++;
            }
        }
    }

    private static SmoothedTrajectory smooth(ModelFlight flight, SmootherSettings settings) {
        return Smoother.smooth(
                new LogFixture().fix(0, Vec3.ZERO).build(),
                LogFixture.FRAME,
                flight.fixes(NOISE),
                settings,
                JerkProfile.constant(Q));
    }

    /** Normalised error squared of position and velocity: two dimensions. */
    static double nees(AxisCovariance c, double dp, double dv) {
        double det =
                c.position_m2() * c.velocity_m2ps2()
                        - c.positionVelocity_m2ps() * c.positionVelocity_m2ps();
        return (c.velocity_m2ps2() * dp * dp
                        - 2 * c.positionVelocity_m2ps() * dp * dv
                        + c.position_m2() * dv * dv)
                / det;
    }

    double positionOverBound() {
        return Math.sqrt(positionError2 / positionBound2);
    }

    double velocityOverBound() {
        return Math.sqrt(velocityError2 / velocityBound2);
    }

    /** Mean normalised error squared over its dimension. */
    double neesPerDimension() {
        return normalised / count / 2;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "position RMS / bound %.3f, velocity RMS / bound %.3f, NEES / dimension %.3f",
                positionOverBound(),
                velocityOverBound(),
                neesPerDimension());
    }

    /** {@code [seeds]}: 60 unless said. */
    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 60;
        System.out.println(seeds + " flights of " + SECONDS + " s: " + of(1, 1 + seeds));
    }
}
