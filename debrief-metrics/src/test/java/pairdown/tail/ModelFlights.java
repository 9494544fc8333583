package pairdown.tail;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import pairdown.atmosphere.Atmosphere;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/** Model flights drawn by seed, and their logs as a recorder would have written them. */
final class ModelFlights {
    private ModelFlights() {}

    /** A flight: climb, idle, descent in reverse with moves of power, rough air, slip. */
    static ModelDive dive(long seed) {
        Random r = new Random(seed);
        List<ModelDive.LeverMove> lever = new ArrayList<>();
        double descent_s = 150;
        lever.add(new ModelDive.LeverMove(60, 35, false));
        lever.add(new ModelDive.LeverMove(110, 0, false));
        double t = descent_s + 5;
        lever.add(new ModelDive.LeverMove(t, -20, false));
        t += 4 + 2 * r.nextDouble();
        lever.add(new ModelDive.LeverMove(t, -38, false));
        t += 4 + 2 * r.nextDouble();
        double hold = -(51 + 3 * r.nextDouble());
        lever.add(new ModelDive.LeverMove(t, hold, false));
        t += 16 + 6 * r.nextDouble();
        List<ModelDive.Burst> bursts = new ArrayList<>();
        List<ModelDive.Burst> slips = new ArrayList<>();
        int parts = 6;
        int losses = 0;
        for (int k = 0; k < parts; k++) {
            int kind = r.nextInt(6);
            double length = 2.5 + 4 * r.nextDouble();
            if (kind <= 2 && losses < 3) {
                losses++;
                lever.add(new ModelDive.LeverMove(t, hold - 14 - 12 * r.nextDouble(), true));
                lever.add(
                        new ModelDive.LeverMove(t + length, hold + 9 + 12 * r.nextDouble(), true));
                lever.add(new ModelDive.LeverMove(t + length + 5, hold, false));
                t += length + 5;
            } else if (kind == 3) {
                bursts.add(new ModelDive.Burst(t, t + 5, 2.5));
                t += 5;
            } else if (kind == 4) {
                lever.add(new ModelDive.LeverMove(t, hold + 13, false));
                lever.add(new ModelDive.LeverMove(t + 5, hold, false));
                t += 5;
            } else {
                slips.add(new ModelDive.Burst(t, t + 4, 0.25));
                t += 4;
            }
            t += 9 + 6 * r.nextDouble();
        }
        double recovery_s = t;
        lever.add(new ModelDive.LeverMove(t, 40, false));
        ModelDive.Script script =
                new ModelDive.Script(
                        0.15 + 0.2 * r.nextDouble(),
                        0.8 + 0.9 * r.nextDouble(),
                        0.03 + 0.06 * r.nextDouble(),
                        3 + 4 * r.nextDouble(),
                        4 + 8 * r.nextDouble(),
                        -3 + 6 * r.nextDouble(),
                        0.3 + 0.5 * r.nextDouble(),
                        lever,
                        bursts,
                        slips,
                        descent_s,
                        recovery_s,
                        recovery_s + 30);
        return new ModelDive(script, seed * 7919 + 1);
    }

    /** What a recorder wrote of it. */
    static Map<Channel, Series> log(ModelDive dive, double rate_Hz, long seed) {
        Random r = new Random(seed * 31 + 5);
        Map<Channel, Series> log = new EnumMap<>(Channel.class);
        int n = dive.rows;
        double[] indicated = new double[n];
        double[] height = new double[n];
        for (int i = 0; i < n; i++) {
            indicated[i] = dive.airspeed_mps[i] * Math.sqrt(0.95 / 1.225);
            height[i] = dive.height_m[i];
        }
        log.put(Channel.INDICATED_AIRSPEED, sampled(indicated, rate_Hz, 0.4, 0.1, r));
        log.put(Channel.PRESSURE_ALTITUDE, sampled(height, rate_Hz, 0.5, 0.1, r));
        log.put(Channel.POWER_LEVER, sampled(dive.lever, rate_Hz, 0.5, 0.1, r));
        log.put(Channel.ELEVATOR, sampled(dive.elevator_pct, rate_Hz, 1.5, 0.1, r));
        log.put(Channel.RUDDER, sampled(dive.rudder_pct, rate_Hz, 1.5, 0.1, r));
        log.put(Channel.PITCH_RATE, sampled(dive.pitchRate_dps, rate_Hz, 0.3, 0.01, r));
        log.put(Channel.YAW_RATE, sampled(dive.yawRate_dps, rate_Hz, 0.3, 0.01, r));
        log.put(Channel.LATERAL_LOAD, sampled(dive.lateral_g, rate_Hz, 0.012, 0.001, r));
        log.put(Channel.FLAP, sampled(dive.flap_deg, rate_Hz, 0, 1, r));
        return log;
    }

    private static Series sampled(
            double[] column, double rate_Hz, double noise, double step, Random r) {
        int n = (int) Math.floor((column.length - 1) * ModelDive.STEP_S * rate_Hz);
        double[] time = new double[n];
        float[] value = new float[n];
        for (int k = 0; k < n; k++) {
            time[k] = k / rate_Hz;
            double x = time[k] / ModelDive.STEP_S;
            int i = (int) Math.min(column.length - 2.0, Math.floor(x));
            double v = column[i] + (x - i) * (column[i + 1] - column[i]);
            value[k] = (float) (Math.rint((v + noise * r.nextGaussian()) / step) * step);
        }
        return Series.of(time, value, false);
    }

    /** Everything the analysis may know of it. */
    static TailInput input(ModelDive dive, Map<Channel, Series> log) {
        // Density 0.95 kg/m³ all the way: true airspeed is given, not made from the height.
        int n = dive.rows / 10;
        double[] time = new double[n];
        float[] truly = new float[n];
        for (int k = 0; k < n; k++) {
            time[k] = k * 10 * ModelDive.STEP_S;
            truly[k] = (float) dive.airspeed_mps[k * 10];
        }
        return TailInput.of(
                        "lead",
                        log,
                        List.of(new Span(dive.script.descent_s(), dive.script.recovery_s())))
                .with(
                        new TailInput.Motion(
                                Optional.empty(),
                                Optional.ofNullable(log.get(Channel.INDICATED_AIRSPEED)),
                                Optional.of(Series.of(time, truly, false)),
                                Optional.of(Atmosphere.STANDARD)))
                .with(
                        new TailInput.Aircraft(
                                OptionalDouble.of(ModelDive.MASS_KG), Optional.empty()));
    }
}
