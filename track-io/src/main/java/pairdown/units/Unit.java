package pairdown.units;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A unit of measurement with its exact relation to the base unit of its dimension: {@code base =
 * value × factor + offset}. Base units are metre, metre per second, second, degree of arc,
 * hectopascal, degree Celsius, kilogram and percent.
 *
 * <p>Sources: foot, mile, nautical mile, knot and pound after NIST SP 811 (2008) appendix B.8; inch
 * of mercury the conventional value at 0 °C, same source.
 */
public enum Unit {
    METRE("m", Dimension.LENGTH, 1),
    FOOT("ft", Dimension.LENGTH, Constants.FOOT_M),
    KILOMETRE("km", Dimension.LENGTH, 1000),
    NAUTICAL_MILE("NM", Dimension.LENGTH, Constants.NAUTICAL_MILE_M),
    MILE("mi", Dimension.LENGTH, Constants.MILE_M),
    METRE_PER_SECOND("m/s", Dimension.SPEED, 1),
    KILOMETRE_PER_HOUR("km/h", Dimension.SPEED, 1 / 3.6),
    KNOT("kt", Dimension.SPEED, Constants.NAUTICAL_MILE_M / Constants.HOUR_S),
    MILE_PER_HOUR("mph", Dimension.SPEED, Constants.MILE_M / Constants.HOUR_S),
    FOOT_PER_MINUTE("ft/min", Dimension.SPEED, Constants.FOOT_M / 60),
    SECOND("s", Dimension.TIME, 1),
    MINUTE("min", Dimension.TIME, 60),
    MILLISECOND("ms", Dimension.TIME, 1e-3),
    DEGREE("deg", Dimension.ANGLE, 1),
    HECTOPASCAL("hPa", Dimension.PRESSURE, 1),
    INCH_OF_MERCURY("inHg", Dimension.PRESSURE, 33.86389),
    CELSIUS("C", Dimension.TEMPERATURE, 1),
    FAHRENHEIT("F", Dimension.TEMPERATURE, 5.0 / 9.0, -160.0 / 9.0),
    KILOGRAM("kg", Dimension.MASS, 1),
    POUND("lb", Dimension.MASS, 0.45359237),
    PERCENT("%", Dimension.SHARE, 1);

    private static final class Constants {
        static final double FOOT_M = 0.3048;
        static final double NAUTICAL_MILE_M = 1852;
        static final double MILE_M = 1609.344;
        static final double HOUR_S = 3600;
    }

    private final String symbol;
    private final Dimension dimension;
    private final double factor;
    private final double offset;

    Unit(String symbol, Dimension dimension, double factor) {
        this(symbol, dimension, factor, 0);
    }

    Unit(String symbol, Dimension dimension, double factor, double offset) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor;
        this.offset = offset;
    }

    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The value in the base unit of this unit's dimension. */
    public double toBase(double value) {
        return value * factor + offset;
    }

    /** The value in this unit of a quantity given in the base unit. */
    public double fromBase(double base) {
        return (base - offset) / factor;
    }

    /** The unit written exactly so, case included: {@code "ft/min"}, {@code "NM"}. */
    public static Optional<Unit> ofSymbol(String symbol) {
        return Arrays.stream(values()).filter(u -> u.symbol.equals(symbol)).findFirst();
    }

    /** The unit everything of this dimension is computed in. */
    public static Unit baseOf(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> METRE;
            case SPEED -> METRE_PER_SECOND;
            case TIME -> SECOND;
            case ANGLE -> DEGREE;
            case PRESSURE -> HECTOPASCAL;
            case TEMPERATURE -> CELSIUS;
            case MASS -> KILOGRAM;
            case SHARE -> PERCENT;
        };
    }

    /** All symbols of one dimension, for messages. */
    public static String symbolsOf(Dimension dimension) {
        return Arrays.stream(values())
                .filter(u -> u.dimension == dimension)
                .map(Unit::symbol)
                .collect(Collectors.joining(", "));
    }

    /** All known symbols, for messages. */
    public static String allSymbols() {
        return Arrays.stream(values()).map(Unit::symbol).collect(Collectors.joining(", "));
    }
}
