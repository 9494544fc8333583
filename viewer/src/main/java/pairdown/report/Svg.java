package pairdown.report;

import org.knowm.xchart.internal.chartpart.Chart;

/** Renders charts as SVG elements to be set into a page. */
final class Svg {
    private Svg() {}

    /**
     * The chart as one {@code <svg>} element.
     *
     * @param name unique within the page: begins the ids inside
     * @param label what a screen reader says
     * @param outlines of the page's lettering
     */
    static String of(Chart<?, ?> chart, String name, String label, Outlines outlines) {
        SvgPen pen = new SvgPen(name, outlines);
        chart.paint(pen, chart.getWidth(), chart.getHeight());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 "
                + chart.getWidth()
                + " "
                + chart.getHeight()
                + "\" aria-label=\""
                + escaped(label)
                + "\">"
                + pen.drawn()
                + "</svg>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
