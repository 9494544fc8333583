package pairdown.demo;

import java.util.Locale;

/** Errors of one figure over many attempts, and how its stated sigma stands to them. */
final class Tally {
    private double squares;
    private double sum;
    private double worst;
    private double normalised;
    private int within1;
    private int within2;
    private int within3;
    private int count;
    private int sigmas;

    void add(double error) {
        if (Double.isFinite(error)) {
            squares += error * error;
            sum += error;
            worst = Math.max(worst, Math.abs(error));
            count++;
        }
    }

    void add(double error, double sigma) {
        add(error);
        if (Double.isFinite(error) && sigma > 0) {
            double z = Math.abs(error) / sigma;
            normalised += z * z;
            within1 += z <= 0.9945 ? 1 : 0;
            within2 += z <= 1.96 ? 1 : 0;
            within3 += z <= 3 ? 1 : 0;
            sigmas++;
        }
    }

    int count() {
        return count;
    }

    double rms() {
        return Math.sqrt(squares / count);
    }

    double mean() {
        return sum / count;
    }

    double worst() {
        return worst;
    }

    /** Mean square of error over sigma; 1 for an honest sigma. */
    double normalisedSquare() {
        return normalised / sigmas;
    }

    double shareWithin68() {
        return (double) within1 / sigmas;
    }

    double shareWithin95() {
        return (double) within2 / sigmas;
    }

    double shareWithin3Sigma() {
        return (double) within3 / sigmas;
    }

    @Override
    public String toString() {
        if (count == 0) {
            return "none";
        }
        String figures =
                String.format(
                        Locale.ROOT,
                        "rms %.3f, mean %+.3f, worst %.3f of %d",
                        rms(),
                        mean(),
                        worst,
                        count);
        return sigmas == 0
                ? figures
                : figures
                        + String.format(
                                Locale.ROOT,
                                "; error/sigma squared %.2f, within 68/95 %%: %.0f/%.0f, 3 sigma: %.1f %%",
                                normalisedSquare(),
                                100 * shareWithin68(),
                                100 * shareWithin95(),
                                100 * shareWithin3Sigma());
    }
}
