package pairdown.height;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.clock.ClockSolution;
import pairdown.clock.LoadedLog;

/**
 * Brings the heights of all logs above the ellipsoid and takes off the constant bias between them
 * that a shared ride measures. Pressure heights are never mixed in.
 */
public final class HeightReconciler {
    private HeightReconciler() {}

    /** With the usual settings. */
    public static List<AlignedLog> reconcile(List<LoadedLog> logs, ClockSolution clock) {
        return reconcile(logs, clock, HeightSettings.DEFAULTS);
    }

    /**
     * The logs whose clock is known, in the order given, on the common clock and above the
     * ellipsoid; what was found out about each one's heights is its {@link AlignedLog#height}.
     */
    public static List<AlignedLog> reconcile(
            List<LoadedLog> logs, ClockSolution clock, HeightSettings settings) {
        List<AlignedLog> out = new ArrayList<>();
        for (int i = 0; i < logs.size(); i++) {
            if (!clock.results().get(i).isUsable()) {
                continue;
            }
            LoadedLog log = logs.get(i);
            EllipsoidHeights heights = EllipsoidHeights.of(log.track());
            HeightResult result =
                    new HeightResult(
                            log.participant().id(),
                            log.ref().file(),
                            heights.datum(),
                            heights.added_m(),
                            Optional.empty(),
                            heights.isOwn()
                                    ? settings.ellipsoidBiasSigma_m()
                                    : settings.modelBiasSigma_m(),
                            List.of());
            float[] column = new float[log.track().size()];
            for (int row = 0; row < column.length; row++) {
                column[row] = (float) heights.at(row);
            }
            out.add(
                    new AlignedLog(
                            log.participant(),
                            log.ref(),
                            log.track(),
                            clock.axis(),
                            clock.results().get(i),
                            result,
                            column));
        }
        return out;
    }
}
