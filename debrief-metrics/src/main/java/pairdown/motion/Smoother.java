package pairdown.motion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import pairdown.geodesy.LocalFrame;
import pairdown.height.AlignedLog;
import pairdown.track.Channel;
import pairdown.track.UnusableInputException;

/**
 * The fixed-interval smoother: one log in, a trajectory out. East, north and up are filtered in
 * step (an outlier is refused as a whole fix), then smoothed backwards one by one.
 *
 * <p>The measurement noise is first taken from what the log states and how it was rounded, then
 * scaled by a few passes until innovations have the size they should.
 */
public final class Smoother {
    private Smoother() {}

    /**
     * Smooths a log.
     *
     * @param frame the attempt's frame, in which the trajectory is given
     * @param jerk how fast acceleration may change, over time
     * @throws UnusableInputException if the log has fewer than two fixes or no heights
     */
    public static SmoothedTrajectory smooth(
            AlignedLog log, LocalFrame frame, SmootherSettings settings, JerkProfile jerk)
            throws UnusableInputException {
        return smooth(log, frame, FixReader.read(log, frame, settings), settings, jerk);
    }

    static SmoothedTrajectory smooth(
            AlignedLog log,
            LocalFrame frame,
            Fixes fixes,
            SmootherSettings settings,
            JerkProfile jerk) {
        ForwardPass pass = new ForwardPass(fixes, settings, jerk);
        NoiseScale scale =
                settings.tuningPasses() == 0
                        ? NoiseScale.NONE
                        : new NoiseTuning(pass, settings).tune(settings.tuningPasses());
        pass.run(scale);
        return new SmoothedTrajectory(
                log,
                frame,
                fixes,
                pass,
                smoothBackwards(fixes, pass),
                rejected(fixes, pass),
                settings.gap_s(),
                scale,
                FittedNoise.of(scale, pass.meanNormalisedInnovations()));
    }

    private static AxisTrack[] smoothBackwards(Fixes fixes, ForwardPass pass) {
        AxisTrack[] axes = new AxisTrack[Fixes.AXES];
        for (int axis = 0; axis < axes.length; axis++) {
            axes[axis] =
                    AxisTrack.smooth(
                            fixes.time_s,
                            pass.saved[axis],
                            fixes.position_m[axis],
                            pass.positionVariance[axis],
                            fixes.velocity_mps[axis],
                            pass.velocityVariance[axis],
                            new AxisModel(
                                    fixes.noise.bias_m(axis),
                                    fixes.noise.biasTime_s(),
                                    fixes.lag_s));
        }
        return axes;
    }

    private static List<RejectedFix> rejected(Fixes fixes, ForwardPass pass) {
        List<RejectedFix> rejected = new ArrayList<>();
        for (int i = 0; i < fixes.size(); i++) {
            if (pass.refusedBy[i] != 0) {
                String why = reason(pass.refusedBy[i]);
                rejected.add(new RejectedFix(fixes.row[i], fixes.time_s[i], why));
            }
        }
        return rejected;
    }

    private static String reason(float refusedBy) {
        return refusedBy == ForwardPass.STRANGER
                ? "position far from where the fixes after it lead"
                : String.format(
                        Locale.ROOT,
                        "position %.1f sigma from where the fixes before lead",
                        refusedBy);
    }

    /**
     * The log to smooth when a participant has several: three velocity components before speed and
     * track before positions alone, then the one with more fixes. Empty where none has positions.
     */
    public static Optional<AlignedLog> best(List<AlignedLog> logs) {
        return logs.stream()
                .filter(log -> log.track().hasPositions())
                .filter(log -> fixCount(log) >= 2)
                .max(
                        Comparator.comparingInt(Smoother::velocityGrade)
                                .thenComparingLong(Smoother::fixCount));
    }

    private static int velocityGrade(AlignedLog log) {
        if (log.has(Channel.VELOCITY_NORTH) && log.has(Channel.VELOCITY_EAST)) {
            return log.has(Channel.VELOCITY_DOWN) ? 3 : 2;
        }
        return log.has(Channel.GROUND_SPEED) && log.has(Channel.TRACK) ? 1 : 0;
    }

    private static long fixCount(AlignedLog log) {
        return IntStream.range(0, log.size()).filter(log::hasFix).count();
    }
}
