package pairdown.report;

import java.util.List;
import org.knowm.xchart.XYChart;
import pairdown.stats.Bootstrap;
import pairdown.tail.EventAverage;
import pairdown.words.Words;

/** What a figure did about the moves of power, on the average. */
final class AverageChart {
    private AverageChart() {}

    /** An average with its band. */
    static XYChart of(EventAverage a, Words words) {
        XYChart chart =
                ChartStyle.chart(
                        ChartStyle.BROAD / 2,
                        ChartStyle.LOW,
                        words.get("report.axis.sinceMove"),
                        words.get("figure." + a.figure()),
                        words.locale());
        Points mean = new Points();
        Points outline = new Points();
        List<Bootstrap.BandPoint> band = a.band();
        for (int i = 0; i < band.size(); i++) {
            mean.add(a.time_s(i), band.get(i).mean());
            if (Double.isFinite(band.get(i).high())) {
                outline.add(a.time_s(i), band.get(i).high());
            }
        }
        for (int i = band.size() - 1; i >= 0; i--) {
            if (Double.isFinite(band.get(i).low())) {
                outline.add(a.time_s(i), band.get(i).low());
            }
        }
        ChartStyle.line(chart, words.get("figure." + a.figure()), mean, 0);
        ChartStyle.band(chart, words.get("report.pilot.bootstrap"), outline, 0);
        return chart;
    }
}
