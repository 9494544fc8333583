package pairdown.motion;

/**
 * The fifth-degree polynomial that meets value, rate and acceleration at both ends: the mean of a
 * white-jerk motion in between.
 */
final class Quintic {
    private Quintic() {}

    /**
     * Value (or rate) {@code s} into a step {@code t}, from 0 to t.
     *
     * @param rate whether the first derivative is wanted
     */
    static double value(
            double p0,
            double v0,
            double a0,
            double p1,
            double v1,
            double a1,
            double t,
            double s,
            boolean rate) {
        double dp = p1 - (p0 + v0 * t + 0.5 * a0 * t * t);
        double dv = (v1 - (v0 + a0 * t)) * t;
        double da = 0.5 * (a1 - a0) * t * t;
        double u = s / t;
        double c3 = 10 * dp - 4 * dv + da;
        double c4 = -15 * dp + 7 * dv - 2 * da;
        double c5 = 6 * dp - 3 * dv + da;
        return rate
                ? v0 + a0 * s + u * u * (3 * c3 + u * (4 * c4 + u * 5 * c5)) / t
                : p0 + s * (v0 + 0.5 * a0 * s) + u * u * u * (c3 + u * (c4 + u * c5));
    }
}
