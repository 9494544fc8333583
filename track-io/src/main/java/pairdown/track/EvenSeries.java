package pairdown.track;

/**
 * A signal at an even spacing, smoothed from samples at any spacing, readable between its points.
 * NaN where the samples did not carry it.
 *
 * <p>Smoothing is a local straight line under the triweight kernel (1 − u²)³: two signals smoothed
 * alike keep the lag between them exactly, and the noise of the result hardly depends on where the
 * samples fall, which plain interpolation would turn into a bias of the lag.
 */
public final class EvenSeries {
    /** Half the kernel's support over its standard deviation: the triweight's is a third. */
    private static final double SUPPORT = 3;

    /** Samples closer than this share of the kernel's width are averaged first: speed alone. */
    private static final double BIN = 0.2;

    /** Farther off centre than this share of the kernel's width, the samples are one-sided. */
    private static final double MAX_SKEW = 0.35;

    private final double start_s;
    private final double step_s;
    private final double[] value;

    private EvenSeries(double start_s, double step_s, double[] value) {
        this.start_s = start_s;
        this.step_s = step_s;
        this.value = value;
    }

    /** Values at {@code start_s}, {@code start_s + step_s} and so on. */
    public static EvenSeries of(double start_s, double step_s, double[] value) {
        return new EvenSeries(start_s, step_s, value.clone());
    }

    /**
     * Smooths samples onto {@code count} even points.
     *
     * @param time_s never falling; samples whose value is NaN are left out
     * @param width_s standard deviation of the kernel
     */
    public static EvenSeries smooth(
            double[] time_s, double[] y, double start_s, double step_s, int count, double width_s) {
        Binned b = Binned.of(time_s, y, BIN * width_s);
        double[] out = new double[count];
        double half_s = SUPPORT * width_s;
        int first = 0;
        for (int k = 0; k < count; k++) {
            double t_s = start_s + k * step_s;
            while (first < b.size && b.time[first] < t_s - half_s) {
                first++;
            }
            out[k] = localLine(b, first, t_s, half_s, MAX_SKEW * width_s);
        }
        return new EvenSeries(start_s, step_s, out);
    }

    private static double localLine(
            Binned b, int first, double t_s, double half_s, double maxSkew_s) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double y0 = 0;
        double y1 = 0;
        for (int i = first; i < b.size && b.time[i] <= t_s + half_s; i++) {
            double d = b.time[i] - t_s;
            double u = d / half_s;
            double q = 1 - u * u;
            double w = q * q * q * b.weight[i];
            s0 += w;
            s1 += w * d;
            s2 += w * d * d;
            y0 += w * b.y[i];
            y1 += w * d * b.y[i];
        }
        double det = s0 * s2 - s1 * s1;
        boolean carried = s0 > 0 && Math.abs(s1) <= maxSkew_s * s0 && det > 1e-9 * s0 * s0;
        return carried ? (s2 * y0 - s1 * y1) / det : Double.NaN;
    }

    public int size() {
        return value.length;
    }

    public double start_s() {
        return start_s;
    }

    public double step_s() {
        return step_s;
    }

    public double end_s() {
        return time_s(value.length - 1);
    }

    public double time_s(int k) {
        return start_s + k * step_s;
    }

    /** The value at a point, NaN where there is none. */
    public double value(int k) {
        return value[k];
    }

    /** Between points by the cubic through the nearest four (Catmull–Rom); NaN near a hole. */
    public double at(double t_s) {
        double x = (t_s - start_s) / step_s;
        int k = (int) Math.floor(x);
        if (!(k >= 1 && k + 2 < value.length)) {
            return Double.NaN;
        }
        double f = x - k;
        double a = value[k - 1];
        double b = value[k];
        double c = value[k + 1];
        double d = value[k + 2];
        return b + 0.5 * f * (c - a + f * (2 * a - 5 * b + 4 * c - d + f * (3 * (b - c) + d - a)));
    }

    /** Rate of change of {@link #at} per second. */
    public double slopeAt(double t_s) {
        double x = (t_s - start_s) / step_s;
        int k = (int) Math.floor(x);
        if (!(k >= 1 && k + 2 < value.length)) {
            return Double.NaN;
        }
        double f = x - k;
        double a = value[k - 1];
        double b = value[k];
        double c = value[k + 1];
        double d = value[k + 2];
        double perPoint =
                0.5 * (c - a)
                        + f * (2 * a - 5 * b + 4 * c - d)
                        + 1.5 * f * f * (3 * (b - c) + d - a);
        return perPoint / step_s;
    }

    /** Samples with neighbours averaged, so that a fast log costs no more than a slow one. */
    private static final class Binned {
        final double[] time;
        final double[] y;
        final double[] weight;
        int size;

        private Binned(int capacity) {
            time = new double[capacity];
            y = new double[capacity];
            weight = new double[capacity];
        }

        static Binned of(double[] time_s, double[] value, double bin_s) {
            Binned b = new Binned(time_s.length);
            double binEnd_s = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < time_s.length; i++) {
                if (Double.isNaN(value[i])) {
                    continue;
                }
                if (time_s[i] >= binEnd_s) {
                    binEnd_s = time_s[i] + bin_s;
                    b.size++;
                }
                int k = b.size - 1;
                b.weight[k]++;
                b.time[k] += (time_s[i] - b.time[k]) / b.weight[k];
                b.y[k] += (value[i] - b.y[k]) / b.weight[k];
            }
            return b;
        }
    }
}
