package pairdown.demo;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.AirSettings;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Attempt;
import pairdown.attempt.ChosenSettings;
import pairdown.attempt.ClockMark;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Limits;
import pairdown.attempt.LogRef;
import pairdown.attempt.MatchedSettings;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.attempt.Target;
import pairdown.demo.receiver.LogPlan;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueContact;
import pairdown.demo.truth.Truth;

/**
 * What a simulated attempt's team wrote down before it flew.
 *
 * @param slots the lead's joining places
 * @param slotOf a flyer's slot; where not told, that of its true contact, else the next free one
 * @param antenna the lead's receiver
 */
public record AttemptPlan(
        String id,
        Optional<String> title,
        Map<String, LeverArm> slots,
        Map<String, String> slotOf,
        LeverArm antenna,
        OptionalDouble gate_m,
        Optional<Target> target,
        Limits limits,
        AirSettings air) {
    /**
     * Slots half a metre outside the tips of a wing of 14.2 m, the receiver ahead of and above the
     * centre of gravity, a target of 85 mph through the air and 3500 ft/min, a gate of 30 m.
     */
    public static final AttemptPlan STANDARD =
            new AttemptPlan(
                    "simulated",
                    Optional.empty(),
                    Map.of(
                            "left", new LeverArm(-0.4, -7.6, 0.3),
                            "right", new LeverArm(-0.4, 7.6, 0.3)),
                    Map.of(),
                    new LeverArm(1.1, 0, 1.2),
                    OptionalDouble.of(30),
                    Optional.of(new Target(37.998, AirspeedKind.TRUE, 17.78, 1.5, 1.0, 10)),
                    Limits.NONE,
                    AirSettings.NONE);

    public AttemptPlan {
        slots = Map.copyOf(slots);
        slotOf = Map.copyOf(slotOf);
    }

    public AttemptPlan named(String other, String otherTitle) {
        return new AttemptPlan(
                other,
                Optional.of(otherTitle),
                slots,
                slotOf,
                antenna,
                gate_m,
                target,
                limits,
                air);
    }

    public AttemptPlan gate(double other_m) {
        return new AttemptPlan(
                id, title, slots, slotOf, antenna, OptionalDouble.of(other_m), target, limits, air);
    }

    public AttemptPlan withoutGate() {
        return new AttemptPlan(
                id, title, slots, slotOf, antenna, OptionalDouble.empty(), target, limits, air);
    }

    public AttemptPlan limits(Limits other) {
        return new AttemptPlan(id, title, slots, slotOf, antenna, gate_m, target, other, air);
    }

    public AttemptPlan air(AirSettings other) {
        return new AttemptPlan(id, title, slots, slotOf, antenna, gate_m, target, limits, other);
    }

    /** The attempt that has this plan, this truth's participants and these logs. */
    Attempt attempt(Truth truth, List<LogPlan> logs) {
        Map<String, String> slotOf = slotsOf(truth);
        List<Participant> participants =
                truth.bodies().stream().map(b -> participant(b, logs, slotOf)).toList();
        return new Attempt(
                id,
                title,
                Path.of(id),
                participants,
                target,
                MatchedSettings.DEFAULT,
                gate_m,
                limits,
                air,
                ChosenSettings.NONE,
                List.of());
    }

    private Participant participant(TrueBody body, List<LogPlan> logs, Map<String, String> slotOf) {
        boolean isLead = body.role() == Role.LEAD;
        List<LogRef> refs =
                logs.stream()
                        .filter(l -> l.participant().equals(body.id()))
                        .map(l -> ref(l.file()))
                        .toList();
        return new Participant(
                body.id(),
                body.role(),
                refs,
                isLead ? slots : Map.of(),
                Optional.ofNullable(slotOf.get(body.id())),
                isLead ? Optional.of(antenna) : Optional.empty(),
                OptionalDouble.of(body.mass_kg()));
    }

    private LogRef ref(String file) {
        return new LogRef(file, Path.of(id, file), Optional.empty(), ClockMark.NONE);
    }

    private Map<String, String> slotsOf(Truth truth) {
        Map<String, String> chosen = new HashMap<>(slotOf);
        for (TrueContact contact : truth.contacts()) {
            chosen.putIfAbsent(contact.flyer(), contact.slot());
        }
        List<String> free = new ArrayList<>(slots.keySet().stream().sorted().toList());
        free.removeAll(chosen.values());
        for (TrueBody body : truth.bodies()) {
            if (body.role() == Role.FLYER && !chosen.containsKey(body.id()) && !free.isEmpty()) {
                chosen.put(body.id(), free.remove(0));
            }
        }
        return chosen;
    }
}
