package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.atmosphere.Atmosphere;
import pairdown.motion.Trajectory;
import pairdown.stats.Robust;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * The motion through the air on the grid: smoothed calibrated and true airspeed, sink, path angle
 * and the acceleration along the path. NaN where these data do not give one.
 *
 * <p>Calibrated and equivalent airspeed are taken as one: at 60 m/s and 4 km they differ by 0.2 %.
 *
 * @param calibrated_mps smoothed
 * @param dynamicPressure_Pa half of sea-level density times calibrated airspeed squared
 * @param true_mps smoothed
 * @param sink_mps down positive
 * @param sinePath sink over true airspeed
 * @param acceleration_mps2 along the path through the air: by the track, which a gust does not put
 *     off as it does an airspeed; else the slope of true airspeed
 * @param verticalAir_mps one sigma of rising and sinking air, by the gusts that the logged airspeed
 *     felt and the track did not; where they can't be told, the settings' usual one
 * @param notes what was assumed and what is missing
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record AirData(
        double[] calibrated_mps,
        double[] dynamicPressure_Pa,
        double[] true_mps,
        double[] sink_mps,
        double[] sinePath,
        double[] acceleration_mps2,
        double verticalAir_mps,
        List<String> notes) {
    /** Gusts are told by how an airspeed changes over this long. */
    private static final double GUST_APART_S = 10;

    /** The length of gusts above 2,000 ft: 1,750 ft (MIL-F-8785C). */
    private static final double GUST_M = 533;

    /** The calmest and the roughest air that is believed. */
    private static final double CALMEST_MPS = 0.3;

    private static final double ROUGHEST_MPS = 4;

    static AirData of(TailInput input, Signals signals) {
        List<String> notes = new ArrayList<>();
        Grid grid = signals.grid();
        LocalLine line = new LocalLine(input.settings().data().airSmoothing_s(), grid.step_s());
        double[] sink = sink(input, signals, line, notes);
        double[] rootDensity = rootDensityRatio(input, signals, notes);
        double[] calibrated = calibrated(input, signals, rootDensity, notes);
        double[] truly = truly(input, grid, calibrated, rootDensity, notes);
        double[] still = truly.clone();
        LoggedAirspeed.correction(input, signals, calibrated, notes)
                .ifPresent(
                        factor -> {
                            times(calibrated, factor);
                            times(truly, factor);
                        });
        double[] smoothCalibrated = line.value(calibrated);
        double[] smoothTrue = line.value(truly);
        double[] pressure = new double[grid.size()];
        double[] sine = new double[grid.size()];
        for (int i = 0; i < pressure.length; i++) {
            double v = smoothCalibrated[i];
            pressure[i] = Atmosphere.SEA_LEVEL_DENSITY_KGPM3 * v * v / 2;
            double flying = input.settings().data().flying_mps();
            sine[i] = v >= flying ? Math.max(-1, Math.min(1, sink[i] / smoothTrue[i])) : Double.NaN;
        }
        double[] acceleration =
                input.motion()
                        .trajectory()
                        .map(t -> line.value(alongPath(t, grid, sine)))
                        .orElseGet(() -> line.slope(truly));
        double verticalAir_mps =
                gusts_mps(smoothTrue, line.value(still), grid)
                        .orElse(input.settings().force().verticalAir_mps());
        return new AirData(
                smoothCalibrated,
                pressure,
                smoothTrue,
                sink,
                sine,
                acceleration,
                verticalAir_mps,
                notes);
    }

    /**
     * One sigma of the gusts along the path: of what one airspeed felt and the other did not, by
     * its change over a time, of which a Dryden gust's is 2σ²(1 − e^(−time/correlation time)).
     * Above 2,000 ft gusts are as large in every direction (MIL-F-8785C). Empty where the two
     * airspeeds are one.
     */
    private static OptionalDouble gusts_mps(double[] felt_mps, double[] still_mps, Grid grid) {
        int apart = grid.steps(GUST_APART_S);
        double[] changes = Signals.nothing(felt_mps.length);
        for (int i = apart; i < changes.length; i++) {
            changes[i] = felt_mps[i] - still_mps[i] - felt_mps[i - apart] + still_mps[i - apart];
        }
        double lasts_s = GUST_M / Robust.median(still_mps).orElse(Double.NaN);
        double share = 2 * (1 - Math.exp(-GUST_APART_S / lasts_s));
        OptionalDouble sigma = Robust.sigma(changes);
        if (sigma.isEmpty() || !(sigma.getAsDouble() > 0)) {
            return OptionalDouble.empty();
        }
        double gust_mps = sigma.getAsDouble() / Math.sqrt(share);
        return OptionalDouble.of(Math.max(CALMEST_MPS, Math.min(ROUGHEST_MPS, gust_mps)));
    }

    /** Acceleration of the track along a path that points down by the path angle. */
    private static double[] alongPath(Trajectory trajectory, Grid grid, double[] sine) {
        double[] along = Signals.nothing(grid.size());
        double[] state = new double[Trajectory.VALUES];
        for (int i = 0; i < along.length; i++) {
            double t_s = grid.time_s(i);
            if (trajectory.covers(t_s) && !trajectory.inGap(t_s)) {
                trajectory.read(t_s, state);
                double level =
                        (state[6] * state[3] + state[7] * state[4])
                                / Math.hypot(state[3], state[4]);
                along[i] = level * Math.sqrt(1 - sine[i] * sine[i]) - state[8] * sine[i];
            }
        }
        return along;
    }

    private static void times(double[] column, double[] factor) {
        for (int i = 0; i < column.length; i++) {
            column[i] *= factor[i];
        }
    }

    boolean hasAirspeed() {
        return anyFinite(calibrated_mps);
    }

    boolean hasPath() {
        return anyFinite(sinePath);
    }

    /** Whether airspeed at a place says flying, or nothing does. */
    boolean flying(int i, TailSettings.Data data) {
        return !Double.isFinite(calibrated_mps[i])
                ? !hasAirspeed()
                : calibrated_mps[i] >= data.flying_mps();
    }

    private static boolean anyFinite(double[] column) {
        for (double v : column) {
            if (Double.isFinite(v)) {
                return true;
            }
        }
        return false;
    }

    private static double[] sink(
            TailInput input, Signals signals, LocalLine line, List<String> notes) {
        Grid grid = signals.grid();
        if (input.motion().trajectory().isPresent()) {
            return sink(input.motion().trajectory().get(), grid);
        }
        double[] height = pressureHeight(signals);
        if (!anyFinite(height)) {
            notes.add("no height or track: sink and path angle are not known");
        } else {
            notes.add("sink is the smoothed rate of change of pressure height: no track is known");
        }
        double[] sink = line.slope(height);
        for (int i = 0; i < sink.length; i++) {
            sink[i] = -sink[i];
        }
        return sink;
    }

    private static double[] sink(Trajectory trajectory, Grid grid) {
        double[] sink = new double[grid.size()];
        double[] state = new double[Trajectory.VALUES];
        for (int i = 0; i < sink.length; i++) {
            double t_s = grid.time_s(i);
            if (!trajectory.covers(t_s) || trajectory.inGap(t_s)) {
                sink[i] = Double.NaN;
                continue;
            }
            trajectory.read(t_s, state);
            sink[i] = -state[5];
        }
        return sink;
    }

    private static double[] pressureHeight(Signals signals) {
        if (signals.has(Channel.PRESSURE_ALTITUDE)) {
            return signals.column(Channel.PRESSURE_ALTITUDE);
        }
        double[] height = signals.column(Channel.STATIC_PRESSURE).clone();
        for (int i = 0; i < height.length; i++) {
            boolean sensible = height[i] > 100 && height[i] < 1100;
            height[i] = sensible ? Atmosphere.pressureAltitude_m(height[i]) : Double.NaN;
        }
        return height;
    }

    /** √(ρ/ρ₀) from logged pressure height and temperature, else the day's air at that height. */
    private static double[] rootDensityRatio(TailInput input, Signals signals, List<String> notes) {
        double[] height = pressureHeight(signals);
        double[] temperature = signals.column(Channel.OUTSIDE_AIR_TEMPERATURE);
        double deviation_C =
                input.motion().atmosphere().map(Atmosphere::temperatureDeviation_C).orElse(0.0);
        double[] root = new double[height.length];
        for (int i = 0; i < root.length; i++) {
            double h = height[i];
            if (!(h > Atmosphere.LOWEST_M && h < Atmosphere.HIGHEST_M)) {
                root[i] = Double.NaN;
                continue;
            }
            double air_C =
                    Double.isFinite(temperature[i])
                            ? temperature[i]
                            : Atmosphere.STANDARD.temperature_C(h) + deviation_C;
            double density = Atmosphere.densityOf_kgpm3(Atmosphere.STANDARD.pressure_hPa(h), air_C);
            root[i] = Math.sqrt(density / Atmosphere.SEA_LEVEL_DENSITY_KGPM3);
        }
        boolean needed =
                input.motion().calibratedAirspeed_mps().isPresent()
                        != input.motion().trueAirspeed_mps().isPresent();
        if (needed && anyFinite(root) && !signals.has(Channel.OUTSIDE_AIR_TEMPERATURE)) {
            notes.add(
                    "air density is the standard one for the pressure height: no temperature logged");
        }
        return root;
    }

    private static double[] calibrated(
            TailInput input, Signals signals, double[] rootDensity, List<String> notes) {
        Grid grid = signals.grid();
        if (input.motion().calibratedAirspeed_mps().isPresent()) {
            return grid.read(input.motion().calibratedAirspeed_mps().get());
        }
        if (signals.has(Channel.INDICATED_AIRSPEED)) {
            notes.add(
                    "indicated airspeed is taken for calibrated; in reverse it is not calibrated");
            return signals.column(Channel.INDICATED_AIRSPEED);
        }
        Optional<Series> truly = input.motion().trueAirspeed_mps();
        if (truly.isEmpty()) {
            notes.add(
                    "no airspeed is known: effectiveness is not corrected for dynamic pressure, and"
                            + " retarding force and Tc′ can't be seen");
            return Signals.nothing(grid.size());
        }
        double[] calibrated = grid.read(truly.get());
        for (int i = 0; i < calibrated.length; i++) {
            calibrated[i] *= rootDensity[i];
        }
        if (!anyFinite(calibrated)) {
            notes.add("true airspeed without a pressure height gives no dynamic pressure");
        }
        return calibrated;
    }

    private static double[] truly(
            TailInput input,
            Grid grid,
            double[] calibrated,
            double[] rootDensity,
            List<String> notes) {
        if (input.motion().trueAirspeed_mps().isPresent()) {
            return grid.read(input.motion().trueAirspeed_mps().get());
        }
        double[] truly = new double[calibrated.length];
        for (int i = 0; i < truly.length; i++) {
            truly[i] = calibrated[i] / rootDensity[i];
        }
        if (anyFinite(calibrated) && !anyFinite(truly)) {
            notes.add("airspeed without a pressure height gives no true airspeed, hence no force");
        }
        return truly;
    }
}
