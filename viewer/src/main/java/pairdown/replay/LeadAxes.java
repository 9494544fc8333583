package pairdown.replay;

import pairdown.air.Wind;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.vector.Vec3;

/**
 * The direction the lead moves in through the air, over time: the level axes of the lead-fixed view
 * turn with it. Where no wind is known, the direction over the ground. Smoothed over 2 s as the
 * match rates are, so that the view does not twitch; kept while the lead stands still.
 */
public final class LeadAxes {
    private static final double STEP_S = 0.1;

    /** Averaging length, the same as for matching (design: axes smoothed over 2 s). */
    private static final double SMOOTHING_S = 2;

    /** Below this speed a direction means nothing. */
    private static final double LEAST_SPEED_MPS = 5;

    private final double start_s;
    private final double[] heading_rad;

    private LeadAxes(double start_s, double[] heading_rad) {
        this.start_s = start_s;
        this.heading_rad = heading_rad;
    }

    static LeadAxes of(Trajectory lead, Wind wind, LocalFrame frame) {
        int n = 1 + (int) Math.floor((lead.end_s() - lead.start_s()) / STEP_S);
        double[] raw = new double[n];
        double[] state = new double[Trajectory.VALUES];
        double before = Double.NaN;
        int known = -1;
        for (int i = 0; i < n; i++) {
            lead.read(Math.min(lead.end_s(), lead.start_s() + i * STEP_S), state);
            double heading = direction_rad(state, wind, frame);
            if (Double.isNaN(heading)) {
                raw[i] = before;
                continue;
            }
            raw[i] =
                    Double.isNaN(before)
                            ? heading
                            : before + Math.IEEEremainder(heading - before, 2 * Math.PI);
            before = raw[i];
            if (known < 0) {
                known = i;
                java.util.Arrays.fill(raw, 0, i, raw[i]);
            }
        }
        if (known < 0) {
            java.util.Arrays.fill(raw, 0);
        }
        return new LeadAxes(lead.start_s(), averaged(raw));
    }

    private static double direction_rad(double[] state, Wind wind, LocalFrame frame) {
        Vec3 air =
                wind.isKnown()
                        ? wind.at(
                                        frame.toGeodetic(new Vec3(state[0], state[1], state[2]))
                                                .height_m())
                                .orElse(Vec3.ZERO)
                        : Vec3.ZERO;
        double east = state[3] - air.x();
        double north = state[4] - air.y();
        return Math.hypot(east, north) < LEAST_SPEED_MPS ? Double.NaN : Math.atan2(east, north);
    }

    private static double[] averaged(double[] raw) {
        int half = (int) Math.round(SMOOTHING_S / STEP_S / 2);
        double[] sums = new double[raw.length + 1];
        for (int i = 0; i < raw.length; i++) {
            sums[i + 1] = sums[i] + raw[i];
        }
        double[] out = new double[raw.length];
        for (int i = 0; i < raw.length; i++) {
            // Fewer at the ends, the same to both sides, so that a steady turn is not bent.
            int reach = Math.min(half, Math.min(i, raw.length - 1 - i));
            out[i] = (sums[i + reach + 1] - sums[i - reach]) / (2 * reach + 1);
        }
        return out;
    }

    /** Clockwise from true north (rad), unwrapped; the nearest end's outside the trajectory. */
    public double heading_rad(double t_s) {
        double at = (t_s - start_s) / STEP_S;
        if (at <= 0) {
            return heading_rad[0];
        }
        int i = (int) at;
        if (i >= heading_rad.length - 1) {
            return heading_rad[heading_rad.length - 1];
        }
        return heading_rad[i] + (at - i) * (heading_rad[i + 1] - heading_rad[i]);
    }
}
