package pairdown.motion;

import java.util.Random;
import pairdown.vector.Vec3;

/**
 * A jump that is not the smoother's model: an aircraft's climbing turns, exit, a flyer chasing a
 * wandering aim, opening, and turns under a canopy; seen by a receiver with a common, an own and a
 * white error. Truth at 100 Hz.
 */
public final class ScriptedFlight {
    /** Seconds: climb, flight, canopy. */
    public static final double EXIT_S = 240;

    public static final double OPENING_S = 330;
    public static final double END_S = 450;
    private static final double STEP_S = 0.01;

    private final double[][] truth;
    private final Random random;

    public ScriptedFlight(long seed) {
        random = new Random(seed);
        truth = new double[(int) Math.round(END_S / STEP_S) + 1][];
        fly();
    }

    private void fly() {
        double[] p = {0, 0, 500};
        double[] v = {45, 0, 5};
        double[] a = new double[3];
        double[] wander = new double[3];
        double phase = 2 * Math.PI * random.nextDouble();
        for (int i = 0; i < truth.length; i++) {
            double t = i * STEP_S;
            double[] aim = aim(t, phase);
            for (int k = 0; k < 3; k++) {
                double keep = Math.exp(-STEP_S / wanderTime_s(t));
                wander[k] =
                        keep * wander[k]
                                + wanderSize(t)
                                        * Math.sqrt(1 - keep * keep)
                                        * random.nextGaussian();
                double wanted = (aim[k] + wander[k] - v[k]) / reaction_s(t);
                wanted = Math.max(-strength(t), Math.min(strength(t), wanted));
                a[k] += (wanted - a[k]) * STEP_S / 0.35;
                v[k] += a[k] * STEP_S;
                p[k] += v[k] * STEP_S + 0.5 * a[k] * STEP_S * STEP_S;
            }
            truth[i] = new double[] {p[0], p[1], p[2], v[0], v[1], v[2]};
        }
    }

    private static double[] aim(double t, double phase) {
        if (t < EXIT_S) {
            double h = phase + Math.toRadians(4) * t;
            return new double[] {45 * Math.sin(h) + 6, 45 * Math.cos(h) - 2, 5};
        }
        if (t < OPENING_S) {
            double h = phase + 0.3 * Math.sin(0.05 * t);
            return new double[] {34 * Math.sin(h) + 6, 34 * Math.cos(h) - 2, -18};
        }
        double h = phase + Math.toRadians(7) * (t - OPENING_S);
        return new double[] {11 * Math.sin(h) + 4, 11 * Math.cos(h), -5};
    }

    private static double wanderSize(double t) {
        return t < EXIT_S ? 0.5 : 0.9;
    }

    private static double wanderTime_s(double t) {
        return t < EXIT_S ? 5 : 2;
    }

    private static double reaction_s(double t) {
        return t < EXIT_S ? 2 : 1.2;
    }

    private static double strength(double t) {
        if (Math.abs(t - EXIT_S - 3) < 4) {
            return 9;
        }
        return t >= OPENING_S && t < OPENING_S + 4 ? 20 : 5;
    }

    public Vec3 position(double t) {
        double[] x = at(t);
        return new Vec3(x[0], x[1], x[2]);
    }

    public Vec3 velocity(double t) {
        double[] x = at(t);
        return new Vec3(x[3], x[4], x[5]);
    }

    private double[] at(double t) {
        return truth[(int) Math.round(t / STEP_S)];
    }

    /**
     * What a consumer receiver says of it.
     *
     * @param rate_Hz a divisor of 100
     * @param outlierShare of positions thrown by 10 to 60 m
     * @param holes whether five seconds are lost at 100, 200, 280 and 400 s
     * @param withVelocity whether velocities are logged
     */
    LogFixture log(double rate_Hz, double outlierShare, boolean holes, boolean withVelocity) {
        LogFixture log = new LogFixture();
        double dt = 1 / rate_Hz;
        Vec3 common = noise(1.0, 1.8);
        Vec3 own = noise(0.8, 1.35);
        for (int i = 0; i * dt <= END_S + 1e-9; i++) {
            double t = i * dt;
            common = wandered(common, dt, 900, 1.0, 1.8);
            own = wandered(own, dt, 45, 0.8, 1.35);
            Vec3 z = position(t).plus(common).plus(own).plus(noise(0.2, 0.35));
            Vec3 zv = velocity(t).plus(noise(0.10, 0.18));
            if (random.nextDouble() < outlierShare) {
                z = z.plus(noise(1, 1).unit().times(10 + 50 * random.nextDouble()));
            }
            if (!(holes && inHole(t))) {
                log.fix(t, z);
                if (withVelocity) {
                    log.velocity(zv);
                }
            }
        }
        return log;
    }

    /** Whether the receiver is lost. */
    public static boolean inHole(double t) {
        for (double from : new double[] {100, 200, 280, 400}) {
            if (t > from && t < from + 5) {
                return true;
            }
        }
        return false;
    }

    private Vec3 wandered(Vec3 x, double dt, double tau, double level, double vertical) {
        double keep = Math.exp(-dt / tau);
        return x.times(keep).plus(noise(level, vertical).times(Math.sqrt(1 - keep * keep)));
    }

    private Vec3 noise(double level, double vertical) {
        return new Vec3(
                level * random.nextGaussian(),
                level * random.nextGaussian(),
                vertical * random.nextGaussian());
    }
}
