package pairdown.motion;

/**
 * The smoothed covariance of one axis at an instant, as far as anyone asks.
 *
 * @param position_m2 variance of position
 * @param bias_m2 variance of the receiver's own slow bias
 * @param shape_m2 variance of position plus bias: the track as the receiver draws it
 * @param velocity_m2ps2 variance of velocity
 * @param positionVelocity_m2ps covariance of position and velocity
 * @param acceleration_m2ps4 variance of acceleration
 */
record AxisCovariance(
        double position_m2,
        double bias_m2,
        double shape_m2,
        double velocity_m2ps2,
        double positionVelocity_m2ps,
        double acceleration_m2ps4) {

    /** {@code P − P Λ P}. */
    static AxisCovariance of(AxisFilter f, AxisAdjoint back) {
        double[] rowP = {f.pp, f.pv, f.pa, f.pb};
        double[] rowV = {f.pv, f.vv, f.va, f.vb};
        double[] rowA = {f.pa, f.va, f.aa, f.ab};
        double[] rowB = {f.pb, f.vb, f.ab, f.bb};
        double pp = f.pp - product(rowP, back, rowP);
        double bb = f.bb - product(rowB, back, rowB);
        double pb = f.pb - product(rowP, back, rowB);
        return new AxisCovariance(
                Math.max(0, pp),
                Math.max(0, bb),
                Math.max(0, pp + 2 * pb + bb),
                Math.max(0, f.vv - product(rowV, back, rowV)),
                f.pv - product(rowP, back, rowV),
                Math.max(0, f.aa - product(rowA, back, rowA)));
    }

    private static double product(double[] x, AxisAdjoint m, double[] y) {
        return x[0] * (m.m00 * y[0] + m.m01 * y[1] + m.m02 * y[2] + m.m03 * y[3])
                + x[1] * (m.m01 * y[0] + m.m11 * y[1] + m.m12 * y[2] + m.m13 * y[3])
                + x[2] * (m.m02 * y[0] + m.m12 * y[1] + m.m22 * y[2] + m.m23 * y[3])
                + x[3] * (m.m03 * y[0] + m.m13 * y[1] + m.m23 * y[2] + m.m33 * y[3]);
    }
}
