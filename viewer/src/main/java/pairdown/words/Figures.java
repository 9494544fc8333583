package pairdown.words;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.OptionalDouble;
import pairdown.time.TimeAxis;
import pairdown.units.Estimate;
import pairdown.units.Unit;

/**
 * Figures as a person reads them: in chosen units, with the locale's decimal sign and as many
 * decimals as the measurement can carry. Values come in SI. What is missing reads as {@link
 * #MISSING}, never as zero. The {@code add} methods write into a {@link Line} without allocation.
 */
public final class Figures {
    /** Stands where a figure can't be known. */
    public static final String MISSING = "–";

    /** Distances from here on are shown without decimals (m): receivers carry no more. */
    private static final double WHOLE_METRES_FROM_M = 100;

    private static final int DAY_S = 86_400;

    private final Units units;
    private final Locale locale;
    private final char point;

    public Figures(Units units, Locale locale) {
        this.units = units;
        this.locale = locale;
        this.point = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    }

    public Units units() {
        return units;
    }

    /** Whose decimal sign they have. */
    public Locale locale() {
        return locale;
    }

    /** A value with its unit: {@code "85 mph"}. */
    public String text(Measure measure, double value) {
        return add(new Line(), measure, value).toString();
    }

    public String text(Measure measure, OptionalDouble value) {
        return text(measure, value.orElse(Double.NaN));
    }

    /** A value with one standard deviation and its unit: {@code "12.1 ± 0.9 m"}. */
    public String text(Measure measure, Estimate value) {
        return add(new Line(), measure, value.value(), value.sigma()).toString();
    }

    /** A value without its unit. */
    public String number(Measure measure, double value) {
        return addNumber(new Line(), measure, value).toString();
    }

    public Line add(Line line, Measure measure, double value) {
        addNumber(line, measure, value);
        return Double.isNaN(value) ? line : addUnit(line, measure);
    }

    /** With sigma; without it where sigma is NaN. */
    public Line add(Line line, Measure measure, double value, double sigma) {
        if (Double.isNaN(value) || Double.isNaN(sigma)) {
            return add(line, measure, value);
        }
        addNumber(line, measure, value);
        return addUnit(addPlusMinus(line, measure, value, sigma), measure);
    }

    /** One sigma with as many decimals as its value: {@code " ± 0.9"}; nothing where it is NaN. */
    public Line addPlusMinus(Line line, Measure measure, double value, double sigma) {
        if (Double.isNaN(value) || Double.isNaN(sigma)) {
            return line;
        }
        line.add(" ± ");
        return line.addFixed(
                shown(measure, sigma) - shown(measure, 0), decimals(measure, value), point);
    }

    public Line addNumber(Line line, Measure measure, double value) {
        if (Double.isNaN(value)) {
            return line.add(MISSING);
        }
        return line.addFixed(shown(measure, value), decimals(measure, value), point);
    }

    /**
     * With an explicit plus on positive values: for differences and rates with a direction. What
     * rounds to nothing has no sign.
     */
    public Line addSigned(Line line, Measure measure, double value) {
        if (Line.rounds(shown(measure, value), decimals(measure, value)) > 0) {
            line.add('+');
        }
        return addNumber(line, measure, value);
    }

    /** A space and the unit's symbol; nothing for a ratio. */
    public Line addUnit(Line line, Measure measure) {
        String symbol = symbol(measure);
        return symbol.isEmpty() ? line : line.add(' ').add(symbol);
    }

    /** The unit's symbol as shown; empty for a ratio. */
    public String symbol(Measure measure) {
        return switch (measure) {
            case ANGLE -> "°";
            case TURN_RATE -> "°/s";
            case RATIO -> "";
            default -> units.of(measure).symbol();
        };
    }

    /** The number shown for an SI value. */
    public double shown(Measure measure, double value) {
        return measure == Measure.RATIO ? value : units.of(measure).fromBase(value);
    }

    /** The SI value of a number as shown: the way back from {@link #shown}. */
    public double fromShown(Measure measure, double number) {
        return measure == Measure.RATIO ? number : units.of(measure).toBase(number);
    }

    private int decimals(Measure measure, double value) {
        Unit unit = units.of(measure);
        return switch (measure) {
            case AIRSPEED, CLOSURE -> 1;
            case SINK -> unit == Unit.METRE_PER_SECOND ? 1 : 0;
            case DISTANCE -> unit == Unit.METRE && Math.abs(value) < WHOLE_METRES_FROM_M ? 1 : 0;
            case HEIGHT, SHARE, ANGLE -> 0;
            case DURATION, TURN_RATE -> 1;
            case RATIO, OFFSET -> 2;
        };
    }

    /** A bare number with the locale's decimal sign. */
    public Line addPlain(Line line, double number, int decimals) {
        return line.addFixed(number, decimals, point);
    }

    /** Time of day in UTC, to the millisecond: {@code "15:02:11.350"}. */
    public Line addClock(Line line, TimeAxis axis, double t_s) {
        return addClock(line, axis, t_s, 3);
    }

    /**
     * Time of day in UTC, rounded, with a point whatever the locale, as times of day are typed.
     *
     * @param decimals of the second, 0 to 3
     */
    public Line addClock(Line line, TimeAxis axis, double t_s, int decimals) {
        long scale = decimals == 0 ? 1 : decimals == 1 ? 10 : decimals == 2 ? 100 : 1000;
        double ofDay_s = Math.floorMod(axis.epoch().toEpochMilli(), DAY_S * 1000L) / 1e3 + t_s;
        long parts = Math.floorMod(Math.round(ofDay_s * scale), DAY_S * scale);
        long seconds = parts / scale;
        line.addPadded(seconds / 3600, 2).add(':').addPadded(seconds / 60 % 60, 2).add(':');
        line.addPadded(seconds % 60, 2);
        return decimals == 0 ? line : line.add('.').addPadded(parts % scale, decimals);
    }

    public String clock(TimeAxis axis, double t_s) {
        return addClock(new Line(), axis, t_s).toString();
    }

    /** The same with fewer decimals, as an instant's uncertainty has it. */
    public String clock(TimeAxis axis, double t_s, int decimals) {
        return addClock(new Line(), axis, t_s, decimals).toString();
    }
}
