package pairdown.tail;

import pairdown.track.Channel;

/** A control of the tail and the rate it commands. */
enum ControlAxis {
    /** An aircraft weathercocks in pitch: the normal load stands for the angle of attack. */
    PITCH("elevator", Channel.ELEVATOR, Channel.PITCH_RATE, Channel.NORMAL_LOAD, false),
    /** Sideslip turns the nose as well: the lateral load stands for it where logged. */
    YAW("rudder", Channel.RUDDER, Channel.YAW_RATE, Channel.LATERAL_LOAD, true);

    private final String words;
    private final Channel control;
    private final Channel rate;
    private final Channel load;
    private final boolean inWake;

    ControlAxis(String words, Channel control, Channel rate, Channel load, boolean inWake) {
        this.words = words;
        this.control = control;
        this.rate = rate;
        this.load = load;
        this.inWake = inWake;
    }

    /** What the control is called. */
    String words() {
        return words;
    }

    Channel control() {
        return control;
    }

    Channel rate() {
        return rate;
    }

    /** The load that tells how far the nose stands off the air's direction. */
    Channel load() {
        return load;
    }

    /**
     * Whether what turns the nose back into the air stands in the control's own air, and fades with
     * it: the fin behind its rudder does; in pitch wing and body have as large a part as the tail.
     */
    boolean restoringFades() {
        return inWake;
    }
}
