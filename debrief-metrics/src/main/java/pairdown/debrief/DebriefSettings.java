package pairdown.debrief;

import java.util.Set;
import pairdown.air.WindSettings;
import pairdown.attempt.Attempt;
import pairdown.attempt.ChosenSettings;
import pairdown.clock.ClockSettings;
import pairdown.height.HeightSettings;
import pairdown.motion.SmootherSettings;
import pairdown.pair.PairSettings;
import pairdown.phase.PhaseSettings;
import pairdown.safety.SafetySettings;
import pairdown.tail.TailSettings;
import pairdown.track.UnusableInputException;

/**
 * All that a debrief assumes and judges by, beyond what the attempt itself plans: the usual
 * numbers, and those a team wants otherwise. {@code debrief.json} shows them, and {@code
 * attempt.json} sets them, under these names.
 */
public record DebriefSettings(
        ClockSettings clock,
        HeightSettings heights,
        PhaseSettings phases,
        SmootherSettings smoother,
        WindSettings wind,
        PairSettings pairs,
        SafetySettings safety,
        TailSettings tail) {
    public static final DebriefSettings DEFAULT =
            new DebriefSettings(
                    ClockSettings.DEFAULTS,
                    HeightSettings.DEFAULTS,
                    PhaseSettings.DEFAULTS,
                    SmootherSettings.DEFAULT,
                    WindSettings.DEFAULT,
                    PairSettings.DEFAULT,
                    SafetySettings.DEFAULT,
                    TailSettings.DEFAULT);

    /** What the fields of results mean rests on these, so that nobody sets them. */
    private static final Set<String> FIXED =
            Set.of(
                    "pairs.rows_Hz",
                    "pairs.hole_s",
                    "safety.hole_s",
                    "safety.afterExit_s",
                    "tail.review.confidence");

    private static final String MATCHED = "pairs.match.";

    /**
     * Those of an attempt.
     *
     * @throws UnusableInputException if a number that it sets makes no sense
     */
    public static DebriefSettings of(Attempt attempt) throws UnusableInputException {
        return of(attempt.settings());
    }

    /** The usual ones with some numbers chosen. */
    public static DebriefSettings of(ChosenSettings chosen) throws UnusableInputException {
        return chosen.over(DebriefSettings.class, DEFAULT, DebriefSettings::isFixed);
    }

    private static boolean isFixed(String name) {
        return FIXED.contains(name) || name.startsWith(MATCHED);
    }
}
