package pairdown.pair;

import pairdown.vector.Vec3;

/**
 * Where a flyer is seen from the lead, in the lead's axes.
 *
 * @param bearing_deg from the nose to the right, 0 to 360
 * @param elevation_deg above the level, −90 to 90
 * @param clock hour of the clock whose 12 is the nose, 1 to 12
 */
public record Bearing(double bearing_deg, double elevation_deg, int clock) {
    /** Within this of the level, a flyer is called level (common practice, no published source). */
    private static final double LEVEL_DEG = 10;

    /** Where a formation's line usually lies, from the nose (common practice; 45° off the tail). */
    public static final double USUAL_LINE_DEG = 135;

    /** The bearing of a position ahead, right, above (m). */
    public static Bearing of(Vec3 position_m) {
        double bearing_deg =
                (Math.toDegrees(Math.atan2(position_m.y(), position_m.x())) + 360) % 360;
        double elevation_deg = Math.toDegrees(Math.atan2(position_m.z(), position_m.levelNorm()));
        return new Bearing(bearing_deg, elevation_deg, clockOf(bearing_deg));
    }

    /** The hour nearest to a bearing: 14° is 12 o'clock, 16° is 1 o'clock. */
    public static int clockOf(double bearing_deg) {
        int hour = (int) Math.floor(bearing_deg / 30 + 0.5) % 12;
        return hour == 0 ? 12 : hour;
    }

    /** "4 o'clock low": for a person. */
    public String words() {
        String height = "level";
        if (elevation_deg > LEVEL_DEG) {
            height = "high";
        } else if (elevation_deg < -LEVEL_DEG) {
            height = "low";
        }
        return clock + " o'clock " + height;
    }

    /**
     * How far (m, level) a position lies off the bearing line that leaves the lead at {@code
     * line_deg} from the nose on one side: positive ahead of the line (acute), negative behind it
     * (sucked).
     *
     * @param rightSide whether the line is on the right
     */
    public static double offLine_m(Vec3 position_m, double line_deg, boolean rightSide) {
        double line_rad = Math.toRadians(line_deg);
        double outward_m = rightSide ? position_m.y() : -position_m.y();
        return position_m.x() * Math.sin(line_rad) - outward_m * Math.cos(line_rad);
    }
}
