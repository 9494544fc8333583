package pairdown.motion;

import java.util.Arrays;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pairdown.attempt.Role;

/**
 * White-jerk density (m²/s⁵) over time: piecewise constant, the first value before the first step.
 */
public final class JerkProfile {
    private final double[] from_s;
    private final double[] density_m2ps5;

    private JerkProfile(double[] from_s, double[] density_m2ps5) {
        this.from_s = from_s;
        this.density_m2ps5 = density_m2ps5;
    }

    public static JerkProfile constant(double density_m2ps5) {
        return new JerkProfile(
                new double[] {Double.NEGATIVE_INFINITY}, new double[] {positive(density_m2ps5)});
    }

    /** For a first smoothing, before phases are known. */
    public static JerkProfile unknown(Role role, SmootherSettings settings) {
        return constant(
                role.isAircraft()
                        ? settings.aircraftJerk_m2ps5()
                        : settings.unknownPhaseJerk_m2ps5());
    }

    /**
     * A person's over an attempt: the aircraft's until {@code exit_s}, then their own, and the
     * transient density around exit and opening.
     *
     * @param exit_s empty where the log has none: it then begins in flight
     * @param opening_s empty where the log has none
     */
    public static JerkProfile ofJumper(
            OptionalDouble exit_s, OptionalDouble opening_s, SmootherSettings settings) {
        NavigableMap<Double, Double> steps = new TreeMap<>();
        steps.put(
                Double.NEGATIVE_INFINITY,
                exit_s.isPresent() ? settings.aircraftJerk_m2ps5() : settings.flyerJerk_m2ps5());
        exit_s.ifPresent(t -> addTransient(steps, t, settings));
        opening_s.ifPresent(t -> addTransient(steps, t, settings));
        return new JerkProfile(
                steps.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                steps.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static void addTransient(
            NavigableMap<Double, Double> steps, double t_s, SmootherSettings settings) {
        double from_s = t_s - settings.beforeTransient_s();
        double to_s = t_s + settings.afterTransient_s();
        steps.subMap(from_s, true, to_s, true).clear();
        steps.put(from_s, settings.transientJerk_m2ps5());
        steps.put(to_s, settings.flyerJerk_m2ps5());
    }

    private static double positive(double density) {
        if (!(density > 0)) {
            throw new IllegalArgumentException("a jerk density must be > 0, not " + density);
        }
        return density;
    }

    /** The density at an instant. */
    public double at(double t_s) {
        int i = Arrays.binarySearch(from_s, t_s);
        return density_m2ps5[Math.max(0, i >= 0 ? i : -i - 2)];
    }

    /** The mean density between two instants, so that a short step inside a long hole counts. */
    double mean(double a_s, double b_s) {
        if (!(b_s > a_s)) {
            return at(a_s);
        }
        int first = indexAt(a_s);
        int last = indexAt(b_s);
        if (first == last) {
            return density_m2ps5[first];
        }
        double sum = 0;
        for (int i = first; i <= last; i++) {
            double from = Math.max(a_s, from_s[i]);
            double to = i + 1 < from_s.length ? Math.min(b_s, from_s[i + 1]) : b_s;
            sum += density_m2ps5[i] * Math.max(0, to - from);
        }
        return sum / (b_s - a_s);
    }

    private int indexAt(double t_s) {
        int i = Arrays.binarySearch(from_s, t_s);
        return Math.max(0, i >= 0 ? i : -i - 2);
    }
}
