package pairdown.clock;

import pairdown.units.Estimate;

/**
 * How far a log's instants are from what receivers tell in the mean, when how late each one is
 * scatters about that mean with one standard deviation s.
 *
 * <p>The mean of the n logs that tell a group what UTC is scatters with s/√n. A log shifted to that
 * mean is off by that and by what its shift was measured to. A log kept at its own time, though it
 * was measured r beside the mean, is a draw of its own of which r says something: before r is known
 * its lateness has variance s², and covariance c with r, c = s² or, for one of the n, s²(1 − 1/n).
 * Source: conditioning of a joint Gaussian (C. E. Rasmussen and C. K. I. Williams, Gaussian
 * Processes for Machine Learning (2006), equation A.6).
 *
 * @param sigma_s s
 * @param voters n
 * @param isVoter whether the log is one of them
 */
record Lateness(double sigma_s, int voters, boolean isVoter) {
    /** Of a log that is its own reference. */
    static Lateness alone(double sigma_s) {
        return new Lateness(sigma_s, 1, true);
    }

    /** One standard deviation where the clock was set by this group's reference, give or take. */
    double shifted_s(double own_s) {
        return Math.hypot(sigma_s / Math.sqrt(voters), own_s);
    }

    /**
     * Root mean square where the log's own time was kept, given how far beside the reference it was
     * measured.
     */
    double kept_s(Estimate beside_s) {
        double s2 = sigma_s * sigma_s;
        double covariance = isVoter ? s2 * (1 - 1.0 / voters) : s2;
        double variance = isVoter ? covariance : s2 * (1 + 1.0 / voters);
        double share = covariance / (variance + beside_s.sigma() * beside_s.sigma());
        return Math.hypot(Math.sqrt(s2 - share * covariance), share * beside_s.value());
    }
}
