package pairdown.tail;

import java.util.Map;
import java.util.stream.LongStream;
import pairdown.stats.Robust;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * Measures the tail analysis on model flights: {@code TailStudy FIRST LAST} prints recall,
 * precision, onset, lag and Tc′ against truth over the seeds, and each miss.
 */
final class TailStudy {
    private static final double[] RATES_HZ = {5, 8, 10, 16};

    private TailStudy() {}

    public static void main(String[] args) {
        long first = Long.parseLong(args[0]);
        long last = Long.parseLong(args[1]);
        TailScore score = over(first, last);
        score.misses.forEach(System.out::println);
        System.out.print(score);
    }

    /** Seeds from first to last, both in. */
    static TailScore over(long first, long last) {
        TailScore score = new TailScore();
        LongStream.rangeClosed(first, last).forEach(seed -> add(score, seed));
        return score;
    }

    private static void add(TailScore score, long seed) {
        ModelDive dive = ModelFlights.dive(seed);
        double rate_Hz = RATES_HZ[(int) (seed % RATES_HZ.length)];
        Map<Channel, Series> log = ModelFlights.log(dive, rate_Hz, seed);
        TailControl tail = TailAnalysis.analyse(ModelFlights.input(dive, log));
        score.add("seed " + seed + " at " + rate_Hz + " Hz", tail, dive.episodes());
        tail.figure(TailFigures.RETARDING_COEFFICIENT).ifPresent(s -> coefficient(score, s, dive));
    }

    /** Error of Tc′ as a share, over the steady part of the descent. */
    private static void coefficient(TailScore score, Series found, ModelDive dive) {
        Span steady = new Span(dive.script.descent_s() + 20, dive.script.recovery_s() - 3);
        double[] share = new double[(int) steady.duration_s()];
        for (int k = 0; k < share.length; k++) {
            double t_s = steady.start_s() + k;
            double truth = dive.coefficient[(int) Math.round(t_s / ModelDive.STEP_S)];
            share[k] = found.at(t_s) / truth - 1;
        }
        score.coefficient.add(Robust.median(share).orElse(Double.NaN));
    }
}
