package pairdown.demo;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.AirSettings;
import pairdown.attempt.BreakOff;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.Limits;
import pairdown.units.Unit;

/** What the invented team wrote down: its limits, its air, its gates. */
final class DemoPlans {
    static final double QNH_HPA = 1016;
    static final double WARMER_C = 4;

    /** Flyers leave the formation by 6,500 ft above mean sea level. */
    static final double BREAK_OFF_M = Unit.FOOT.toBase(6500);

    private static final double FASTEST_MPS = Unit.MILE_PER_HOUR.toBase(140);

    private DemoPlans() {}

    /** An attempt without flyers. */
    static AttemptPlan alone(String id, String title) {
        return AttemptPlan.STANDARD
                .named(id, title)
                .withoutGate()
                .air(air())
                .limits(limits(OptionalDouble.empty()));
    }

    /**
     * An attempt at a gate.
     *
     * @param apart_m least separation between flyers
     */
    static AttemptPlan gate(String id, String title, double gate_m, double apart_m) {
        return AttemptPlan.STANDARD
                .named(id, title)
                .gate(gate_m)
                .air(air())
                .limits(limits(OptionalDouble.of(apart_m)));
    }

    private static AirSettings air() {
        return new AirSettings(OptionalDouble.of(QNH_HPA), OptionalDouble.of(WARMER_C), List.of());
    }

    private static Limits limits(OptionalDouble apart_m) {
        return new Limits(
                Optional.of(new BreakOff(BREAK_OFF_M, BreakOff.Datum.MSL, 0)),
                OptionalDouble.of(FASTEST_MPS),
                ClosureSettings.DEFAULT,
                apart_m);
    }
}
