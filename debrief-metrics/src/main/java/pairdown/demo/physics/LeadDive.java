package pairdown.demo.physics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;
import pairdown.atmosphere.Atmosphere;

/**
 * The lead's dive: lever to idle, then in two moves to where the target is held, then held; and
 * what was planned for it on the way. The pilot does not set more reverse than a braking
 * coefficient of {@link #MOST_COEFFICIENT}: high up, where the air is thin, the sink is then a
 * little less.
 */
final class LeadDive {
    /** The pilot's own limit, short of where the tail blanks. */
    static final double MOST_COEFFICIENT = 1.13;

    private static final double FIRST_S = 3;
    private static final double SECOND_S = 6;
    private static final double ENTERED_S = 9;

    private final LeadPlan plan;
    private final Air air;
    private final LeverHand lever;
    private final SinkHand sinkHand;
    private final List<DiveEvent> waiting;
    private int moves;
    private double busyUntil_s = Double.NEGATIVE_INFINITY;
    private double backAt_s = Double.NaN;
    private double backTo;
    private double shaking_dps;
    private double shakingUntil_s = Double.NEGATIVE_INFINITY;
    private double slip_rad;
    private double slipFrom_s = Double.NEGATIVE_INFINITY;
    private double slipUntil_s = Double.NEGATIVE_INFINITY;

    LeadDive(LeadPlan plan, Air air, LeverHand lever, SinkHand sinkHand) {
        this.plan = plan;
        this.air = air;
        this.lever = lever;
        this.sinkHand = sinkHand;
        this.waiting = new ArrayList<>(plan.events());
    }

    /** Moves the lever as the dive asks; the true airspeed to be held (m/s). */
    double fly(Airframe a, double time_s, double since_s, double density_kgpm3, double rise_mps) {
        double speed_mps = air.true_mps(plan.kind(), plan.airspeed_mps(), air.height_m(a.place_m));
        if (plan.dive() == LeadPlan.Dive.IDLE) {
            enter(time_s, since_s, 0, 0);
            return speed_mps;
        }
        double limit = limit(speed_mps, density_kgpm3);
        double full = Math.max(limit, expected(a, speed_mps, density_kgpm3));
        enter(time_s, since_s, 0.55 * full, full);
        if (time_s < since_s + ENTERED_S) {
            return speed_mps;
        }
        events(a, time_s, since_s + ENTERED_S, density_kgpm3);
        if (time_s > busyUntil_s) {
            sinkHand.hold(
                    a,
                    time_s,
                    density_kgpm3,
                    plan.sink_mps(),
                    speed_mps,
                    rise_mps,
                    limit,
                    2.5,
                    0.22);
        }
        return speed_mps;
    }

    private void enter(double time_s, double since_s, double first, double second) {
        double in_s = time_s - since_s;
        if (moves == 0) {
            lever.move(time_s, 0);
            moves = 1;
        } else if (moves == 1 && in_s > FIRST_S) {
            lever.move(time_s, first);
            moves = 2;
        } else if (moves == 2 && in_s > SECOND_S) {
            lever.move(time_s, second);
            moves = 3;
        }
    }

    private static double limit(double speed_mps, double density_kgpm3) {
        return forCoefficient(MOST_COEFFICIENT, speed_mps, density_kgpm3);
    }

    private static double forCoefficient(double most, double speed_mps, double density_kgpm3) {
        double q_Pa = 0.5 * density_kgpm3 * speed_mps * speed_mps;
        return Propeller.lever(-most * q_Pa * Propeller.DISC_M2, speed_mps, density_kgpm3);
    }

    /** Where the pilot knows the lever to belong. */
    private double expected(Airframe a, double speed_mps, double density_kgpm3) {
        double q_Pa = 0.5 * density_kgpm3 * speed_mps * speed_mps;
        double weight_N = a.mass_kg * Atmosphere.GRAVITY_MPS2;
        double sine = Math.min(0.7, plan.sink_mps() / speed_mps);
        double lift_N = weight_N * Math.sqrt(1 - sine * sine);
        double thrust_N = Airframe.drag_N(1, lift_N, q_Pa) - weight_N * sine;
        return Propeller.lever(thrust_N, speed_mps, density_kgpm3);
    }

    private void events(Airframe a, double time_s, double zero_s, double density_kgpm3) {
        if (!Double.isNaN(backAt_s) && time_s >= backAt_s) {
            lever.move(time_s, backTo);
            backAt_s = Double.NaN;
        }
        if (waiting.isEmpty() || time_s < zero_s + waiting.get(0).after_s()) {
            return;
        }
        DiveEvent next = waiting.remove(0);
        if (next instanceof DiveEvent.OverReverse e) {
            double now = lever.wanted();
            double to = forCoefficient(e.coefficient(), a.airspeed_mps, density_kgpm3);
            lever.move(time_s, Math.min(now - 0.12, to));
            later(time_s + e.correction_s(), now + 0.15, 4);
        } else if (next instanceof DiveEvent.HarmlessPower e) {
            double now = lever.wanted();
            lever.move(time_s, now + e.step_pct() / 100);
            later(time_s + e.between_s(), now, 4);
        } else if (next instanceof DiveEvent.Turbulence e) {
            shaking_dps = e.rate_dps();
            shakingUntil_s = time_s + e.duration_s();
            busyUntil_s = shakingUntil_s;
        } else if (next instanceof DiveEvent.Sideslip e) {
            slip_rad = FastMath.toRadians(e.angle_deg());
            slipFrom_s = time_s;
            slipUntil_s = time_s + e.duration_s();
            busyUntil_s = slipUntil_s;
        }
    }

    private void later(double at_s, double to, double rest_s) {
        backAt_s = at_s;
        backTo = to;
        busyUntil_s = at_s + rest_s;
    }

    /** The dive is over: nothing planned happens any more. */
    void end(double time_s) {
        waiting.clear();
        backAt_s = Double.NaN;
        shakingUntil_s = time_s;
        slipUntil_s = time_s;
    }

    /** Slow rates that rough air makes (°/s, root mean square). */
    double shaking_dps(double time_s) {
        return time_s < shakingUntil_s ? shaking_dps : 0;
    }

    double slip_rad(double time_s) {
        return time_s >= slipFrom_s && time_s < slipUntil_s ? slip_rad : 0;
    }
}
