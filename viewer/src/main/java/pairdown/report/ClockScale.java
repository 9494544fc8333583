package pairdown.report;

import java.util.function.DoubleUnaryOperator;
import org.knowm.xchart.XYChart;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.words.Figures;

/**
 * Time of day along a chart's foot, as the tables beside it have it: drawn by seconds of the day,
 * or by its minutes, so that the library's round steps are round times.
 */
final class ClockScale {
    private static final double DAY_S = 86_400;
    private static final double MINUTE_S = 60;

    /** A time of day is wide: fewer of them fit than of bare numbers (px). */
    private static final int APART = 110;

    /** Longer steps of round seconds are odd times: 50 s, 100 s. */
    private static final double LONGEST_OF_SECONDS_S = 20;

    /**
     * What lasts less is labelled in tenths (s): the library looks for steps until no two labels
     * are alike, for ever if need be.
     */
    private static final double SHORT_S = 20;

    private final TimeAxis axis;
    private final Figures figures;
    private final double midnight_s;
    private final double unit_s;
    private final int decimals;

    /**
     * @param shown how long what is drawn lasts
     * @param width of the chart (px)
     */
    ClockScale(TimeAxis axis, Figures figures, Span shown, int width) {
        this.axis = axis;
        this.figures = figures;
        double epoch_s = axis.epoch().toEpochMilli() / 1e3;
        this.midnight_s = Math.floor(epoch_s / DAY_S) * DAY_S - epoch_s;
        double step_s = shown.duration_s() * APART / width;
        this.unit_s = step_s <= LONGEST_OF_SECONDS_S ? 1 : MINUTE_S;
        this.decimals = shown.duration_s() < SHORT_S ? 1 : 0;
    }

    /** Where an instant lies along the chart. */
    double drawn(double t_s) {
        return (t_s - midnight_s) / unit_s;
    }

    /** A function over time, drawn between two instants. */
    Points points(double from_s, double to_s, DoubleUnaryOperator value) {
        return Points.of(from_s, to_s, value, this::drawn);
    }

    void label(XYChart chart) {
        chart.getStyler().setxAxisTickLabelsFormattingFunction(this::said);
        chart.getStyler().setXAxisTickMarkSpacingHint(APART);
    }

    /** What stands at a place along the chart. */
    String said(double drawn) {
        return figures.clock(axis, drawn * unit_s + midnight_s, decimals);
    }
}
