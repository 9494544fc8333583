package pairdown.air;

import java.util.ArrayList;
import java.util.List;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.time.Span;

/**
 * A stretch flown at a steady airspeed, as level ground velocities at one-second steps.
 *
 * @param samples in order of time
 * @param circle the circle through their velocities
 * @param heading_deg how much heading through the air it covers, seen from the circle's centre
 */
record WindArc(List<Sample> samples, Circle circle, double heading_deg) {
    /**
     * One second of it.
     *
     * @param height_m above the ellipsoid
     * @param east_mps ground velocity
     * @param north_mps ground velocity
     */
    record Sample(double time_s, double height_m, double east_mps, double north_mps) {}

    private static final double STEP_S = 1;
    private static final int LEAST_SAMPLES = 15;
    private static final double SLOWEST_MPS = 4;

    /** Cuts a span into arcs that stay within the settings' height and time; gaps are left out. */
    static List<WindArc> cut(
            Trajectory trajectory, Span span, LocalFrame frame, WindSettings settings) {
        List<WindArc> arcs = new ArrayList<>();
        List<Sample> open = new ArrayList<>();
        double from_s = Math.max(span.start_s(), trajectory.start_s());
        double to_s = Math.min(span.end_s(), trajectory.end_s());
        double[] values = new double[Trajectory.VALUES];
        for (double t_s = from_s; t_s <= to_s; t_s += STEP_S) {
            if (trajectory.inGap(t_s)) {
                continue;
            }
            trajectory.read(t_s, values);
            Sample sample =
                    new Sample(t_s, Heights.ellipsoid_m(frame, values), values[3], values[4]);
            if (!open.isEmpty() && leaves(open.get(0), sample, settings)) {
                close(open, arcs);
            }
            open.add(sample);
        }
        close(open, arcs);
        return arcs;
    }

    private static boolean leaves(Sample first, Sample now, WindSettings settings) {
        return Math.abs(now.height_m() - first.height_m()) > settings.arcHeight_m()
                || now.time_s() - first.time_s() > settings.arcTime_s();
    }

    private static void close(List<Sample> open, List<WindArc> arcs) {
        if (open.size() >= LEAST_SAMPLES) {
            Circle circle = Circle.through(open);
            arcs.add(new WindArc(List.copyOf(open), circle, covered_deg(open, circle)));
        }
        open.clear();
    }

    /** Least and greatest heading, unwrapped, apart; 360 at most, 0 for what does not move. */
    private static double covered_deg(List<Sample> samples, Circle circle) {
        if (circle.radius_mps() < SLOWEST_MPS) {
            return 0;
        }
        double last = heading_deg(samples.get(0), circle);
        double unwrapped = 0;
        double least = 0;
        double most = 0;
        for (Sample sample : samples) {
            double now = heading_deg(sample, circle);
            unwrapped += Math.IEEEremainder(now - last, 360);
            last = now;
            least = Math.min(least, unwrapped);
            most = Math.max(most, unwrapped);
        }
        return Math.min(360, most - least);
    }

    private static double heading_deg(Sample s, Circle circle) {
        return Math.toDegrees(
                Math.atan2(s.east_mps() - circle.east_mps(), s.north_mps() - circle.north_mps()));
    }

    double duration_s() {
        return samples.get(samples.size() - 1).time_s() - samples.get(0).time_s();
    }
}
