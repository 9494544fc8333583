package pairdown.pair;

import java.util.EnumMap;
import java.util.Map;

/**
 * A pair's figures on a regular grid, as columns; NaN where a figure can't be known. The columns
 * are those of {@code pairs/LEAD-FLYER.csv}.
 */
public final class PairSeries {
    /** A column, named as in the file by {@link #key}. */
    public enum Figure {
        SEPARATION("separation_m"),
        SEPARATION_SIGMA("separationSigma_m"),
        GAP("gap_m"),
        CLOSURE_RATE("closureRate_mps"),
        CLOSURE_SIGMA("closureSigma_mps"),
        AHEAD("ahead_m"),
        RIGHT("right_m"),
        ABOVE("above_m"),
        AHEAD_RATE("aheadRate_mps"),
        RIGHT_RATE("rightRate_mps"),
        ABOVE_RATE("aboveRate_mps"),
        AIRSPEED_DIFFERENCE("airspeedDifference_mps"),
        SINK_DIFFERENCE("sinkDifference_mps"),
        MATCHED("matched"),
        TOUCH("touch"),
        /** Closing limit at the gap; not in the file. */
        CLOSING_LIMIT("closingLimit_mps"),
        /** Level size of the match rate; not in the file. */
        LEVEL_MATCH_RATE("levelMatchRate_mps"),
        /** Vertical match rate, up positive; not in the file. */
        VERTICAL_MATCH_RATE("verticalMatchRate_mps"),
        GAP_SIGMA("gapSigma_m"),
        /** Separation with the slow bias corrected by a touch; NaN where none anchors it. */
        ANCHORED_SEPARATION("anchoredSeparation_m"),
        ANCHORED_SEPARATION_SIGMA("anchoredSeparationSigma_m"),
        ANCHORED_GAP("anchoredGap_m"),
        /** How far apart the two pass if neither changes its velocity; NaN while they hold. */
        PREDICTED_MISS("predictedMiss_m"),
        PREDICTED_MISS_SIGMA("predictedMissSigma_m"),
        /** When that is, from now; 0 once they move apart. */
        PREDICTED_MISS_IN("predictedMissIn_s");

        private final String key;

        Figure(String key) {
            this.key = key;
        }

        /** The spelling in files. */
        public String key() {
            return key;
        }
    }

    private final double start_s;
    private final double step_s;
    private final int size;
    private final Map<Figure, float[]> columns = new EnumMap<>(Figure.class);

    /**
     * @param start_s instant of row 0
     * @param step_s between rows
     * @param size rows
     * @param columns one array of {@code size} values for each figure that is known; others are NaN
     *     throughout
     * @throws IllegalArgumentException if a column has another length
     */
    public PairSeries(double start_s, double step_s, int size, Map<Figure, float[]> columns) {
        this.start_s = start_s;
        this.step_s = step_s;
        this.size = size;
        columns.forEach(
                (figure, values) -> {
                    if (values.length != size) {
                        throw new IllegalArgumentException(
                                figure + " has " + values.length + " rows, not " + size);
                    }
                    this.columns.put(figure, values.clone());
                });
    }

    public int size() {
        return size;
    }

    public double step_s() {
        return step_s;
    }

    public double time_s(int row) {
        return start_s + row * step_s;
    }

    public double value(Figure figure, int row) {
        float[] column = columns.get(figure);
        return column == null ? Double.NaN : column[row];
    }

    /**
     * The figure at an instant, linear between rows; NaN outside the series or where a neighbouring
     * row is.
     */
    public double at(Figure figure, double t_s) {
        double row = (t_s - start_s) / step_s;
        if (!(row >= 0 && row <= size - 1)) {
            return Double.NaN;
        }
        int before = Math.min((int) row, Math.max(0, size - 2));
        double share = row - before;
        double a = value(figure, before);
        return share == 0 ? a : a + share * (value(figure, before + 1) - a);
    }

    /** The row nearest to an instant, or −1 outside the series. */
    public int rowNear(double t_s) {
        long row = Math.round((t_s - start_s) / step_s);
        return row < 0 || row >= size ? -1 : (int) row;
    }
}
