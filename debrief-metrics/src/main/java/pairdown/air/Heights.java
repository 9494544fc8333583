package pairdown.air;

import pairdown.geodesy.LocalFrame;

/** Heights above the ellipsoid of places in a local frame. */
final class Heights {
    /** Mean radius of the Earth, for how far the ground falls away from a level plane. */
    private static final double EARTH_RADIUS_M = 6_371_000;

    private Heights() {}

    /**
     * Height above the ellipsoid of east, north, up in {@code values[0..2]}. Second order in the
     * distance; good to 0.1 m at 30 km.
     */
    static double ellipsoid_m(LocalFrame frame, double[] values) {
        double level2 = values[0] * values[0] + values[1] * values[1];
        double origin_m = frame.origin().height_m();
        return origin_m + values[2] + level2 / (2 * (EARTH_RADIUS_M + origin_m + values[2]));
    }
}
