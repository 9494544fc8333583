package pairdown.debrief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Consumer;
import pairdown.attempt.Attempt;
import pairdown.clock.ClockResult;
import pairdown.clock.ClockSolution;
import pairdown.clock.CommonClock;
import pairdown.clock.LoadedLog;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.height.AlignedLog;
import pairdown.height.HeightReconciler;
import pairdown.height.HeightResult;
import pairdown.motion.Trajectory;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairEvents;
import pairdown.phase.Event;
import pairdown.phase.PhaseFinder;
import pairdown.phase.Phases;
import pairdown.safety.Finding;
import pairdown.tail.TailControl;
import pairdown.tail.TailEvents;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.UnusableInputException;

/**
 * From an attempt to its debrief, one step after another: read, one clock, one height, phases,
 * smooth, wind, pairs, power and tail, limits.
 */
public final class Debriefer {
    private final Attempt attempt;
    private final DebriefSettings settings;
    private final List<String> notes = new ArrayList<>();

    private Debriefer(Attempt attempt) throws UnusableInputException {
        this.attempt = attempt;
        this.settings = DebriefSettings.of(attempt);
        notes.addAll(attempt.notes());
        notes.addAll(attempt.settings().notes(DebriefSettings.DEFAULT));
    }

    /**
     * Debriefs an attempt.
     *
     * @param progress told each step as it begins
     * @throws UnusableInputException if none of its logs can be used
     */
    public static Debrief debrief(Attempt attempt, Consumer<String> progress)
            throws UnusableInputException {
        progress.accept("reading logs");
        return new Debriefer(attempt).run(LogLoader.read(attempt), progress);
    }

    /**
     * Debriefs an attempt whose logs are already in memory.
     *
     * @throws UnusableInputException if none of them can be used
     */
    public static Debrief debrief(Attempt attempt, List<LoadedLog> logs, Consumer<String> progress)
            throws UnusableInputException {
        return new Debriefer(attempt).run(LogLoader.of(logs), progress);
    }

    private Debrief run(LogLoader logs, Consumer<String> progress) throws UnusableInputException {
        refuseIfNone(logs);
        progress.accept("aligning clocks and heights");
        ClockSolution clock = CommonClock.align(logs.loaded(), settings.clock());
        List<AlignedLog> aligned =
                HeightReconciler.reconcile(logs.loaded(), clock, settings.heights());
        LocalFrame frame = LocalFrame.at(firstFix(aligned));
        progress.accept("finding phases");
        Phases phases = PhaseFinder.find(aligned, settings.phases());
        progress.accept("smoothing");
        List<Smoothed> smoothed =
                Smoothed.all(attempt.participants(), aligned, frame, phases, settings.smoother());
        smoothed.forEach(s -> notes.addAll(s.why()));
        progress.accept("finding the wind");
        InAir air = InAir.of(smoothed, attempt.air(), frame, phases, settings.wind());
        notes.addAll(air.air().notes());
        progress.accept("measuring pairs, reviewing power and tail");
        List<String> tailNotes = new ArrayList<>();
        ForkJoinTask<Optional<TailControl>> review =
                ForkJoinTask.adapt(() -> Tails.of(attempt, air, phases, settings.tail(), tailNotes))
                        .fork();
        Pairs pairing = new Pairs(attempt, settings, air, frame, phases, clock.axis());
        List<PairDebrief> pairs = pairing.analyse(notes);
        List<Finding> findings = pairing.findings(pairs);
        Optional<TailControl> tail = review.join();
        notes.addAll(tailNotes);
        List<ParticipantDebrief> participants =
                air.members().stream().map(m -> m.debrief(phases)).toList();
        return new Debrief(
                attempt,
                settings,
                clock.axis(),
                frame,
                span(participants),
                clock.results(),
                heights(aligned),
                quality(logs, clock, aligned, smoothed),
                air.wind(),
                participants,
                events(phases, pairs, tail),
                pairs,
                tail,
                findings,
                notes);
    }

    /** A recorder's log without satellite heights has no datum to tell of. */
    private static List<HeightResult> heights(List<AlignedLog> aligned) {
        return aligned.stream()
                .filter(log -> log.track().has(Channel.HEIGHT))
                .map(AlignedLog::height)
                .toList();
    }

    private static List<Event> events(
            Phases phases, List<PairDebrief> pairs, Optional<TailControl> tail) {
        List<Event> events = new ArrayList<>(phases.events());
        pairs.forEach(p -> events.addAll(PairEvents.of(p)));
        tail.ifPresent(t -> events.addAll(TailEvents.of(t)));
        events.sort(Comparator.comparingDouble(Event::time_s));
        return events;
    }

    private void refuseIfNone(LogLoader logs) throws UnusableInputException {
        if (logs.loaded().stream().anyMatch(l -> l.track().hasPositions())) {
            return;
        }
        String first =
                logs.unusable().isEmpty()
                        ? "no log has positions"
                        : "no log can be used, the first because: "
                                + logs.unusable().get(0).warnings().get(0);
        throw new UnusableInputException(
                first, attempt.folder().toString(), "see each log with: inspect FILE");
    }

    private Geodetic firstFix(List<AlignedLog> aligned) throws UnusableInputException {
        for (AlignedLog log : aligned) {
            for (int i = 0; i < log.size(); i++) {
                if (log.hasFix(i)) {
                    return log.position(i);
                }
            }
        }
        throw new UnusableInputException(
                "no log has a position with a height on a known clock",
                attempt.folder().toString(),
                "pin a log's clock in attempt.json, or bring a log with absolute time");
    }

    private static Span span(List<ParticipantDebrief> participants) {
        double start_s = Double.POSITIVE_INFINITY;
        double end_s = Double.NEGATIVE_INFINITY;
        for (ParticipantDebrief p : participants) {
            start_s = Math.min(start_s, p.trajectory().map(Trajectory::start_s).orElse(start_s));
            end_s = Math.max(end_s, p.trajectory().map(Trajectory::end_s).orElse(end_s));
        }
        return start_s <= end_s ? new Span(start_s, end_s) : new Span(0, 0);
    }

    private static List<LogQuality> quality(
            LogLoader logs,
            ClockSolution clock,
            List<AlignedLog> aligned,
            List<Smoothed> smoothed) {
        List<LogQuality> quality = new ArrayList<>();
        for (AlignedLog log : aligned) {
            int rejected = smoothed.stream().mapToInt(s -> s.rejectedOf(log)).sum();
            quality.add(Qualities.of(log, rejected, List.of()));
        }
        for (int i = 0; i < logs.loaded().size(); i++) {
            ClockResult result = clock.results().get(i);
            LoadedLog log = logs.loaded().get(i);
            if (!result.isUsable()) {
                quality.add(Qualities.unplaced(log, result.warnings()));
            }
        }
        quality.addAll(logs.unusable());
        return quality;
    }
}
