package pairdown.replay;

import java.util.Arrays;
import java.util.List;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * A path kept as a log's fixes, read as the smoother's is: a search for the fixes on either side
 * and a polynomial between them. It costs what a real one costs to read and to hold.
 */
final class LoggedPath implements Trajectory {
    private static final double H_S = 0.01;

    private final double[] time_s;
    private final double[][] place_m = new double[3][];
    private final double[][] velocity_mps = new double[3][];

    /** A place by time. */
    interface Place {
        Vec3 at(double t_s);
    }

    private LoggedPath(double[] time_s) {
        this.time_s = time_s;
        for (int axis = 0; axis < 3; axis++) {
            place_m[axis] = new double[time_s.length];
            velocity_mps[axis] = new double[time_s.length];
        }
    }

    static LoggedPath of(double end_s, double rate_Hz, Place place) {
        double[] time_s = new double[(int) (end_s * rate_Hz) + 1];
        LoggedPath path = new LoggedPath(time_s);
        for (int i = 0; i < time_s.length; i++) {
            time_s[i] = i / rate_Hz;
            Vec3 p = place.at(time_s[i]);
            Vec3 v = place.at(time_s[i] + H_S).minus(place.at(time_s[i] - H_S)).times(0.5 / H_S);
            path.set(i, p, path.place_m);
            path.set(i, v, path.velocity_mps);
        }
        return path;
    }

    private void set(int i, Vec3 of, double[][] into) {
        into[0][i] = of.x();
        into[1][i] = of.y();
        into[2][i] = of.z();
    }

    @Override
    public double start_s() {
        return time_s[0];
    }

    @Override
    public double end_s() {
        return time_s[time_s.length - 1];
    }

    @Override
    public State at(double t_s) {
        double[] own = new double[VALUES];
        read(t_s, own);
        Vec3 sigma = new Vec3(0.8, 0.8, 1.3);
        return new State(
                t_s,
                new Vec3(own[0], own[1], own[2]),
                new Vec3(own[3], own[4], own[5]),
                new Vec3(own[6], own[7], own[8]),
                sigma,
                sigma.times(0.2),
                sigma,
                new Vec3(0.1, 0.1, 0.18),
                false);
    }

    @Override
    public void read(double t_s, double[] into) {
        if (!covers(t_s)) {
            throw new IllegalArgumentException(t_s + " s is outside the path");
        }
        int found = Arrays.binarySearch(time_s, t_s);
        int i = Math.min(time_s.length - 2, found >= 0 ? found : -found - 2);
        double step = time_s[i + 1] - time_s[i];
        double u = (t_s - time_s[i]) / step;
        for (int axis = 0; axis < 3; axis++) {
            double p = place_m[axis][i];
            double rise = place_m[axis][i + 1] - p;
            double m0 = velocity_mps[axis][i] * step;
            double m1 = velocity_mps[axis][i + 1] * step;
            double c = 3 * rise - 2 * m0 - m1;
            double d = m0 + m1 - 2 * rise;
            into[axis] = p + u * (m0 + u * (c + u * d));
            into[3 + axis] = (m0 + u * (2 * c + 3 * u * d)) / step;
            into[6 + axis] = (2 * c + 6 * u * d) / (step * step);
        }
    }

    @Override
    public List<Span> gaps() {
        return List.of();
    }

    @Override
    public int fixCount() {
        return time_s.length;
    }

    @Override
    public double fixTime_s(int i) {
        return time_s[i];
    }
}
