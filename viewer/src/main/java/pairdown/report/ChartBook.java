package pairdown.report;

import java.util.Optional;
import org.knowm.xchart.XYChart;
import pairdown.report.ReportModel.Chart;

/** The charts of one page, drawn as SVG with lettering they share. */
final class ChartBook {
    /** Wider than this is across the page (units of the chart). */
    private static final int BROAD_FROM = 700;

    private final Outlines outlines = Outlines.ofPage();

    /**
     * The chart as SVG, or nothing where it has no line.
     *
     * @param name unique within the page
     */
    Optional<Chart> draw(XYChart chart, String name, String caption) {
        return draw(chart, name, caption, outlines);
    }

    /** A chart that brings all its lettering itself. */
    static Optional<Chart> alone(XYChart chart, String name, String caption) {
        return draw(chart, name, caption, Outlines.inPlace());
    }

    private static Optional<Chart> draw(
            XYChart chart, String name, String caption, Outlines outlines) {
        return chart.getSeriesMap().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Chart(
                                Svg.of(chart, name, caption, outlines),
                                caption,
                                chart.getWidth() > BROAD_FROM ? "broad" : "half"));
    }

    /** What all charts drawn refer to; belongs on the same page. */
    String outlines() {
        return outlines.kept();
    }
}
