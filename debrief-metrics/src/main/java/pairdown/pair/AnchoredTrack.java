package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.vector.Vec3;

/**
 * A relative track whose slow error is corrected around instants at which the offset is known.
 *
 * <p>The slow relative error is taken as a first-order Gauss–Markov process per axis, with the sigma
 * that the raw track states and a correlation time τ. What the raw track shows at an anchor less the
 * true offset is an observation of it; filtered and smoothed over all anchors and carried to any
 * instant by the model, it is taken off. Far from every anchor the correction fades and the sigma is
 * the raw one again.
 */
final class AnchoredTrack implements RelativeTrack {
    /** Correlation time of a receiver's slow error (s): the smoother's own default. */
    private static final double TAU_S = 45;

    /** Observations are taken this far apart within an anchor's stretch (s). */
    private static final double STEP_S = 0.5;

    /** A correction counts while its sigma is under this share of the raw one. */
    private static final double COUNTS = 0.8;

    private final RelativeTrack raw;
    private final List<SlowError> axes;

    private AnchoredTrack(RelativeTrack raw, List<SlowError> axes) {
        this.raw = raw;
        this.axes = axes;
    }

    static RelativeTrack of(RelativeMotion motion, List<Anchor> anchors) {
        List<Seen> seen = new ArrayList<>();
        for (Anchor anchor : anchors) {
            seen.addAll(seen(motion, anchor));
        }
        if (seen.isEmpty()) {
            return motion.track();
        }
        List<SlowError> axes =
                List.of(
                        SlowError.of(seen.stream().map(s -> s.axis(0)).toList(), TAU_S),
                        SlowError.of(seen.stream().map(s -> s.axis(1)).toList(), TAU_S),
                        SlowError.of(seen.stream().map(s -> s.axis(2)).toList(), TAU_S));
        return new AnchoredTrack(motion.track(), axes);
    }

    /** Raw offset less true offset at an instant, east-north-up. */
    private record Seen(double time_s, Vec3 error_m, double variance_m2, Relative raw) {
        SlowError.Seen axis(int axis) {
            double shape_m = component(raw.shapeSigma_m(), axis);
            return new SlowError.Seen(
                    time_s,
                    component(error_m, axis),
                    variance_m2 + shape_m * shape_m,
                    component(raw.biasSigma_m(), axis));
        }
    }

    /**
     * The anchor's sigma is one error for the whole stretch, so each of n observations gets n times
     * its variance: together they weigh what the anchor weighs.
     */
    private static List<Seen> seen(RelativeMotion motion, Anchor anchor) {
        int n = 1 + (int) Math.floor(anchor.span().duration_s() / STEP_S);
        List<Seen> seen = new ArrayList<>();
        double first_s =
                (anchor.span().start_s() + anchor.span().end_s() - (n - 1) * STEP_S) / 2;
        for (int i = 0; i < n; i++) {
            double t_s = first_s + i * STEP_S;
            if (!motion.covers(t_s) || !motion.measured(t_s)) {
                continue;
            }
            RelativeMotion.Sample s = motion.sample(t_s);
            Optional<Vec3> true_m =
                    s.turning.map(a -> a.fromEnu().transposeTimes(anchor.offset_m()));
            true_m.ifPresent(
                    offset_m ->
                            seen.add(
                                    new Seen(
                                            t_s,
                                            s.relative.offset_m().minus(offset_m),
                                            n * anchor.sigma_m() * anchor.sigma_m(),
                                            s.relative)));
        }
        return seen;
    }

    @Override
    public double start_s() {
        return raw.start_s();
    }

    @Override
    public double end_s() {
        return raw.end_s();
    }

    @Override
    public Relative at(double t_s) {
        Relative r = raw.at(t_s);
        double[] error_m = new double[3];
        double[] sigma_m = new double[3];
        for (int i = 0; i < 3; i++) {
            SlowError.At e = axes.get(i).at(t_s, component(r.biasSigma_m(), i));
            error_m[i] = e.mean_m();
            sigma_m[i] = e.sigma_m();
        }
        return r.corrected(
                r.offset_m().minus(new Vec3(error_m[0], error_m[1], error_m[2])),
                new Vec3(sigma_m[0], sigma_m[1], sigma_m[2]));
    }

    @Override
    public boolean anchored(double t_s) {
        Relative r = raw.at(t_s);
        double sigma_m = component(r.biasSigma_m(), 0);
        return axes.get(0).at(t_s, sigma_m).sigma_m() < COUNTS * sigma_m;
    }

    private static double component(Vec3 v, int axis) {
        return switch (axis) {
            case 0 -> v.x();
            case 1 -> v.y();
            default -> v.z();
        };
    }
}
