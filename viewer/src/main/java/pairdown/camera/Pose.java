package pairdown.camera;

import org.joml.Quaterniond;
import org.joml.Vector3d;

/**
 * Where a camera stands and looks, in the attempt's east-north-up frame. Filled anew in every
 * frame.
 */
public final class Pose {
    /** Eyes are never nearer to the ground than this (m). */
    private static final double EYE_HEIGHT_M = 1.7;

    private final Vector3d eye = new Vector3d();
    private final Vector3d forward = new Vector3d(0, 1, 0);
    private final Vector3d up = new Vector3d(0, 0, 1);
    private final Vector3d right = new Vector3d(1, 0, 0);
    private final Quaterniond turn = new Quaterniond();
    private final Quaterniond turnA = new Quaterniond();
    private double fieldOfView_deg = 40;
    private double nearest_m = 0.3;
    private double lensShift;

    /** The camera's place: east, north, up (m); do not change. */
    public Vector3d eye() {
        return eye;
    }

    /** Unit vector it looks along; do not change. */
    public Vector3d forward() {
        return forward;
    }

    /** Unit vector to the top of the picture; do not change. */
    public Vector3d up() {
        return up;
    }

    /** Unit vector to the right of the picture; do not change. */
    public Vector3d right() {
        return right;
    }

    /** From the bottom of the picture to its top. */
    public double fieldOfView_deg() {
        return fieldOfView_deg;
    }

    /**
     * How far right of the picture's middle what it looks at stands, in half widths. The picture is
     * shifted as by a lens: lines that meet in what it looks at are seen as from straight before
     * it.
     */
    public double lensShift() {
        return lensShift;
    }

    /** Shifts the picture, as long as no other pose is taken. */
    public Pose shift(double halfWidths) {
        lensShift = halfWidths;
        return this;
    }

    /** What is nearer is not drawn. */
    public double nearest_m() {
        return nearest_m;
    }

    /**
     * Stands at a place and looks in a direction.
     *
     * @param top roughly the way to the top of the picture; not along the direction
     */
    public Pose set(
            Vector3d place, Vector3d direction, Vector3d top, double fov_deg, double near_m) {
        eye.set(place);
        forward.set(direction).normalize();
        right.set(forward).cross(top);
        if (right.lengthSquared() < 1e-12) {
            right.set(1, 0, 0);
        }
        right.normalize();
        up.set(right).cross(forward);
        fieldOfView_deg = fov_deg;
        nearest_m = near_m;
        lensShift = 0;
        return this;
    }

    public Pose set(Pose other) {
        eye.set(other.eye);
        forward.set(other.forward);
        up.set(other.up);
        right.set(other.right);
        fieldOfView_deg = other.fieldOfView_deg;
        nearest_m = other.nearest_m;
        lensShift = other.lensShift;
        return this;
    }

    /** Moves the camera without turning it. */
    public Pose move(double east_m, double north_m, double up_m) {
        eye.add(east_m, north_m, up_m);
        return this;
    }

    /**
     * Turns the camera and its place about a vertical line.
     *
     * @param clockwise_rad seen from above
     */
    public Pose turnAbout(double east_m, double north_m, double clockwise_rad) {
        double c = Math.cos(clockwise_rad);
        double s = Math.sin(clockwise_rad);
        eye.sub(east_m, north_m, 0);
        rotate(eye, c, s);
        eye.add(east_m, north_m, 0);
        rotate(forward, c, s);
        rotate(up, c, s);
        rotate(right, c, s);
        return this;
    }

    private static void rotate(Vector3d v, double c, double s) {
        v.set(v.x * c + v.y * s, v.y * c - v.x * s, v.z);
    }

    /**
     * Goes part of the way to another pose: 0 stays here, 1 is there. The place along a straight
     * line, the direction along a great arc.
     */
    public Pose toward(Pose other, double share) {
        eye.lerp(other.eye, share);
        rotation(this, turnA);
        rotation(other, turn);
        turnA.slerp(turn, share);
        turnA.transform(right.set(1, 0, 0));
        turnA.transform(up.set(0, 1, 0));
        turnA.transform(forward.set(0, 0, -1));
        fieldOfView_deg += share * (other.fieldOfView_deg - fieldOfView_deg);
        nearest_m = Math.min(nearest_m, other.nearest_m);
        lensShift += share * (other.lensShift - lensShift);
        return this;
    }

    private static void rotation(Pose pose, Quaterniond into) {
        // Columns right, up, backward: the camera's own axes.
        into.setFromNormalized(
                new org.joml.Matrix3d(
                        pose.right.x,
                        pose.right.y,
                        pose.right.z,
                        pose.up.x,
                        pose.up.y,
                        pose.up.z,
                        -pose.forward.x,
                        -pose.forward.y,
                        -pose.forward.z));
    }

    /** Lifts the camera out of the ground, if it lies under it. */
    public Pose above(Ground ground) {
        double least = ground.up_m(eye.x, eye.y) + EYE_HEIGHT_M;
        if (eye.z < least) {
            eye.z = least;
        }
        return this;
    }
}
