package pairdown.words;

import pairdown.units.Unit;

/**
 * A set of units that a person reads figures in. One press goes to the next set; single kinds can
 * be switched too.
 *
 * @param airspeed of speeds through the air and over ground
 * @param sink of speeds downwards
 * @param height of heights above a datum
 * @param distance of distances between bodies
 * @param closure of speeds of one body against another
 */
public record Units(Unit airspeed, Unit sink, Unit height, Unit distance, Unit closure) {
    /** Miles an hour and feet, closure in metres per second. */
    public static final Units MILES =
            new Units(
                    Unit.MILE_PER_HOUR,
                    Unit.FOOT_PER_MINUTE,
                    Unit.FOOT,
                    Unit.METRE,
                    Unit.METRE_PER_SECOND);

    /** Knots and feet throughout. */
    public static final Units KNOTS =
            new Units(Unit.KNOT, Unit.FOOT_PER_MINUTE, Unit.FOOT, Unit.FOOT, Unit.KNOT);

    /** Kilometres an hour and metres. */
    public static final Units METRIC =
            new Units(
                    Unit.KILOMETRE_PER_HOUR,
                    Unit.METRE_PER_SECOND,
                    Unit.METRE,
                    Unit.METRE,
                    Unit.METRE_PER_SECOND);

    /** The next ready-made set; after a set of one's own, the first. */
    public Units next() {
        if (equals(MILES)) {
            return KNOTS;
        }
        return equals(KNOTS) ? METRIC : MILES;
    }

    /** The same with the next airspeed unit: mph, kt, km/h, m/s. */
    public Units withNextAirspeed() {
        Unit next =
                switch (airspeed) {
                    case MILE_PER_HOUR -> Unit.KNOT;
                    case KNOT -> Unit.KILOMETRE_PER_HOUR;
                    case KILOMETRE_PER_HOUR -> Unit.METRE_PER_SECOND;
                    default -> Unit.MILE_PER_HOUR;
                };
        return new Units(next, sink, height, distance, closure);
    }

    /** The same with sink in feet per minute or metres per second, whichever it is not. */
    public Units withOtherSink() {
        Unit other = sink == Unit.FOOT_PER_MINUTE ? Unit.METRE_PER_SECOND : Unit.FOOT_PER_MINUTE;
        return new Units(airspeed, other, height, distance, closure);
    }

    /** The same with heights in feet or metres, whichever they are not. */
    public Units withOtherHeight() {
        return new Units(airspeed, sink, otherLength(height), distance, closure);
    }

    /** The same with distances in metres or feet and closure in m/s or knots to match. */
    public Units withOtherDistance() {
        Unit other = otherLength(distance);
        Unit rate = other == Unit.METRE ? Unit.METRE_PER_SECOND : Unit.KNOT;
        return new Units(airspeed, sink, height, other, rate);
    }

    private static Unit otherLength(Unit length) {
        return length == Unit.FOOT ? Unit.METRE : Unit.FOOT;
    }

    /** The unit of a measure in this set. */
    public Unit of(Measure measure) {
        return switch (measure) {
            case AIRSPEED -> airspeed;
            case SINK -> sink;
            case HEIGHT -> height;
            case DISTANCE -> distance;
            case CLOSURE -> closure;
            case DURATION, OFFSET -> Unit.SECOND;
            case ANGLE, TURN_RATE -> Unit.DEGREE;
            case SHARE, RATIO -> Unit.PERCENT;
        };
    }
}
