package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.demo.truth.TrueEpisode;
import pairdown.demo.truth.TruePowerChange;
import pairdown.stats.Robust;

/** What was found against what was true, summed over flights. */
final class TailScore {
    /** A found episode is a true one's where they overlap, give or take this. */
    private static final double APART_S = 1;

    /** A power change is the right one within this. */
    private static final double SAME_MOVE_S = 0.2;

    int flights;
    int truths;
    int found;
    int hits;
    int matchedFound;
    int named;
    int rightlyNamed;
    int namedForNothing;
    final List<Double> onset_s = new ArrayList<>();
    final List<Double> onsetShare = new ArrayList<>();
    final List<Double> end_s = new ArrayList<>();
    final List<Double> lag_s = new ArrayList<>();
    final List<Double> trueLag_s = new ArrayList<>();
    final List<Double> coefficient = new ArrayList<>();
    final List<Double> coefficientShare = new ArrayList<>();
    final List<String> misses = new ArrayList<>();

    void add(String flight, TailControl tail, List<TrueEpisode> truth) {
        flights++;
        for (TrueEpisode t : truth) {
            truths++;
            Optional<Episode> hit = tail.episodes().stream().filter(e -> same(e, t)).findFirst();
            if (hit.isEmpty()) {
                misses.add(say("%s missed %.1f to %.1f", flight, t.start_s(), t.end_s()));
                continue;
            }
            hits++;
            add(flight, hit.get(), t);
        }
        for (Episode e : tail.episodes()) {
            found++;
            if (truth.stream().anyMatch(t -> same(e, t))) {
                matchedFound++;
            } else {
                namedForNothing += e.precededBy().isPresent() ? 1 : 0;
                misses.add(
                        say("%s false %.1f to %.1f ", flight, e.span().start_s(), e.span().end_s())
                                + e.why());
            }
        }
    }

    private void add(String flight, Episode e, TrueEpisode t) {
        double error_s = e.span().start_s() - t.start_s();
        onset_s.add(error_s);
        onsetShare.add(error_s / e.startSigma_s());
        end_s.add(e.span().end_s() - t.end_s());
        if (Math.abs(error_s) > 1.5) {
            misses.add(
                    say("%s onset off by %.2f ± %.2f at ", flight, error_s, e.startSigma_s())
                            + say("%.1f to %.1f ", t.start_s(), t.end_s())
                            + e.why());
        }
        named++;
        boolean right =
                e.precededBy().map(l -> l.change().time_s()).isPresent()
                        == t.precededBy().isPresent();
        if (right && t.precededBy().isPresent()) {
            right =
                    Math.abs(
                                    e.precededBy().orElseThrow().change().time_s()
                                            - t.precededBy().orElseThrow().time_s())
                            <= SAME_MOVE_S;
        }
        rightlyNamed += right ? 1 : 0;
        if (!right) {
            misses.add(
                    say("%s names %s for %.2f ", flight, name(e), t.start_s())
                            + t.precededBy().map(TruePowerChange::time_s));
        } else if (e.precededBy().isPresent()) {
            lag_s.add(e.precededBy().get().lag_s());
            trueLag_s.add(t.start_s() - t.precededBy().orElseThrow().time_s());
        }
    }

    private static String name(Episode e) {
        return e.precededBy().map(l -> say("%.2f", l.change().time_s())).orElse("none");
    }

    private static boolean same(Episode e, TrueEpisode t) {
        return e.span().start_s() <= t.end_s() + APART_S
                && e.span().end_s() >= t.start_s() - APART_S;
    }

    double recall() {
        return hits / (double) truths;
    }

    double precision() {
        return matchedFound / (double) found;
    }

    double naming() {
        return rightlyNamed / (double) named;
    }

    /** Median size of the onset's error (s). */
    double onset_s() {
        return quantile(onset_s, 0.5);
    }

    /** Share of onsets within so many seconds. */
    double onsetWithin(double s) {
        return onset_s.stream().filter(e -> Math.abs(e) <= s).count() / (double) onset_s.size();
    }

    /** Share of onsets within two stated sigmas: 0.95 where the sigma is honest. */
    double onsetWithinTwoSigma() {
        return onsetShare.stream().filter(e -> Math.abs(e) <= 2).count()
                / (double) onsetShare.size();
    }

    double onsetWithinOneSigma() {
        return onsetShare.stream().filter(e -> Math.abs(e) <= 1).count()
                / (double) onsetShare.size();
    }

    /** Error of the median lag (s). */
    double lagError_s() {
        return median(lag_s) - median(trueLag_s);
    }

    /** Share of all of Tc′ within so many stated sigmas. */
    double coefficientWithin(double sigmas) {
        return coefficientShare.stream().filter(e -> Math.abs(e) <= sigmas).count()
                / (double) coefficientShare.size();
    }

    double coefficientError() {
        return quantile(coefficient, 0.5);
    }

    private static double median(List<Double> values) {
        return Robust.median(values.stream().mapToDouble(v -> v).toArray()).orElse(Double.NaN);
    }

    static double quantile(List<Double> values, double share) {
        OptionalDouble q =
                Robust.quantile(share, values.stream().mapToDouble(v -> Math.abs(v)).toArray());
        return q.orElse(Double.NaN);
    }

    private static String say(String format, Object... args) {
        return String.format(Locale.ROOT, format, args);
    }

    @Override
    public String toString() {
        return say(
                        "recall %.3f (%d of %d), precision %.3f (%d of %d), false %.2f a flight of"
                                + " %d%n",
                        recall(),
                        hits,
                        truths,
                        precision(),
                        matchedFound,
                        found,
                        (found - matchedFound) / (double) flights,
                        flights)
                + say(
                        "onset: median error %.2f s, bias %.2f s, 90 %% within %.2f s, within 2 s"
                                + " %.3f; within 1 sigma %.2f, 2 sigma %.2f%n",
                        onset_s(),
                        median(onset_s),
                        quantile(onset_s, 0.9),
                        onsetWithin(2),
                        onsetWithinOneSigma(),
                        onsetWithinTwoSigma())
                + say("end: median error %.2f s%n", quantile(end_s, 0.5))
                + say(
                        "power change right in %.3f of %d, named for nothing %d%n",
                        naming(), named, namedForNothing)
                + say(
                        "median lag %.2f s, true %.2f s, of %d%n",
                        median(lag_s), median(trueLag_s), lag_s.size())
                + say(
                        "Tc' median error %.3f of %d, greatest %.3f; within 1 sigma %.2f, 2 sigma"
                                + " %.2f%n",
                        coefficientError(),
                        coefficient.size(),
                        quantile(coefficient, 1),
                        coefficientWithin(1),
                        coefficientWithin(2));
    }
}
