package pairdown.panel;

/** Draws how sure each participant's place is, as bars along time. */
final class TrustBars {
    /** Uncertainty up to which a bar of data is full, and up to which it is half (m). */
    private static final double FULL_TRUST_M = 3;

    private static final double HALF_TRUST_M = 8;

    private static final int MOST_COLUMNS = 500;

    private TrustBars() {}

    /** A bar for each participant: full where sure, thin where not, nothing where no data are. */
    static void paint(
            Sheet sheet,
            TimePlot plot,
            StripData strip,
            float top,
            float height,
            double from_s,
            double to_s) {
        float lane = height / strip.curves().size();
        int columns = (int) Math.min(plot.width(), MOST_COLUMNS);
        float width = plot.width() / columns;
        for (int i = 0; i < strip.curves().size(); i++) {
            Curve curve = strip.curves().get(i);
            float middle = top + (i + 0.5f) * lane;
            sheet.canvas()
                    .line(plot.left(), middle, plot.right(), middle, 1, sheet.palette().grid());
            int rgba = sheet.palette().participant(curve.number());
            int run = 0;
            float runHeight = 0;
            for (int c = 0; c <= columns; c++) {
                float h = c == columns ? -1 : barHeight(curve, c, columns, from_s, to_s, lane);
                if (h != runHeight) {
                    if (runHeight > 0) {
                        sheet.canvas()
                                .fill(
                                        plot.left() + run * width,
                                        middle - runHeight / 2,
                                        (c - run) * width,
                                        runHeight,
                                        rgba);
                    }
                    run = c;
                    runHeight = h;
                }
            }
        }
    }

    private static float barHeight(
            Curve curve, int column, int columns, double from_s, double to_s, float lane) {
        double t_s = from_s + (column + 0.5) / columns * (to_s - from_s);
        double sigma_m = curve.values().at(t_s);
        if (Double.isNaN(sigma_m)) {
            return 0;
        }
        float full = 0.7f * lane;
        return sigma_m <= FULL_TRUST_M
                ? full
                : sigma_m <= HALF_TRUST_M ? 0.45f * full : 0.18f * full;
    }
}
