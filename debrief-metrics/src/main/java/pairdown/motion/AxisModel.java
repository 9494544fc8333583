package pairdown.motion;

/**
 * What an axis' filter and smoother share.
 *
 * @param bias_m one standard deviation of the receiver's slow bias
 * @param biasTime_s its time constant
 * @param lag_s velocity coefficient of a position measurement
 */
record AxisModel(double bias_m, double biasTime_s, double lag_s) {
    AxisFilter filter() {
        return new AxisFilter(bias_m, biasTime_s, lag_s);
    }
}
