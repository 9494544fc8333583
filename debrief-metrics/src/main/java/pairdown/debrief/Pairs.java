package pairdown.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.Attempt;
import pairdown.attempt.Mark;
import pairdown.attempt.MarksFile;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.geodesy.LocalFrame;
import pairdown.height.AlignedLog;
import pairdown.motion.Trajectory;
import pairdown.pair.DataGrade;
import pairdown.pair.PairAnalysis;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairInput;
import pairdown.pair.PairMember;
import pairdown.phase.EventKind;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.phase.Phases;
import pairdown.safety.Body;
import pairdown.safety.Finding;
import pairdown.safety.LimitCheck;
import pairdown.safety.LimitInput;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.track.Channel;
import pairdown.track.UnusableInputException;

/** Every flyer against the lead, and the limits held against all of them. */
final class Pairs {
    /**
     * A person's mark of a touch is good to about this (s, common practice, no published source).
     */
    private static final double MARK_REACH_S = 1;

    private final Attempt attempt;
    private final DebriefSettings settings;
    private final InAir air;
    private final LocalFrame frame;
    private final Phases phases;
    private final TimeAxis axis;

    Pairs(
            Attempt attempt,
            DebriefSettings settings,
            InAir air,
            LocalFrame frame,
            Phases phases,
            TimeAxis axis) {
        this.attempt = attempt;
        this.settings = settings;
        this.air = air;
        this.frame = frame;
        this.phases = phases;
        this.axis = axis;
    }

    /**
     * The pairs, side by side; none without a lead whose motion is known. What stopped one is
     * noted.
     */
    List<PairDebrief> analyse(List<String> notes) {
        Optional<PairMember> lead = attempt.lead().flatMap(l -> member(l.id()));
        if (lead.isEmpty()) {
            notes.add("no lead whose motion is known: no pair can be judged");
            return List.of();
        }
        List<Mark> marks = marks(notes);
        List<PairInput> inputs = new ArrayList<>();
        for (Participant flyer : attempt.participants()) {
            Optional<PairMember> member = member(flyer.id());
            if (flyer.role() != Role.FLYER || member.isEmpty()) {
                continue;
            }
            if (showsNoFlight(flyer.id())) {
                notes.add(flyer.id() + ": no flight shows in its log, so no pair can be judged");
            } else if (together(lead.get(), member.get())) {
                inputs.add(
                        PairInput.of(
                                        attempt,
                                        lead.get(),
                                        member.get(),
                                        frame,
                                        air.air().undulation_m(),
                                        air.wind())
                                .withTouchMarks(touches(marks, flyer.id())));
            } else {
                notes.add(flyer.id() + " and the lead were never logged at the same time");
            }
        }
        return inputs.parallelStream().map(i -> PairAnalysis.analyse(i, settings.pairs())).toList();
    }

    private boolean showsNoFlight(String id) {
        List<PhaseSpan> spans = phases.of(id);
        return !spans.isEmpty()
                && spans.stream()
                        .allMatch(s -> s.phase() == Phase.ABOARD || s.phase() == Phase.GROUND);
    }

    private static boolean together(PairMember a, PairMember b) {
        return a.trajectory().start_s() < b.trajectory().end_s()
                && b.trajectory().start_s() < a.trajectory().end_s();
    }

    private List<Mark> marks(List<String> notes) {
        try {
            return MarksFile.read(attempt.folder());
        } catch (UnusableInputException e) {
            notes.add(String.valueOf(e.getMessage()));
            return List.of();
        }
    }

    private List<Span> touches(List<Mark> marks, String flyer) {
        return marks.stream()
                .filter(m -> m.kind() == Mark.Kind.TOUCH)
                .filter(m -> m.participants().contains(flyer))
                .map(m -> axis.seconds(m.time()))
                .map(t_s -> new Span(t_s - MARK_REACH_S, t_s + MARK_REACH_S))
                .toList();
    }

    private Optional<PairMember> member(String id) {
        return air.members().stream()
                .filter(m -> m.smoothed().participant().id().equals(id))
                .findFirst()
                .flatMap(this::member);
    }

    private Optional<PairMember> member(InAir.Member m) {
        Optional<AlignedLog> log = m.smoothed().log();
        if (m.motion().isEmpty() || log.isEmpty()) {
            return Optional.empty();
        }
        String id = m.smoothed().participant().id();
        return Optional.of(
                PairMember.of(id, m.motion().get(), grade(m.motion().get(), log.get()))
                        .withClockSigma(log.get().clock().offsetSigma_s())
                        .withFlight(phases.exit_s(id), phases.opening_s(id))
                        .withAirspeeds(
                                m.airData().flatMap(a -> a.calibratedAirspeed_mps()),
                                m.airData().flatMap(a -> a.trueAirspeed_mps()))
                        .withSystems(m.systems(), m.attitudes()));
    }

    private static DataGrade grade(Trajectory motion, AlignedLog log) {
        boolean components = log.has(Channel.VELOCITY_NORTH) && log.has(Channel.VELOCITY_EAST);
        boolean level = components || (log.has(Channel.GROUND_SPEED) && log.has(Channel.TRACK));
        return DataGrade.of(motion, level, log.has(Channel.VELOCITY_DOWN));
    }

    /** The findings over all pairs and participants. */
    List<Finding> findings(List<PairDebrief> pairs) {
        List<Body> bodies = air.members().stream().flatMap(m -> body(m).stream()).toList();
        Optional<InAir.Member> lead =
                air.members().stream()
                        .filter(m -> m.smoothed().participant().role() == Role.LEAD)
                        .findFirst();
        return LimitCheck.check(
                new LimitInput(
                        attempt.limits(),
                        bodies,
                        pairs,
                        lead.flatMap(InAir.Member::airData)
                                .flatMap(a -> a.calibratedAirspeed_mps()),
                        attempt.lead().flatMap(l -> descent(l.id())),
                        air.wind(),
                        frame,
                        air.air().undulation_m()),
                settings.safety());
    }

    private Optional<Body> body(InAir.Member m) {
        Participant p = m.smoothed().participant();
        return m.motion()
                .map(
                        motion ->
                                new Body(
                                        p.id(),
                                        p.role(),
                                        motion,
                                        clockSigma_s(m),
                                        phases.exit_s(p.id()),
                                        opening_s(p)));
    }

    private static double clockSigma_s(InAir.Member m) {
        return m.smoothed().log().map(l -> l.clock().offsetSigma_s()).orElse(0.0);
    }

    private OptionalDouble opening_s(Participant p) {
        return phases.estimate(p.id(), EventKind.OPENING)
                .map(e -> OptionalDouble.of(e.value()))
                .orElse(OptionalDouble.empty());
    }

    private Optional<Span> descent(String id) {
        return phases.of(id).stream()
                .filter(s -> s.phase() == Phase.DESCENT)
                .map(PhaseSpan::span)
                .max((a, b) -> Double.compare(a.duration_s(), b.duration_s()));
    }
}
