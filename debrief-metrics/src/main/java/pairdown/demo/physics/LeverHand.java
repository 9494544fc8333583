package pairdown.demo.physics;

import java.util.ArrayList;
import java.util.List;
import pairdown.demo.truth.TruePowerChange;

/** The pilot's hand on the power lever: rests, or moves at an even rate to a new place. */
final class LeverHand {
    /** Full range from idle to a stop in about a second and a half. */
    private static final double RATE_PERS = 0.65;

    private final List<TruePowerChange> changes = new ArrayList<>();
    private double lever;
    private double wanted;
    private double moved_s = Double.NEGATIVE_INFINITY;

    /** Moves the lever to a place, in whole per cent; nothing happens if it is or goes there. */
    void move(double time_s, double to) {
        double whole = Math.rint(Math.max(-1, Math.min(1, to)) * 100) / 100;
        if (Math.abs(whole - wanted) < 0.005) {
            return;
        }
        changes.add(new TruePowerChange(time_s, 100 * lever, 100 * whole));
        wanted = whole;
        moved_s = time_s;
    }

    double step(double dt_s) {
        double most = RATE_PERS * dt_s;
        lever += Math.max(-most, Math.min(most, wanted - lever));
        return lever;
    }

    double lever() {
        return lever;
    }

    double wanted() {
        return wanted;
    }

    /** How long ago it was last moved (s). */
    double rested_s(double time_s) {
        return time_s - moved_s;
    }

    List<TruePowerChange> changes() {
        return List.copyOf(changes);
    }
}
