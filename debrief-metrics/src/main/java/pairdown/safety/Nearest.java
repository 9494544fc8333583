package pairdown.safety;

import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.pair.Holes;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * The least separation of two bodies over a stretch.
 *
 * <p>The search steps by how soon they could be nearer than the least found so far: their distance
 * less that, over the fastest they can approach. Far apart it takes strides, near it reads every
 * row; the least is missed by no more than one row's motion. Over a hole in either log a least is
 * not looked for; whether one could hide there is decided by how fast they can approach.
 *
 * @param known whether anything was measured
 * @param mayHide whether they may have been under the limit inside a hole, or where a log does not
 *     reach
 */
record Nearest(double time_s, double separation_m, double sigma_m, boolean known, boolean mayHide) {

    /** How often the fastest speed of a body is looked for (s); it is taken 20 % larger. */
    private static final double SPEED_STEP_S = 1;

    private static final double SPEED_MARGIN = 1.2;

    private static final Nearest UNKNOWN = new Nearest(0, 0, 0, false, true);

    static Nearest of(Body a, Body b, Span span, double limit_m, SafetySettings settings) {
        double from_s = Math.max(a.trajectory().start_s(), b.trajectory().start_s());
        double to_s = Math.min(a.trajectory().end_s(), b.trajectory().end_s());
        if (from_s > span.end_s() || to_s < span.start_s() || from_s > to_s) {
            return UNKNOWN;
        }
        Span reached = new Span(Math.max(from_s, span.start_s()), Math.min(to_s, span.end_s()));
        return new Search(a, b, reached, limit_m, settings).run(span);
    }

    /** One search; its buffers are its own. */
    private static final class Search {
        private final Body a;
        private final Body b;
        private final Span span;
        private final double limit_m;
        private final SafetySettings settings;
        private final double[] p = new double[Trajectory.VALUES];
        private final double[] q = new double[Trajectory.VALUES];
        private final Holes holesA;
        private final Holes holesB;
        private double best_m = Double.POSITIVE_INFINITY;
        private double bestAt_s = Double.NaN;
        private boolean mayHide;

        Search(Body a, Body b, Span span, double limit_m, SafetySettings settings) {
            this.a = a;
            this.b = b;
            this.span = span;
            this.limit_m = limit_m;
            this.settings = settings;
            this.holesA = Holes.of(a.trajectory(), settings.hole_s());
            this.holesB = Holes.of(b.trajectory(), settings.hole_s());
        }

        /**
         * @param asked the whole stretch, of which {@code span} is what both logs reach
         */
        Nearest run(Span asked) {
            double fastest_mps =
                    SPEED_MARGIN * (fastest_mps(a.trajectory()) + fastest_mps(b.trajectory()));
            for (double t_s = span.start_s(); t_s <= span.end_s(); ) {
                double hole_s = Math.max(holesA.endOf_s(t_s), holesB.endOf_s(t_s));
                if (hole_s > t_s) {
                    overHole(t_s, Math.min(hole_s, span.end_s()), fastest_mps);
                    t_s = hole_s;
                    continue;
                }
                double d_m = distance_m(t_s);
                if (d_m < best_m) {
                    best_m = d_m;
                    bestAt_s = t_s;
                }
                t_s += Math.max(settings.step_s(), (d_m - best_m) / fastest_mps);
            }
            beyond(span.start_s(), span.start_s() - asked.start_s(), fastest_mps);
            beyond(span.end_s(), asked.end_s() - span.end_s(), fastest_mps);
            return Double.isNaN(bestAt_s)
                    ? UNKNOWN
                    : new Nearest(bestAt_s, best_m, sigma_m(bestAt_s), true, mayHide);
        }

        /** In the middle of a hole they can be nearer by half its length at their fastest. */
        private void overHole(double from_s, double to_s, double fastest_mps) {
            double least_m = Math.min(distance_m(from_s), distance_m(to_s));
            double reach_m = fastest_mps * (to_s - from_s) / 2;
            mayHide |= least_m - reach_m < limit_m;
        }

        /** Where a log does not reach nothing brings them back to a known place. */
        private void beyond(double edge_s, double for_s, double fastest_mps) {
            mayHide |=
                    for_s > settings.hole_s() && distance_m(edge_s) - fastest_mps * for_s < limit_m;
        }

        private double distance_m(double t_s) {
            a.trajectory().read(t_s, p);
            b.trajectory().read(t_s, q);
            return Math.sqrt(
                    (p[0] - q[0]) * (p[0] - q[0])
                            + (p[1] - q[1]) * (p[1] - q[1])
                            + (p[2] - q[2]) * (p[2] - q[2]));
        }

        private double fastest_mps(Trajectory trajectory) {
            double fastest2 = 0;
            for (double t_s = span.start_s(); t_s <= span.end_s(); t_s += SPEED_STEP_S) {
                trajectory.read(t_s, p);
                fastest2 = Math.max(fastest2, p[3] * p[3] + p[4] * p[4] + p[5] * p[5]);
            }
            return Math.sqrt(fastest2);
        }

        private double sigma_m(double t_s) {
            State s = a.trajectory().at(t_s);
            State o = b.trajectory().at(t_s);
            Vec3 line_m = s.position_m().minus(o.position_m());
            Vec3 u = line_m.norm() > 0 ? line_m.unit() : new Vec3(0, 0, 1);
            double own_m =
                    Math.hypot(
                            u.scaledBy(s.positionSigma_m()).norm(),
                            u.scaledBy(o.positionSigma_m()).norm());
            double clocks_m =
                    Math.hypot(
                            u.dot(s.velocity_mps()) * a.clockSigma_s(),
                            u.dot(o.velocity_mps()) * b.clockSigma_s());
            return Math.hypot(own_m, clocks_m);
        }
    }
}
