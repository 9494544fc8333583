package pairdown.report;

import java.util.function.ToDoubleFunction;
import org.knowm.xchart.XYChart;
import pairdown.season.Repeatability.Quantity;
import pairdown.season.Repeatability.Run;
import pairdown.season.SeasonSettings;
import pairdown.stats.IndividualsChart;
import pairdown.stats.Survival;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** Pictures of the descents: runs with their limits, and the time to stabilise. */
final class SeasonDiveCharts {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 300;

    /** Room beside the first and last attempt. */
    private static final double MARGIN = 0.6;

    private final SeasonBuilder page;
    private final Words words;
    private final Figures figures;

    SeasonDiveCharts(SeasonBuilder page) {
        this.page = page;
        this.words = page.words();
        this.figures = page.figures();
    }

    private static Measure measure(Quantity quantity) {
        return switch (quantity) {
            case TIME_TO_STABILISE -> Measure.DURATION;
            case AIRSPEED_SPREAD -> Measure.AIRSPEED;
            case PEAK_ELEVATOR -> Measure.SHARE;
        };
    }

    /** One figure over the dives, with its mean and, from enough dives on, its limits. */
    XYChart run(Run run) {
        Measure measure = measure(run.quantity());
        XYChart chart =
                ChartStyle.chart(
                        WIDTH,
                        HEIGHT,
                        words.get("seasonPage.axis.attempt"),
                        words.get("seasonPage.run." + run.quantity().key())
                                + " ("
                                + figures.symbol(measure)
                                + ")",
                        words.locale());
        IndividualsChart individuals = run.chart();
        Points values = new Points();
        Points held = new Points();
        Points missed = new Points();
        for (int i = 0; i < individuals.values().size(); i++) {
            double value = figures.shown(measure, individuals.values().get(i));
            values.add(number(run, i), value);
            boolean isHeld = run.dives().get(i).descentHeld().orElse(false);
            (isHeld ? held : missed).add(number(run, i), value);
        }
        double first = number(run, 0) - MARGIN;
        double last = number(run, individuals.values().size() - 1) + MARGIN;
        ChartStyle.line(
                chart,
                words.get("seasonPage.series.dives"),
                values,
                ChartStyle.BLACK,
                ChartStyle.THIN);
        ChartAreas.unlisted(chart, words.get("seasonPage.series.dives"));
        ChartStyle.marks(chart, words.get("seasonPage.series.dive"), held, ChartStyle.BLACK);
        ChartAreas.diamonds(chart, words.get("seasonPage.series.missed"), missed);
        individuals
                .limits()
                .ifPresent(
                        l -> {
                            Points mean =
                                    level(first, last, figures.shown(measure, individuals.mean()));
                            ChartStyle.line(
                                    chart,
                                    words.get("seasonPage.series.mean"),
                                    mean,
                                    ChartStyle.BLUE,
                                    ChartStyle.THIN);
                            Points limits = level(first, last, figures.shown(measure, l.high()));
                            limits.add(last, Double.NaN);
                            limits.add(first, figures.shown(measure, Math.max(0, l.low())));
                            limits.add(last, figures.shown(measure, Math.max(0, l.low())));
                            ChartStyle.line(
                                    chart,
                                    words.get("seasonPage.series.limits"),
                                    limits,
                                    ChartStyle.VERMILION,
                                    ChartStyle.DASHED);
                        });
        chart.getStyler().setXAxisMin(first).setXAxisMax(last);
        chart.getStyler().setXAxisDecimalPattern("0");
        chart.getStyler().setYAxisMin(0.0);
        return chart;
    }

    private static Points level(double from, double to, double y) {
        Points p = new Points();
        p.add(from, y);
        p.add(to, y);
        return p;
    }

    private double number(Run run, int i) {
        return page.number(run.dives().get(i).folder());
    }

    /** The share of dives not yet steady, falling with the time since the trigger. */
    XYChart survival(Survival survival) {
        XYChart chart =
                ChartStyle.chart(
                        WIDTH,
                        HEIGHT,
                        words.get("seasonPage.axis.sinceTrigger"),
                        words.get("seasonPage.axis.notYet"),
                        words.locale());
        double end_s = survival.longest_s();
        ChartAreas.area(
                chart, words.get("seasonPage.series.interval"), band(survival), ChartStyle.BAND);
        ChartStyle.line(
                chart,
                words.get("seasonPage.series.notYet"),
                stairs(survival, Survival.Step::surviving),
                ChartStyle.BLACK,
                ChartStyle.SOLID);
        ChartStyle.line(
                chart,
                words.get("seasonPage.series.half"),
                level(0, end_s, 50),
                ChartStyle.GREY,
                ChartStyle.DOTTED);
        chart.getStyler().setYAxisMin(0.0).setYAxisMax(100.0);
        chart.getStyler()
                .setXAxisMin(0.0)
                .setXAxisMax(Math.max(1, Math.min(end_s, drawn_s(survival))));
        return chart;
    }

    /** As long again as the last of the events took: what follows is level. */
    private static double drawn_s(Survival survival) {
        return survival.steps().stream()
                .mapToDouble(s -> 2 * s.time_s())
                .max()
                .orElse(survival.longest_s());
    }

    /** A share that holds from each step to the next, in percent. */
    private static Points stairs(Survival survival, ToDoubleFunction<Survival.Step> share) {
        Points stairs = new Points();
        double level = 100;
        stairs.add(0, level);
        for (Survival.Step s : survival.steps()) {
            stairs.add(s.time_s(), level);
            level = 100 * share.applyAsDouble(s);
            stairs.add(s.time_s(), level);
        }
        stairs.add(survival.longest_s(), level);
        return stairs;
    }

    private static Points band(Survival survival) {
        double confidence = SeasonSettings.DEFAULT.confidence();
        Points low = stairs(survival, s -> Survival.interval(s, confidence).low());
        Points high = stairs(survival, s -> Survival.interval(s, confidence).high());
        Points band = new Points();
        for (int i = 0; i < low.x().size(); i++) {
            band.add(low.x().get(i), low.y().get(i));
        }
        for (int i = high.x().size() - 1; i >= 0; i--) {
            band.add(high.x().get(i), high.y().get(i));
        }
        return band;
    }
}
