package pairdown.clock;

import java.util.Arrays;
import pairdown.atmosphere.Atmosphere;
import pairdown.track.Channel;
import pairdown.track.EvenSeries;
import pairdown.track.Track;

/**
 * What an aircraft's recorder knows of its motion, smoothed onto even points of its own clock:
 * climb rate by pressure, turn rate, heading, airspeed and loads; and the same quantities made from
 * a satellite log.
 */
final class SystemsSignals {
    /** Gaps of the recorder that a rate is not taken across (s). */
    private static final double MAX_STEP_S = 5;

    /** Pressures of the heights flown, well inside the standard atmosphere's range. */
    private static final double LEAST_HPA = 100;

    private static final double MOST_HPA = 1100;

    /** Standard gravity, ISO 80000-3 (m/s²). */
    static final double G_MPS2 = 9.80665;

    final double start_s;
    final double step_s;
    final int size;
    final double[] climb_mps;
    final double[] turn_dps;

    /** True, by the standard atmosphere at the pressure height; as indicated where that is not. */
    final double[] airspeed_mps;

    final double[] headingSin;
    final double[] headingCos;
    final double[] longitudinal_g;

    /** Size of the load over the axes that were logged. */
    final double[] load_g;

    final boolean hasClimb;
    final boolean hasYawRate;
    final boolean hasHeading;
    final boolean hasAirspeed;
    final boolean hasLongitudinal;
    final boolean hasNormal;

    private SystemsSignals(Track track, double kernel_s) {
        this.step_s = kernel_s / 2;
        this.start_s = Math.floor(track.start_s() / step_s) * step_s;
        this.size = 2 + (int) (Math.min(36 * 3600.0, track.end_s() - start_s) / step_s);
        Smoother s = new Smoother(track, kernel_s);
        this.hasClimb = track.has(Channel.PRESSURE_ALTITUDE) || track.has(Channel.STATIC_PRESSURE);
        this.hasYawRate = track.has(Channel.YAW_RATE);
        this.hasHeading = track.has(Channel.HEADING);
        this.hasAirspeed = track.has(Channel.INDICATED_AIRSPEED);
        this.hasLongitudinal = track.has(Channel.LONGITUDINAL_LOAD);
        this.climb_mps = s.rate(row -> pressureAltitude_m(track, row), false);
        this.turn_dps =
                hasYawRate
                        ? s.level(row -> track.value(Channel.YAW_RATE, row))
                        : s.rate(row -> track.value(Channel.HEADING, row), true);
        double[] perIndicated = truePerIndicated(track);
        this.airspeed_mps =
                s.level(row -> track.value(Channel.INDICATED_AIRSPEED, row) * perIndicated[row]);
        this.headingSin = s.level(row -> Math.sin(heading_rad(track, row)));
        this.headingCos = s.level(row -> Math.cos(heading_rad(track, row)));
        this.hasNormal = track.has(Channel.NORMAL_LOAD);
        this.load_g = s.level(row -> load_g(track, row));
        this.longitudinal_g = s.level(row -> track.value(Channel.LONGITUDINAL_LOAD, row));
    }

    /**
     * The recorder's signals.
     *
     * @param kernel_s smoothing, as the satellite log's
     */
    static SystemsSignals of(Track track, double kernel_s) {
        return new SystemsSignals(track, kernel_s);
    }

    private static double heading_rad(Track track, int row) {
        return Math.toRadians(track.value(Channel.HEADING, row));
    }

    private static double load_g(Track track, int row) {
        double along = track.value(Channel.LONGITUDINAL_LOAD, row);
        double across = track.value(Channel.LATERAL_LOAD, row);
        double normal = track.value(Channel.NORMAL_LOAD, row);
        double level =
                Math.hypot(Double.isNaN(along) ? 0 : along, Double.isNaN(across) ? 0 : across);
        return Math.hypot(normal, level);
    }

    /** By row; the last height known counts where a row has none. */
    private static double[] truePerIndicated(Track track) {
        double[] ratio = new double[track.size()];
        double last = 1;
        for (int row = 0; row < ratio.length; row++) {
            double height_m = pressureAltitude_m(track, row);
            if (height_m >= Atmosphere.LOWEST_M && height_m <= Atmosphere.HIGHEST_M) {
                double density_kgpm3 = Atmosphere.STANDARD.density_kgpm3(height_m);
                last = Math.sqrt(Atmosphere.SEA_LEVEL_DENSITY_KGPM3 / density_kgpm3);
            }
            ratio[row] = last;
        }
        return ratio;
    }

    private static double pressureAltitude_m(Track track, int row) {
        if (track.has(Channel.PRESSURE_ALTITUDE)) {
            return track.value(Channel.PRESSURE_ALTITUDE, row);
        }
        double pressure_hPa = track.value(Channel.STATIC_PRESSURE, row);
        boolean within = pressure_hPa > LEAST_HPA && pressure_hPa < MOST_HPA;
        return within ? Atmosphere.pressureAltitude_m(pressure_hPa) : Double.NaN;
    }

    double time_s(int k) {
        return start_s + k * step_s;
    }

    /** Half of the recorded time (s). */
    double half_s() {
        return size * step_s / 2;
    }

    /** The middle of the recorded time, on the recorder's clock (s). */
    double middle_s() {
        return start_s + half_s();
    }

    /** Reads a value of a row. */
    private interface Reading {
        double of(int row);
    }

    private final class Smoother {
        private final Track track;
        private final double kernel_s;

        Smoother(Track track, double kernel_s) {
            this.track = track;
            this.kernel_s = kernel_s;
        }

        double[] level(Reading reading) {
            double[] t = new double[track.size()];
            double[] y = new double[track.size()];
            for (int i = 0; i < t.length; i++) {
                t[i] = track.time_s(i);
                y[i] = reading.of(i);
            }
            return even(t, y);
        }

        /** The rate of change, round the shorter way for directions, tagged at the middle. */
        double[] rate(Reading reading, boolean circular) {
            double[] t = new double[track.size()];
            double[] y = new double[track.size()];
            int last = -1;
            int n = 0;
            for (int i = 0; i < t.length; i++) {
                if (Double.isNaN(reading.of(i))) {
                    continue;
                }
                double step = last < 0 ? 0 : track.time_s(i) - track.time_s(last);
                if (step > 0 && step < MAX_STEP_S) {
                    double change = reading.of(i) - reading.of(last);
                    t[n] = track.time_s(last) + step / 2;
                    y[n++] = (circular ? Math.IEEEremainder(change, 360) : change) / step;
                }
                last = step > 0 || last < 0 ? i : last;
            }
            return even(Arrays.copyOf(t, n), Arrays.copyOf(y, n));
        }

        private double[] even(double[] t, double[] y) {
            EvenSeries s = EvenSeries.smooth(t, y, start_s, step_s, size, kernel_s);
            double[] out = new double[size];
            for (int k = 0; k < size; k++) {
                out[k] = s.value(k);
            }
            return out;
        }
    }
}
