package pairdown.tail;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pairdown.stats.Robust;
import pairdown.track.Channel;

/**
 * The idle drag from flight with the lever at idle: D/q = a(flap) + b·(L/q)² by least squares, one
 * area a flap setting and one lift term for all. Median areas follow the lift term, so that a gust
 * or a late lever does not move them.
 */
final class IdleFit {
    /** Rising and sinking air, which the balance takes for drag, lasts about so long. */
    private static final double SAME_AIR_S = 5;

    /**
     * 1/(π·e·span²), the induced drag of a wing of some 14 m with e = 0.8, half as much of it
     * uncertain: spans from 11 to 20 m. Source of the relation: L. Prandtl, lifting-line theory
     * (1918).
     */
    private static final double USUAL_LIFT_PERM2 = 0.002;

    private static final double USUAL_LIFT_SIGMA_PERM2 = 0.001;

    private IdleFit() {}

    /** An idle sample: drag over q, and lift over q squared. */
    private record Sample(double area_m2, double lift_m4, double airspeed_mps) {}

    static Optional<IdleDrag> of(
            Signals signals, AirData air, double[] share, double weight_N, TailSettings settings) {
        if (!signals.has(Channel.POWER_LEVER)) {
            return Optional.empty();
        }
        boolean[] idle = idle(signals, air, settings);
        TreeMap<Long, List<Sample>> byFlap = new TreeMap<>();
        double[] flap = signals.column(Channel.FLAP);
        for (int i = 0; i < idle.length; i++) {
            double q_Pa = air.dynamicPressure_Pa()[i];
            if (idle[i] && Double.isFinite(share[i]) && Double.isFinite(q_Pa)) {
                double lift = weight_N * Math.sqrt(1 - square(air.sinePath()[i])) / q_Pa;
                long bin = Math.round(flap[i] / settings.force().flapBin_deg());
                byFlap.computeIfAbsent(bin, k -> new ArrayList<>())
                        .add(
                                new Sample(
                                        weight_N * share[i] / q_Pa,
                                        square(lift),
                                        air.calibrated_mps()[i]));
            }
        }
        int least = signals.grid().steps(settings.force().leastIdle_s());
        byFlap.values().removeIf(samples -> samples.size() < least);
        return byFlap.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        fit(
                                byFlap,
                                signals.has(Channel.FLAP),
                                signals.grid().step_s(),
                                settings.force()));
    }

    private static boolean[] idle(Signals signals, AirData air, TailSettings settings) {
        TailSettings.Force force = settings.force();
        double[] lever = signals.column(Channel.POWER_LEVER);
        boolean[] near = new boolean[lever.length];
        for (int i = 0; i < near.length; i++) {
            // Level with the ground is a flare or a roll on wheels, which brake as well.
            near[i] =
                    Math.abs(lever[i]) <= force.idleLever_pct()
                            && air.flying(i, settings.data())
                            && air.sink_mps()[i] > force.leastIdleSink_mps();
        }
        boolean[] settled = new boolean[near.length];
        int settle = signals.grid().steps(force.idleSettle_s());
        int edge = signals.grid().steps(settings.data().airSmoothing_s());
        for (Masks.Run run : Masks.runs(near)) {
            for (int i = run.from() + settle; i <= run.to() - edge; i++) {
                settled[i] = true;
            }
        }
        return settled;
    }

    private static IdleDrag fit(
            Map<Long, List<Sample>> byFlap,
            boolean flapLogged,
            double step_s,
            TailSettings.Force settings) {
        List<Sample> all = byFlap.values().stream().flatMap(List::stream).toList();
        double lowest = all.stream().mapToDouble(Sample::airspeed_mps).min().orElseThrow();
        double highest = all.stream().mapToDouble(Sample::airspeed_mps).max().orElseThrow();
        double together = SAME_AIR_S / step_s;
        double lift = liftTerm(byFlap.values(), together);
        double scatter = scatter(byFlap.values(), lift, together);
        List<IdleDrag.FlapArea> areas = new ArrayList<>();
        byFlap.forEach(
                (bin, samples) -> {
                    double flap_deg = flapLogged ? bin * settings.flapBin_deg() : Double.NaN;
                    double apart = Math.max(1, samples.size() / together);
                    areas.add(
                            new IdleDrag.FlapArea(
                                    flap_deg, median(samples, lift), scatter / Math.sqrt(apart)));
                });
        return new IdleDrag(areas, lift, lowest, highest, all.size(), scatter);
    }

    private static double median(List<Sample> samples, double lift) {
        return Robust.median(
                        samples.stream()
                                .mapToDouble(s -> s.area_m2() - lift * s.lift_m4())
                                .toArray())
                .orElseThrow();
    }

    /**
     * Robust spread of the areas about their flap setting's. Settings met in one stretch of air
     * only have no spread to show, and are left out where others have.
     */
    private static double scatter(Collection<List<Sample>> byFlap, double lift, double together) {
        boolean anyLasting = byFlap.stream().anyMatch(s -> s.size() > 2 * together);
        List<Double> off = new ArrayList<>();
        for (List<Sample> samples : byFlap) {
            if (!anyLasting || samples.size() > 2 * together) {
                double middle = median(samples, lift);
                samples.forEach(s -> off.add(s.area_m2() - lift * s.lift_m4() - middle));
            }
        }
        return Robust.sigma(off.stream().mapToDouble(d -> d).toArray()).orElse(Double.NaN);
    }

    /**
     * The common slope within the flap settings, drawn toward what wings of this size have by how
     * little it is known; never negative, as drag does not fall with lift.
     *
     * @param together so many samples are of one stretch of air
     */
    private static double liftTerm(Collection<List<Sample>> byFlap, double together) {
        double xy = 0;
        double xx = 0;
        for (List<Sample> samples : byFlap) {
            double meanX = samples.stream().mapToDouble(Sample::lift_m4).average().orElseThrow();
            double meanY = samples.stream().mapToDouble(Sample::area_m2).average().orElseThrow();
            for (Sample s : samples) {
                xy += (s.lift_m4() - meanX) * (s.area_m2() - meanY);
                xx += square(s.lift_m4() - meanX);
            }
        }
        double variance = square(scatter(byFlap, USUAL_LIFT_PERM2, together)) * together;
        double prior = variance / square(USUAL_LIFT_SIGMA_PERM2);
        return Math.max(0, (xy + prior * USUAL_LIFT_PERM2) / (xx + prior));
    }

    private static double square(double v) {
        return v * v;
    }
}
