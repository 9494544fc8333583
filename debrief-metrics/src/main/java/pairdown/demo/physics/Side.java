package pairdown.demo.physics;

import pairdown.attempt.LeverArm;

/** The slots at the wing tips: where a flyer's logger is while its hand is on the tip. */
public enum Side {
    LEFT("left", -1),
    RIGHT("right", 1);

    /** Wing span of the lead (m). */
    public static final double SPAN_M = 14.2;

    private final String key;
    private final int sign;

    Side(String key, int sign) {
        this.key = key;
        this.sign = sign;
    }

    /** The slot's name in files. */
    public String key() {
        return key;
    }

    /** +1 right, −1 left. */
    int sign() {
        return sign;
    }

    /** The slot from the lead's centre of gravity: half a metre outboard of the tip. */
    public LeverArm slot() {
        return new LeverArm(-0.4, sign * (SPAN_M / 2 + 0.5), 0.3);
    }

    /** The wing tip itself. */
    LeverArm tip() {
        return new LeverArm(-0.4, sign * SPAN_M / 2, 0.3);
    }
}
