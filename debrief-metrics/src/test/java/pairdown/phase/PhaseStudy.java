package pairdown.phase;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import pairdown.attempt.Role;
import pairdown.height.AlignedLog;

/** Error of exits and openings against a made-up truth over many seeds; prints what it found. */
public final class PhaseStudy {
    private PhaseStudy() {}

    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        for (double rate : new double[] {1, 5, 10}) {
            for (boolean own : new boolean[] {true, false}) {
                for (boolean shipLogged : new boolean[] {true, false}) {
                    study(seeds, rate, own, shipLogged);
                }
            }
        }
    }

    private static void study(int seeds, double rate_Hz, boolean own, boolean shipLogged) {
        double[] exits = new double[2];
        double[] openings = new double[2];
        int found = 0;
        int within = 0;
        double mean = 0;
        double late = 0;
        for (int seed = 0; seed < seeds; seed++) {
            SyntheticJump jump = new SyntheticJump(seed, 25 + 1.5 * seed, seed % 3);
            AlignedLog blue =
                    SyntheticJump.log("blue", Role.FLYER, jump.flyer, rate_Hz, own, seed + 50);
            AlignedLog ship =
                    SyntheticJump.log("ship", Role.JUMPSHIP, jump.ship, 5, true, seed + 90);
            Phases p =
                    PhaseFinder.find(
                            shipLogged ? List.of(blue, ship) : List.of(blue),
                            PhaseSettings.DEFAULTS);
            OptionalDouble exit_s = p.exit_s("blue");
            OptionalDouble opening_s = p.opening_s("blue");
            if (exit_s.isEmpty() || opening_s.isEmpty()) {
                System.out.println(seed + " not found " + p.events());
                continue;
            }
            found++;
            double e = exit_s.getAsDouble() - jump.exit_s;
            double o = opening_s.getAsDouble() - jump.pull_s;
            mean += e;
            late += o;
            within +=
                    Math.abs(e) < 3 * p.estimate("blue", EventKind.EXIT).orElseThrow().sigma()
                            ? 1
                            : 0;
            add(exits, e);
            add(openings, o);
        }
        System.out.printf(
                Locale.ROOT,
                "%4.0f Hz %-10s %-7s exit rms %.2f worst %.2f mean %+.2f s, opening rms %.2f worst %.2f mean %+.2f s, %d of %d, %d within 3 sigma%n",
                rate_Hz,
                own ? "velocity" : "positions",
                shipLogged ? "ship" : "no ship",
                Math.sqrt(exits[0] / found),
                exits[1],
                mean / found,
                Math.sqrt(openings[0] / found),
                openings[1],
                late / found,
                found,
                seeds,
                within);
    }

    private static void add(double[] sums, double e) {
        sums[0] += e * e;
        sums[1] = Math.max(sums[1], Math.abs(e));
    }
}
