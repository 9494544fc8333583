package pairdown.words;

/** What a shown figure measures: decides its unit in a {@link Units} set and its decimals. */
public enum Measure {
    /** Speed through the air or over ground (m/s inside). */
    AIRSPEED,
    /** Speed downwards (m/s inside). */
    SINK,
    /** Height above a datum (m inside). */
    HEIGHT,
    /** Distance between two bodies or to a slot (m inside). */
    DISTANCE,
    /** Speed of one body against another (m/s inside). */
    CLOSURE,
    /** A length of time (s). */
    DURATION,
    /** An error of a clock (s): to the hundredth. */
    OFFSET,
    /** A direction or an angle (degrees). */
    ANGLE,
    /** A rate of turn (degrees per second). */
    TURN_RATE,
    /** A part of a whole or of a travel (percent). */
    SHARE,
    /** A ratio without unit. */
    RATIO
}
