package pairdown.tail;

import pairdown.track.Channel;

/** What showed a change of power. */
public enum PowerSource {
    POWER_LEVER(Channel.POWER_LEVER.key()),
    BLADE_ANGLE(Channel.BLADE_ANGLE.key()),
    TORQUE(Channel.TORQUE.key()),
    /** Tc′ alone, where neither lever nor blade angle nor torque serves. */
    RETARDING_COEFFICIENT("retardingCoefficient");

    private final String key;

    PowerSource(String key) {
        this.key = key;
    }

    /** The spelling in files, ending in the unit of the change's values where it has one. */
    public String key() {
        return key;
    }
}
