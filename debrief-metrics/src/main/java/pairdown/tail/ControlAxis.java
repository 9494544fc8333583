package pairdown.tail;

import java.util.Optional;
import pairdown.track.Channel;

/** A control of the tail and the rate it commands. */
enum ControlAxis {
    PITCH("elevator", Channel.ELEVATOR, Channel.PITCH_RATE, Optional.empty()),
    /** Sideslip turns the nose as well: the lateral load stands for it where logged. */
    YAW("rudder", Channel.RUDDER, Channel.YAW_RATE, Optional.of(Channel.LATERAL_LOAD));

    private final String words;
    private final Channel control;
    private final Channel rate;
    private final Optional<Channel> load;

    ControlAxis(String words, Channel control, Channel rate, Optional<Channel> load) {
        this.words = words;
        this.control = control;
        this.rate = rate;
        this.load = load;
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

    Optional<Channel> load() {
        return load;
    }
}
