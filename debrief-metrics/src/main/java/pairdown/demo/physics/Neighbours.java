package pairdown.demo.physics;

import java.util.List;
import pairdown.vector.Vec3;

/**
 * How flyers keep clear of each other: within a distance, less for places planned close together,
 * each adds a speed away from the other. And who may leave: those further out first, so that nobody
 * leaves through another. Common practice, no published source.
 */
final class Neighbours {
    private static final double CLEAR_M = 34;
    private static final double GONE_CLEAR_M = 75;
    private static final double PLANNED_SHARE = 0.85;
    private static final double AWAY_MPS = 12;

    private final List<FlyerTrack> flyers;

    Neighbours(List<FlyerTrack> flyers) {
        this.flyers = flyers;
    }

    /** Speed to be added to where a flyer wants to go (m/s). */
    Vec3 clear_mps(FlyerTrack self) {
        Vec3 sum = Vec3.ZERO;
        if (self.inSuit_m().isEmpty()) {
            return sum;
        }
        for (FlyerTrack other : flyers) {
            if (other != self && other.inSuit_m().isPresent()) {
                sum = sum.plus(from(self, self.inSuit_m().get(), other, other.inSuit_m().get()));
            }
        }
        return sum;
    }

    private static Vec3 from(FlyerTrack self, Vec3 here_m, FlyerTrack other, Vec3 there_m) {
        boolean apart = self.isGone() && other.isGone();
        double clear_m =
                apart
                        ? GONE_CLEAR_M
                        : Math.min(CLEAR_M, PLANNED_SHARE * planned_m(self.plan(), other.plan()));
        Vec3 off_m = here_m.minus(there_m);
        double away_m = off_m.norm();
        return away_m > clear_m || away_m < 0.01
                ? Vec3.ZERO
                : off_m.times(AWAY_MPS * (1 - away_m / clear_m) / away_m);
    }

    /** Distance between the places of two on the bearing lines (m). */
    private static double planned_m(FlyerPlan a, FlyerPlan b) {
        return a.side() == b.side()
                ? Math.abs(a.gate_m() - b.gate_m())
                : Side.SPAN_M + 1 + 0.707 * (a.gate_m() + b.gate_m());
    }

    /** Whether a flyer that has done what it came for may leave now. */
    boolean mayLeave(FlyerTrack self) {
        return self.isDone()
                && flyers.stream()
                        .filter(o -> o != self && o.plan().side() == self.plan().side())
                        .filter(o -> o.plan().gate_m() > self.plan().gate_m())
                        .noneMatch(FlyerTrack::isJoining);
    }
}
