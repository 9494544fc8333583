package pairdown.tail;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a control does in forward-thrust flight, by the greatest likelihood of the unsmoothed rates.
 * Least squares on smoothed rates gives a start; they take part of a quick response for noise, and
 * the pilot's own reaction to gusts for effect, which the filter does not.
 */
final class Response {
    /** So much forward-thrust flight is enough: the nearest to the descents. */
    private static final double ENOUGH_S = 150;

    /** Shorter stretches teach the filter nothing. */
    private static final double LEAST_S = 8;

    private static final double FIRST_STEP = 0.2;

    /** How many of the parameters describe the disturbances. */
    private static final int NOISES = 2;

    private Response() {}

    /**
     * M, then the other terms' factors, as {@link Equation#fit} gives them.
     *
     * @param start least squares' answer
     */
    static double[] fit(
            ControlAxis axis, Flight flight, double[] start, boolean[] baseline, int near) {
        Grid grid = flight.signals().grid();
        List<Masks.Run> runs = runs(baseline, grid, near);
        if (runs.isEmpty()) {
            return start;
        }
        double[] level = new double[grid.size()];
        Arrays.fill(level, 1);
        Disturbances calm = Disturbances.unknown(grid.size());
        // The noise, then what every factor is multiplied by.
        double[] first = new double[NOISES + start.length];
        Arrays.fill(first, 1);
        first[0] = Math.log(calm.usual().rate_dps());
        first[1] = Math.log(calm.usual().gust_dps2());
        double[] best =
                Disturbances.greatest(
                        p -> likelihood(axis, flight, scaled(start, p), p, runs, level, calm),
                        first,
                        FIRST_STEP);
        return scaled(start, best);
    }

    /** The stretches of the baseline nearest to a place, enough of them. */
    private static List<Masks.Run> runs(boolean[] baseline, Grid grid, int near) {
        int[] nearest =
                IntStream.range(0, baseline.length)
                        .filter(i -> baseline[i])
                        .boxed()
                        .sorted(Comparator.comparingInt(i -> Math.abs(i - near)))
                        .limit(grid.steps(ENOUGH_S))
                        .mapToInt(i -> i)
                        .toArray();
        boolean[] kept = new boolean[baseline.length];
        for (int i : nearest) {
            kept[i] = true;
        }
        return Masks.runs(kept, grid.steps(LEAST_S), 1);
    }

    private static double[] scaled(double[] start, double[] p) {
        double[] factors = start.clone();
        for (int k = 0; k < factors.length; k++) {
            factors[k] *= p[NOISES + k];
        }
        return factors;
    }

    private static double likelihood(
            ControlAxis axis,
            Flight flight,
            double[] factors,
            double[] p,
            List<Masks.Run> runs,
            double[] level,
            Disturbances calm) {
        TurnModel model = Equation.turning(axis, flight, factors);
        TurnModel.Noise usual = calm.usual();
        Disturbances tried =
                new Disturbances(
                        Disturbances.noise(
                                new double[] {p[0], p[1], Math.log(usual.wander_dps2())}),
                        calm.rough());
        return runs.stream()
                .mapToDouble(r -> model.likelihood(r.from(), r.to(), level, tried))
                .sum();
    }
}
