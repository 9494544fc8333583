package pairdown.track;

import java.util.Arrays;

/**
 * One channel on the attempt's time axis: immutable, read by index or by time.
 *
 * <p>Between two samples the value is interpolated linearly (round the shorter way for directions);
 * outside the samples, or across more than {@link #MAX_STEP_S}, there is none (NaN).
 */
public final class Series {
    /** Longer than this between two samples is a hole. */
    public static final double MAX_STEP_S = 2;

    private final double[] time_s;
    private final float[] value;
    private final boolean circular;

    private Series(double[] time_s, float[] value, boolean circular) {
        this.time_s = time_s;
        this.value = value;
        this.circular = circular;
    }

    /**
     * A series of samples in rising order of time.
     *
     * @throws IllegalArgumentException if the lengths differ or a time falls
     */
    public static Series of(double[] time_s, float[] value, boolean circular) {
        if (time_s.length != value.length) {
            throw new IllegalArgumentException(
                    time_s.length + " times for " + value.length + " values");
        }
        for (int i = 1; i < time_s.length; i++) {
            if (!(time_s[i] >= time_s[i - 1])) {
                throw new IllegalArgumentException("time falls at sample " + i);
            }
        }
        return new Series(time_s.clone(), value.clone(), circular);
    }

    public int size() {
        return time_s.length;
    }

    public double time_s(int i) {
        return time_s[i];
    }

    public double value(int i) {
        return value[i];
    }

    /** The last sample at or before {@code t_s}, or −1 before the first. */
    public int indexAtOrBefore(double t_s) {
        int i = Arrays.binarySearch(time_s, t_s);
        return i >= 0 ? i : -i - 2;
    }

    /** The value at an instant, NaN where there is none. */
    public double at(double t_s) {
        int i = indexAtOrBefore(t_s);
        if (i < 0) {
            return Double.NaN;
        }
        if (time_s[i] == t_s) {
            return value[i];
        }
        if (i + 1 == time_s.length || time_s[i + 1] - time_s[i] > MAX_STEP_S) {
            return Double.NaN;
        }
        double share = (t_s - time_s[i]) / (time_s[i + 1] - time_s[i]);
        double step = value[i + 1] - value[i];
        if (circular) {
            step = Math.IEEEremainder(step, 360);
        }
        double v = value[i] + share * step;
        return circular ? ((v % 360) + 360) % 360 : v;
    }
}
