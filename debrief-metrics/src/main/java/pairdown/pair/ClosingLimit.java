package pairdown.pair;

import pairdown.attempt.ClosureSettings;

/**
 * How fast a flyer may close at a gap and still brake in time: the braking parabola with a reaction
 * time. With a = braking, t = reaction, c = contact speed, g = gap, m = margin:
 *
 * <pre>max(c, −a·t + √((a·t)² + c² + 2a·max(0, g − m)))</pre>
 *
 * That is the speed from which, after going on unbraked for t, the braking a leaves c at m. It
 * describes what was flown; it recommends nothing.
 */
public record ClosingLimit(ClosureSettings settings) {
    /** The limit (m/s) at a gap (m); NaN for a gap that is not known. */
    public double at(double gap_m) {
        if (Double.isNaN(gap_m)) {
            return Double.NaN;
        }
        double at_mps = settings.braking_mps2() * settings.reaction_s();
        double c_mps = settings.contact_mps();
        double way_m = Math.max(0, gap_m - settings.margin_m());
        double root_mps =
                Math.sqrt(at_mps * at_mps + c_mps * c_mps + 2 * settings.braking_mps2() * way_m);
        return Math.max(c_mps, root_mps - at_mps);
    }
}
