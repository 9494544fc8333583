package pairdown.phase;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pairdown.phase.Runs.Run;

/**
 * Phases of the lead or the exit aircraft: climb, run-in, descent, recovery. A dive is one descent;
 * the shallow way home that follows the pull-out belongs to its recovery.
 */
final class AircraftPhases {
    /** Shallower moments of a descent, level-offs of a climb, up to this are part of it (s). */
    private static final double BRIDGE_S = 8;

    /** The level of a descent is the sink that it seldom exceeds … */
    private static final double LEVEL_QUANTILE = 0.9;

    /** … and it lasts while it keeps this share of it. */
    private static final double LEVEL_SHARE = 0.5;

    private final String id;
    private final Motion motion;
    private final PhaseSettings settings;

    AircraftPhases(String id, Motion motion, PhaseSettings settings) {
        this.id = id;
        this.motion = motion;
        this.settings = settings;
    }

    List<PhaseSpan> find() {
        SpanList out = new SpanList(id);
        double start_s = motion.movesFrom_s(2 * settings.groundSpeed_mps());
        Optional<Run> descent = descent();
        double descent_s = descent.map(r -> motion.time_s(r.from())).orElse(motion.end_s());
        double climbEnd_s = climbEnd_s(descent_s);
        out.add(Phase.CLIMB, start_s, climbEnd_s);
        out.add(Phase.RUN_IN, Math.max(start_s, climbEnd_s), descent_s);
        descent.ifPresent(
                r -> {
                    double end_s = end_s(r);
                    out.add(Phase.DESCENT, descent_s, end_s);
                    out.add(Phase.RECOVERY, end_s, motion.end_s());
                });
        return out.all();
    }

    /**
     * A log that ends in a descent, but for the smoothing of its last seconds, shows no recovery.
     */
    private double end_s(Run descent) {
        double end_s = motion.time_s(descent.to());
        return motion.end_s() - end_s > BRIDGE_S ? end_s : motion.end_s();
    }

    /**
     * Of the stretch of sink that loses the most height, the part that keeps to its level, from
     * where that sink began.
     */
    private Optional<Run> descent() {
        return steepest(runs(settings.descentSink_mps(), 0, motion.size() - 1))
                .map(
                        whole ->
                                steepest(
                                                runs(
                                                        LEVEL_SHARE * level_mps(whole),
                                                        whole.from(),
                                                        whole.to()))
                                        .map(dive -> new Run(start(whole, dive), dive.to()))
                                        .orElse(whole));
    }

    private List<Run> runs(double sink_mps, int from, int to) {
        double limit_mps = Math.max(settings.descentSink_mps(), sink_mps);
        return Runs.of(
                motion.size(),
                k -> k >= from && k <= to && motion.sink_mps(k) > limit_mps,
                motion.points(settings.descentTime_s()),
                motion.points(BRIDGE_S));
    }

    private Optional<Run> steepest(List<Run> runs) {
        return runs.stream().max((a, b) -> Double.compare(lost_m(a), lost_m(b)));
    }

    private double level_mps(Run run) {
        double[] sinks_mps =
                IntStream.rangeClosed(run.from(), run.to())
                        .mapToDouble(motion::sink_mps)
                        .filter(Double::isFinite)
                        .sorted()
                        .toArray();
        return sinks_mps[(int) (LEVEL_QUANTILE * (sinks_mps.length - 1))];
    }

    /** The push into a dive is part of it, a shallow descent before is not. */
    private int start(Run whole, Run dive) {
        return dive.from() - whole.from() <= motion.points(BRIDGE_S) ? whole.from() : dive.from();
    }

    private double lost_m(Run run) {
        double sum_m = 0;
        for (int k = run.from(); k <= run.to(); k++) {
            double sink_mps = motion.sink_mps(k);
            sum_m += Double.isNaN(sink_mps) ? 0 : sink_mps * motion.step_s();
        }
        return sum_m;
    }

    /** End of the last climb before the descent, or the start if there was none. */
    private double climbEnd_s(double descent_s) {
        List<Run> climbs =
                Runs.of(
                        motion.index(descent_s),
                        k -> motion.up().value(k) > settings.climb_mps(),
                        motion.points(2 * BRIDGE_S),
                        motion.points(BRIDGE_S));
        return climbs.isEmpty()
                ? motion.start_s()
                : motion.time_s(climbs.get(climbs.size() - 1).to());
    }
}
