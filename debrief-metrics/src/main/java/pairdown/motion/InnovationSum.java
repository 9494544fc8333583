package pairdown.motion;

/**
 * What a row of innovations ν says of their expected variances S: the mean of ν²/S, and the
 * Gaussian log-likelihood. Beyond four sigmas an innovation counts as four, so that outliers do not
 * widen what sound fixes deserve.
 */
final class InnovationSum {
    private static final double CAP = 16;

    private double logLikelihood;
    private double normalised;
    private long count;

    void clear() {
        logLikelihood = 0;
        normalised = 0;
        count = 0;
    }

    void add(double nu2, double s) {
        double ratio = Math.min(nu2 / s, CAP);
        logLikelihood -= 0.5 * (ratio + Math.log(s));
        normalised += ratio;
        count++;
    }

    double logLikelihood() {
        return logLikelihood;
    }

    /** Mean of ν²/S; 1 where all is as assumed, NaN where there was none. */
    double meanNormalised() {
        return count == 0 ? Double.NaN : normalised / count;
    }
}
