package pairdown.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler.LegendLayout;
import org.knowm.xchart.style.Styler.LegendPosition;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.theme.Palette;
import pairdown.words.Line;

/**
 * How every chart of the report looks: black on white, thin grid, and lines told apart by dash and
 * weight as well as by colour, so that a photocopy says the same.
 */
final class ChartStyle {
    /** Okabe and Ito's set for readers of every colour vision, dark enough for white paper. */
    static final Color BLACK = new Color(0x00, 0x00, 0x00);

    static final Color BLUE = new Color(0x00, 0x72, 0xB2);
    static final Color VERMILION = new Color(0xD5, 0x5E, 0x00);
    static final Color GREEN = new Color(0x00, 0x9E, 0x73);
    static final Color PURPLE = new Color(0xCC, 0x79, 0xA7);
    static final Color SKY = new Color(0x56, 0xB4, 0xE9);
    static final Color GREY = new Color(0x59, 0x59, 0x59);
    static final Color BAND = new Color(0xDD, 0xDD, 0xDD);

    /** The legend stands over the axis title's foot: what it does not draw it must not cover. */
    private static final Color NOTHING = new Color(255, 255, 255, 0);

    /** Width of a chart across the whole page, and a height that suits time along it. */
    static final int BROAD = 980;

    static final int LOW = 260;

    static final BasicStroke SOLID = line(2.2f);
    static final BasicStroke THIN = line(1.2f);
    private static final BasicStroke HAIR = new BasicStroke(0.8f);
    static final BasicStroke DASHED = line(2f, 8, 5);
    static final BasicStroke DOTTED = line(2f, 2, 4);

    /** Of a limit: heavier than what was flown. */
    static final BasicStroke LIMIT = line(3f, 10, 4);

    /** Of a kind with the PDF's lettering, and there whatever the machine has installed. */
    private static final Font LETTERING = lettering();

    private static final Color[] COLOURS = {BLUE, VERMILION, GREEN, PURPLE, SKY, BLACK};
    private static final BasicStroke[] STROKES = {
        SOLID, DASHED, DOTTED, line(2.2f, 12, 4, 2, 4), THIN, line(1.4f, 4, 4)
    };

    private static final int BAND_ALPHA = 60;
    private static final String NO_WIDTH = "\u200b";

    /** Negative ones with the sign that print has. */
    static final String NUMBERS = "#,##0.##;" + Line.MINUS + "#,##0.##";

    private ChartStyle() {}

    private static BasicStroke line(float width, float... dash) {
        return dash.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    private static Font lettering() {
        try (InputStream in = ReportPdf.open("/fonts/Inter-Regular.ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the program's own font can't be used", e);
        }
    }

    /** The colour of the n-th of several lines. */
    static Color colour(int n) {
        return COLOURS[n % COLOURS.length];
    }

    /** A participant's colour, the replay's: one whose name is a colour has that one. */
    static Color of(Debrief debrief, String participant) {
        List<String> ids =
                debrief.participants().stream()
                        .filter(p -> p.trajectory().isPresent())
                        .map(ParticipantDebrief::id)
                        .toList();
        int rgba = Palette.LIGHT.forNames(ids).participant(Math.max(0, ids.indexOf(participant)));
        return new Color(rgba >>> 8);
    }

    /** The look of the n-th of several lines of one colour. */
    static BasicStroke stroke(int n) {
        return STROKES[n % STROKES.length];
    }

    /**
     * An empty chart with axis titles.
     *
     * @param locale of the numbers along its axes
     */
    static XYChart chart(int width, int height, String x, String y, Locale locale) {
        XYChart chart =
                new XYChartBuilder()
                        .width(width)
                        .height(height)
                        .xAxisTitle(x)
                        .yAxisTitle(y)
                        .build();
        XYStyler s = chart.getStyler();
        s.setChartBackgroundColor(Color.WHITE);
        s.setPlotBackgroundColor(Color.WHITE);
        s.setPlotBorderColor(GREY);
        s.setPlotGridLinesColor(BAND);
        s.setPlotGridLinesStroke(HAIR);
        s.setLegendBorderColor(NOTHING);
        s.setLegendBackgroundColor(NOTHING);
        s.setLegendPadding(6);
        s.setLegendPosition(LegendPosition.OutsideS);
        s.setLegendLayout(LegendLayout.Horizontal);
        s.setAxisTitleFont(LETTERING.deriveFont(13f));
        s.setAxisTickLabelsFont(LETTERING.deriveFont(12f));
        s.setLegendFont(LETTERING.deriveFont(12f));
        s.setChartTitleVisible(false);
        s.setLocale(locale);
        s.setXAxisDecimalPattern(NUMBERS);
        s.setYAxisDecimalPattern(NUMBERS);
        s.setChartPadding(4);
        s.setXAxisMaxLabelCount(8);
        return chart;
    }

    /** The name, or one that looks alike where it is taken: somebody may be called "slot". */
    private static String free(XYChart chart, String name) {
        String free = name;
        while (chart.getSeriesMap().containsKey(free)) {
            free += NO_WIDTH;
        }
        return free;
    }

    /** Adds a line; nothing if it has no finite point. */
    static void line(XYChart chart, String name, Points points, Color colour, BasicStroke stroke) {
        if (points.isEmpty()) {
            return;
        }
        XYSeries series = chart.addSeries(free(chart, name), points.lineX(), points.lineY());
        series.setMarker(SeriesMarkers.NONE);
        series.setLineColor(colour);
        series.setLineStyle(stroke);
    }

    /** Adds a line in the look of the n-th of several. */
    static void line(XYChart chart, String name, Points points, int n) {
        line(chart, name, points, colour(n), stroke(n));
    }

    /** Adds a line that may have been there before: the legend names it once. */
    static void again(XYChart chart, String name, Points points, Color colour, BasicStroke stroke) {
        if (chart.getSeriesMap().containsKey(name)) {
            unnamed(chart, points, colour, stroke);
        } else {
            line(chart, name, points, colour, stroke);
        }
    }

    /** Adds a line that the legend does not name. */
    static void unnamed(XYChart chart, Points points, Color colour, BasicStroke stroke) {
        String name = NO_WIDTH.repeat(1 + chart.getSeriesMap().size());
        line(chart, name, points, colour, stroke);
        XYSeries added = chart.getSeriesMap().get(name);
        if (added != null) {
            added.setShowInLegend(false);
        }
    }

    /** Fills an outline, lightly enough to see what is under it. */
    static void band(XYChart chart, String name, Points outline, int n) {
        if (outline.isEmpty()) {
            return;
        }
        XYSeries series = chart.addSeries(free(chart, name), outline.x(), outline.y());
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
        series.setMarker(SeriesMarkers.NONE);
        Color c = colour(n);
        series.setFillColor(new Color(c.getRed(), c.getGreen(), c.getBlue(), BAND_ALPHA));
        series.setLineColor(new Color(c.getRed(), c.getGreen(), c.getBlue(), 0));
        series.setLineStyle(THIN);
    }

    /** Adds marks without a line. */
    static void marks(XYChart chart, String name, Points points, Color colour) {
        if (points.isEmpty()) {
            return;
        }
        XYSeries series = chart.addSeries(free(chart, name), points.x(), points.y());
        series.setLineStyle(
                new BasicStroke(
                        0,
                        BasicStroke.CAP_BUTT,
                        BasicStroke.JOIN_BEVEL,
                        1,
                        new float[] {0.01f, 1e6f},
                        0));
        series.setMarker(SeriesMarkers.CIRCLE);
        series.setMarkerColor(colour);
    }

    /** A level line across the chart, for a gate, a tolerance or a limit. */
    static void level(XYChart chart, String name, double from, double to, double y) {
        Points points = new Points();
        points.add(from, y);
        points.add(to, y);
        line(chart, name, points, GREY, DASHED);
    }
}
