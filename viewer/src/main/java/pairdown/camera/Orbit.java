package pairdown.camera;

/**
 * Where the free camera stands around its subject. Mutable: dragging changes it many times a
 * second.
 */
public final class Orbit {
    private static final double NEAREST_M = 2;
    private static final double FURTHEST_M = 20_000;

    /** Straight down or up the horizon would turn with the least drag. */
    private static final double STEEPEST_DEG = 89;

    /** A sensible view to start from: from behind, right of the subject and somewhat above. */
    private double azimuth_deg = 145;

    private double elevation_deg = 18;
    private double distance_m = 60;

    /**
     * The direction from the subject to the camera, clockwise from ahead of the lead, or from north
     * in the world frame.
     */
    public double azimuth_deg() {
        return azimuth_deg;
    }

    /** Above the horizon positive. */
    public double elevation_deg() {
        return elevation_deg;
    }

    public double distance_m() {
        return distance_m;
    }

    public void turn(double right_deg, double up_deg) {
        azimuth_deg = Math.IEEEremainder(azimuth_deg + right_deg, 360);
        elevation_deg = Math.max(-STEEPEST_DEG, Math.min(STEEPEST_DEG, elevation_deg + up_deg));
    }

    /** Moves away by a factor, towards the subject with one below 1. */
    public void zoom(double factor) {
        distance_m = Math.max(NEAREST_M, Math.min(FURTHEST_M, distance_m * factor));
    }

    /** Takes up a place. */
    public void place(double azimuth_deg, double elevation_deg, double distance_m) {
        this.azimuth_deg = 0;
        this.elevation_deg = 0;
        turn(azimuth_deg, elevation_deg);
        this.distance_m = Math.max(NEAREST_M, Math.min(FURTHEST_M, distance_m));
    }
}
