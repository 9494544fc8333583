package pairdown.motion;

import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/** The covariance of flyer minus lead where no anchor helps. */
record RelativeCovariance(Mat3 position_m2, Mat3 velocity_m2ps2) {

    /**
     * @param l lead's values as {@link Trajectory#read} gives them
     * @param f flyer's
     */
    static RelativeCovariance at(
            ReferencePoint lead, ReferencePoint flyer, double t_s, double[] l, double[] f) {
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
        PairClocks clocks = PairClocks.of(lead.antenna(), flyer.antenna());
        return new RelativeCovariance(
                plus(position, clocks, l, f, 3), plus(velocity, clocks, l, f, 6));
    }

    /** Variance of the constants left in both logs' heights. */
    static double heights(ReferencePoint lead, ReferencePoint flyer) {
        return square(lead.antenna().heightSigma_m()) + square(flyer.antenna().heightSigma_m());
    }

    private static double arms(ReferencePoint lead, ReferencePoint flyer, double t_s) {
        return square(lead.armSigma_m(t_s)) + square(flyer.armSigma_m(t_s));
    }

    private static Mat3 plus(Mat3 m, PairClocks clocks, double[] l, double[] f, int from) {
        Vec3[] rows = new Vec3[Fixes.AXES];
        for (int i = 0; i < rows.length; i++) {
            double li = l[from + i];
            double fi = f[from + i];
            rows[i] =
                    new Vec3(
                            clocks.covariance(li, fi, l[from], f[from]),
                            clocks.covariance(li, fi, l[from + 1], f[from + 1]),
                            clocks.covariance(li, fi, l[from + 2], f[from + 2]));
        }
        return Mat3.ofRows(m.row0().plus(rows[0]), m.row1().plus(rows[1]), m.row2().plus(rows[2]));
    }

    private static double square(double x) {
        return x * x;
    }
}
