package pairdown.pair;

import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.units.Estimate;
import pairdown.vector.Vec3;

/** Finds where a pair came closest, between rows as well. */
final class ApproachFinder {
    /** Golden-section steps: two rows of 0.1 s shrink to under a microsecond. */
    private static final int STEPS = 26;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private ApproachFinder() {}

    /** Least separation over the measured rows; empty if there is none. */
    static Optional<Approach> closest(PairRows rows, RelativeMotion motion) {
        return least(rows, rows.separation_m, motion, s -> s.separation_m);
    }

    /** Least gap over the measured rows; empty without a slot. */
    static Optional<Approach> leastGap(PairRows rows, RelativeMotion motion) {
        return least(
                rows,
                rows.gap_m,
                motion,
                s -> s.gapVector_m().map(Vec3::norm).orElse(Double.POSITIVE_INFINITY));
    }

    /** A distance read from a sample. */
    private interface Distance {
        double of(RelativeMotion.Sample sample);
    }

    private static Optional<Approach> least(
            PairRows rows, double[] column, RelativeMotion motion, Distance distance) {
        int best = -1;
        for (int i = 0; i < rows.size; i++) {
            if (!Double.isNaN(column[i]) && (best < 0 || column[i] < column[best])) {
                best = i;
            }
        }
        if (best < 0) {
            return Optional.empty();
        }
        double from_s =
                best > 0 && rows.measured[best - 1] ? rows.time_s[best - 1] : rows.time_s[best];
        double to_s =
                best + 1 < rows.size && rows.measured[best + 1]
                        ? rows.time_s[best + 1]
                        : rows.time_s[best];
        return Optional.of(at(motion, refined_s(motion, distance, from_s, to_s)));
    }

    private static double refined_s(
            RelativeMotion motion, Distance distance, double from_s, double to_s) {
        double a_s = from_s;
        double b_s = to_s;
        for (int i = 0; i < STEPS && b_s > a_s; i++) {
            double c_s = b_s - GOLDEN * (b_s - a_s);
            double d_s = a_s + GOLDEN * (b_s - a_s);
            if (distance.of(motion.sample(c_s)) < distance.of(motion.sample(d_s))) {
                b_s = d_s;
            } else {
                a_s = c_s;
            }
        }
        return (a_s + b_s) / 2;
    }

    static Approach at(RelativeMotion motion, double t_s) {
        RelativeState s = motion.at(t_s);
        return new Approach(
                t_s,
                new Estimate(s.separation_m(), s.separationSigma_m()),
                Double.isNaN(s.gap_m())
                        ? Optional.empty()
                        : Optional.of(new Estimate(s.gap_m(), s.gapSigma_m())),
                Double.isNaN(s.closureRate_mps())
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(s.closureRate_mps()),
                motion.bearing(t_s),
                s.relative_m().x(),
                s.relative_m().y(),
                s.relative_m().z());
    }
}
