package pairdown.tail;

import java.util.List;

/**
 * An aircraft's drag with power at idle, D/q = a + b·(W/q)²: a drag area for each flap setting, and
 * one term that falls with airspeed for the lift. From descents at idle.
 *
 * @param flaps one drag area for each flap setting met
 * @param liftTerm_perM2 b (1/m²), as lift in N over q in Pa is an area; 0 where the airspeeds met
 *     lay too close together to tell it apart
 * @param lowest_mps least calibrated airspeed met
 * @param highest_mps greatest calibrated airspeed met
 * @param samples how many grid samples it rests on
 * @param sigma_m2 one standard deviation of the drag area as scattered from second to second
 */
public record IdleDrag(
        List<FlapArea> flaps,
        double liftTerm_perM2,
        double lowest_mps,
        double highest_mps,
        int samples,
        double sigma_m2) {
    public IdleDrag {
        flaps = List.copyOf(flaps);
        if (flaps.isEmpty()) {
            throw new IllegalArgumentException("an idle drag needs at least one flap setting");
        }
    }

    /**
     * Drag area (m²) with the flap at about {@code flap_deg}, NaN for a flap that is not logged;
     * and one standard deviation of it, which is that of the scatter where only one stretch of air
     * was met.
     */
    public record FlapArea(double flap_deg, double area_m2, double sigma_m2) {}

    /**
     * Drag (N).
     *
     * @param dynamicPressure_Pa q
     * @param lift_N what the wing carries: weight times the cosine of the path
     * @param flap_deg NaN where not logged
     */
    public double drag_N(double dynamicPressure_Pa, double lift_N, double flap_deg) {
        double ratio = lift_N / dynamicPressure_Pa;
        return dynamicPressure_Pa * (area_m2(flap_deg) + liftTerm_perM2 * ratio * ratio);
    }

    /** How far (°) the nearest flap setting met lies from {@code flap_deg}; 0 where not logged. */
    public double flapDistance_deg(double flap_deg) {
        double away = Math.abs(nearest(flap_deg).flap_deg() - flap_deg);
        return Double.isFinite(away) ? away : 0;
    }

    /** One standard deviation of the drag area at an instant: the area's own and the scatter. */
    double sigma_m2(double flap_deg) {
        return Math.hypot(nearest(flap_deg).sigma_m2(), sigma_m2);
    }

    private double area_m2(double flap_deg) {
        return nearest(flap_deg).area_m2();
    }

    private FlapArea nearest(double flap_deg) {
        FlapArea best = flaps.get(0);
        for (FlapArea f : flaps) {
            if (Math.abs(f.flap_deg() - flap_deg) < Math.abs(best.flap_deg() - flap_deg)) {
                best = f;
            }
        }
        return best;
    }
}
