package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/** A trajectory that follows a formula, fixed at a rate, with the sigmas it is told. */
public final class KnownMotion implements Trajectory {
    private static final double H_S = 1e-3;

    private final DoubleFunction<Vec3> place_m;
    private final List<Double> fixes_s = new ArrayList<>();
    private double positionSigma_m = 0.5;
    private double velocitySigma_mps = 0.05;

    private KnownMotion(DoubleFunction<Vec3> place_m) {
        this.place_m = place_m;
    }

    /** East, north, up by time, from 0 to {@code end_s}. */
    public static KnownMotion of(double end_s, double rate_Hz, DoubleFunction<Vec3> place_m) {
        KnownMotion m = new KnownMotion(place_m);
        for (int i = 0; i <= Math.round(end_s * rate_Hz); i++) {
            m.fixes_s.add(i / rate_Hz);
        }
        return m;
    }

    /** Straight from a place at a velocity. */
    public static KnownMotion straight(double end_s, Vec3 from_m, Vec3 velocity_mps) {
        return of(end_s, 10, t_s -> from_m.plus(velocity_mps.times(t_s)));
    }

    public KnownMotion sigmas(double position_m, double velocity_mps) {
        this.positionSigma_m = position_m;
        this.velocitySigma_mps = velocity_mps;
        return this;
    }

    public KnownMotion without(double from_s, double to_s) {
        fixes_s.removeIf(t_s -> t_s > from_s && t_s < to_s);
        return this;
    }

    @Override
    public double start_s() {
        return fixes_s.get(0);
    }

    @Override
    public double end_s() {
        return fixes_s.get(fixes_s.size() - 1);
    }

    private Vec3 velocity_mps(double t_s) {
        return place_m.apply(t_s + H_S).minus(place_m.apply(t_s - H_S)).times(1 / (2 * H_S));
    }

    @Override
    public State at(double t_s) {
        Vec3 acceleration_mps2 =
                velocity_mps(t_s + H_S).minus(velocity_mps(t_s - H_S)).times(1 / (2 * H_S));
        Vec3 one = new Vec3(1, 1, 1);
        return new State(
                t_s,
                place_m.apply(t_s),
                velocity_mps(t_s),
                acceleration_mps2,
                one.times(positionSigma_m),
                Vec3.ZERO,
                one.times(positionSigma_m),
                one.times(velocitySigma_mps),
                inGap(t_s));
    }

    @Override
    public void read(double t_s, double[] into) {
        State s = at(t_s);
        Vec3[] parts = {s.position_m(), s.velocity_mps(), s.acceleration_mps2()};
        for (int i = 0; i < 3; i++) {
            into[3 * i] = parts[i].x();
            into[3 * i + 1] = parts[i].y();
            into[3 * i + 2] = parts[i].z();
        }
    }

    @Override
    public List<Span> gaps() {
        List<Span> gaps = new ArrayList<>();
        for (int i = 1; i < fixes_s.size(); i++) {
            if (fixes_s.get(i) - fixes_s.get(i - 1) > 2) {
                gaps.add(new Span(fixes_s.get(i - 1), fixes_s.get(i)));
            }
        }
        return gaps;
    }

    @Override
    public int fixCount() {
        return fixes_s.size();
    }

    @Override
    public double fixTime_s(int i) {
        return fixes_s.get(i);
    }
}
