package pairdown.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * Windows in which a rate, level and vertical, stays within tolerance, by the contract's rule and
 * other code than a debrief's: inside for three seconds, until 1.5 times a tolerance is passed for
 * half a second.
 *
 * @param rate_mps of the flyer against the lead at a time, third component vertical
 */
record TrueMatch(DoubleFunction<Vec3> rate_mps, double level_mps, double vertical_mps) {
    /** Edges are told to this. */
    static final double STEP_S = 0.1;

    private static final double DWELL_S = 3;
    private static final double BRIDGED_S = 0.5;
    private static final double LEAVING = 1.5;

    List<Span> windows(double from_s, double to_s) {
        List<Span> windows = new ArrayList<>();
        double next_s = from_s;
        while (next_s < to_s) {
            Optional<Span> window = window(next_s, to_s);
            if (window.isEmpty()) {
                break;
            }
            windows.add(window.get());
            next_s = window.get().end_s() + STEP_S;
        }
        return windows;
    }

    private Optional<Span> window(double from_s, double to_s) {
        double start_s = Double.NaN;
        double inside_s = Double.NaN;
        for (double t = from_s; t <= to_s; t += STEP_S) {
            if (within(t, 1)) {
                start_s = Double.isNaN(start_s) ? t : start_s;
                inside_s = t;
            } else if (!Double.isNaN(start_s) && t - inside_s > BRIDGED_S) {
                start_s = Double.NaN;
            }
            if (!Double.isNaN(start_s) && t - start_s >= DWELL_S) {
                return Optional.of(new Span(start_s, end_s(t, to_s)));
            }
        }
        return Optional.empty();
    }

    private double end_s(double from_s, double to_s) {
        double crossed_s = Double.NaN;
        for (double t = from_s; t <= to_s; t += STEP_S) {
            if (within(t, LEAVING)) {
                crossed_s = Double.NaN;
            } else if (Double.isNaN(crossed_s)) {
                crossed_s = t;
            }
            if (!Double.isNaN(crossed_s) && t - crossed_s >= BRIDGED_S) {
                return crossed_s;
            }
        }
        return Double.isNaN(crossed_s) ? to_s : crossed_s;
    }

    private boolean within(double time_s, double factor) {
        Vec3 rate = rate_mps.apply(time_s);
        return rate.levelNorm() <= factor * level_mps
                && Math.abs(rate.z()) <= factor * vertical_mps;
    }
}
