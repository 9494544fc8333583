package pairdown.camera;

import org.joml.Matrix4f;
import org.joml.Vector3d;

/**
 * A pose on a part of the picture: where a place of the world lands on screen. All drawing is
 * relative to the camera; world places are double until the camera is taken off.
 */
public final class Sight {
    private static final double FURTHEST_M = 80_000;

    private final Pose pose = new Pose();
    private final Matrix4f projection = new Matrix4f();
    private final Matrix4f relativeToClip = new Matrix4f();
    private int x_px;
    private int y_px;
    private int width_px = 1;
    private int height_px = 1;

    /**
     * @param x_px left edge in the picture
     * @param y_px bottom edge, counted from the picture's bottom
     */
    public void set(Pose from, int x_px, int y_px, int width_px, int height_px) {
        pose.set(from);
        this.x_px = x_px;
        this.y_px = y_px;
        this.width_px = Math.max(1, width_px);
        this.height_px = Math.max(1, height_px);
        projection.setPerspective(
                (float) Math.toRadians(pose.fieldOfView_deg()),
                (float) this.width_px / this.height_px,
                (float) pose.nearest_m(),
                (float) FURTHEST_M);
        // Shifted it is no symmetric perspective any more, for which there are short cuts.
        projection.m20((float) -pose.lensShift()).assume(0);
        Vector3d f = pose.forward();
        Vector3d u = pose.up();
        relativeToClip
                .set(projection)
                .lookAlong(
                        (float) f.x,
                        (float) f.y,
                        (float) f.z,
                        (float) u.x,
                        (float) u.y,
                        (float) u.z);
    }

    public Pose pose() {
        return pose;
    }

    /** From places relative to the camera to clip space; do not change. */
    public Matrix4f relativeToClip() {
        return relativeToClip;
    }

    public int x_px() {
        return x_px;
    }

    public int y_px() {
        return y_px;
    }

    public int width_px() {
        return width_px;
    }

    public int height_px() {
        return height_px;
    }

    /** Pixels on screen of one metre across the line of sight at one metre. */
    public double focal_px() {
        return height_px / 2.0 / Math.tan(Math.toRadians(pose.fieldOfView_deg()) / 2);
    }

    /** How far in front of the camera a place lies; negative behind it. */
    public double depth_m(double east_m, double north_m, double up_m) {
        Vector3d e = pose.eye();
        Vector3d f = pose.forward();
        return (east_m - e.x) * f.x + (north_m - e.y) * f.y + (up_m - e.z) * f.z;
    }

    /**
     * Where a place lands: x from the part's left edge, y from its top, in pixels.
     *
     * @return whether it lies in front of the camera; if not, nothing is written
     */
    public boolean project(double east_m, double north_m, double up_m, float[] xy) {
        double depth = depth_m(east_m, north_m, up_m);
        if (!(depth > pose.nearest_m())) {
            return false;
        }
        Vector3d e = pose.eye();
        Vector3d r = pose.right();
        Vector3d u = pose.up();
        double dx = east_m - e.x;
        double dy = north_m - e.y;
        double dz = up_m - e.z;
        double focal = focal_px();
        double middle_px = (1 + pose.lensShift()) * width_px / 2.0;
        xy[0] = (float) (middle_px + focal * (dx * r.x + dy * r.y + dz * r.z) / depth);
        xy[1] = (float) (height_px / 2.0 - focal * (dx * u.x + dy * u.y + dz * u.z) / depth);
        return true;
    }
}
