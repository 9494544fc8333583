package pairdown.pair;

import pairdown.vector.Vec3;

/**
 * Where a flyer is seen from the lead, in the pair's axes.
 *
 * @param bearing_deg from the nose to the right, 0 to 360
 * @param elevation_deg above the level, −90 to 90
 * @param offLine_m how far, level, from the bearing line that leaves the lead on the slot's side:
 *     positive ahead of the line (acute), negative behind it (sucked)
 */
public record Bearing(double bearing_deg, double elevation_deg, double offLine_m) {
    /** Within this of the level, a flyer is called level (common practice, no published source). */
    private static final double LEVEL_DEG = 10;

    /** How a flyer stands to the lead's level. */
    public enum Level {
        HIGH("high"),
        LEVEL("level"),
        LOW("low");

        private final String key;

        Level(String key) {
            this.key = key;
        }

        /** The spelling in files. */
        public String key() {
            return key;
        }
    }

    /**
     * The bearing of a position ahead, right, above (m).
     *
     * @param line_deg the bearing line's angle from the nose
     * @param rightSide whether the line is on the right
     */
    public static Bearing of(Vec3 position_m, double line_deg, boolean rightSide) {
        return new Bearing(
                bearing_deg(position_m.x(), position_m.y()),
                elevation_deg(position_m.levelNorm(), position_m.z()),
                offLine_m(position_m, line_deg, rightSide));
    }

    private static double offLine_m(Vec3 position_m, double line_deg, boolean rightSide) {
        double line_rad = Math.toRadians(line_deg);
        double outward_m = rightSide ? position_m.y() : -position_m.y();
        return position_m.x() * Math.sin(line_rad) - outward_m * Math.cos(line_rad);
    }

    /** From the nose to the right, 0 to 360. */
    public static double bearing_deg(double ahead_m, double right_m) {
        return (Math.toDegrees(Math.atan2(right_m, ahead_m)) + 360) % 360;
    }

    /** Above the level, −90 to 90. */
    public static double elevation_deg(double level_m, double above_m) {
        return Math.toDegrees(Math.atan2(above_m, level_m));
    }

    /**
     * The hour nearest to a bearing on a clock whose 12 is the nose: 14° is 12 o'clock, 16° is 1
     * o'clock.
     */
    public static int hourOf(double bearing_deg) {
        int hour = (int) Math.floor(bearing_deg / 30 + 0.5) % 12;
        return hour == 0 ? 12 : hour;
    }

    /** High, level or low. */
    public static Level levelOf(double elevation_deg) {
        if (Math.abs(elevation_deg) <= LEVEL_DEG) {
            return Level.LEVEL;
        }
        return elevation_deg > 0 ? Level.HIGH : Level.LOW;
    }

    /** Hour of the clock whose 12 is the nose, 1 to 12. */
    public int hour() {
        return hourOf(bearing_deg);
    }

    public Level level() {
        return levelOf(elevation_deg);
    }
}
