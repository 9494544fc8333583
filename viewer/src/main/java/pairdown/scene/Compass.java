package pairdown.scene;

import org.joml.Vector3d;
import pairdown.camera.Pose;
import pairdown.gl.Canvas;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.theme.Palette;
import pairdown.theme.Theme;

/** A compass rose in the picture's corner, seen as the ground is: north, and a tick each 30°. */
final class Compass {
    private static final String[] LETTERS = {"N", "E", "S", "W"};

    /** Least height of the rose against its width. */
    private static final double LEAST_TILT = 0.5;

    /** Level with the ground nothing of it is seen that could be stretched. */
    private static final double LEAST_SEEN = 1e-3;

    private static final float RADIUS_MM = 6;

    /** The disc under the rose, its letters with it, against the rose. */
    private static final float DISC = 1.35f;

    private Compass() {}

    /** How far it reaches from the picture's upper right corner along both edges (px). */
    static float reach(Theme theme) {
        return (2 + DISC) * theme.sizes().mm(RADIUS_MM);
    }

    /** In the upper right corner of a part of the picture that ends at {@code right}. */
    static void drawInCorner(Canvas canvas, Theme theme, Pose pose, float right, float top) {
        float radius = theme.sizes().mm(RADIUS_MM);
        draw(canvas, theme, pose, right - 2 * radius, top + 2 * radius, radius);
    }

    /**
     * @param x centre in the picture (px)
     * @param y centre (px)
     * @param radius of the rose (px)
     */
    private static void draw(
            Canvas canvas, Theme theme, Pose pose, float x, float y, float radius) {
        Palette palette = theme.palette();
        float size = theme.sizes().small();
        canvas.disc(x, y, radius * DISC, Palette.withOpacity(palette.paper(), 190));
        for (int deg = 0; deg < 360; deg += 30) {
            float inner = radius * (deg % 90 == 0 ? 0.62f : 0.8f);
            canvas.line(
                    x + across(pose, deg) * inner,
                    y + down(pose, deg) * inner,
                    x + across(pose, deg) * radius,
                    y + down(pose, deg) * radius,
                    theme.sizes().hair() * (deg == 0 ? 2.5f : 1),
                    palette.inkSoft());
        }
        canvas.line(
                x,
                y,
                x + across(pose, 0) * radius * 0.62f,
                y + down(pose, 0) * radius * 0.62f,
                theme.sizes().hair() * 2.5f,
                palette.limit());
        for (int i = 0; i < LETTERS.length; i++) {
            canvas.text(
                    LETTERS[i],
                    x + across(pose, 90 * i) * radius * 1.18f,
                    y + down(pose, 90 * i) * radius * 1.18f + size * 0.36f,
                    i == 0 ? Face.TEXT_BOLD : Face.TEXT,
                    size,
                    Align.CENTRE,
                    palette.ink());
        }
    }

    private static float across(Pose pose, double heading_deg) {
        return (float) (towards(pose.right(), heading_deg) + lift(pose, heading_deg, true));
    }

    private static float down(Pose pose, double heading_deg) {
        return (float) -(towards(pose.up(), heading_deg) + lift(pose, heading_deg, false));
    }

    /**
     * What keeps the rose from being seen as a line, off which nothing could be read: along the
     * picture of the upright it is foreshortened by the sine of the camera's dip, but never more
     * than to {@link #LEAST_TILT}.
     */
    private static double lift(Pose pose, double heading_deg, boolean isAcross) {
        double x = pose.right().z;
        double y = pose.up().z;
        double length = Math.hypot(x, y);
        double seen = Math.abs(pose.forward().z);
        if (seen >= LEAST_TILT || length == 0) {
            return 0;
        }
        double along =
                (towards(pose.right(), heading_deg) * x + towards(pose.up(), heading_deg) * y)
                        / length;
        double more = along * (LEAST_TILT / Math.max(seen, LEAST_SEEN) - 1);
        return more * (isAcross ? x : y) / length;
    }

    private static double towards(Vector3d axis, double heading_deg) {
        double h = Math.toRadians(heading_deg);
        return Math.sin(h) * axis.x + Math.cos(h) * axis.y;
    }
}
