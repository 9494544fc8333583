package pairdown.report;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.knowm.xchart.XYChart;

/**
 * What a chart's upward axis says of what is drawn. The library looks for steps until no two labels
 * are alike, for ever if need be: a scale must give each value a label of its own.
 */
enum ChartScale {
    /** Drawn by the exponent of 2: one up is twice as much. */
    DOUBLING,
    /** Drawn downwards. */
    DOWN;

    double drawn(double value) {
        return switch (this) {
            case DOUBLING -> Math.log(value) / Math.log(2);
            case DOWN -> -value;
        };
    }

    private double said(double drawn) {
        return switch (this) {
            case DOUBLING -> Math.pow(2, drawn);
            case DOWN -> drawn == 0 ? 0 : -drawn;
        };
    }

    void label(XYChart chart, Locale locale) {
        DecimalFormat format =
                new DecimalFormat(ChartStyle.NUMBERS, DecimalFormatSymbols.getInstance(locale));
        chart.getStyler().setyAxisTickLabelsFormattingFunction(drawn -> format.format(said(drawn)));
    }
}
