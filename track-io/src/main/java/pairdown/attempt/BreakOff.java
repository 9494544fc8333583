package pairdown.attempt;

/**
 * The height by which flyers leave the formation.
 *
 * @param height_m above the datum
 * @param datum what it is measured from
 * @param field_m the field's elevation above mean sea level, for {@link Datum#AGL}; else 0
 */
public record BreakOff(double height_m, Datum datum, double field_m) {
    /** What a typed height is measured from. */
    public enum Datum {
        MSL,
        AGL,
        ELLIPSOID
    }
}
