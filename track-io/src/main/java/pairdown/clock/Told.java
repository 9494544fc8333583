package pairdown.clock;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Offsets that people and devices are known to produce, and how to say so. */
final class Told {
    private static final double DAY_S = 86_400;

    private Told() {}

    /** The known mistake nearest to an offset, if one is within {@code tolerance_s}; never 0. */
    static OptionalDouble knownOffset_s(double offset_s, double tolerance_s) {
        double gps_s = Math.copySign(RideSearch.GPS_AHEAD_S, offset_s);
        double quarters_s = Math.rint(offset_s / RideSearch.QUARTER_S) * RideSearch.QUARTER_S;
        for (double known_s : new double[] {gps_s, quarters_s, quarters_s + gps_s}) {
            if (known_s != 0 && Math.abs(offset_s - known_s) <= tolerance_s) {
                return OptionalDouble.of(known_s);
            }
        }
        return OptionalDouble.empty();
    }

    /** What an applied offset looks like, for a person; empty for an odd one. */
    static Optional<String> words(double offset_s) {
        OptionalDouble known = knownOffset_s(offset_s, 0.5);
        if (known.isEmpty()) {
            return Optional.empty();
        }
        double s = known.getAsDouble();
        if (s == -RideSearch.GPS_AHEAD_S) {
            return Optional.of("its times look like GPS time written as UTC (18 s ahead)");
        }
        if (Math.abs(s) == RideSearch.GPS_AHEAD_S) {
            return Optional.of(
                    "its times are 18 s behind UTC: the leap seconds were taken off twice");
        }
        if (s % DAY_S == 0) {
            return Optional.of(
                    String.format(Locale.ROOT, "its date is %.0f days off", Math.abs(s) / DAY_S));
        }
        double minutes = Math.abs(s) / 60;
        return Optional.of(
                String.format(
                        Locale.ROOT,
                        "its times look like local time written as UTC (%.0f h %02.0f min %s)",
                        Math.floor(minutes / 60),
                        minutes % 60,
                        s < 0 ? "ahead" : "behind"));
    }

    /** Seconds with a sign and as many digits as their sigma deserves. */
    static String seconds(double s) {
        return String.format(Locale.ROOT, "%+.2f s", s);
    }
}
