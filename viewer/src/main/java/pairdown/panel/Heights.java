package pairdown.panel;

import java.util.OptionalDouble;
import pairdown.attempt.BreakOff;
import pairdown.debrief.Debrief;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Geoid;
import pairdown.geodesy.LocalFrame;

/**
 * Heights as the team speaks of them: above the datum of its break-off height, above mean sea level
 * (EGM96) where none was set. The undulation is taken once, at the attempt's origin; over the ten
 * kilometres of an attempt it changes by decimetres.
 */
final class Heights {
    private static final double EARTH_RADIUS_M = 6_371_000;

    private final double originHeight_m;
    private final double datum_m;
    private final BreakOff.Datum datum;
    private final OptionalDouble breakOff_m;

    private Heights(
            double originHeight_m,
            double datum_m,
            BreakOff.Datum datum,
            OptionalDouble breakOff_m) {
        this.originHeight_m = originHeight_m;
        this.datum_m = datum_m;
        this.datum = datum;
        this.breakOff_m = breakOff_m;
    }

    static Heights of(Debrief debrief) {
        LocalFrame frame = debrief.frame();
        Geodetic origin = frame.origin();
        BreakOff.Datum datum =
                debrief.attempt()
                        .limits()
                        .breakOff()
                        .map(BreakOff::datum)
                        .orElse(BreakOff.Datum.MSL);
        double field_m = debrief.attempt().limits().breakOff().map(BreakOff::field_m).orElse(0.0);
        double geoid_m = Geoid.egm96().undulation_m(origin.latitude_deg(), origin.longitude_deg());
        double datum_m =
                switch (datum) {
                    case ELLIPSOID -> 0;
                    case MSL -> geoid_m;
                    case AGL -> geoid_m + field_m;
                };
        OptionalDouble breakOff_m =
                debrief.attempt().limits().breakOff().stream()
                        .mapToDouble(BreakOff::height_m)
                        .findFirst();
        return new Heights(origin.height_m(), datum_m, datum, breakOff_m);
    }

    /**
     * Height above the datum of a place in the attempt's frame. The fall of the tangent plane is
     * taken off with a sphere: right to 0.2 m within 20 km.
     *
     * @param state east, north, up first
     */
    double of(double[] state) {
        return at(state[0], state[1], state[2]);
    }

    double at(double east_m, double north_m, double up_m) {
        double fall_m = (east_m * east_m + north_m * north_m) / (2 * EARTH_RADIUS_M);
        return originHeight_m + up_m + fall_m - datum_m;
    }

    /** The break-off height above the datum; empty where none was set. */
    OptionalDouble breakOff_m() {
        return breakOff_m;
    }

    /** What heights are measured from: a text's name. */
    String datumKey() {
        return switch (datum) {
            case MSL -> "height.msl";
            case AGL -> "height.agl";
            case ELLIPSOID -> "height.ellipsoid";
        };
    }
}
