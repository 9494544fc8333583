package pairdown.phase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.height.AlignedLog;
import pairdown.motion.Trajectory;

/**
 * Reads each participant's phases, and the exits and openings that bound them, from its velocity.
 */
public final class PhaseFinder {
    private final PhaseSettings settings;
    private final Map<String, Participant> participants = new LinkedHashMap<>();
    private final Map<String, Motion> motions = new LinkedHashMap<>();

    private PhaseFinder(PhaseSettings settings) {
        this.settings = settings;
    }

    /** From logs: each participant's log with the most rows speaks for it. */
    public static Phases find(List<AlignedLog> logs, PhaseSettings settings) {
        PhaseFinder finder = new PhaseFinder(settings);
        Map<String, AlignedLog> chosen = new LinkedHashMap<>();
        for (AlignedLog log : logs) {
            if (log.track().hasPositions()) {
                chosen.merge(log.participant().id(), log, (a, b) -> b.size() > a.size() ? b : a);
            }
        }
        chosen.forEach(
                (id, log) -> {
                    finder.participants.put(id, log.participant());
                    finder.motions.put(id, Motion.of(log, settings));
                });
        return finder.find();
    }

    /** From smoothed trajectories by participant id; participants without one are left out. */
    public static Phases find(
            List<Participant> participants,
            Map<String, Trajectory> trajectories,
            PhaseSettings settings) {
        PhaseFinder finder = new PhaseFinder(settings);
        for (Participant p : participants) {
            Optional.ofNullable(trajectories.get(p.id()))
                    .ifPresent(
                            t -> {
                                finder.participants.put(p.id(), p);
                                finder.motions.put(p.id(), Motion.of(t, settings));
                            });
        }
        return finder.find();
    }

    private Phases find() {
        List<PhaseSpan> spans = new ArrayList<>();
        List<Event> events = new ArrayList<>();
        Optional<Motion> ship = ofRole(Role.JUMPSHIP);
        motions.forEach(
                (id, motion) -> {
                    Participant p = participant(id);
                    if (p.role().isAircraft()) {
                        spans.addAll(new AircraftPhases(id, motion, settings).find());
                    } else {
                        JumperPhases.Found found =
                                new JumperPhases(id, motion, settings).find(ship);
                        spans.addAll(found.spans());
                        events.addAll(found.events());
                    }
                    events.add(
                            new Event(
                                    motion.end_s(),
                                    0,
                                    EventKind.LOG_END,
                                    List.of(id),
                                    "the log of " + id + " ends"));
                });
        events.sort(Comparator.comparingDouble(Event::time_s));
        return new Phases(spans, events);
    }

    private Participant participant(String id) {
        return Optional.ofNullable(participants.get(id)).orElseThrow();
    }

    private Optional<Motion> ofRole(Role role) {
        return motions.entrySet().stream()
                .filter(e -> participant(e.getKey()).role() == role)
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
