package pairdown.demo;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import pairdown.attempt.Attempt;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Participant;
import pairdown.demo.truth.Truth;
import pairdown.time.Span;

/**
 * How one flyer truly met the gate, by the definitions of the result files and by other code than a
 * debrief's.
 */
final class TrueFlyer {
    private static final double STEP_S = 0.1;

    private final double gate_m;
    private final double tolerance_mps;
    private final TruePair pair;
    private final double[] gap_m;
    private final Optional<Span> best;

    TrueFlyer(Truth truth, Attempt attempt, String flyer) {
        Participant lead = attempt.lead().orElseThrow();
        LeverArm slot =
                attempt.participant(flyer)
                        .flatMap(Participant::slot)
                        .map(lead.slots()::get)
                        .orElseThrow();
        this.gate_m = attempt.gate_m().orElseThrow();
        this.tolerance_mps = attempt.matched().horizontal_mps();
        this.pair = new TruePair(truth, lead.id(), flyer, slot);
        int n = (int) Math.floor((pair.opening_s() - pair.exit_s()) / STEP_S) + 1;
        this.gap_m = IntStream.range(0, n).mapToDouble(i -> pair.gap_m(time_s(i))).toArray();
        List<Span> windows = pair.matched(tolerance_mps, attempt.matched().vertical_mps());
        this.best = windows.stream().max(Comparator.comparingDouble(Span::duration_s));
    }

    private double time_s(int i) {
        return pair.exit_s() + i * STEP_S;
    }

    double leastGap_m() {
        return pair.gap_m(pair.leastGap_s());
    }

    double longest_s() {
        return best.map(Span::duration_s).orElse(0.0);
    }

    /** Median gap in the longest matched window. */
    OptionalDouble medianGap_m() {
        double[] inside = best.stream().flatMapToDouble(this::gaps_m).sorted().toArray();
        return inside.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(inside[inside.length / 2]);
    }

    private DoubleStream gaps_m(Span window) {
        return IntStream.range(0, gap_m.length)
                .filter(i -> window.contains(time_s(i)))
                .mapToDouble(i -> gap_m[i]);
    }

    /** A gap up to this counts as held at the gate. */
    double near_m() {
        return Math.max(1.2 * gate_m, gate_m + 2);
    }

    double held_s() {
        return STEP_S * Arrays.stream(gap_m).filter(g -> g <= near_m()).count();
    }

    /**
     * @param off_m were all gaps so much wider
     */
    String verdict(double off_m) {
        OptionalDouble median_m = medianGap_m();
        if (median_m.isEmpty() || median_m.getAsDouble() + off_m > near_m()) {
            return "short";
        }
        return overshoots(off_m) > 0 ? "through" : "on-gate";
    }

    /** Times the gap went under 0.8 of the gate and out again faster than the matched tolerance. */
    private int overshoots(double off_m) {
        double through_m = 0.8 * gate_m - off_m;
        int count = 0;
        for (int i = 1; i < gap_m.length; i++) {
            boolean out = gap_m[i - 1] < through_m && gap_m[i] >= through_m;
            count += out && (gap_m[i] - gap_m[i - 1]) / STEP_S > tolerance_mps ? 1 : 0;
        }
        return count;
    }
}
