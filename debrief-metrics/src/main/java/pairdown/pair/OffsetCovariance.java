package pairdown.pair;

import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * The covariance of a flyer's offset from its lead, as a 3 × 3 matrix (m²) in the offset's axes.
 */
final class OffsetCovariance {
    private OffsetCovariance() {}

    /** What small random turns of sigma_rad about each axis do to an arm: σ²(‖a‖² I − a aᵀ). */
    static Mat3 turned(Vec3 arm_m, double sigma_rad) {
        double n2 = arm_m.normSquared();
        Mat3 all = Mat3.diagonal(new Vec3(n2, n2, n2));
        Mat3 along = outer(arm_m);
        double v = sigma_rad * sigma_rad;
        return Mat3.ofRows(
                all.row0().minus(along.row0()).times(v),
                all.row1().minus(along.row1()).times(v),
                all.row2().minus(along.row2()).times(v));
    }

    /** a aᵀ: the covariance of an error along a line. */
    static Mat3 outer(Vec3 a) {
        return Mat3.ofRows(a.times(a.x()), a.times(a.y()), a.times(a.z()));
    }

    static Mat3 sum(Mat3 a, Mat3 b) {
        return Mat3.ofRows(
                a.row0().plus(b.row0()), a.row1().plus(b.row1()), a.row2().plus(b.row2()));
    }

    /** One standard deviation along a line; the mean over all directions where it has none. */
    static double sigmaAlong(Mat3 covariance_m2, Vec3 line_m) {
        double n = line_m.norm();
        if (n > 0) {
            return Math.sqrt(covariance_m2.quadraticForm(line_m.times(1 / n)));
        }
        double trace =
                covariance_m2.row0().x() + covariance_m2.row1().y() + covariance_m2.row2().z();
        return Math.sqrt(trace / 3);
    }

    /**
     * Squared distance of a vector from nothing in sigmas: aᵀ Σ⁻¹ a, by Cramer's rule.
     *
     * @throws ArithmeticException if Σ is singular
     */
    static double squaredSigmas(Vec3 a, Mat3 covariance_m2) {
        Vec3 c0 = covariance_m2.row1().cross(covariance_m2.row2());
        Vec3 c1 = covariance_m2.row2().cross(covariance_m2.row0());
        Vec3 c2 = covariance_m2.row0().cross(covariance_m2.row1());
        double determinant = covariance_m2.row0().dot(c0);
        if (!(determinant > 0)) {
            throw new ArithmeticException("the covariance is singular");
        }
        Vec3 solved = c0.times(a.x()).plus(c1.times(a.y())).plus(c2.times(a.z()));
        return a.dot(solved) / determinant;
    }
}
