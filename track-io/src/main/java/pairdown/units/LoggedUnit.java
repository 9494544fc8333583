package pairdown.units;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A unit as loggers write it in a header: {@code kts}, {@code km/h}, {@code degC}, {@code m/s2}.
 * Wider than {@link Unit}, which is what people type.
 *
 * @param measure what it measures
 * @param factor base value for one of this unit
 * @param offset base value at zero
 */
public record LoggedUnit(Measure measure, double factor, double offset) {
    /** What a column can measure; base units are those of the channels' names. */
    public enum Measure {
        LENGTH,
        SPEED,
        TIME,
        ANGLE,
        PRESSURE,
        TEMPERATURE,
        SHARE,
        /** Base: degree per second. */
        ANGULAR_RATE,
        /** Base: multiples of standard gravity. */
        LOAD,
        /** Base: revolutions per minute. */
        ROTATION
    }

    /** Standard gravity, m/s², exact (ISO 80000-3; NIST SP 811 B.8). */
    private static final double STANDARD_GRAVITY_MPS2 = 9.80665;

    private static final double KELVIN_AT_0_C = 273.15;
    private static final Map<String, LoggedUnit> SPELLINGS = new HashMap<>();

    static {
        like(Unit.METRE, "m", "meter", "meters", "metre", "metres");
        like(Unit.FOOT, "ft", "feet", "foot");
        like(Unit.KILOMETRE, "km", "kilometers", "kilometres");
        like(Unit.NAUTICAL_MILE, "nm", "nmi");
        like(Unit.MILE, "mi", "miles");
        put(Measure.LENGTH, 0.01, 0, "cm");
        put(Measure.LENGTH, 0.001, 0, "mm");
        like(Unit.METRE_PER_SECOND, "m/s", "mps", "ms-1", "m/sec", "m s-1");
        like(Unit.KILOMETRE_PER_HOUR, "km/h", "kmh", "kph", "kmph", "km/hr");
        like(Unit.KNOT, "kt", "kts", "kn", "knot", "knots");
        like(Unit.MILE_PER_HOUR, "mph", "mi/h");
        like(Unit.FOOT_PER_MINUTE, "ft/min", "fpm", "ftmin");
        put(Measure.SPEED, Unit.FOOT.toBase(1), 0, "ft/s", "fps");
        put(Measure.SPEED, 0.01, 0, "cm/s");
        put(Measure.SPEED, 0.001, 0, "mm/s");
        like(Unit.SECOND, "s", "sec", "secs", "second", "seconds");
        like(Unit.MILLISECOND, "ms", "msec", "millis", "millisecond", "milliseconds");
        like(Unit.MINUTE, "min", "minute", "minutes");
        put(Measure.TIME, 1e-6, 0, "us", "\u00b5s", "\u03bcs", "microseconds");
        put(Measure.TIME, 1e-9, 0, "ns", "nanoseconds");
        like(Unit.DEGREE, "deg", "degs", "degree", "degrees", "\u00b0", "deg true", "degt");
        put(Measure.ANGLE, Math.toDegrees(1), 0, "rad", "radian", "radians");
        put(Measure.ANGLE, 1e-7, 0, "e7", "deg e7", "dege7", "1e-7 deg");
        like(Unit.HECTOPASCAL, "hpa", "mbar", "mb", "millibar");
        put(Measure.PRESSURE, 0.01, 0, "pa");
        put(Measure.PRESSURE, 10, 0, "kpa");
        like(Unit.INCH_OF_MERCURY, "inhg", "in hg", "in.hg");
        like(Unit.CELSIUS, "c", "\u00b0c", "degc", "deg c", "celsius");
        like(Unit.FAHRENHEIT, "f", "\u00b0f", "degf", "deg f", "fahrenheit");
        put(Measure.TEMPERATURE, 1, -KELVIN_AT_0_C, "k", "kelvin");
        like(Unit.PERCENT, "%", "pct", "percent", "pc");
        put(Measure.ANGULAR_RATE, 1, 0, "deg/s", "dps", "deg/sec", "\u00b0/s", "degrees/s");
        put(Measure.ANGULAR_RATE, Math.toDegrees(1), 0, "rad/s", "rps");
        put(Measure.LOAD, 1, 0, "g", "gs");
        put(
                Measure.LOAD,
                1 / STANDARD_GRAVITY_MPS2,
                0,
                "m/s2",
                "m/s^2",
                "m/s\u00b2",
                "mps2",
                "m/s/s");
        put(Measure.ROTATION, 1, 0, "rpm", "1/min", "r/min");
    }

    private static void like(Unit unit, String... spellings) {
        double offset = unit.toBase(0);
        put(Measure.valueOf(unit.dimension().name()), unit.toBase(1) - offset, offset, spellings);
    }

    private static void put(Measure measure, double factor, double offset, String... spellings) {
        for (String spelling : spellings) {
            SPELLINGS.put(spelling, new LoggedUnit(measure, factor, offset));
        }
    }

    /** The unit spelt so, in any case and with blanks around it. */
    public static Optional<LoggedUnit> of(String spelling) {
        String plain = spelling.strip().toLowerCase(Locale.ROOT).replace('\u00ba', '\u00b0');
        return Optional.ofNullable(SPELLINGS.get(plain));
    }

    public double toBase(double value) {
        return value * factor + offset;
    }
}
