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

    private Compass() {}

    /**
     * @param x centre in the picture (px)
     * @param y centre (px)
     * @param radius of the rose (px)
     */
    static void draw(Canvas canvas, Theme theme, Pose pose, float x, float y, float radius) {
        Palette palette = theme.palette();
        float size = theme.sizes().small();
        canvas.disc(x, y, radius * 1.35f, Palette.withOpacity(palette.paper(), 190));
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
            // Seen from the side the rose is a line: a letter at the back would lie on the front's.
            boolean flat = Math.abs(pose.forward().z) < 0.25;
            if (!flat || Math.abs(across(pose, 90 * i)) > 0.72) {
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
    }

    private static float across(Pose pose, double heading_deg) {
        return (float) towards(pose.right(), heading_deg);
    }

    private static float down(Pose pose, double heading_deg) {
        return (float) -towards(pose.up(), heading_deg);
    }

    private static double towards(Vector3d axis, double heading_deg) {
        double h = Math.toRadians(heading_deg);
        return Math.sin(h) * axis.x + Math.cos(h) * axis.y;
    }
}
