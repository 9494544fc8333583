package pairdown.tail;

import pairdown.stats.Interval;
import pairdown.stats.TwoByTwo;

/**
 * Power moves against episodes as a 2 × 2 table of counts. It says how often one followed the
 * other, nothing about why.
 *
 * @param unit what is counted, in words
 * @param counts first row towards reverse, second row not; first column followed by an episode's
 *     start, second column not
 * @param oddsRatio conditional estimate; may be 0, infinite or, with margins of 0, NaN
 * @param interval exact 95 % interval of the odds ratio
 * @param probability Fisher's exact two-sided probability under independence
 */
public record PowerTable(
        String unit, TwoByTwo counts, double oddsRatio, Interval interval, double probability) {
    /** What is counted over power changes. */
    static final String CHANGES =
            "power changes in the dives, towards reverse or forward; followed by an episode's start"
                    + " within the pairing time, or not";

    /** What is counted over time. */
    static final String STRETCHES =
            "stretches of the dives as long as the pairing time, with or without a move towards"
                    + " reverse shortly before; with an episode's start, or not";

    static PowerTable of(String unit, TwoByTwo counts, double confidence) {
        return new PowerTable(
                unit,
                counts,
                counts.oddsRatio(),
                counts.oddsRatioInterval(confidence),
                counts.fisher());
    }
}
