package pairdown.tail;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.stats.Robust;

/**
 * How well one control of the tail works over time, as a ratio to forward-thrust flight at the same
 * dynamic pressure.
 *
 * @param axis which control
 * @param ratio to the baseline; NaN where there was not enough input to judge
 * @param sigma one standard deviation of it
 * @param levels its level over the descents as the likeliest course
 * @param left what the control is to explain at every place (°/s²)
 * @param drive deflection × dynamic pressure ratio
 * @param baseline M in forward-thrust flight (°/s² per %)
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record Effectiveness(
        ControlAxis axis,
        double[] ratio,
        double[] sigma,
        ControlLevels levels,
        double[] left,
        double[] drive,
        double baseline) {
    /** Steady: true airspeed changes by less than this (m/s²). */
    private static final double STEADY_MPS2 = 1.5;

    /** The axis's effectiveness, or empty with the reason in the notes. */
    static Optional<Effectiveness> of(
            ControlAxis axis, TailInput input, Flight flight, List<String> notes) {
        Signals signals = flight.signals();
        if (!measurable(axis, signals, input.settings().data(), notes)) {
            return Optional.empty();
        }
        if (signals.isFromAttitude(axis.rate())) {
            notes.add(
                    axis.words()
                            + " effectiveness is by the slope of the attitude: no rate is logged");
        }
        LocalLine line =
                new LocalLine(input.settings().data().smoothing_s(), signals.grid().step_s());
        Equation equation = Equation.of(axis, signals, flight.pressureRatio(), line);
        boolean[] baseline = baseline(equation, flight, input.settings().fit());
        int least = signals.grid().steps(input.settings().fit().leastBaseline_s());
        if (Masks.count(baseline) < least
                || input(equation, baseline) < input.settings().fit().leastInput_pct()) {
            notes.add(
                    "not enough forward-thrust flight with "
                            + axis.words()
                            + " input to judge its effectiveness against");
            return Optional.empty();
        }
        Optional<double[]> fit = equation.fit(baseline, signals.grid().step_s());
        if (fit.isEmpty() || !(Math.abs(fit.get()[0]) > 1e-6)) {
            notes.add(
                    "the "
                            + axis.words()
                            + " shows no effect in forward-thrust flight to judge by");
            return Optional.empty();
        }
        return Optional.of(against(axis, equation, fit.get(), baseline, input, flight));
    }

    private static boolean measurable(
            ControlAxis axis, Signals signals, TailSettings.Data data, List<String> notes) {
        if (!signals.has(axis.control()) || !signals.has(axis.rate())) {
            notes.add(
                    axis.words()
                            + " effectiveness can't be seen: "
                            + (signals.has(axis.control()) ? axis.rate() : axis.control()).key()
                            + " is not logged");
            return false;
        }
        double slowest_Hz = Math.min(signals.rate_Hz(axis.control()), signals.rate_Hz(axis.rate()));
        if (slowest_Hz < data.leastRate_Hz()) {
            notes.add(
                    String.format(
                            Locale.ROOT,
                            "%s effectiveness can't be judged: %.1f Hz is too slow for a response"
                                    + " that is over within half a second",
                            axis.words(),
                            slowest_Hz));
            return false;
        }
        return true;
    }

    private static boolean[] baseline(Equation equation, Flight flight, TailSettings.Fit settings) {
        boolean[] forward = flight.thrust().forward().clone();
        boolean[] near = new boolean[forward.length];
        for (int i = 0; i < forward.length; i++) {
            forward[i] &= equation.known(i);
            near[i] =
                    forward[i]
                            && Math.abs(flight.pressureRatio()[i] - 1) <= settings.pressureBand();
        }
        int least = flight.signals().grid().steps(2 * settings.leastBaseline_s());
        return Masks.count(near) >= least ? near : forward;
    }

    private static double input(Equation equation, boolean[] mask) {
        double sum = 0;
        double squares = 0;
        int n = 0;
        for (int i = 0; i < mask.length; i++) {
            if (mask[i]) {
                sum += equation.drive()[i];
                squares += equation.drive()[i] * equation.drive()[i];
                n++;
            }
        }
        return Math.sqrt(Math.max(0, squares / n - sum / n * (sum / n)));
    }

    private static Effectiveness against(
            ControlAxis axis,
            Equation equation,
            double[] fit,
            boolean[] baseline,
            TailInput input,
            Flight flight) {
        Grid grid = flight.signals().grid();
        TailSettings.Fit settings = input.settings().fit();
        double[] left = equation.left(Arrays.copyOfRange(fit, 1, fit.length));
        double[] drive = equation.drive().clone();
        for (int i = 0; i < left.length; i++) {
            left[i] = Double.isFinite(drive[i]) ? left[i] : Double.NaN;
        }
        List<Masks.Run> flown = flight.reviewed();
        int near = flown.isEmpty() ? 0 : flown.get(0).from();
        TurnModel model =
                Equation.turning(axis, flight, Response.fit(axis, flight, fit, baseline, near));
        ControlLevels levels =
                ControlLevels.of(
                        model,
                        flown,
                        standing(flight),
                        flight.signals().evidence(axis.rate()),
                        input.settings().signs(),
                        grid);
        double[] ratio = Signals.nothing(grid.size());
        double[] sigma = Signals.nothing(grid.size());
        for (Masks.Run run : Masks.runs(flight.airborne())) {
            levels.smooth(run, ratio, sigma);
        }
        for (int i = 0; i < ratio.length; i++) {
            if (!(sigma[i] <= settings.greatestSigma())) {
                ratio[i] = Double.NaN;
                sigma[i] = Double.NaN;
            }
        }
        return new Effectiveness(axis, ratio, sigma, levels, left, drive, fit[0]);
    }

    /** Places in reverse at a steady airspeed, where the level of a descent is taken. */
    private static boolean[] standing(Flight flight) {
        boolean[] standing = flight.reverse().clone();
        for (int i = 0; i < standing.length; i++) {
            standing[i] &= !(Math.abs(flight.air().acceleration_mps2()[i]) > STEADY_MPS2);
        }
        return standing;
    }

    /** The standing level over all descents; empty where it was never judged in reverse. */
    OptionalDouble standing() {
        return Robust.median(levels.ownWhereMet());
    }
}
