package pairdown.report;

import java.util.Comparator;
import java.util.List;
import pairdown.pair.PairDebrief;

/** Which of many flyers to show where there is no room for all: those who came nearest. */
final class Nearest {
    private Nearest() {}

    /** Up to so many pairs by their least separation, the nearest first. */
    static List<PairDebrief> of(List<PairDebrief> pairs, int most) {
        return pairs.stream()
                .filter(p -> p.closest().isPresent())
                .sorted(Comparator.comparingDouble(Nearest::separation_m))
                .limit(most)
                .toList();
    }

    private static double separation_m(PairDebrief pair) {
        return pair.closest().orElseThrow().separation_m().value();
    }
}
