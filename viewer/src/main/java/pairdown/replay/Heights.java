package pairdown.replay;

import java.util.OptionalDouble;
import pairdown.attempt.BreakOff;
import pairdown.debrief.Debrief;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Geoid;
import pairdown.geodesy.Wgs84;

/**
 * Heights as the team reads them: above the datum its break-off height is given in, else above mean
 * sea level (EGM96). Within 30 km of the frame's origin exact to a decimetre: the ellipsoid is
 * taken as a ball of its semi-major axis and the geoid as level.
 */
public final class Heights {
    /** The datum's name on screen. */
    private final String datum;

    private final double zero_m;
    private final OptionalDouble breakOff_m;

    private Heights(String datum, double zero_m, OptionalDouble breakOff_m) {
        this.datum = datum;
        this.zero_m = zero_m;
        this.breakOff_m = breakOff_m;
    }

    public static Heights of(Debrief debrief) {
        Geodetic origin = debrief.frame().origin();
        BreakOff.Datum datum =
                debrief.attempt()
                        .limits()
                        .breakOff()
                        .map(BreakOff::datum)
                        .orElse(BreakOff.Datum.MSL);
        double field_m = debrief.attempt().limits().breakOff().map(BreakOff::field_m).orElse(0.0);
        double geoid_m = Geoid.egm96().undulation_m(origin.latitude_deg(), origin.longitude_deg());
        OptionalDouble breakOff_m =
                debrief.attempt().limits().breakOff().stream()
                        .mapToDouble(BreakOff::height_m)
                        .findFirst();
        return switch (datum) {
            case MSL -> new Heights("MSL", origin.height_m() - geoid_m, breakOff_m);
            case ELLIPSOID -> new Heights("ellipsoid", origin.height_m(), breakOff_m);
            case AGL -> new Heights("AGL", origin.height_m() - geoid_m - field_m, breakOff_m);
        };
    }

    /** The datum's name. */
    public String datum() {
        return datum;
    }

    /** The break-off height above the datum; empty where none was set. */
    public OptionalDouble breakOff_m() {
        return breakOff_m;
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
