package pairdown.units;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a quantity as a person types it: {@code "85 mph"}, {@code "3500 ft/min"}, {@code "-2.4 s"}.
 */
public final class Quantity {
    private static final Pattern TYPED =
            Pattern.compile(
                    "\\s*([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*?)\\s*");

    private Quantity() {}

    /**
     * The quantity in the base unit of its dimension. A bare number is taken to be in the base
     * unit.
     *
     * @throws IllegalArgumentException if the text is no number with a known unit of that
     *     dimension; the message lists the known units
     */
    public static double parse(String text, Dimension dimension) {
        Typed typed = typed(text, dimension);
        return typed.unit.toBase(typed.value);
    }

    /**
     * A difference of two quantities in the base unit: {@code "9 F"} is 5 °C of difference. Else as
     * {@link #parse}.
     */
    public static double parseDifference(String text, Dimension dimension) {
        Typed typed = typed(text, dimension);
        return typed.unit.toBase(typed.value) - typed.unit.toBase(0);
    }

    private record Typed(double value, Unit unit) {}

    private static Typed typed(String text, Dimension dimension) {
        Matcher typed = TYPED.matcher(text);
        if (!typed.matches()) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "'%s' is not a number with a unit (known units: %s)",
                            text,
                            Unit.symbolsOf(dimension)));
        }
        double value = Double.parseDouble(typed.group(1));
        String symbol = typed.group(2);
        if (symbol.isEmpty()) {
            return new Typed(value, Unit.baseOf(dimension));
        }
        Optional<Unit> unit = Unit.ofSymbol(symbol);
        if (unit.isEmpty()) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "unknown unit '%s' in '%s' (known units: %s)",
                            symbol,
                            text,
                            Unit.allSymbols()));
        }
        if (unit.get().dimension() != dimension) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "'%s' is no %s (units of that kind: %s)",
                            text,
                            dimension.name().toLowerCase(Locale.ROOT),
                            Unit.symbolsOf(dimension)));
        }
        return new Typed(value, unit.get());
    }
}
