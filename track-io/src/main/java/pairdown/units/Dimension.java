package pairdown.units;

/**
 * What a quantity measures; its base unit is the one every field of this dimension is computed in.
 */
public enum Dimension {
    LENGTH,
    SPEED,
    TIME,
    ANGLE,
    PRESSURE,
    TEMPERATURE,
    MASS,
    SHARE
}
