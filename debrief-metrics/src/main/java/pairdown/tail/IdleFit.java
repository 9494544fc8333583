package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import pairdown.track.Channel;

/**
 * What flight with the lever at idle says about the drag, by generalised least squares. Rising and
 * sinking air is taken for drag by the balance, and lasts: neighbouring samples share its error,
 * whose correlation falls off exponentially, as in a Dryden gust. Stretches far apart share none.
 */
final class IdleFit {
    /** Samples stand this far apart: the balance is smoothed over about as much. */
    private static final double SPACING_S = 0.5;

    /** A stretch longer than this many samples is taken in parts, to keep matrices small. */
    private static final int LONGEST = 200;

    private IdleFit() {}

    /** An idle sample: drag over q, what it is made of, and the error of rising air there. */
    record Sample(
            double time_s,
            double area_m2,
            double flap_deg,
            double lift_m2,
            double airspeed_mps,
            double sigma_m2) {}

    static Optional<IdleEvidence> of(
            Signals signals, AirData air, double[] share, double weight_N, TailSettings settings) {
        if (!signals.has(Channel.POWER_LEVER)) {
            return Optional.empty();
        }
        IdleEvidence all = IdleEvidence.NONE;
        for (Masks.Run run : idle(signals, air, settings)) {
            List<Sample> samples = new ArrayList<>();
            int every = signals.grid().steps(SPACING_S);
            for (int i = run.from(); i <= run.to(); i += every) {
                sample(i, signals, air, share, weight_N).ifPresent(samples::add);
                if (samples.size() == LONGEST) {
                    all = all.and(evidence(samples, settings.force()));
                    samples.clear();
                }
            }
            if (!samples.isEmpty()) {
                all = all.and(evidence(samples, settings.force()));
            }
        }
        return Optional.of(all).filter(e -> e.met().duration_s() >= settings.force().leastIdle_s());
    }

    private static Optional<Sample> sample(
            int i, Signals signals, AirData air, double[] share, double weight_N) {
        double q_Pa = air.dynamicPressure_Pa()[i];
        double area_m2 = weight_N * share[i] / q_Pa;
        double sine = air.sinePath()[i];
        return Double.isFinite(area_m2)
                ? Optional.of(
                        new Sample(
                                signals.grid().time_s(i),
                                area_m2,
                                signals.column(Channel.FLAP)[i],
                                weight_N * Math.sqrt(1 - sine * sine) / q_Pa,
                                air.calibrated_mps()[i],
                                weight_N / q_Pa * air.verticalAir_mps() / air.true_mps()[i]))
                : Optional.empty();
    }

    /** Stretches at idle, settled. */
    private static List<Masks.Run> idle(Signals signals, AirData air, TailSettings settings) {
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
        int settle = signals.grid().steps(force.idleSettle_s());
        int edge = signals.grid().steps(settings.data().airSmoothing_s());
        return Masks.runs(near).stream()
                .filter(r -> r.from() + settle <= r.to() - edge)
                .map(r -> new Masks.Run(r.from() + settle, r.to() - edge))
                .toList();
    }

    static IdleEvidence evidence(List<Sample> samples, TailSettings.Force force) {
        int n = samples.size();
        RealMatrix terms = new Array2DRowRealMatrix(n, IdleDrag.TERMS);
        RealMatrix area = new Array2DRowRealMatrix(n, 1);
        RealMatrix covariance = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            Sample a = samples.get(i);
            terms.setRow(i, IdleDrag.terms(a.flap_deg(), a.lift_m2()));
            area.setEntry(i, 0, a.area_m2());
            for (int j = 0; j < n; j++) {
                Sample b = samples.get(j);
                double apart = Math.abs(a.time_s() - b.time_s()) / force.verticalAir_s();
                double shared = a.sigma_m2() * b.sigma_m2() * Math.exp(-apart);
                covariance.setEntry(i, j, i == j ? 2 * shared : shared);
            }
        }
        DecompositionSolver solver = new CholeskyDecomposition(covariance, 1e-9, 1e-12).getSolver();
        RealMatrix weighted = solver.solve(terms);
        return new IdleEvidence(
                weighted.transposeMultiply(terms), weighted.transposeMultiply(area), met(samples));
    }

    private static IdleDrag.Met met(List<Sample> samples) {
        return new IdleDrag.Met(
                samples.stream().mapToDouble(Sample::airspeed_mps).min().orElseThrow(),
                samples.stream().mapToDouble(Sample::airspeed_mps).max().orElseThrow(),
                samples.stream().mapToDouble(Sample::flap_deg).min().orElseThrow(),
                samples.stream().mapToDouble(Sample::flap_deg).max().orElseThrow(),
                samples.size() * SPACING_S);
    }
}
