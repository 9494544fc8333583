package pairdown.tail;

/**
 * The control's effect about every place by least squares with two-sided forgetting: what is left
 * to explain = M·drive + slow part.
 *
 * @param factor M
 * @param sigma one standard deviation of M, residuals' own correlation allowed for
 * @param input standard deviation of the drive in the window
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record MovingFit(double[] factor, double[] sigma, double[] input) {
    /**
     * Fits.
     *
     * @param left what the control is to explain; NaN where missing
     * @param drive what it did; NaN in the same places
     * @param leastResidual floor of the residual's standard deviation
     * @param inflation variance of a sum of residuals over that of as many independent ones
     */
    static MovingFit of(
            double[] left,
            double[] drive,
            Forgetting window,
            double leastResidual,
            double inflation) {
        Sums s = Sums.of(left, drive, window);
        Sums s2 = Sums.of(left, drive, window.squared());
        int n = left.length;
        double[] factor = new double[n];
        double[] sigma = new double[n];
        double[] input = new double[n];
        for (int i = 0; i < n; i++) {
            double meanX = s.x[i] / s.w[i];
            double meanY = s.y[i] / s.w[i];
            double xx = s.xx[i] - s.x[i] * meanX;
            double xy = s.xy[i] - s.x[i] * meanY;
            double yy = s.yy[i] - s.y[i] * meanY;
            if (!Double.isFinite(left[i]) || !(xx > 1e-9)) {
                factor[i] = Double.NaN;
                sigma[i] = Double.NaN;
                input[i] = Double.isFinite(left[i]) ? 0 : Double.NaN;
                continue;
            }
            factor[i] = xy / xx;
            double residual = Math.sqrt(Math.max(0, (yy - factor[i] * xy) / s.w[i]));
            double spread = Math.max(residual, leastResidual);
            double xx2 = s2.xx[i] - 2 * meanX * s2.x[i] + meanX * meanX * s2.w[i];
            sigma[i] = spread * Math.sqrt(inflation * Math.max(0, xx2)) / xx;
            input[i] = Math.sqrt(xx / s.w[i]);
        }
        return new MovingFit(factor, sigma, input);
    }

    @SuppressWarnings("ArrayRecordComponent") // as above
    private record Sums(double[] w, double[] x, double[] y, double[] xx, double[] xy, double[] yy) {
        static Sums of(double[] left, double[] drive, Forgetting f) {
            int n = left.length;
            double[][] c = new double[6][n];
            for (int i = 0; i < n; i++) {
                double x = drive[i];
                double y = left[i];
                if (Double.isFinite(x + y)) {
                    c[0][i] = 1;
                    c[1][i] = x;
                    c[2][i] = y;
                    c[3][i] = x * x;
                    c[4][i] = x * y;
                    c[5][i] = y * y;
                }
            }
            return new Sums(
                    f.sum(c[0]), f.sum(c[1]), f.sum(c[2]), f.sum(c[3]), f.sum(c[4]), f.sum(c[5]));
        }
    }
}
