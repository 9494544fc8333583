package pairdown.scene;

import org.joml.Vector3f;
import pairdown.replay.Body;

/** The box on screen round a body: that of its tips. Filled anew for each body. */
final class Outline {
    private static final int AXES = 3;

    private final Vector3f tip = new Vector3f();
    private final float[] xy = new float[2];
    private float left;
    private float top;
    private float right;
    private float bottom;

    /** How far a shape reaches from its origin along right, ahead, above and the other ways (m). */
    static final class Reach {
        private final float[] tips_m = new float[2 * AXES];

        Reach(Shape... parts) {
            for (Shape part : parts) {
                for (int i = 0; i < 2 * AXES; i++) {
                    tips_m[i] = Math.max(tips_m[i], part.furthest_m(i % AXES, i < AXES ? 1 : -1));
                }
            }
        }
    }

    /** Finds the box; false where the body's origin is behind the camera. */
    boolean find(Stage stage, Body body, Reach reach) {
        if (!stage.sight().project(body.east_m(), body.north_m(), body.up_m(), xy)) {
            return false;
        }
        left = xy[0];
        right = xy[0];
        top = xy[1];
        bottom = xy[1];
        for (int i = 0; i < 2 * AXES; i++) {
            tip.zero().setComponent(i % AXES, i < AXES ? reach.tips_m[i] : -reach.tips_m[i]);
            body.bodyToEnu().transform(tip).mul((float) stage.view().enlargement());
            if (stage.sight()
                    .project(
                            body.east_m() + tip.x,
                            body.north_m() + tip.y,
                            body.up_m() + tip.z,
                            xy)) {
                left = Math.min(left, xy[0]);
                right = Math.max(right, xy[0]);
                top = Math.min(top, xy[1]);
                bottom = Math.max(bottom, xy[1]);
            }
        }
        return true;
    }

    /** Edges in the picture's part (px). */
    float left() {
        return left;
    }

    float top() {
        return top;
    }

    float right() {
        return right;
    }

    float bottom() {
        return bottom;
    }

    /** The longer side (px). */
    float size() {
        return Math.max(right - left, bottom - top);
    }
}
