package pairdown.clock;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.units.Estimate;

/**
 * The lag, to a point or so, at which a recorder's climb rate, turn rate and airspeed go with its
 * aircraft's satellite log: by correlation at every lag.
 */
final class AirDataSearch {
    /**
     * Peaks of the correlation, and what they must reach (domain practice, no published source).
     */
    private static final int PEAKS = 4;

    private static final double LEAST_CORRELATION = 0.5;
    private static final double RIVAL_SHARE = 0.9;

    /** A rival that so much less speaks for, over a shorter overlap, correlates by chance. */
    private static final double RIVAL_EVIDENCE = 0.5;

    /** Lags nearer than this are one (s). */
    private static final double SAME_S = 3;

    private final SystemsSignals systems;
    private final VehicleSignals vehicle;
    private final ClockSettings settings;

    AirDataSearch(SystemsSignals systems, VehicleSignals vehicle, ClockSettings settings) {
        this.systems = systems;
        this.vehicle = vehicle;
        this.settings = settings;
    }

    /** A lag (the vehicle's time minus the recorder's), or why there is none. */
    record Found(Optional<Double> lag_s, String refusal) {
        static Found refused(String why) {
            return new Found(Optional.empty(), why);
        }
    }

    /**
     * Looks for the lag.
     *
     * @param near lags to keep to, with their reach, or empty to search all
     */
    Found find(Optional<Estimate> near) {
        if (!systems.hasClimb && !systems.hasYawRate && !systems.hasHeading) {
            return Found.refused(
                    "it has neither pressure height nor yaw rate nor heading to match with its"
                            + " aircraft's satellite log");
        }
        List<LagCorrelation.Peak> peaks = peaks(near);
        if (peaks.isEmpty()) {
            return Found.refused(
                    "its air data fit its aircraft's satellite log nowhere (correlation under "
                            + LEAST_CORRELATION
                            + ")");
        }
        LagCorrelation.Peak best = peaks.get(0);
        return peaks.stream()
                .skip(1)
                .filter(p -> isRival(p, best))
                .findFirst()
                .map(
                        rival ->
                                Found.refused(
                                        String.format(
                                                Locale.ROOT,
                                                "its air data fit its aircraft's satellite log at"
                                                        + " two lags alike, %.1f s apart: ambiguous",
                                                Math.abs(lag_s(rival) - lag_s(best)))))
                .orElseGet(() -> new Found(Optional.of(lag_s(best)), ""));
    }

    private static boolean isRival(LagCorrelation.Peak p, LagCorrelation.Peak best) {
        return p.correlation() > RIVAL_SHARE * best.correlation()
                && p.evidence() > RIVAL_EVIDENCE * best.evidence();
    }

    private double lag_s(LagCorrelation.Peak p) {
        return p.shift() * vehicle.motion.step_s + vehicle.motion.start_s - systems.start_s;
    }

    private List<LagCorrelation.Peak> peaks(Optional<Estimate> near) {
        double[][] a = {
            standard(vehicle.turnWhereMoving_dps()),
            standard(vehicle.speed_mps()),
            systems.hasClimb
                    ? standard(vehicle.motion.velocity[2].clone())
                    : new double[vehicle.motion.size()]
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
        int overlap = (int) (settings.minimumRide_s() / vehicle.motion.step_s);
        List<LagCorrelation.Peak> all =
                LagCorrelation.peaks(
                        a,
                        b,
                        overlap,
                        (int) (SAME_S / vehicle.motion.step_s),
                        PEAKS,
                        LEAST_CORRELATION);
        return all.stream().filter(p -> near.map(n -> isNear(p, n)).orElse(true)).toList();
    }

    private boolean isNear(LagCorrelation.Peak p, Estimate near) {
        return Math.abs(lag_s(p) - near.value()) <= near.sigma();
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
}
