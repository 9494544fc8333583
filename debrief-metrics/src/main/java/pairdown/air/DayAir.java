package pairdown.air;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import pairdown.atmosphere.Atmosphere;
import pairdown.attempt.AirSettings;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Geoid;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * The air of the day above one place: pressure and temperature at heights above the ellipsoid.
 *
 * @param atmosphere by height above mean sea level
 * @param undulation_m geoid above ellipsoid at the attempt's place
 * @param notes where pressure and temperature come from, in words
 */
public record DayAir(Atmosphere atmosphere, double undulation_m, List<String> notes) {
    /** Static pressure is trusted in slow climbs and descents only: its pick-up lags. */
    private static final double SLOW_MPS = 8;

    private static final double LOWEST_QNH_HPA = 940;
    private static final double HIGHEST_QNH_HPA = 1060;
    private static final double MOST_DEVIATION_C = 35;
    private static final int LEAST_SAMPLES = 20;

    public DayAir {
        notes = List.copyOf(notes);
    }

    /**
     * From what was typed, else from a log that has it, else standard.
     *
     * @param frame the attempt's
     * @param sources participants with their logged channels
     */
    public static DayAir find(AirSettings typed, LocalFrame frame, List<WindSource> sources) {
        Geodetic origin = frame.origin();
        double undulation_m =
                Geoid.egm96().undulation_m(origin.latitude_deg(), origin.longitude_deg());
        List<String> notes = new ArrayList<>();
        double deviation_C = deviation(typed, frame, undulation_m, sources, notes);
        double qnh_hPa = qnh(typed, frame, undulation_m, deviation_C, sources, notes);
        return new DayAir(new Atmosphere(qnh_hPa, deviation_C), undulation_m, notes);
    }

    private static double deviation(
            AirSettings typed,
            LocalFrame frame,
            double undulation_m,
            List<WindSource> sources,
            List<String> notes) {
        if (typed.temperatureDeviation_C().isPresent()) {
            return typed.temperatureDeviation_C().getAsDouble();
        }
        for (WindSource source : sources) {
            OptionalDouble found =
                    median(
                            source,
                            Channel.OUTSIDE_AIR_TEMPERATURE,
                            frame,
                            (t_C, h_m) ->
                                    t_C - Atmosphere.STANDARD.temperature_C(h_m - undulation_m));
            if (found.isPresent() && Math.abs(found.getAsDouble()) < MOST_DEVIATION_C) {
                notes.add(
                        String.format(
                                Locale.ROOT,
                                "temperature deviation %.1f °C from the log of %s",
                                found.getAsDouble(),
                                source.participant().id()));
                return found.getAsDouble();
            }
        }
        notes.add("no temperature known: the standard atmosphere's is used");
        return 0;
    }

    private static double qnh(
            AirSettings typed,
            LocalFrame frame,
            double undulation_m,
            double deviation_C,
            List<WindSource> sources,
            List<String> notes) {
        if (typed.qnh_hPa().isPresent()) {
            return typed.qnh_hPa().getAsDouble();
        }
        Atmosphere shape = new Atmosphere(Atmosphere.SEA_LEVEL_PRESSURE_HPA, deviation_C);
        for (WindSource source : sources) {
            OptionalDouble found =
                    firstPresent(
                            median(
                                    source,
                                    Channel.STATIC_PRESSURE,
                                    frame,
                                    (p, h) -> qnh(p, shape, h - undulation_m)),
                            median(
                                    source,
                                    Channel.PRESSURE_ALTITUDE,
                                    frame,
                                    (a, h) ->
                                            qnh(
                                                    Atmosphere.STANDARD.pressure_hPa(a),
                                                    shape,
                                                    h - undulation_m)));
            if (found.isPresent()
                    && found.getAsDouble() > LOWEST_QNH_HPA
                    && found.getAsDouble() < HIGHEST_QNH_HPA) {
                notes.add(
                        String.format(
                                Locale.ROOT,
                                "QNH %.1f hPa from pressure and satellite height of %s",
                                found.getAsDouble(),
                                source.participant().id()));
                return found.getAsDouble();
            }
        }
        notes.add("no QNH known: the standard 1013.25 hPa is used");
        return Atmosphere.SEA_LEVEL_PRESSURE_HPA;
    }

    private static OptionalDouble firstPresent(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() ? a : b;
    }

    private static double qnh(double pressure_hPa, Atmosphere shape, double msl_m) {
        return pressure_hPa * shape.qnh_hPa() / shape.pressure_hPa(msl_m);
    }

    @FunctionalInterface
    private interface AtHeight {
        double of(double value, double height_m);
    }

    /** Median over the samples taken in slow climb or descent of what each one says. */
    private static OptionalDouble median(
            WindSource source, Channel channel, LocalFrame frame, AtHeight what) {
        Series series = source.systems().get(channel);
        if (series == null) {
            return OptionalDouble.empty();
        }
        Trajectory trajectory = source.trajectory();
        DoubleStream.Builder said = DoubleStream.builder();
        double[] values = new double[Trajectory.VALUES];
        for (int i = 0; i < series.size(); i++) {
            double t_s = series.time_s(i);
            if (trajectory.covers(t_s) && !Double.isNaN(series.value(i))) {
                trajectory.read(t_s, values);
                double height_m = Heights.ellipsoid_m(frame, values);
                if (Math.abs(values[5]) < SLOW_MPS
                        && height_m > Atmosphere.LOWEST_M + 200
                        && height_m < Atmosphere.HIGHEST_M - 200) {
                    said.add(what.of(series.value(i), height_m));
                }
            }
        }
        double[] sorted = said.build().filter(Double::isFinite).sorted().toArray();
        return sorted.length < LEAST_SAMPLES
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Arrays.stream(sorted).skip(sorted.length / 2).findFirst().orElseThrow());
    }

    /** Static pressure at a height above the ellipsoid (hPa). */
    public double pressure_hPa(double height_m) {
        return atmosphere.pressure_hPa(msl(height_m));
    }

    /** Air temperature at a height above the ellipsoid (°C). */
    public double temperature_C(double height_m) {
        return atmosphere.temperature_C(msl(height_m));
    }

    private double msl(double height_m) {
        return Math.max(
                Atmosphere.LOWEST_M, Math.min(Atmosphere.HIGHEST_M, height_m - undulation_m));
    }

    /** True airspeed at a height above the ellipsoid (m/s). */
    public double true_mps(double calibrated_mps, double height_m) {
        return Airspeed.true_mps(calibrated_mps, pressure_hPa(height_m), temperature_C(height_m));
    }

    /** Calibrated airspeed at a height above the ellipsoid (m/s). */
    public double calibrated_mps(double true_mps, double height_m) {
        return Airspeed.calibrated_mps(true_mps, pressure_hPa(height_m), temperature_C(height_m));
    }
}
