package pairdown.motion;

/**
 * Finds the factor on a measurement's variance R at which innovations ν have the variance S = H P
 * Hᵀ + f R they should: one step of Fisher scoring on the Gaussian likelihood of f. Innovations
 * beyond three sigmas count as three, so that outliers do not widen what sound fixes deserve.
 */
final class InnovationSum {
    private static final double CAP = 9;

    private double score;
    private double weight;
    private double normalised;
    private long count;

    void clear() {
        score = 0;
        weight = 0;
        normalised = 0;
        count = 0;
    }

    /**
     * @param nu2 innovation squared
     * @param s its expected variance
     * @param r the part of it that is measurement noise
     */
    void add(double nu2, double s, double r) {
        double ratio = Math.min(nu2 / s, CAP);
        double share = r / s;
        score += share * (ratio - 1);
        weight += share * share;
        normalised += ratio;
        count++;
    }

    /** What to multiply the variance by, between {@code least} and {@code most}. */
    double factor(double least, double most) {
        if (count == 0 || !(weight > 0)) {
            return 1;
        }
        return Math.max(least, Math.min(most, 1 + score / weight));
    }

    /** Mean of ν²/S; 1 where all is as assumed. */
    double meanNormalised() {
        return count == 0 ? Double.NaN : normalised / count;
    }
}
