package pairdown.demo.receiver;

import pairdown.track.Channel;

/**
 * How a recorder reads one channel (common practice, no published source).
 *
 * @param noise one standard deviation, in the channel's unit
 * @param step what readings are rounded to
 */
record Instrument(double noise, double step) {
    private static final double FULL_TURN_DEG = 360;

    static Instrument of(Channel channel) {
        return switch (channel) {
            case INDICATED_AIRSPEED -> new Instrument(0.4, 0.1);
            case TRUE_AIRSPEED -> new Instrument(0.5, 0.1);
            case PRESSURE_ALTITUDE -> new Instrument(0.5, 0.1);
            case STATIC_PRESSURE -> new Instrument(0.05, 0.01);
            case OUTSIDE_AIR_TEMPERATURE -> new Instrument(0.2, 0.5);
            case HEADING -> new Instrument(0.5, 0.1);
            case PITCH, ROLL -> new Instrument(0.2, 0.1);
            case PITCH_RATE, ROLL_RATE, YAW_RATE -> new Instrument(0.2, 0.01);
            case NORMAL_LOAD, LONGITUDINAL_LOAD, LATERAL_LOAD -> new Instrument(0.01, 0.001);
            case POWER_LEVER, BLADE_ANGLE -> new Instrument(0.2, 0.1);
            case TORQUE -> new Instrument(0.4, 0.1);
            case PROPELLER_SPEED -> new Instrument(3, 1);
            case FLAP -> new Instrument(0, 1);
            case ELEVATOR, RUDDER, AILERON -> new Instrument(0.4, 0.1);
            default -> throw new IllegalArgumentException(channel.key() + " is no systems channel");
        };
    }

    double read(double value, Draws draws) {
        double noisy = value + noise * draws.gaussian();
        double steps = Math.rint(noisy / step);
        return step < 1 ? steps / Math.rint(1 / step) : steps * step;
    }

    /** A direction stays within the full turn. */
    static double turned(double deg) {
        double rest = deg % FULL_TURN_DEG;
        return rest < 0 ? rest + FULL_TURN_DEG : rest;
    }
}
