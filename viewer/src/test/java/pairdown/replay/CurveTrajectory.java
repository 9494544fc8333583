package pairdown.replay;

import java.util.List;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/** A trajectory in closed form; velocities by differences of a hundredth of a second. */
record CurveTrajectory(Curve curve, Span span, List<Span> gaps) implements Trajectory {
    /** A place by time. */
    interface Curve {
        Vec3 at(double t_s);
    }

    private static final double H_S = 0.01;

    @Override
    public double start_s() {
        return span.start_s();
    }

    @Override
    public double end_s() {
        return span.end_s();
    }

    private Vec3 velocity(double t) {
        return curve.at(t + H_S).minus(curve.at(t - H_S)).times(0.5 / H_S);
    }

    @Override
    public State at(double t) {
        Vec3 sigma = new Vec3(0.8, 0.8, 1.3);
        return new State(
                t,
                curve.at(t),
                velocity(t),
                velocity(t + H_S).minus(velocity(t - H_S)).times(0.5 / H_S),
                sigma,
                sigma.times(0.2),
                sigma,
                new Vec3(0.1, 0.1, 0.18),
                inGap(t));
    }

    @Override
    public void read(double t, double[] into) {
        if (!covers(t)) {
            throw new IllegalArgumentException(t + " s is outside " + span);
        }
        Vec3 p = curve.at(t);
        Vec3 v = velocity(t);
        into[0] = p.x();
        into[1] = p.y();
        into[2] = p.z();
        into[3] = v.x();
        into[4] = v.y();
        into[5] = v.z();
        into[6] = 0;
        into[7] = 0;
        into[8] = 0;
    }

    @Override
    public int fixCount() {
        return 0;
    }

    @Override
    public double fixTime_s(int i) {
        throw new IndexOutOfBoundsException(i);
    }
}
