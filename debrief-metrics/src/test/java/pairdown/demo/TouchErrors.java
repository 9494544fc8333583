package pairdown.demo;

import java.util.List;
import java.util.Locale;
import pairdown.demo.truth.TrueContact;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.pair.Touch;
import pairdown.time.Span;

/** Touch evidence and anchored tracks of simulated pairs against true contacts. */
final class TouchErrors {
    /** An anchored separation is asked for up to this long before and after a contact (s). */
    private static final double NEAR_S = 20;

    /** A touch found may begin or end this much outside the contact (s). */
    private static final double EDGE_S = 1;

    private final Tally raw_m = new Tally();
    private final Tally anchored_m = new Tally();

    /** The same once the hand is off: the two soon part at tens of metres a second. */
    private final Tally rawAfter_m = new Tally();

    private final Tally anchoredAfter_m = new Tally();
    private int pairs;
    private int contacts;
    private int likely;
    private int strayLikely;
    private int refused;

    /**
     * @param ahead_s the debrief's time less the truth's, by the lead's clock
     */
    void add(PairDebrief pair, TruePair truth, List<TrueContact> of, double ahead_s) {
        pairs++;
        List<Span> found =
                pair.touch().stream()
                        .filter(t -> t.grade() != Touch.Grade.POSSIBLE)
                        .map(Touch::span)
                        .toList();
        for (TrueContact c : of) {
            contacts++;
            likely += found.stream().anyMatch(f -> overlaps(f, c, ahead_s)) ? 1 : 0;
        }
        strayLikely +=
                (int)
                        found.stream()
                                .filter(f -> of.stream().noneMatch(c -> overlaps(f, c, ahead_s)))
                                .count();
        refused +=
                pair.refusals().stream().anyMatch(r -> r.contains("touched cannot be told"))
                        ? 1
                        : 0;
        anchored(pair.series(), truth, of, ahead_s);
    }

    private static boolean overlaps(Span found, TrueContact c, double ahead_s) {
        return found.overlaps(
                new Span(c.start_s() + ahead_s - EDGE_S, c.end_s() + ahead_s + EDGE_S));
    }

    private void anchored(PairSeries s, TruePair truth, List<TrueContact> of, double ahead_s) {
        for (int i = 0; i < s.size(); i++) {
            double t_s = s.time_s(i) - ahead_s;
            double found_m = s.value(Figure.ANCHORED_SEPARATION, i);
            boolean near =
                    of.stream()
                            .anyMatch(c -> t_s > c.start_s() - NEAR_S && t_s < c.end_s() + NEAR_S);
            if (near && Double.isFinite(found_m)) {
                boolean after = of.stream().allMatch(c -> t_s > c.end_s());
                double true_m = truth.separation_m(t_s);
                (after ? rawAfter_m : raw_m)
                        .add(
                                s.value(Figure.SEPARATION, i) - true_m,
                                s.value(Figure.SEPARATION_SIGMA, i));
                (after ? anchoredAfter_m : anchored_m)
                        .add(found_m - true_m, s.value(Figure.ANCHORED_SEPARATION_SIGMA, i));
            }
        }
    }

    int contacts() {
        return contacts;
    }

    int likely() {
        return likely;
    }

    /** Touches told likely where nobody touched. */
    int strayLikely() {
        return strayLikely;
    }

    /** Pairs whose data are said not to tell a touch. */
    int refused() {
        return refused;
    }

    /** Errors of the anchored separation from 20 s before a contact to its end. */
    Tally anchored_m() {
        return anchored_m;
    }

    /** The same in the 20 s after it. */
    Tally anchoredAfter_m() {
        return anchoredAfter_m;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d pairs: %d of %d contacts likely, %d likely where none was, refused in %d%n"
                        + "  separation from 20 s before a contact to its end, raw (m): %s%n"
                        + "  the same anchored (m):                                     %s%n"
                        + "  separation in the 20 s after it, raw (m):                  %s%n"
                        + "  the same anchored (m):                                     %s",
                pairs,
                likely,
                contacts,
                strayLikely,
                refused,
                raw_m,
                anchored_m,
                rawAfter_m,
                anchoredAfter_m);
    }
}
