package pairdown.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.attempt.Participant;
import pairdown.geodesy.LocalFrame;
import pairdown.height.AlignedLog;
import pairdown.motion.JerkProfile;
import pairdown.motion.SmoothedTrajectory;
import pairdown.motion.Smoother;
import pairdown.motion.SmootherSettings;
import pairdown.phase.Phases;
import pairdown.track.Channel;
import pairdown.track.UnusableInputException;

/**
 * A participant's best log, smoothed.
 *
 * @param logs all of its logs that are on the common clock
 * @param log the one smoothed; empty if none has positions
 * @param trajectory of the receiver's antenna; empty if there is none, with {@code why}
 * @param why it could not be smoothed, in words
 */
record Smoothed(
        Participant participant,
        List<AlignedLog> logs,
        Optional<AlignedLog> log,
        Optional<SmoothedTrajectory> trajectory,
        List<String> why) {
    private static final String NO_FIXES =
            ": no log with two fixes on the common clock, so no motion is known";
    private static final String FLAT =
            ": its log has places without satellite heights, so no motion is known";

    /** Smooths every participant's motion, side by side. */
    static List<Smoothed> all(
            List<Participant> participants,
            List<AlignedLog> logs,
            LocalFrame frame,
            Phases phases,
            SmootherSettings settings) {
        return participants.parallelStream()
                .map(p -> of(p, logs, frame, phases, settings))
                .toList();
    }

    private static Smoothed of(
            Participant p,
            List<AlignedLog> all,
            LocalFrame frame,
            Phases phases,
            SmootherSettings settings) {
        List<AlignedLog> own =
                all.stream().filter(l -> l.participant().id().equals(p.id())).toList();
        Optional<AlignedLog> best = Smoother.best(own);
        List<String> why = new ArrayList<>();
        if (best.isEmpty()) {
            why.add(p.id() + (own.stream().anyMatch(Smoothed::isFlat) ? FLAT : NO_FIXES));
            return new Smoothed(p, own, best, Optional.empty(), why);
        }
        try {
            SmoothedTrajectory motion =
                    Smoother.smooth(best.get(), frame, settings, jerk(p, phases, settings));
            return new Smoothed(p, own, best, Optional.of(motion), why);
        } catch (UnusableInputException e) {
            why.add(String.valueOf(e.getMessage()));
            return new Smoothed(p, own, Optional.empty(), Optional.empty(), why);
        }
    }

    private static boolean isFlat(AlignedLog log) {
        return log.track().fixes() > 1 && !log.track().has(Channel.HEIGHT);
    }

    private static JerkProfile jerk(Participant p, Phases phases, SmootherSettings settings) {
        return p.role().isJumper()
                ? JerkProfile.ofJumper(phases.exit_s(p.id()), phases.opening_s(p.id()), settings)
                : JerkProfile.constant(settings.aircraftJerk_m2ps5());
    }

    /** Fixes of a log that the smoother refused; none where another log was smoothed. */
    int rejectedOf(AlignedLog other) {
        return log.isPresent() && log.get() == other
                ? trajectory.map(t -> t.rejected().size()).orElse(0)
                : 0;
    }
}
