package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.GateHeld;
import pairdown.pair.MatchedWindow;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Line;
import pairdown.words.Measure;
import pairdown.words.Words;

/** Makes facts: text and origin together, so that neither can be had without the other. */
final class Facts {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)\\}");

    /** Of the second, in an instant of a log. */
    static final int CLOCK_DECIMALS = 1;

    /** An instant as uncertain as this is told to the second (s): its sigma is shown as 1.0. */
    private static final double WHOLE_FROM_S = 0.95;

    /** The least that two decimals tell. */
    private static final double LEAST_PROBABILITY = 0.01;

    private final TimeAxis axis;
    private final Words words;
    private final Figures figures;

    Facts(TimeAxis axis, Words words, Figures figures) {
        this.axis = axis;
        this.words = words;
        this.figures = figures;
    }

    Fact of(Measure measure, double value, String from) {
        return new Fact(figures.text(measure, value), from, "", measure.name());
    }

    Fact of(Measure measure, OptionalDouble value, String from) {
        return value.isPresent() ? of(measure, value.getAsDouble(), from) : missing();
    }

    /** With one standard deviation, which stands under its own name in the file. */
    Fact of(Measure measure, Estimate value, String from, String sigma) {
        return new Fact(figures.text(measure, value), from, sigma, measure.name());
    }

    Fact of(Measure measure, double value, OptionalDouble sigma, String from, String sigmaFrom) {
        return sigma.isPresent()
                ? of(measure, new Estimate(value, sigma.getAsDouble()), from, sigmaFrom)
                : of(measure, value, from);
    }

    /** With its sign even where positive. */
    Fact signed(Measure measure, double value, String from) {
        Line line = new Line();
        figures.addUnit(figures.addSigned(line, measure, value), measure);
        return new Fact(line.toString(), from, "", measure.name());
    }

    Fact signed(Measure measure, OptionalDouble value, String from) {
        return value.isPresent() ? signed(measure, value.getAsDouble(), from) : missing();
    }

    /** To the tenth of a second: no log's clock and no smoothing is better. */
    Fact clock(double t_s, String from) {
        return new Fact(figures.clock(axis, t_s, CLOCK_DECIMALS), from, "", Fact.TIME);
    }

    /** With as many decimals as its sigma, which stands under its own name, leaves. */
    Fact clock(double t_s, double sigma_s, String from, String sigmaFrom) {
        int decimals = sigma_s < WHOLE_FROM_S ? CLOCK_DECIMALS : 0;
        return new Fact(figures.clock(axis, t_s, decimals), from, sigmaFrom, Fact.TIME);
    }

    Fact clock(OptionalDouble t_s, String from) {
        return t_s.isPresent() ? clock(t_s.getAsDouble(), from) : missing();
    }

    /** A probability is never told as nothing. */
    Fact probability(double value, String from) {
        String shown =
                value < LEAST_PROBABILITY / 2
                        ? words.get(
                                "report.under", figures.number(Measure.RATIO, LEAST_PROBABILITY))
                        : figures.number(Measure.RATIO, value);
        return new Fact(shown, from, "", Fact.PROBABILITY);
    }

    /** A whole number, or how many entries a list has. */
    Fact count(long n, String from) {
        return new Fact(String.valueOf(n), from, "", Fact.COUNT);
    }

    /** A value whose unit its channel tells, to the whole number. */
    Fact bare(double value, String from) {
        String shown = figures.addPlain(new Line(), value, 0).toString();
        return new Fact(shown, from, "", Fact.BARE);
    }

    /** An instant's sigma, to the second where the instant is. */
    Prose clockSigma(double sigma_s, String from) {
        return sigma_s < WHOLE_FROM_S
                ? Prose.of(of(Measure.DURATION, sigma_s, from))
                : prose("report.seconds", Prose.of(bare(sigma_s, from)));
    }

    /** A value whose unit stands beside it, to the tenth. */
    Fact tenths(double value, String from) {
        return new Fact(String.format(words.locale(), "%.1f", value), from, "", Fact.TENTHS);
    }

    /** Without its sign, which the words around it tell. */
    Fact unsigned(Measure measure, double value, String from) {
        return of(measure, Math.abs(value), "|" + from);
    }

    /** From start to end of what stands there. */
    Fact duration(Span span, String from) {
        return of(Measure.DURATION, span.duration_s(), from + "/end -" + from + "/start");
    }

    /** The closing speed where it was furthest over its limit. */
    Fact worst(ClosureExceedance over, String at) {
        return of(Measure.CLOSURE, over.worst(), at + "/worst_mps", at + "/worstSigma_mps");
    }

    /** A gate's median gap with its sigma. */
    Fact medianGap(GateHeld g, String at) {
        return g.median_m().isPresent()
                ? of(
                        Measure.DISTANCE,
                        g.median_m().getAsDouble(),
                        g.medianSigma_m(),
                        at + "/median_m",
                        at + "/medianSigma_m")
                : missing();
    }

    /** A window's length with the rates in it one sigma larger and one smaller. */
    List<Fact> range(MatchedWindow w, String at) {
        String from = at + "/duration_s ";
        return List.of(
                of(
                        Measure.DURATION,
                        Math.max(0, w.duration_s() - w.shorter_s()),
                        from + "-" + at + "/shorter_s"),
                of(Measure.DURATION, w.duration_s() + w.longer_s(), from + "+" + at + "/longer_s"));
    }

    /** A text of the bundle with figures, or sentences of figures, in its places. */
    Prose prose(String key, Prose... values) {
        List<Fact> parts = new ArrayList<>();
        String text = words.get(key);
        Matcher place = PLACE.matcher(text);
        int from = 0;
        while (place.find()) {
            parts.add(Fact.words(text.substring(from, place.start())));
            parts.addAll(values[Integer.parseInt(place.group(1))].parts());
            from = place.end();
        }
        parts.add(Fact.words(text.substring(from)));
        return new Prose(parts);
    }

    /** The word for a key of the file. */
    Fact word(String prefix, String key, String from) {
        return new Fact(words.get(prefix + key), from, "", prefix);
    }

    Fact missing() {
        return Fact.missing(Figures.MISSING);
    }
}
