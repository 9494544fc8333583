package pairdown.pair;

/**
 * The rates a match is judged by: averaged over a short centred time, no further than data reach.
 */
final class MatchRates {
    /** Level size. */
    final double[] level_mps;

    /** Up positive: the flyer rising against the lead. */
    final double[] vertical_mps;

    private MatchRates(double[] level_mps, double[] vertical_mps) {
        this.level_mps = level_mps;
        this.vertical_mps = vertical_mps;
    }

    static MatchRates of(PairRows rows, double smoothing_s) {
        int half = (int) Math.floor(smoothing_s / 2 / rows.step_s + 1e-9);
        double[] ahead_mps = averaged(rows.matchRate_mps[0], half);
        double[] right_mps = averaged(rows.matchRate_mps[1], half);
        double[] level_mps = new double[rows.size];
        for (int i = 0; i < rows.size; i++) {
            level_mps[i] = Math.hypot(ahead_mps[i], right_mps[i]);
        }
        return new MatchRates(level_mps, averaged(rows.matchRate_mps[2], half));
    }

    /** The mean of each value and as many either side, fewer where one of them is missing. */
    private static double[] averaged(double[] column, int half) {
        double[] out = new double[column.length];
        for (int i = 0; i < column.length; i++) {
            double sum = column[i];
            int n = 1;
            for (int k = 1; k <= half; k++) {
                double both =
                        i - k < 0 || i + k >= column.length
                                ? Double.NaN
                                : column[i - k] + column[i + k];
                if (Double.isNaN(both)) {
                    break;
                }
                sum += both;
                n += 2;
            }
            out[i] = sum / n;
        }
        return out;
    }
}
