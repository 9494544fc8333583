package pairdown.report;

import java.util.OptionalDouble;
import pairdown.time.TimeAxis;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Line;
import pairdown.words.Measure;
import pairdown.words.Words;

/** Makes facts: text and origin together, so that neither can be had without the other. */
final class Facts {
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

    Fact clock(double t_s, String from) {
        return new Fact(figures.clock(axis, t_s), from, "", Fact.TIME);
    }

    Fact clock(OptionalDouble t_s, String from) {
        return t_s.isPresent() ? clock(t_s.getAsDouble(), from) : missing();
    }

    /** A whole number, or how many entries a list has. */
    Fact count(long n, String from) {
        return new Fact(String.valueOf(n), from, "", Fact.COUNT);
    }

    /** The word for a key of the file. */
    Fact word(String prefix, String key, String from) {
        return new Fact(words.get(prefix + key), from, "", prefix);
    }

    Fact missing() {
        return Fact.missing(Figures.MISSING);
    }
}
