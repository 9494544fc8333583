package pairdown.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.track.EvenSeries;
import pairdown.track.Track;
import pairdown.units.Estimate;

/**
 * Ties a recorder that knows air data but no places to its own aircraft's satellite log.
 *
 * <p>Found by correlation of climb rate, turn rate and airspeed at every lag. Then each signal is
 * fitted by itself, with rate: pressure instruments lag, and their lag would come out as a clock
 * error, so the clock is taken from signals that do not (yaw rate, heading, longitudinal load), and
 * what the pressure height says apart from them is reported as its lag.
 */
final class AirDataMatch {
    /** A vehicle slower than this turns on the spot (m/s). */
    private static final double MOVING_MPS = 12;

    /** A heading and airspeed are level flight's; steeper than this they are left out (m/s). */
    private static final double LEVEL_MPS = 8;

    /**
     * Peaks of the correlation, and what they must reach (domain practice, no published source).
     */
    private static final int PEAKS = 4;

    private static final double LEAST_CORRELATION = 0.5;
    private static final double RIVAL_SHARE = 0.9;

    /** Length of the mean heading vector below which the aircraft flew round: 1 is straight. */
    private static final double SPREAD = 0.6;

    private final SystemsSignals systems;
    private final RideMotion motion;
    private final ClockSettings settings;
    private final EvenSeries[] velocity = new EvenSeries[3];
    private final EvenSeries turn_dps;
    private final EvenSeries thrust_g;
    private final EvenSeries load_g;

    private AirDataMatch(Track track, Mover vehicle, ClockSettings settings) {
        double kernel_s = vehicle.kernel_s();
        this.settings = settings;
        this.systems = SystemsSignals.of(track, kernel_s);
        this.motion = vehicle.motionByPosition();
        for (int axis = 0; axis < 3; axis++) {
            velocity[axis] = EvenSeries.of(motion.start_s, motion.step_s, motion.velocity[axis]);
        }
        this.turn_dps = EvenSeries.of(motion.start_s, motion.step_s, trackRate_dps());
        this.load_g = EvenSeries.of(motion.start_s, motion.step_s, load_g());
        this.thrust_g = EvenSeries.of(motion.start_s, motion.step_s, alongPath_g());
    }

    /**
     * The match, or why there is none.
     *
     * @param delta_s the vehicle's log time minus the recorder's, at the recorder's {@code
     *     middle_s}
     * @param words lag and disagreement of pressure, and what had to be assumed
     */
    record Match(
            double delta_s,
            double sigma_s,
            double rate,
            double middle_s,
            double residual_mps,
            OffsetCurve curve,
            List<String> words) {
        /** The vehicle's log time minus the recorder's at the recorder's time 0. */
        double atZero_s() {
            return delta_s - rate * middle_s;
        }
    }

    /** Outcome: a match or a refusal in words. */
    record Outcome(Optional<Match> match, String refusal) {
        static Outcome refused(String why) {
            return new Outcome(Optional.empty(), why);
        }
    }

    /**
     * Matches a recorder.
     *
     * @param near lags to keep to (the vehicle's time minus the recorder's) with their reach, or
     *     empty to search all
     */
    static Outcome of(Track track, Mover vehicle, Optional<Estimate> near, ClockSettings settings) {
        return new AirDataMatch(track, vehicle, settings).match(near);
    }

    private Outcome match(Optional<Estimate> near) {
        if (!systems.hasClimb && !systems.hasYawRate && !systems.hasHeading) {
            return Outcome.refused(
                    "it has neither pressure height nor yaw rate nor heading to match with its"
                            + " aircraft's satellite log");
        }
        List<LagCorrelation.Peak> peaks = peaks(near);
        if (peaks.isEmpty()) {
            return Outcome.refused(
                    "its air data fit its aircraft's satellite log nowhere (correlation under "
                            + LEAST_CORRELATION
                            + ")");
        }
        if (peaks.size() > 1
                && peaks.get(1).correlation() > RIVAL_SHARE * peaks.get(0).correlation()) {
            return Outcome.refused(
                    String.format(
                            Locale.ROOT,
                            "its air data fit its aircraft's satellite log at two lags alike, %.1f s"
                                    + " apart: ambiguous",
                            Math.abs(peaks.get(1).shift() - peaks.get(0).shift()) * motion.step_s));
        }
        double lag_s = peaks.get(0).shift() * motion.step_s + motion.start_s - systems.start_s;
        return refine(lag_s);
    }

    private List<LagCorrelation.Peak> peaks(Optional<Estimate> near) {
        double[][] a = {
            standard(turnWhereMoving()),
            standard(speed()),
            systems.hasClimb ? standard(motion.velocity[2].clone()) : new double[motion.size()]
        };
        double[][] b = {
            systems.hasYawRate || systems.hasHeading
                    ? standard(systems.turn_dps.clone())
                    : new double[systems.size],
            systems.hasAirspeed ? standard(systems.airspeed_mps.clone()) : new double[systems.size],
            systems.hasClimb ? standard(systems.climb_mps.clone()) : new double[systems.size]
        };
        for (int c = 0; c < 3; c++) {
            if (isZero(b[c])) {
                a[c] = new double[a[c].length];
            }
        }
        int overlap = (int) (settings.minimumRide_s() / motion.step_s);
        List<LagCorrelation.Peak> all =
                LagCorrelation.peaks(
                        a, b, overlap, (int) (3 / motion.step_s), PEAKS, LEAST_CORRELATION);
        return all.stream().filter(p -> near.map(n -> isNear(p, n)).orElse(true)).toList();
    }

    private boolean isNear(LagCorrelation.Peak p, Estimate near) {
        double lag_s = p.shift() * motion.step_s + motion.start_s - systems.start_s;
        return Math.abs(lag_s - near.value()) <= near.sigma();
    }

    private static boolean isZero(double[] y) {
        for (double v : y) {
            if (v != 0) {
                return false;
            }
        }
        return true;
    }

    /** Scaled to a standard deviation of 1 about its mean, so that unlike signals count alike. */
    private static double[] standard(double[] y) {
        double sum = 0;
        double squares = 0;
        int n = 0;
        for (double v : y) {
            if (!Double.isNaN(v)) {
                sum += v;
                squares += v * v;
                n++;
            }
        }
        double sd = n == 0 ? 0 : Math.sqrt(Math.max(0, squares / n - sum / n * sum / n));
        for (int k = 0; k < y.length; k++) {
            y[k] = sd > 0 ? y[k] / sd : 0;
        }
        return y;
    }

    private double[] speed() {
        double[] out = new double[motion.size()];
        for (int k = 0; k < out.length; k++) {
            double up = motion.hasUp ? motion.velocity[2][k] : 0;
            out[k] = Math.hypot(Math.hypot(motion.velocity[0][k], motion.velocity[1][k]), up);
        }
        return out;
    }

    private double[] turnWhereMoving() {
        double[] out = trackRate_dps();
        for (int k = 0; k < out.length; k++) {
            double v = Math.hypot(motion.velocity[0][k], motion.velocity[1][k]);
            out[k] = v < MOVING_MPS ? 0 : out[k];
        }
        return out;
    }

    /** Rate of turn of the ground track, clockwise positive; NaN at ends. */
    private double[] trackRate_dps() {
        double[] out = new double[motion.size()];
        for (int k = 0; k < out.length; k++) {
            double e = motion.velocity[0][k];
            double n = motion.velocity[1][k];
            double v2 = e * e + n * n;
            boolean moving = v2 > MOVING_MPS * MOVING_MPS;
            out[k] = moving ? Math.toDegrees((rate(0, k) * n - e * rate(1, k)) / v2) : Double.NaN;
        }
        return out;
    }

    private double rate(int axis, int k) {
        return k < 1 || k + 1 >= motion.size()
                ? Double.NaN
                : (motion.velocity[axis][k + 1] - motion.velocity[axis][k - 1])
                        / (2 * motion.step_s);
    }

    /**
     * Specific force along the path: (v·a + g·climb)/(g·|v|), what a forward accelerometer feels.
     */
    private double[] alongPath_g() {
        double[] out = new double[motion.size()];
        for (int k = 0; k < out.length; k++) {
            double e = motion.velocity[0][k];
            double n = motion.velocity[1][k];
            double u = motion.velocity[2][k];
            double v = Math.sqrt(e * e + n * n + u * u);
            double power =
                    e * rate(0, k) + n * rate(1, k) + u * (rate(2, k) + SystemsSignals.G_MPS2);
            out[k] = v > MOVING_MPS ? power / (v * SystemsSignals.G_MPS2) : Double.NaN;
        }
        return out;
    }

    /**
     * Size of the specific force, |a + g·up|/g: what accelerometers feel, however they are turned.
     */
    private double[] load_g() {
        double[] out = new double[motion.size()];
        for (int k = 0; k < out.length; k++) {
            double level = Math.hypot(rate(0, k), rate(1, k));
            out[k] = Math.hypot(level, rate(2, k) + SystemsSignals.G_MPS2) / SystemsSignals.G_MPS2;
        }
        return out;
    }

    /**
     * Whether headings are spread enough to tell a wind from a turn: on few headings a wind that
     * changes with height looks like a lag.
     */
    private boolean turns() {
        double sin = 0;
        double cos = 0;
        int n = 0;
        for (int k = 0; k < systems.size; k++) {
            if (!Double.isNaN(systems.headingSin[k] + systems.headingCos[k])) {
                sin += systems.headingSin[k];
                cos += systems.headingCos[k];
                n++;
            }
        }
        return n > 0 && Math.hypot(sin, cos) / n < SPREAD;
    }

    private Outcome refine(double lag_s) {
        Optional<LagFit.Fit> climb =
                systems.hasClimb
                        ? fit(new Simple(systems.climb_mps, velocity[2]), lag_s)
                        : Optional.empty();
        List<Named> prompt = new ArrayList<>();
        if (systems.hasYawRate) {
            prompt(prompt, "yaw rate", fit(new Simple(systems.turn_dps, turn_dps), lag_s));
        }
        if (systems.hasHeading && turns()) {
            prompt(prompt, "heading", fit(new Headings(), lag_s));
        }
        if (systems.hasNormal) {
            prompt(prompt, "load", fit(new Simple(systems.load_g, load_g), lag_s));
        } else if (systems.hasLongitudinal) {
            prompt(
                    prompt,
                    "longitudinal load",
                    fit(new Simple(systems.longitudinal_g, thrust_g), lag_s));
        }
        return prompt.isEmpty() ? byPressure(climb) : byPrompt(prompt, climb);
    }

    /** A signal's name and fit. */
    private record Named(String name, LagFit.Fit fit) {}

    private void prompt(List<Named> all, String name, Optional<LagFit.Fit> fit) {
        fit.filter(f -> f.sigma_s(half_s()) < 3 * settings.unobservable_s())
                .ifPresent(f -> all.add(new Named(name, f)));
    }

    private Optional<LagFit.Fit> fit(LagFit.Problem problem, double lag_s) {
        return LagFit.from(problem, lag_s, settings.rateSigma(), settings.maximumRate());
    }

    private Outcome byPressure(Optional<LagFit.Fit> climb) {
        if (climb.isEmpty() || !(climb.get().deltaSigma_s() < settings.pressureLag_s())) {
            return Outcome.refused("its air data are too weak to tell its clock");
        }
        LagFit.Fit f = climb.get();
        return outcome(
                new Estimate(f.delta_s(), Math.hypot(f.deltaSigma_s(), settings.pressureLag_s())),
                new Estimate(f.rate(), f.rateSigma()),
                climb,
                List.of(
                        "aligned by pressure height alone: the lag of the instrument (usually 0.3 to"
                                + " 1.5 s) could not be told from the clock"));
    }

    private Outcome byPrompt(List<Named> prompt, Optional<LagFit.Fit> climb) {
        Estimate delta = combine(prompt.stream().map(n -> delta(n.fit)).toList());
        Estimate rate = combine(prompt.stream().map(n -> rate(n.fit)).toList());
        List<String> words = new ArrayList<>();
        climb.ifPresent(
                c -> {
                    double lag_s = delta.value() - c.delta_s();
                    double sigma_s = Math.hypot(delta.sigma(), c.deltaSigma_s());
                    words.add(
                            String.format(
                                    Locale.ROOT,
                                    "pressure height %s %s by %.2f s (sigma %.2f s); the clock follows"
                                            + " the latter",
                                    lag_s < 0 ? "leads" : "lags",
                                    names(prompt),
                                    Math.abs(lag_s),
                                    sigma_s));
                });
        return outcome(delta, rate, climb, words);
    }

    private static String names(List<Named> prompt) {
        return String.join(" and ", prompt.stream().map(Named::name).toList());
    }

    private static Estimate delta(LagFit.Fit f) {
        return new Estimate(f.delta_s(), f.deltaSigma_s());
    }

    private static Estimate rate(LagFit.Fit f) {
        return new Estimate(f.rate(), f.rateSigma());
    }

    /** Weighted mean; where the parts disagree its sigma grows by their chi-square. */
    private static Estimate combine(List<Estimate> parts) {
        double sum = 0;
        double weights = 0;
        for (Estimate e : parts) {
            double w = 1 / (e.sigma() * e.sigma() + 1e-12);
            sum += w * e.value();
            weights += w;
        }
        double mean = sum / weights;
        double chi2 = 0;
        for (Estimate e : parts) {
            chi2 += (e.value() - mean) * (e.value() - mean) / (e.sigma() * e.sigma() + 1e-12);
        }
        double growth = parts.size() > 1 ? Math.max(1, chi2 / (parts.size() - 1)) : 1;
        return new Estimate(mean, Math.sqrt(growth / weights));
    }

    private Outcome outcome(
            Estimate delta, Estimate rate, Optional<LagFit.Fit> climb, List<String> words) {
        double sigma_s = Math.hypot(delta.sigma(), rate.sigma() * half_s());
        return new Outcome(
                Optional.of(
                        new Match(
                                delta.value(),
                                sigma_s,
                                rate.value(),
                                middle_s(),
                                climb.map(LagFit.Fit::residual).orElse(Double.NaN),
                                curve(delta.value()),
                                words)),
                "");
    }

    private double middle_s() {
        return systems.start_s + half_s();
    }

    private double half_s() {
        return systems.size * systems.step_s / 2;
    }

    /** Misfit of the climb rate against lag. */
    private OffsetCurve curve(double delta_s) {
        List<OffsetCurve.Point> points = new ArrayList<>();
        for (int i = -30; systems.hasClimb && i <= 30; i++) {
            double trial_s = delta_s + 0.1 * i;
            double squares = 0;
            int n = 0;
            for (int k = 0; k < systems.size; k++) {
                double d = systems.climb_mps[k] - velocity[2].at(systems.time_s(k) + trial_s);
                if (!Double.isNaN(d)) {
                    squares += d * d;
                    n++;
                }
            }
            if (n > 0) {
                points.add(new OffsetCurve.Point(trial_s, Math.sqrt(squares / n)));
            }
        }
        return new OffsetCurve(points);
    }

    /** One satellite signal as a scaled and shifted recorder signal. */
    private final class Simple implements LagFit.Problem {
        private final double[] recorded;
        private final EvenSeries signal;

        Simple(double[] recorded, EvenSeries signal) {
            this.recorded = recorded;
            this.signal = signal;
        }

        @Override
        public int size() {
            return systems.size;
        }

        @Override
        public double time_s(int k) {
            return systems.time_s(k);
        }

        @Override
        public double middle_s() {
            return AirDataMatch.this.middle_s();
        }

        @Override
        public int terms() {
            return 2;
        }

        @Override
        public double signal(int k, double t_s) {
            return signal.at(t_s);
        }

        @Override
        public double slope(int k, double t_s) {
            return signal.slopeAt(t_s);
        }

        @Override
        public double term(int k, int j) {
            return j == 0 ? recorded[k] : 1;
        }
    }

    /**
     * Ground velocity as airspeed along the heading, turned and scaled by a constant (declination,
     * density), plus a wind that changes evenly over the flight. Points come in pairs: all east
     * components, then all north ones.
     */
    private final class Headings implements LagFit.Problem {
        @Override
        public int size() {
            return 2 * systems.size;
        }

        @Override
        public double time_s(int k) {
            return systems.time_s(k % systems.size);
        }

        @Override
        public double middle_s() {
            return AirDataMatch.this.middle_s();
        }

        @Override
        public int terms() {
            return 6;
        }

        private boolean isEast(int k) {
            return k < systems.size;
        }

        @Override
        public double signal(int k, double t_s) {
            boolean level = Math.abs(velocity[2].at(t_s)) < LEVEL_MPS;
            double e = velocity[0].at(t_s);
            double n = velocity[1].at(t_s);
            boolean moving = Math.hypot(e, n) > MOVING_MPS;
            return level && moving ? isEast(k) ? e : n : Double.NaN;
        }

        @Override
        public double slope(int k, double t_s) {
            return velocity[isEast(k) ? 0 : 1].slopeAt(t_s);
        }

        @Override
        public double term(int k, int j) {
            int i = k % systems.size;
            double v = systems.hasAirspeed ? systems.airspeed_mps[i] : 50;
            double east = v * systems.headingSin[i];
            double north = v * systems.headingCos[i];
            double late = (systems.time_s(i) - middle_s()) / half_s();
            return switch (j) {
                case 0 -> isEast(k) ? east : north;
                case 1 -> isEast(k) ? north : -east;
                case 2 -> isEast(k) ? 1 : 0;
                case 3 -> isEast(k) ? 0 : 1;
                case 4 -> isEast(k) ? late : 0;
                default -> isEast(k) ? 0 : late;
            };
        }
    }
}
