package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.debrief.Debrief;
import pairdown.demo.SimulatedAttempt;
import pairdown.demo.truth.TrueTail;
import pairdown.demo.truth.Truth;
import pairdown.stats.Robust;
import pairdown.track.Series;
import pairdown.track.UnusableInputException;

/**
 * Measures the tail analysis on whole debriefs of simulated dives: {@code DiveStudy FIRST LAST
 * [LOGGED…]} prints recall, precision, onset, lag and Tc′ against truth over the seeds, and each
 * miss, for each kind of recorder.
 */
final class DiveStudy {
    /** The simulated propeller's at idle: a drag area of 0.55 m² over its disc of 2.8 m. */
    private static final double IDLE_COEFFICIENT = 0.55 / (Math.PI * 2.8 * 2.8 / 4);

    private DiveStudy() {}

    public static void main(String[] args) throws UnusableInputException {
        long first = Long.parseLong(args[0]);
        long last = Long.parseLong(args[1]);
        List<MadeDives.Logged> kinds = new ArrayList<>();
        for (int i = 2; i < args.length; i++) {
            kinds.add(MadeDives.Logged.valueOf(args[i]));
        }
        if (kinds.isEmpty()) {
            kinds.add(MadeDives.Logged.ALL);
        }
        List<TailScore> scores = kinds.stream().map(k -> new TailScore()).toList();
        for (long seed = first; seed <= last; seed++) {
            Truth truth = MadeDives.fly(seed);
            for (int k = 0; k < kinds.size(); k++) {
                add(scores.get(k), truth, seed, kinds.get(k));
            }
        }
        for (int k = 0; k < kinds.size(); k++) {
            System.out.println(kinds.get(k));
            scores.get(k).misses.forEach(System.out::println);
            System.out.println(scores.get(k));
        }
    }

    static void add(TailScore score, Truth truth, long seed, MadeDives.Logged logged)
            throws UnusableInputException {
        SimulatedAttempt made = MadeDives.log(truth, seed, logged);
        Debrief debrief = MadeDives.debrief(made);
        TailControl tail = debrief.tailControl().orElseThrow();
        score.add("seed " + seed, tail, MadeDives.episodes(made, debrief));
        double ahead_s = MadeDives.ahead_s(made, debrief);
        Optional<Series> sigma = tail.figure(TailFigures.RETARDING_COEFFICIENT_SIGMA);
        tail.figure(TailFigures.RETARDING_COEFFICIENT)
                .ifPresent(s -> coefficient(score, s, sigma, truth, ahead_s));
    }

    /**
     * Error of Tc′ as a share, median over all of the dive in which it was more than a half. The
     * truth is all of the propeller's braking, the analysis's Tc′ what goes beyond idle.
     */
    private static void coefficient(
            TailScore score, Series found, Optional<Series> sigma, Truth truth, double ahead_s) {
        TrueTail tail = truth.tail().orElseThrow();
        List<Double> share = new ArrayList<>();
        for (int i = 0; i < tail.diving().length; i += 50) {
            double true_s = truth.body("lead").motion().time_s(i);
            if (tail.diving()[i] && tail.coefficient()[i] > 0.5) {
                double beyondIdle = tail.coefficient()[i] - IDLE_COEFFICIENT;
                double error = found.at(true_s + ahead_s) - beyondIdle;
                share.add(error / beyondIdle);
                sigma.map(s -> error / s.at(true_s + ahead_s))
                        .filter(Double::isFinite)
                        .ifPresent(score.coefficientShare::add);
            }
        }
        if (!share.isEmpty()) {
            score.coefficient.add(
                    Robust.median(share.stream().mapToDouble(s -> s).toArray()).orElse(Double.NaN));
        }
    }
}
