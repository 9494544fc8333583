package pairdown.phase;

import pairdown.units.Estimate;

/** Instants weighed by their likelihoods, all having been as likely before. */
final class Posterior {
    private Posterior() {}

    /**
     * Mean and spread of the weights.
     *
     * @param instants_s evenly spaced
     * @param logLikelihood of each, up to a constant
     */
    static Estimate of(double[] instants_s, double[] logLikelihood) {
        double most = Double.NEGATIVE_INFINITY;
        for (double l : logLikelihood) {
            most = Math.max(most, l);
        }
        double sum = 0;
        double mean = 0;
        for (int i = 0; i < instants_s.length; i++) {
            double w = Math.exp(logLikelihood[i] - most);
            sum += w;
            mean += w * instants_s[i];
        }
        mean /= sum;
        double square = 0;
        for (int i = 0; i < instants_s.length; i++) {
            double d = instants_s[i] - mean;
            square += Math.exp(logLikelihood[i] - most) / sum * d * d;
        }
        return new Estimate(mean, Math.sqrt(square));
    }
}
