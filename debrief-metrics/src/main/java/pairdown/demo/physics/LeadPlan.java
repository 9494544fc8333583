package pairdown.demo.physics;

import java.util.List;
import pairdown.attempt.AirspeedKind;

/**
 * What the lead is to do.
 *
 * @param mass_kg all-up
 * @param dive how it goes down
 * @param kind which airspeed {@code airspeed_mps} is
 * @param airspeed_mps to be held in the dive
 * @param sink_mps to be held in the dive; not used in an idle dive
 * @param recovery_m height above the field at which it recovers at the latest
 * @param events planned for the dive
 */
public record LeadPlan(
        String id,
        double mass_kg,
        Dive dive,
        AirspeedKind kind,
        double airspeed_mps,
        double sink_mps,
        double recovery_m,
        List<DiveEvent> events) {
    /** How the lead goes down. */
    public enum Dive {
        /** In reverse, at the target's airspeed and sink. */
        TARGET,
        /** At idle with full flap, at the target's airspeed: it sinks as it may. */
        IDLE
    }

    /**
     * 1,650 kg, to hold 85 mph true airspeed and 3,500 ft/min sink: true, as the balance of forces
     * is stated for that.
     */
    public static final LeadPlan USUAL =
            new LeadPlan(
                    "lead", 1650, Dive.TARGET, AirspeedKind.TRUE, 37.998, 17.78, 1700, List.of());

    public LeadPlan {
        events = List.copyOf(events);
    }

    public LeadPlan withDive(Dive other) {
        return new LeadPlan(id, mass_kg, other, kind, airspeed_mps, sink_mps, recovery_m, events);
    }

    public LeadPlan withMass(double kg) {
        return new LeadPlan(id, kg, dive, kind, airspeed_mps, sink_mps, recovery_m, events);
    }

    public LeadPlan withTarget(AirspeedKind other, double speed_mps, double down_mps) {
        return new LeadPlan(id, mass_kg, dive, other, speed_mps, down_mps, recovery_m, events);
    }

    public LeadPlan withEvents(DiveEvent... planned) {
        return new LeadPlan(
                id, mass_kg, dive, kind, airspeed_mps, sink_mps, recovery_m, List.of(planned));
    }
}
