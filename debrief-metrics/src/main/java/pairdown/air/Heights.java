package pairdown.air;

import pairdown.geodesy.LocalFrame;
import pairdown.geodesy.Wgs84;

/** Heights above the ellipsoid of places in a local frame. */
final class Heights {
    private Heights() {}

    /**
     * Height above the ellipsoid of east, north, up in {@code values[0..2]}. Second order in the
     * distance; good to 0.1 m at 30 km.
     */
    static double ellipsoid_m(LocalFrame frame, double[] values) {
        double level2 = values[0] * values[0] + values[1] * values[1];
        double origin_m = frame.origin().height_m();
        return origin_m + values[2] + level2 / (2 * (Wgs84.MEAN_RADIUS_M + origin_m + values[2]));
    }
}
