package pairdown.demo.physics;

/**
 * The exit aircraft.
 *
 * @param exitAirspeed_mps true airspeed on the run and at exit
 * @param exitHeight_m above mean sea level
 */
public record ShipPlan(String id, Kind kind, double exitAirspeed_mps, double exitHeight_m) {
    /** What it is: how fast it climbs and how it wanders. */
    public enum Kind {
        HELICOPTER,
        TWIN
    }

    /** 12,000 ft: from there the target is within the tail's reach on a standard day. */
    public static final double USUAL_HEIGHT_M = 3657.6;

    /** A helicopter at 60 kt. */
    public static final ShipPlan HELICOPTER =
            new ShipPlan("ship", Kind.HELICOPTER, 30.9, USUAL_HEIGHT_M);

    /** A twin at 105 kt. */
    public static final ShipPlan TWIN = new ShipPlan("ship", Kind.TWIN, 54.0, USUAL_HEIGHT_M);

    public ShipPlan {
        double most_mps = kind == Kind.HELICOPTER ? 39 : 65;
        double least_mps = kind == Kind.HELICOPTER ? 15 : 40;
        if (exitAirspeed_mps < least_mps || exitAirspeed_mps > most_mps) {
            throw new IllegalArgumentException(
                    "exit airspeed "
                            + exitAirspeed_mps
                            + " m/s is outside "
                            + least_mps
                            + " to "
                            + most_mps);
        }
    }

    public ShipPlan withExit(double airspeed_mps, double height_m) {
        return new ShipPlan(id, kind, airspeed_mps, height_m);
    }
}
