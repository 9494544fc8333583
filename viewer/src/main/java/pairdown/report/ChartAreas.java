package pairdown.report;

import java.awt.Color;
import java.util.Optional;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Filled shapes and marks of charts beyond lines. */
final class ChartAreas {
    private ChartAreas() {}

    /** Fills what a line encloses; nothing if it has no finite point. */
    static void area(XYChart chart, String name, Points outline, Color colour) {
        if (outline.isEmpty()) {
            return;
        }
        XYSeries series = chart.addSeries(name, outline.x(), outline.y());
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
        series.setFillColor(colour);
        series.setLineColor(colour);
        series.setLineStyle(ChartStyle.THIN);
        series.setMarker(SeriesMarkers.NONE);
    }

    /** Marks left out of the legend. */
    static void dots(XYChart chart, String name, Points points, Color colour) {
        if (points.isEmpty()) {
            return;
        }
        ChartStyle.marks(chart, name, points, colour);
        unlisted(chart, name);
    }

    /** Marks told apart from the usual ones by shape and colour. */
    static void diamonds(XYChart chart, String name, Points points) {
        ChartStyle.marks(chart, name, points, ChartStyle.VERMILION);
        Optional.ofNullable(chart.getSeriesMap().get(name))
                .ifPresent(series -> series.setMarker(SeriesMarkers.DIAMOND));
    }

    /** Takes a series out of the legend: what its neighbour there says is enough. */
    static void unlisted(XYChart chart, String name) {
        Optional.ofNullable(chart.getSeriesMap().get(name))
                .ifPresent(series -> series.setShowInLegend(false));
    }
}
