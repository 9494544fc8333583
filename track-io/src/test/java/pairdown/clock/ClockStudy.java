package pairdown.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pairdown.attempt.Role;
import pairdown.clock.SyntheticRide.Logger;

/** Error of measured clocks against a made-up truth over many seeds; prints what it found. */
public final class ClockStudy {
    private ClockStudy() {}

    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        for (double rate : new double[] {1, 5, 10}) {
            for (boolean own : new boolean[] {true, false}) {
                double squares = 0;
                int within = 0;
                int measured = 0;
                double sigma = 0;
                for (int seed = 0; seed < seeds; seed++) {
                    SyntheticRide ship = SyntheticRide.ship(seed, 360, s -> s > 80);
                    SyntheticRide flyer =
                            ship.passenger(
                                    new java.util.Random(seed).nextGaussian() * 1.2, 330, 1e9);
                    Logger l = Logger.csv(rate, -2.4 + 0.13 * seed, seed + 1000);
                    List<LoadedLog> logs = new ArrayList<>();
                    logs.add(
                            SyntheticRide.loaded(
                                    "ship",
                                    Role.JUMPSHIP,
                                    ship.log(Logger.csv(5, 0, seed).as("nmea"))));
                    logs.add(
                            SyntheticRide.loaded(
                                    "blue", Role.FLYER, flyer.log(own ? l : l.positionsOnly())));
                    ClockResult r =
                            CommonClock.align(logs, ClockSettings.DEFAULTS).results().get(1);
                    if (r.measured().isPresent()) {
                        double e = r.measured().get().value() - l.offset_s();
                        squares += e * e;
                        measured++;
                        sigma += r.measured().get().sigma();
                        within += Math.abs(e) < 3 * r.measured().get().sigma() ? 1 : 0;
                    } else {
                        System.out.println(seed + " " + r.warnings());
                    }
                }
                System.out.printf(
                        Locale.ROOT,
                        "%4.0f Hz %-10s measured %d of %d, rms %.1f ms, mean sigma %.1f ms, %d within 3 sigma%n",
                        rate,
                        own ? "velocity" : "positions",
                        measured,
                        seeds,
                        1e3 * Math.sqrt(squares / measured),
                        1e3 * sigma / measured,
                        within);
            }
        }
        recorders(seeds, true);
        recorders(seeds, false);
    }

    private static void recorders(int seeds, boolean prompt) {
        double squares = 0;
        int within = 0;
        int measured = 0;
        double sigma = 0;
        for (int seed = 0; seed < seeds; seed++) {
            int turning_s = 400 + 10 * seed;
            SyntheticRide lead = SyntheticRide.ship(seed, 900, s -> s > 80 && s < turning_s);
            LoadedLog gnss =
                    SyntheticRide.loaded(
                            "lead", Role.LEAD, lead.log(Logger.csv(5, 0, seed).as("nmea")));
            double zero_s = 31 + 1.37 * seed;
            LoadedLog systems =
                    SyntheticRide.second(
                            gnss, lead.recorder(8, zero_s, 30e-6, 0.5, prompt, seed + 7));
            ClockResult r =
                    CommonClock.align(List.of(gnss, systems), ClockSettings.DEFAULTS)
                            .results()
                            .get(1);
            if (seed == 0) {
                System.out.println(r.warnings());
            }
            if (r.method() == ClockMethod.NONE) {
                System.out.println(seed + " " + r.warnings());
                continue;
            }
            double zero =
                    java.time.Duration.between(SyntheticRide.START, r.zero().orElseThrow())
                                    .toMillis()
                            / 1e3;
            double end = 860 - zero_s;
            for (double tau : new double[] {0, end}) {
                double e = zero + tau * (1 + r.map().rate()) - (zero_s + tau * (1 + 30e-6));
                squares += e * e;
                measured++;
                sigma += r.offsetSigma_s();
                within += Math.abs(e) < 3 * r.offsetSigma_s() ? 1 : 0;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "recorder, %s: %d ends of %d, rms %.1f ms, mean sigma %.1f ms, %d within 3 sigma%n",
                prompt ? "with yaw rate and heading" : "pressure and airspeed alone",
                measured,
                2 * seeds,
                1e3 * Math.sqrt(squares / measured),
                1e3 * sigma / measured,
                within);
    }
}
