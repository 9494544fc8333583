package pairdown.scene;

import java.util.List;
import org.joml.Vector3d;
import pairdown.gl.Polyline;
import pairdown.gl.Shader;
import pairdown.gl.Shaders;
import pairdown.gl.Uniform;

/**
 * Draws stretches of paths at the level of detail their size on screen asks for. Set the frame they
 * lie in and how they look, then {@link #draw}. While measuring it only counts.
 */
final class PathPen implements AutoCloseable {
    /** Stands for any time before or after a path, within what a float tells apart (s). */
    private static final double EVER_S = 1e6;

    private final Shader shader;
    private final Uniform relativeToClip;
    private final Uniform viewport;
    private final Uniform offset;
    private final Uniform turn;
    private final Uniform window;
    private final Uniform width;
    private final Uniform colour;
    private final Uniform otherColour;
    private final Uniform fade;
    private final Uniform bands;
    private final Uniform change;
    private final Polyline points;
    private final Vector3d eye = new Vector3d();
    private final Vector3d forward = new Vector3d();
    private final Vector3d right = new Vector3d();
    private final Vector3d top = new Vector3d();
    private double cosWidth;
    private double sinWidth;
    private double cosHeight;
    private double sinHeight;
    private double focal_px;
    private double nearest_m;
    private double east_m;
    private double north_m;
    private double up_m;
    private double cos = 1;
    private double sin;
    private double from_s;
    private double to_s;
    private double change_s;
    private double tolerance_px;
    private boolean measuring;
    private int segments;

    PathPen(Shaders shaders, Polyline points) {
        this.points = points;
        shader = shaders.load("trails");
        relativeToClip = shader.uniform("relativeToClip");
        viewport = shader.uniform("viewport_px");
        offset = shader.uniform("offset_m");
        turn = shader.uniform("turn");
        window = shader.uniform("window_s");
        width = shader.uniform("width_px");
        colour = shader.uniform("colour");
        otherColour = shader.uniform("otherColour");
        fade = shader.uniform("fade");
        bands = shader.uniform("bands_s");
        change = shader.uniform("change_s");
    }

    /** Begins the paths of a picture. */
    void begin(Stage stage) {
        segments = 0;
        eye.set(stage.sight().pose().eye());
        forward.set(stage.sight().pose().forward());
        right.set(stage.sight().pose().right());
        top.set(stage.sight().pose().up());
        focal_px = stage.sight().focal_px();
        // A shifted picture reaches further to one side: the wider one counts for both.
        double reach = 1 + Math.abs(stage.sight().pose().lensShift());
        double width = reach * stage.sight().width_px() / 2;
        double height = stage.sight().height_px() / 2.0;
        cosWidth = focal_px / Math.hypot(focal_px, width);
        sinWidth = width / Math.hypot(focal_px, width);
        cosHeight = focal_px / Math.hypot(focal_px, height);
        sinHeight = height / Math.hypot(focal_px, height);
        nearest_m = stage.sight().pose().nearest_m();
        shader.use();
        points.bind();
        relativeToClip.set(stage.sight().relativeToClip());
        viewport.set(stage.sight().width_px(), stage.sight().height_px());
    }

    /** Counts segments anew, only measuring or drawing too. */
    void measure(boolean only) {
        measuring = only;
        segments = 0;
    }

    /** Segments since {@link #begin} or {@link #measure}. */
    int segments() {
        return segments;
    }

    /** How far off its place a path may lie (px). */
    void tolerate(double px) {
        tolerance_px = px;
    }

    /**
     * How what follows looks.
     *
     * @param fadedTo opacity at the window's start, as a share of that at its end
     * @param bands_s the two colours take turns with every such stretch of time; 0 for one colour
     *     before the change and the other after it
     */
    void look(float width_px, float fadedTo, float bands_s) {
        width.set(width_px);
        fade.set(fadedTo);
        bands.set(bands_s);
    }

    void colours(int rgba, int otherRgba) {
        colour.setColour(rgba);
        otherColour.setColour(otherRgba);
    }

    /** The axes paths lie in: their origin, and how far they are turned clockwise from north. */
    void frame(double originEast_m, double originNorth_m, double originUp_m, double heading_rad) {
        east_m = originEast_m - eye.x;
        north_m = originNorth_m - eye.y;
        up_m = originUp_m - eye.z;
        cos = Math.cos(heading_rad);
        sin = Math.sin(heading_rad);
        turn.set((float) cos, (float) sin);
    }

    /**
     * Draws what lies in a window of time.
     *
     * @param first number of the path's first point among all uploaded
     * @param changing_s when the other colour begins, where there are no bands
     */
    void draw(
            List<PathTree.Node> tops, int first, double start_s, double end_s, double changing_s) {
        from_s = start_s;
        to_s = end_s;
        change_s = changing_s;
        for (int i = 0; i < tops.size(); i++) {
            descend(tops.get(i), first);
        }
    }

    private void descend(PathTree.Node node, int first) {
        if (node.end_s() <= from_s || node.start_s() >= to_s) {
            return;
        }
        double x = node.anchorX_m();
        double y = node.anchorY_m();
        double east = x * cos + y * sin + east_m;
        double north = y * cos - x * sin + north_m;
        double up = node.anchorZ_m() + up_m;
        if (isOutside(east, north, up, node.radius_m())) {
            return;
        }
        double centre_m = Math.sqrt(east * east + north * north + up * up);
        double away_m = Math.max(nearest_m, centre_m - node.radius_m());
        if (node.parts().isEmpty() || node.error_m() / away_m * focal_px <= tolerance_px) {
            int from = node.pointBefore(from_s);
            int to = Math.min(node.count() - 1, node.pointBefore(to_s) + 1);
            segments += to - from;
            if (!measuring) {
                offset.set((float) east, (float) north, (float) up);
                stretch(node, first + from, to - from + 1);
            }
            return;
        }
        for (int i = 0; i < node.parts().size(); i++) {
            descend(node.parts().get(i), first);
        }
    }

    /** Whether a ball lies beside what the camera sees. */
    private boolean isOutside(double east, double north, double up, double radius_m) {
        double ahead = east * forward.x + north * forward.y + up * forward.z;
        double across = Math.abs(east * right.x + north * right.y + up * right.z);
        double above = Math.abs(east * top.x + north * top.y + up * top.z);
        return ahead < -radius_m
                || across * cosWidth - ahead * sinWidth > radius_m
                || above * cosHeight - ahead * sinHeight > radius_m;
    }

    private void stretch(PathTree.Node node, int first, int count) {
        window.set(since(node, from_s), since(node, to_s));
        change.set(since(node, change_s));
        points.draw(node.first() + first, count);
    }

    private static float since(PathTree.Node node, double t_s) {
        return (float) Math.max(-EVER_S, Math.min(EVER_S, t_s - node.start_s()));
    }

    @Override
    public void close() {
        points.close();
    }
}
