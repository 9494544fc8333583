package pairdown.demo;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.LeverArm;
import pairdown.demo.receiver.BodyPoint;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * What was true of a lead and a flyer, from exit to opening: computed from the truth alone, by
 * other code than a debrief's.
 */
public final class TruePair {
    private static final double STEP_S = 0.1;

    /** Rates are means over this, centred (s). */
    private static final double SMOOTHED_S = 1;

    /** Half the stretch over which the lead's turning is differenced (s). */
    private static final double HALF_TURN_S = 1;

    /** After this a jumper flies (s). */
    private static final double SETTLED_S = 8;

    private final Truth truth;
    private final TrueMotion lead;
    private final TrueMotion flyer;
    private final BodyPoint slot;
    private final double exit_s;
    private final double opening_s;

    /**
     * @param slot the flyer's slot on the lead
     * @throws IllegalArgumentException if the flyer never left the exit aircraft
     */
    public TruePair(Truth truth, String lead, String flyer, LeverArm slot) {
        TrueBody jumper = truth.body(flyer);
        this.truth = truth;
        this.lead = truth.body(lead).motion();
        this.flyer = jumper.motion();
        this.slot = new BodyPoint(truth.body(lead), slot);
        this.exit_s =
                jumper.exit_s()
                        .orElseThrow(() -> new IllegalArgumentException(flyer + " never left"));
        this.opening_s = jumper.opening_s().orElse(this.flyer.end_s());
    }

    public double exit_s() {
        return exit_s;
    }

    public double opening_s() {
        return opening_s;
    }

    /** Between the two reference points (m). */
    public double separation_m(double time_s) {
        return relative_m(time_s).norm();
    }

    /** From the flyer to its slot (m). */
    public double gap_m(double time_s) {
        return flyer.positionAt_m(time_s).minus(slot.position_m(time_s)).norm();
    }

    /** How fast they close (m/s), positive while closing. */
    public double closure_mps(double time_s) {
        Vec3 r = relative_m(time_s);
        Vec3 v = flyer.velocityAt_mps(time_s).minus(lead.velocityAt_mps(time_s));
        return -r.dot(v) / r.norm();
    }

    /**
     * How fast they may close by a team's limit at the gap they have (m/s): max(contact, −a·t +
     * √((a·t)² + contact² + 2a·max(0, gap − margin))).
     */
    public double limit_mps(double time_s, ClosureSettings limit) {
        double reacting_mps = limit.braking_mps2() * limit.reaction_s();
        double room_m = Math.max(0, gap_m(time_s) - limit.margin_m());
        double contact_mps = limit.contact_mps();
        double braked_mps =
                Math.sqrt(
                        reacting_mps * reacting_mps
                                + contact_mps * contact_mps
                                + 2 * limit.braking_mps2() * room_m);
        return Math.max(contact_mps, braked_mps - reacting_mps);
    }

    /** When they closed most over the limit, from stable flight to leaving. */
    public double worstClosure_s(ClosureSettings limit, double leaving_s) {
        double best_s = exit_s + SETTLED_S;
        for (double t = best_s; t <= leaving_s; t += STEP_S) {
            if (excess_mps(t, limit) > excess_mps(best_s, limit)) {
                best_s = t;
            }
        }
        return best_s;
    }

    private double excess_mps(double time_s, ClosureSettings limit) {
        return closure_mps(time_s) - limit_mps(time_s, limit);
    }

    private Vec3 relative_m(double time_s) {
        return flyer.positionAt_m(time_s).minus(lead.positionAt_m(time_s));
    }

    /** When the separation was least. */
    public double closest_s() {
        return least(this::separation_m);
    }

    /** When the gap was least. */
    public double leastGap_s() {
        return least(this::gap_m);
    }

    private double least(DoubleUnaryOperator figure) {
        double best_s = exit_s;
        for (double t = exit_s; t <= opening_s; t += lead.step_s()) {
            if (figure.applyAsDouble(t) < figure.applyAsDouble(best_s)) {
                best_s = t;
            }
        }
        return best_s;
    }

    /**
     * Rate of the flyer's place in level axes that turn with the lead's way through the air (m/s,
     * east-north-up), mean over a second.
     */
    Vec3 rate_mps(double time_s) {
        Vec3 sum = Vec3.ZERO;
        int n = 0;
        for (double t = time_s - SMOOTHED_S / 2; t <= time_s + SMOOTHED_S / 2 + 1e-9; t += STEP_S) {
            sum = sum.plus(momentaryRate_mps(t));
            n++;
        }
        return sum.times(1.0 / n);
    }

    private Vec3 momentaryRate_mps(double time_s) {
        Vec3 v = flyer.velocityAt_mps(time_s).minus(lead.velocityAt_mps(time_s));
        double turned_rad = course_rad(time_s + HALF_TURN_S) - course_rad(time_s - HALF_TURN_S);
        turned_rad -= 2 * Math.PI * Math.rint(turned_rad / (2 * Math.PI));
        Vec3 omega = new Vec3(0, 0, -turned_rad / (2 * HALF_TURN_S));
        return v.minus(omega.cross(relative_m(time_s)));
    }

    /** The lead's way through the mean air, clockwise from north. */
    private double course_rad(double time_s) {
        double msl_m =
                truth.frame().toGeodetic(lead.positionAt_m(time_s)).height_m()
                        - truth.air().undulation_m();
        Vec3 through = lead.velocityAt_mps(time_s).minus(truth.air().meanWind_mps().apply(msl_m));
        return StrictMath.atan2(through.x(), through.y());
    }

    /** Matched windows by the contract's rule. */
    public List<Span> matched(double level_mps, double vertical_mps) {
        return new TrueMatch(this::rate_mps, level_mps, vertical_mps).windows(exit_s, opening_s);
    }

    /** When the flyer left its last matched window or, with none, its closest approach. */
    public double leaving_s(double level_mps, double vertical_mps) {
        List<Span> windows = matched(level_mps, vertical_mps);
        return windows.isEmpty() ? closest_s() : windows.get(windows.size() - 1).end_s();
    }

    /** The flyer's height above mean sea level (m). */
    public double msl_m(double time_s) {
        return truth.frame().toGeodetic(flyer.positionAt_m(time_s)).height_m()
                - truth.air().undulation_m();
    }
}
