package pairdown.scene;

import pairdown.attempt.BreakOff;
import pairdown.debrief.Debrief;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Wgs84;

/**
 * Heights as the team reads them: above the datum its break-off height is given in, else above mean
 * sea level. Within 30 km of the frame's origin exact to a decimetre: the ellipsoid is taken as a
 * ball of its semi-major axis and the geoid as level.
 */
public final class Heights {
    /** The datum's name on screen. */
    private final String datum;

    private final double zero_m;

    private Heights(String datum, double zero_m) {
        this.datum = datum;
        this.zero_m = zero_m;
    }

    /**
     * @param geoid_m height of mean sea level above the ellipsoid at the frame's origin
     */
    public static Heights of(Debrief debrief, double geoid_m) {
        Geodetic origin = debrief.frame().origin();
        BreakOff.Datum datum =
                debrief.attempt()
                        .limits()
                        .breakOff()
                        .map(BreakOff::datum)
                        .orElse(BreakOff.Datum.MSL);
        return switch (datum) {
            case MSL -> new Heights("MSL", origin.height_m() - geoid_m);
            case ELLIPSOID -> new Heights("ellipsoid", origin.height_m());
            case AGL ->
                    new Heights(
                            "AGL",
                            origin.height_m()
                                    - geoid_m
                                    - debrief.attempt()
                                            .limits()
                                            .breakOff()
                                            .orElseThrow()
                                            .field_m());
        };
    }

    /** The datum's name. */
    public String datum() {
        return datum;
    }

    /** Height above the datum (m) of a place in the attempt's frame. */
    public double height_m(double east_m, double north_m, double up_m) {
        return up_m + drop_m(east_m, north_m) + zero_m;
    }

    /** The way back: up (m) of a height at a place. */
    public double up_m(double east_m, double north_m, double height_m) {
        return height_m - zero_m - drop_m(east_m, north_m);
    }

    /** How far the level surface has sunk under the plane that touches it at the origin. */
    private static double drop_m(double east_m, double north_m) {
        return (east_m * east_m + north_m * north_m) / (2 * Wgs84.A_M);
    }
}
