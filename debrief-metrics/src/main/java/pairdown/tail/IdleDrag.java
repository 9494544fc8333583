package pairdown.tail;

import org.hipparchus.linear.RealMatrix;

/**
 * An aircraft's drag with power at idle, D/q = a + f·b + f·(1 − f)·c + d·(L/q)², with f the flap
 * over {@link #UNIT_FLAP_DEG}: an area that grows with the flap, about evenly, and a term for the
 * lift. From flight at idle, see {@link IdleEvidence}.
 *
 * @param mean a, b, c (m²) and d (1/m²), in a column
 * @param covariance theirs
 * @param met where it was met
 */
public record IdleDrag(RealMatrix mean, RealMatrix covariance, Met met) {
    /** How many coefficients there are. */
    static final int TERMS = 4;

    /** Full flap of a usual aircraft. */
    static final double UNIT_FLAP_DEG = 40;

    /**
     * The airspeeds and flaps met at idle.
     *
     * @param lowestFlap_deg NaN where no flap was logged
     * @param highestFlap_deg likewise
     */
    public record Met(
            double lowest_mps,
            double highest_mps,
            double lowestFlap_deg,
            double highestFlap_deg,
            double duration_s) {
        Met and(Met other) {
            return new Met(
                    Math.min(lowest_mps, other.lowest_mps),
                    Math.max(highest_mps, other.highest_mps),
                    Double.isNaN(lowestFlap_deg)
                            ? other.lowestFlap_deg
                            : Double.isNaN(other.lowestFlap_deg)
                                    ? lowestFlap_deg
                                    : Math.min(lowestFlap_deg, other.lowestFlap_deg),
                    Double.isNaN(highestFlap_deg)
                            ? other.highestFlap_deg
                            : Double.isNaN(other.highestFlap_deg)
                                    ? highestFlap_deg
                                    : Math.max(highestFlap_deg, other.highestFlap_deg),
                    duration_s + other.duration_s);
        }
    }

    /** What a, b, c and d are multiplied by; a flap that is not logged counts as up. */
    static double[] terms(double flap_deg, double liftOverPressure_m2) {
        double f = Double.isFinite(flap_deg) ? flap_deg / UNIT_FLAP_DEG : 0;
        return new double[] {1, f, f * (1 - f), liftOverPressure_m2 * liftOverPressure_m2};
    }

    /**
     * Drag over dynamic pressure (m²).
     *
     * @param flap_deg NaN where not logged
     * @param liftOverPressure_m2 what the wing carries over q
     */
    public double area_m2(double flap_deg, double liftOverPressure_m2) {
        return area_m2(terms(flap_deg, liftOverPressure_m2));
    }

    double area_m2(double[] terms) {
        double sum = 0;
        for (int i = 0; i < TERMS; i++) {
            sum += terms[i] * mean.getEntry(i, 0);
        }
        return sum;
    }

    /** One standard deviation of {@link #area_m2}. */
    public double areaSigma_m2(double flap_deg, double liftOverPressure_m2) {
        double[] terms = terms(flap_deg, liftOverPressure_m2);
        double sum = 0;
        for (int i = 0; i < TERMS; i++) {
            for (int j = 0; j < TERMS; j++) {
                sum += terms[i] * covariance.getEntry(i, j) * terms[j];
            }
        }
        return Math.sqrt(Math.max(0, sum));
    }

    /** How far (°) a flap lies outside those met at idle; 0 where not logged. */
    double flapBeyond_deg(double flap_deg) {
        double away = Math.max(met.lowestFlap_deg - flap_deg, flap_deg - met.highestFlap_deg);
        return Double.isFinite(away) ? Math.max(0, away) : 0;
    }
}
