package pairdown.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.StatUtils;
import pairdown.attempt.Target;
import pairdown.stats.Bootstrap;
import pairdown.stats.Interval;

/**
 * The retarding force the lead lacks at the target in one configuration, from steady flight at the
 * same airspeed: ΔF = W (sink wanted − sink flown) / V, with V the true airspeed. It follows from
 * the balance of forces along a steady path, D + T = W sin γ with sin γ = sink / V, taken twice at
 * one speed. Negative where the lead sank faster than wanted.
 *
 * @param configuration of the segments it is from; never one in reverse
 * @param low_N lower end of its interval: the scatter of the segments by bootstrap and what more
 *     segments do not shrink (mass, sink, airspeed), in quadrature
 * @param high_N upper end likewise
 * @param segments how many
 * @param trueAirspeed_mps their mean
 * @param sink_mps their mean
 */
public record MissingForce(
        String configuration,
        double value_N,
        double low_N,
        double high_N,
        int segments,
        double trueAirspeed_mps,
        double sink_mps) {
    /** Standard gravity (m/s²), exact: ISO 2533. */
    private static final double G_MPS2 = 9.80665;

    /**
     * One for each configuration with segments of known mass near the target's airspeed, the least
     * first.
     */
    static List<MissingForce> of(List<SteadySegment> lead, Target target, SeasonSettings settings) {
        Map<String, List<SteadySegment>> near = new TreeMap<>();
        for (SteadySegment s : lead) {
            double off_mps = Math.abs(s.airspeed_mps(target.kind()) - target.airspeed_mps());
            if (s.mass_kg().isPresent() && !s.inReverse() && off_mps < settings.nearTarget_mps()) {
                near.computeIfAbsent(s.configuration(), k -> new ArrayList<>()).add(s);
            }
        }
        return near.entrySet().stream()
                .map(e -> of(e.getKey(), e.getValue(), target, settings))
                .sorted(Comparator.comparingDouble(MissingForce::value_N))
                .toList();
    }

    private static MissingForce of(
            String configuration,
            List<SteadySegment> near,
            Target target,
            SeasonSettings settings) {
        double[] forces_N = near.stream().mapToDouble(s -> force_N(s, target)).toArray();
        double mean_N = StatUtils.mean(forces_N);
        double tail = (1 - settings.confidence()) / 2;
        double z = -new NormalDistribution().inverseCumulativeProbability(tail);
        double common_N = z * commonSigma_N(near, mean_N, settings);
        Optional<Interval> scatter =
                Bootstrap.DEFAULT.interval(forces_N, StatUtils::mean, settings.confidence());
        double below_N = mean_N - scatter.map(Interval::low).orElse(mean_N);
        double above_N = scatter.map(Interval::high).orElse(mean_N) - mean_N;
        return new MissingForce(
                configuration,
                mean_N,
                mean_N - Math.hypot(below_N, common_N),
                mean_N + Math.hypot(above_N, common_N),
                forces_N.length,
                mean(near.stream().mapToDouble(SteadySegment::trueAirspeed_mps).toArray()),
                mean(near.stream().mapToDouble(SteadySegment::sink_mps).toArray()));
    }

    private static double force_N(SteadySegment s, Target target) {
        return weight_N(s) * (target.sink_mps() - s.sink_mps()) / s.trueAirspeed_mps();
    }

    private static double weight_N(SteadySegment s) {
        return s.mass_kg().orElseThrow() * G_MPS2;
    }

    /** ∂F/∂W, ∂F/∂sink and ∂F/∂V times their sigmas. */
    private static double commonSigma_N(
            List<SteadySegment> near, double mean_N, SeasonSettings settings) {
        double v_mps = mean(near.stream().mapToDouble(SteadySegment::trueAirspeed_mps).toArray());
        double weight_N = mean(near.stream().mapToDouble(MissingForce::weight_N).toArray());
        return Math.sqrt(
                sq(settings.massShare() * mean_N)
                        + sq(settings.sinkSigma_mps() * weight_N / v_mps)
                        + sq(settings.airspeedSigma_mps() * mean_N / v_mps));
    }

    private static double sq(double v) {
        return v * v;
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(Double.NaN);
    }
}
