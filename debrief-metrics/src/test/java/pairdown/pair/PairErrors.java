package pairdown.pair;

import java.util.List;
import java.util.Locale;
import pairdown.pair.PairSeries.Figure;
import pairdown.time.Span;
import pairdown.track.UnusableInputException;

/** Errors of pairs' figures against made-up truth, summed over many pairs. */
final class PairErrors {
    private static final double LAST_S = 60;
    private static final double NEAR_S = 20;

    private double closure2;
    private int closures;
    private int within1;
    private int within2;
    private int separations;
    private double separation2;
    private int matchesOff;
    private int pairs;
    private double worstMatch_s;
    private int contactsLikely;
    private int elsewhereLikely;
    private int refused;
    private double raw2;
    private double anchored2;
    private int anchoredWithin2;
    private int near;

    PairErrors add(MadePair made) throws UnusableInputException {
        PairDebrief pair = PairAnalysis.analyse(made.logged());
        pairs++;
        addSeries(made, pair.series());
        addMatch(pair.matched().total_s(), PairAnalysis.analyse(made.truly()).matched().total_s());
        addTouch(pair);
        return this;
    }

    private void addSeries(MadePair made, PairSeries s) {
        for (int i = 0; i < s.size(); i++) {
            double t_s = s.time_s(i);
            if (Double.isNaN(s.value(Figure.SEPARATION, i))) {
                continue;
            }
            double error_m = s.value(Figure.SEPARATION, i) - made.separation_m(t_s);
            double sigmas = Math.abs(error_m) / s.value(Figure.SEPARATION_SIGMA, i);
            separation2 += error_m * error_m;
            separations++;
            within1 += sigmas <= 1 ? 1 : 0;
            within2 += sigmas <= 1.96 ? 1 : 0;
            double closure_mps = s.value(Figure.CLOSURE_RATE, i);
            if (t_s > MadePair.END_S - LAST_S && !Double.isNaN(closure_mps)) {
                closure2 += Math.pow(closure_mps - made.closure_mps(t_s), 2);
                closures++;
            }
            double anchored_m = s.value(Figure.ANCHORED_SEPARATION, i);
            if (!Double.isNaN(anchored_m)
                    && t_s > MadePair.CONTACT.start_s() - NEAR_S
                    && t_s < MadePair.CONTACT.end_s() + NEAR_S) {
                double off_m = anchored_m - made.separation_m(t_s);
                raw2 += error_m * error_m;
                anchored2 += off_m * off_m;
                anchoredWithin2 +=
                        Math.abs(off_m) <= 1.96 * s.value(Figure.ANCHORED_SEPARATION_SIGMA, i)
                                ? 1
                                : 0;
                near++;
            }
        }
    }

    private void addMatch(double found_s, double true_s) {
        double off_s = Math.abs(found_s - true_s);
        matchesOff += off_s > Math.max(0.5, 0.05 * true_s) ? 1 : 0;
        worstMatch_s = Math.max(worstMatch_s, off_s);
    }

    private void addTouch(PairDebrief pair) {
        List<Span> likely =
                pair.touch().stream()
                        .filter(t -> t.grade() == Touch.Grade.LIKELY)
                        .map(Touch::span)
                        .toList();
        contactsLikely += likely.stream().anyMatch(MadePair.CONTACT::overlaps) ? 1 : 0;
        elsewhereLikely += likely.stream().allMatch(MadePair.CONTACT::overlaps) ? 0 : 1;
        refused +=
                pair.refusals().stream().anyMatch(r -> r.contains("touched cannot be told"))
                        ? 1
                        : 0;
    }

    double closureRms_mps() {
        return Math.sqrt(closure2 / closures);
    }

    double within68_pct() {
        return 100.0 * within1 / separations;
    }

    double within95_pct() {
        return 100.0 * within2 / separations;
    }

    int matchesOff() {
        return matchesOff;
    }

    int likely() {
        return contactsLikely;
    }

    int likelyElsewhere() {
        return elsewhereLikely;
    }

    int refused() {
        return refused;
    }

    double anchoredRms_m() {
        return Math.sqrt(anchored2 / near);
    }

    String words() {
        String figures =
                String.format(
                        Locale.ROOT,
                        "%d pairs; closure rms %.3f m/s in the last 60 s; separation rms %.2f m,"
                                + " within 1 sigma %.0f %%, 1.96 sigma %.0f %%; matched total off"
                                + " in %d, worst %.2f s; touch likely in %d (also elsewhere in %d),"
                                + " refused in %d",
                        pairs,
                        closureRms_mps(),
                        Math.sqrt(separation2 / separations),
                        within68_pct(),
                        within95_pct(),
                        matchesOff,
                        worstMatch_s,
                        contactsLikely,
                        elsewhereLikely,
                        refused);
        return near == 0
                ? figures
                : figures
                        + String.format(
                                Locale.ROOT,
                                "; within 20 s of a touch rms %.2f m raw, %.2f m anchored (%.0f %%"
                                        + " within 1.96 sigma)",
                                Math.sqrt(raw2 / near),
                                anchoredRms_m(),
                                100.0 * anchoredWithin2 / near);
    }
}
