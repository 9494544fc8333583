package pairdown.air;

import java.util.Map;
import pairdown.track.Channel;
import pairdown.track.Series;

/** Whether a propeller is in reverse, by what was logged of it. */
final class Reverse {
    /** The lever's idle gate has some play. */
    private static final double LEVER_PCT = -2;

    private Reverse() {}

    /**
     * True where the power lever is behind idle or the blades are; false where neither is logged.
     */
    static boolean at(Map<Channel, Series> systems, double t_s) {
        Series lever = systems.get(Channel.POWER_LEVER);
        Series blades = systems.get(Channel.BLADE_ANGLE);
        return (lever != null && lever.at(t_s) < LEVER_PCT)
                || (blades != null && blades.at(t_s) < 0);
    }
}
