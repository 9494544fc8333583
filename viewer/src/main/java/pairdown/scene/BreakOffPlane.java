package pairdown.scene;

import java.util.Optional;
import org.joml.Vector3d;
import pairdown.attempt.BreakOff;
import pairdown.camera.Easing;
import pairdown.gl.Mesh;
import pairdown.gl.Shader;
import pairdown.gl.Shaders;
import pairdown.gl.Uniform;
import pairdown.replay.Body;
import pairdown.replay.Heights;
import pairdown.replay.ViewState;
import pairdown.theme.Palette;
import pairdown.words.Measure;

/** The height by which flyers leave the formation: a hatched plate under the lead. */
final class BreakOffPlane implements AutoCloseable {
    private static final double LEAST_HALF_M = 150;
    private static final double HATCHES = 24;

    /** Of 255; where it is near it is what matters. */
    private static final int OPACITY = 130;

    /** Nearer than this it is drawn in full, from {@link #FAR_M} on faintly (m). */
    private static final double NEAR_M = 200;

    private static final double FAR_M = 700;
    private static final double FAINT = 0.3;

    /** Of that from above, where it lies behind everything. */
    private static final double FROM_ABOVE = 0.6;

    private final Shader shader;
    private final Uniform relativeToClip;
    private final Uniform centre;
    private final Uniform half;
    private final Uniform hatch;
    private final Uniform colour;
    private final Mesh square = Airframe.square();
    private final Heights heights;
    private final float[] xy = new float[2];

    BreakOffPlane(Shaders shaders, Heights heights) {
        this.heights = heights;
        shader = shaders.load("planes");
        relativeToClip = shader.uniform("relativeToClip");
        centre = shader.uniform("centre_m");
        half = shader.uniform("half_m");
        hatch = shader.uniform("hatch_m");
        colour = shader.uniform("colour");
    }

    void draw(Stage stage) {
        Optional<BreakOff> breakOff = stage.moment().debrief().attempt().limits().breakOff();
        int subject = stage.moment().recording().subject();
        if (breakOff.isEmpty() || subject < 0 || !stage.shows(ViewState.Layer.BREAK_OFF)) {
            return;
        }
        Body lead = stage.moment().body(subject);
        double e = lead.east_m();
        double n = lead.north_m();
        double u = heights.up_m(e, n, breakOff.get().height_m());
        // As wide as it is far away: it takes up about the same part of the picture.
        double size = Math.max(LEAST_HALF_M, 0.7 * Math.abs(lead.up_m() - u));
        Vector3d eye = stage.sight().pose().eye();
        shader.use();
        relativeToClip.set(stage.sight().relativeToClip());
        centre.set((float) (e - eye.x), (float) (n - eye.y), (float) (u - eye.z));
        half.set((float) size);
        hatch.set((float) (size / HATCHES));
        double nearness =
                1 - Easing.smooth((Math.abs(lead.up_m() - u) - NEAR_M) / (FAR_M - NEAR_M));
        double weight = (FAINT + (1 - FAINT) * nearness) * (stage.isFromAbove() ? FROM_ABOVE : 1);
        int opacity = (int) (OPACITY * weight);
        colour.setColour(Palette.withOpacity(stage.palette().limit(), opacity));
        square.draw();
        boolean named = stage.shows(ViewState.Layer.LABELS) && !stage.isFromAbove();
        if (named && stage.sight().project(e, n, u, xy)) {
            Labels.Label label =
                    stage.labels().add(Labels.Rank.LIMIT, xy[0], xy[1], stage.palette().limit());
            label.row(0).add(stage.word("scene.break-off")).add(' ');
            stage.figures()
                    .add(label.row(0), Measure.HEIGHT, breakOff.get().height_m())
                    .add(' ')
                    .add(heights.datum());
        }
    }

    @Override
    public void close() {
        square.close();
    }
}
