package pairdown.clock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pairdown.attempt.Role;

/** Looks for the lag at which two logs share a ride: near their own clocks first, then anywhere. */
final class RideSearch {
    /** A watch set by hand or a slow receiver is this near to the truth (s). */
    private static final double NEAR_S = 12;

    /** GPS time runs ahead of UTC by this since 2017 (s). */
    static final double GPS_AHEAD_S = 18;

    /** Zones are multiples of a quarter of an hour … */
    static final double QUARTER_S = 900;

    /** … up to 14 h (s). */
    private static final double FARTHEST_ZONE_S = 14 * 3600;

    /** Candidates are searched this far to both sides (s). */
    private static final double CANDIDATE_S = 3;

    /** Velocity difference while a lag is only near (m/s). */
    private static final double LOOSE_MPS = 2.5;

    /** Peaks of the correlation that are looked at more closely. */
    private static final int PEAKS = 8;

    private static final double LEAST_CORRELATION = 0.3;

    /** Receivers of one cabin read within this of each other (m), those of a formation do not. */
    private static final double CABIN_M = 20;

    /** Two alignments nearer than this are one (s). */
    private static final double SAME_S = 2;

    private final ClockSettings settings;
    private final boolean shipLogged;

    /**
     * @param shipLogged whether a log of the exit aircraft is there, so that flyers and lead, which
     *     fly close and alike, need not be taken for one vehicle
     */
    RideSearch(ClockSettings settings, boolean shipLogged) {
        this.settings = settings;
        this.shipLogged = shipLogged;
    }

    /**
     * What came of a search.
     *
     * @param ride the best ride
     * @param rival another lag that fits about as well
     */
    record Found(RideFit.Ride ride, Optional<RideFit.Ride> rival) {}

    /** Whether the two can have shared a vehicle at all. */
    boolean mayShare(Mover a, Mover b) {
        if (a.isOf(b)) {
            return true;
        }
        boolean bothAircraft = a.role().isAircraft() && b.role().isAircraft();
        boolean lead = a.role() == Role.LEAD || b.role() == Role.LEAD;
        return !bothAircraft && !(lead && shipLogged);
    }

    /** Whether logs of two aircraft, by the clocks they have, move as if in one cabin. */
    boolean twoAircraftInOne(Mover a, Mover b) {
        boolean two = a.role().isAircraft() && b.role().isAircraft() && !a.isOf(b);
        if (!two || !a.isAbsolute() || !b.isAbsolute()) {
            return false;
        }
        double kernel_s = Math.max(a.kernel_s(), b.kernel_s());
        double lag_s = b.hypothesis_s() - a.hypothesis_s();
        RideFit.Rules rules = rules(a, b).within(CABIN_M);
        return RideFit.near(a.motion(kernel_s), b.motion(kernel_s), lag_s, rules).isPresent();
    }

    /** Near the clocks the two logs have. */
    Optional<RideFit.Ride> near(Mover a, Mover b) {
        double kernel_s = Math.max(a.kernel_s(), b.kernel_s());
        RideMotion ma = a.motion(kernel_s);
        RideMotion mb = b.motion(kernel_s);
        double lag_s = b.hypothesis_s() - a.hypothesis_s();
        Optional<RideFit.Ride> at = RideFit.near(ma, mb, lag_s, rules(a, b));
        if (at.isPresent()) {
            return at;
        }
        return around(ma, mb, lag_s, NEAR_S, rules(a, b));
    }

    /** At any lag: whole hours and the GPS–UTC difference first, then wherever they correlate. */
    Optional<Found> anywhere(Mover a, Mover b) {
        double kernel_s = Math.max(a.kernel_s(), b.kernel_s());
        RideMotion ma = a.motion(kernel_s);
        RideMotion mb = b.motion(kernel_s);
        RideFit.Rules rules = rules(a, b);
        List<RideFit.Ride> rides = new ArrayList<>();
        if (a.isAbsolute() && b.isAbsolute()) {
            for (double candidate_s : candidates()) {
                double lag_s = b.hypothesis_s() - a.hypothesis_s() + candidate_s;
                around(ma, mb, lag_s, CANDIDATE_S, rules).ifPresent(rides::add);
            }
        }
        if (rides.isEmpty()) {
            for (LagCorrelation.Peak peak : peaks(ma, mb)) {
                double lag_s = peak.shift() * mb.step_s + ma.start_s - mb.start_s;
                around(ma, mb, lag_s, CANDIDATE_S, rules).ifPresent(rides::add);
            }
        }
        return best(rides);
    }

    private Optional<Found> best(List<RideFit.Ride> rides) {
        return rides.stream()
                .max(Comparator.comparingDouble(r -> r.duration_s() / (0.1 + r.residual_mps())))
                .map(r -> new Found(r, rival(rides, r)));
    }

    private Optional<RideFit.Ride> rival(List<RideFit.Ride> rides, RideFit.Ride best) {
        return rides.stream()
                .filter(r -> Math.abs(r.lag_s() - best.lag_s()) > SAME_S)
                .filter(r -> r.residual_mps() <= (1 + settings.ambiguity()) * best.residual_mps())
                .filter(r -> r.duration_s() >= (1 - settings.ambiguity()) * best.duration_s())
                .findFirst();
    }

    /** Usual errors: whole quarters of an hour to both sides and the GPS–UTC difference. */
    static List<Double> candidates() {
        List<Double> out = new ArrayList<>(List.of(-GPS_AHEAD_S, GPS_AHEAD_S));
        for (double s = QUARTER_S; s <= FARTHEST_ZONE_S; s += QUARTER_S) {
            out.add(-s);
            out.add(s);
        }
        return out;
    }

    private List<LagCorrelation.Peak> peaks(RideMotion a, RideMotion b) {
        boolean useUp = a.hasUp && b.hasUp;
        return LagCorrelation.peaks(
                correlated(a, useUp),
                correlated(b, useUp),
                (int) (settings.minimumRide_s() / b.step_s),
                (int) (SAME_S / b.step_s) + 1,
                PEAKS,
                LEAST_CORRELATION);
    }

    private static double[][] correlated(RideMotion m, boolean useUp) {
        double[] up = useUp ? m.velocity[2] : new double[m.size()];
        return new double[][] {m.velocity[0], m.velocity[1], up};
    }

    /** The lag within reach at which most points move together, then refined. */
    private Optional<RideFit.Ride> around(
            RideMotion a, RideMotion b, double lag_s, double reach_s, RideFit.Rules rules) {
        int middle = (int) Math.round((b.start_s + lag_s - a.start_s) / b.step_s);
        int reach = (int) Math.ceil(reach_s / b.step_s);
        int least = (int) (settings.minimumRide_s() / b.step_s);
        int most = 0;
        int best = 0;
        for (int shift = middle - reach; shift <= middle + reach; shift++) {
            int together = together(a, b, shift);
            if (together > most) {
                most = together;
                best = shift;
            }
        }
        if (most < least) {
            return Optional.empty();
        }
        return RideFit.near(a, b, best * b.step_s + a.start_s - b.start_s, rules);
    }

    private int together(RideMotion a, RideMotion b, int shift) {
        boolean useUp = a.hasUp && b.hasUp;
        double allowed_mps = LOOSE_MPS + 3 * Math.hypot(a.noise_mps, b.noise_mps);
        int count = 0;
        int to = Math.min(b.size(), a.size() - shift);
        for (int k = Math.max(0, -shift); k < to; k++) {
            double e = b.velocity[0][k] - a.velocity[0][k + shift];
            double n = b.velocity[1][k] - a.velocity[1][k + shift];
            double u = useUp ? b.velocity[2][k] - a.velocity[2][k + shift] : 0;
            double vb2 = b.velocity[0][k] * b.velocity[0][k] + b.velocity[1][k] * b.velocity[1][k];
            boolean moving = vb2 > settings.minimumSpeed_mps() * settings.minimumSpeed_mps();
            count += moving && e * e + n * n + u * u < allowed_mps * allowed_mps ? 1 : 0;
        }
        return count;
    }

    /**
     * Logs of one participant stay together throughout. A flyer and a lead, where no exit aircraft
     * is logged, must agree to the noise and for longer: they also fly close and alike.
     */
    private RideFit.Rules rules(Mover a, Mover b) {
        boolean own = a.isOf(b);
        boolean lead = !own && (a.role() == Role.LEAD || b.role() == Role.LEAD);
        return new RideFit.Rules(
                lead ? settings.rideResidual_mps() / 2 : settings.rideResidual_mps(),
                lead ? settings.ridePosition_m() / 3 : settings.ridePosition_m(),
                lead ? 2 * settings.minimumRide_s() : settings.minimumRide_s(),
                settings.minimumSpeed_mps(),
                own ? Double.POSITIVE_INFINITY : settings.maximumSink_mps());
    }
}
