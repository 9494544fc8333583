package pairdown.format.source;

import java.util.Locale;
import java.util.Optional;
import pairdown.track.Channel;

/** Whether a value can be what its channel says, and the complaint where it can't. */
final class Plausible {
    /** EGM96 lies between −107 and +86 m; a receiver's own geoid may differ by metres. */
    private static final double MOST_SEPARATION_M = 150;

    /** No channel has a unit so small that a value could reach it. */
    private static final double MOST = 1e9;

    private Plausible() {}

    /** What is wrong with a place, if anything. */
    static Optional<String> place(double latitude_deg, double longitude_deg) {
        if (!(Math.abs(latitude_deg) <= 90)) {
            return Optional.of("latitude " + number(latitude_deg) + " is outside ±90");
        }
        if (!(longitude_deg >= -180 && longitude_deg <= 360)) {
            return Optional.of("longitude " + number(longitude_deg) + " is outside ±180");
        }
        if (latitude_deg == 0 && longitude_deg == 0) {
            return Optional.of("latitude and longitude 0 stand for no fix");
        }
        return Optional.empty();
    }

    static boolean isAbsurd(Channel channel, double value, ReadSettings limits) {
        return switch (channel) {
            case HEIGHT, PRESSURE_ALTITUDE -> Math.abs(value) > limits.heightLimit_m();
            case VELOCITY_NORTH, VELOCITY_EAST, VELOCITY_DOWN ->
                    Math.abs(value) > limits.speedLimit_mps();
            case GROUND_SPEED, INDICATED_AIRSPEED, TRUE_AIRSPEED ->
                    (value < 0 && channel == Channel.GROUND_SPEED)
                            || Math.abs(value) > limits.speedLimit_mps();
            case HORIZONTAL_ACCURACY, VERTICAL_ACCURACY, SPEED_ACCURACY ->
                    !(value >= 0 && value < MOST);
            case TRACK, HEADING -> !(Math.abs(value) <= 360);
            case SATELLITES -> !(value >= 0 && value < 1000);
            case PITCH -> !(Math.abs(value) <= 90);
            case ROLL -> !(Math.abs(value) <= 360);
            case GEOID_SEPARATION -> !(Math.abs(value) <= MOST_SEPARATION_M);
            default -> !(Math.abs(value) < MOST);
        };
    }

    static String complaint(Channel channel, double value) {
        return channel.key() + " " + number(value) + " can't be";
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.6f", value);
        return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
    }
}
