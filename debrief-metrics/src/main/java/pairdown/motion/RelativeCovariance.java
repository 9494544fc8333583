package pairdown.motion;

import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * The covariance of flyer minus lead where no anchor helps, at an instant of the lead's clock: what
 * that is off tells the pair early or late; what the flyer's is off against it moves the flyer
 * along its path.
 */
record RelativeCovariance(Mat3 position_m2, Mat3 velocity_m2ps2) {

    /**
     * @param f flyer's values as {@link Trajectory#read} gives them
     */
    static RelativeCovariance at(
            ReferencePoint lead, ReferencePoint flyer, double t_s, double[] f) {
        double[] p = new double[Fixes.AXES];
        double[] v = new double[Fixes.AXES];
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            AxisCovariance a = lead.antenna().covariance(axis, t_s);
            AxisCovariance b = flyer.antenna().covariance(axis, t_s);
            p[axis] = a.position_m2() + b.position_m2() + arms(lead, flyer, t_s);
            v[axis] = a.velocity_m2ps2() + b.velocity_m2ps2();
        }
        p[2] += heights(lead, flyer);
        Mat3 position = Mat3.diagonal(new Vec3(p[0], p[1], p[2]));
        Mat3 velocity = Mat3.diagonal(new Vec3(v[0], v[1], v[2]));
        double clocks2 = clocks_s2(lead, flyer);
        return new RelativeCovariance(
                plusOuter(position, f, 3, clocks2), plusOuter(velocity, f, 6, clocks2));
    }

    /** Variance of the flyer's clock against the lead's. */
    static double clocks_s2(ReferencePoint lead, ReferencePoint flyer) {
        return square(flyer.antenna().clock().against_s(lead.antenna().clock()));
    }

    /** Variance of the constants left in both logs' heights. */
    static double heights(ReferencePoint lead, ReferencePoint flyer) {
        return square(lead.antenna().heightSigma_m()) + square(flyer.antenna().heightSigma_m());
    }

    private static double arms(ReferencePoint lead, ReferencePoint flyer, double t_s) {
        return square(lead.armSigma_m(t_s)) + square(flyer.armSigma_m(t_s));
    }

    private static Mat3 plusOuter(Mat3 m, double[] values, int from, double scale) {
        Vec3 u = new Vec3(values[from], values[from + 1], values[from + 2]);
        return Mat3.ofRows(
                m.row0().plus(u.times(scale * u.x())),
                m.row1().plus(u.times(scale * u.y())),
                m.row2().plus(u.times(scale * u.z())));
    }

    private static double square(double x) {
        return x * x;
    }
}
