package pairdown.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.joml.Vector3d;
import pairdown.gl.Polyline;
import pairdown.gl.Shader;
import pairdown.gl.Shaders;
import pairdown.gl.Uniform;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.replay.Body;
import pairdown.replay.Moment;
import pairdown.replay.Recording;
import pairdown.replay.ViewState;
import pairdown.theme.Palette;
import pairdown.time.Span;

/**
 * Where everyone has been: the last seconds as a thick line banded by the second, the whole as a
 * thin one, what is still to come fainter. In the lead-fixed frame paths are as seen from the lead.
 * All points lie in the card's memory from the start.
 */
final class Trails implements AutoCloseable {
    /** Length of the thick trail. */
    static final double RECENT_S = 10;

    /** A path may lie this far off its place (px) in exchange for fewer segments. */
    private static final double TOLERANCE_PX = 0.7;

    /** Segments drawn in one picture; beyond, the tolerance grows. */
    private static final int MOST_SEGMENTS = 20_000;

    private static final float BAND_S = 1;

    private final Recording recording;
    private final Shader shader;
    private final Uniform relativeToClip;
    private final Uniform viewport;
    private final Uniform offset;
    private final Uniform turn;
    private final Uniform window;
    private final Uniform width;
    private final Uniform colour;
    private final Uniform bandColour;
    private final Uniform fade;
    private final Uniform bands;
    private final Uniform phase;
    private final List<PathTree> world = new ArrayList<>();
    private final List<PathTree> fromLead = new ArrayList<>();
    private final int[] base;
    private final Polyline points;
    private final double[] centre = new double[3];
    private double cos = 1;
    private double sin;
    private double from_s;
    private double to_s;
    private double tolerance_px = TOLERANCE_PX;
    private int segments;

    Trails(Shaders shaders, Recording recording) {
        this.recording = recording;
        shader = shaders.load("trails");
        relativeToClip = shader.uniform("relativeToClip");
        viewport = shader.uniform("viewport_px");
        offset = shader.uniform("offset_m");
        turn = shader.uniform("turn");
        window = shader.uniform("window_s");
        width = shader.uniform("width_px");
        colour = shader.uniform("colour");
        bandColour = shader.uniform("bandColour");
        fade = shader.uniform("fade");
        bands = shader.uniform("bands_s");
        phase = shader.uniform("phase_s");
        sample();
        base = new int[2 * world.size()];
        points = upload();
    }

    private void sample() {
        PathSampler sampler = new PathSampler(recording);
        Span joint = jointFlight();
        int n = recording.participants().size();
        world.addAll(IntStream.range(0, n).parallel().mapToObj(sampler::world).toList());
        fromLead.addAll(
                IntStream.range(0, n)
                        .parallel()
                        .mapToObj(i -> sampler.fromLead(i, relevant(i, joint)))
                        .toList());
    }

    /** From the first exit to the last opening, with some seconds before. */
    private Span jointFlight() {
        double start = Double.POSITIVE_INFINITY;
        double end = Double.NEGATIVE_INFINITY;
        for (PairDebrief pair : recording.debrief().pairs()) {
            if (pair.series().size() > 0) {
                start = Math.min(start, pair.series().time_s(0) - RECENT_S);
                end = Math.max(end, pair.series().time_s(pair.series().size() - 1));
            }
        }
        return start < end ? new Span(start, end) : recording.debrief().span();
    }

    /** When a participant's path as seen from the lead means something: a flyer's own flight. */
    private Span relevant(int participant, Span joint) {
        String id = recording.participants().get(participant).id();
        for (PairDebrief pair : recording.debrief().pairs()) {
            PairSeries series = pair.series();
            if (pair.flyer().equals(id) && series.size() > 1) {
                return new Span(series.time_s(0), series.time_s(series.size() - 1));
            }
        }
        return joint;
    }

    private Polyline upload() {
        int total = 0;
        List<PathTree> all = new ArrayList<>(world);
        all.addAll(fromLead);
        for (int i = 0; i < all.size(); i++) {
            base[i] = total;
            total += all.get(i).points();
        }
        float[] data = new float[total * PathTree.WIDTH];
        for (int i = 0; i < all.size(); i++) {
            all.get(i).copyTo(data, base[i] * PathTree.WIDTH);
        }
        return new Polyline(data);
    }

    /** Segments drawn since {@link #draw} last began. */
    int segments() {
        return segments;
    }

    void draw(Stage stage) {
        segments = 0;
        shader.use();
        points.bind();
        relativeToClip.set(stage.sight().relativeToClip());
        viewport.set(stage.sight().width_px(), stage.sight().height_px());
        if (stage.shows(ViewState.Layer.WHOLE_PATHS)) {
            tolerance_px = TOLERANCE_PX * Math.max(1, recording.participants().size() / 20.0);
            drawWhole(stage);
        }
        if (stage.shows(ViewState.Layer.TRAILS)) {
            tolerance_px = TOLERANCE_PX / 2;
            drawRecent(stage);
        }
    }

    /**
     * Draws this attempt's paths as seen from its lead round the lead of the stage: dashed they
     * would hide the bands, so they are grey and thin.
     */
    void drawAsGhost(Stage stage, Moment other) {
        if (stage.moment().subject().isEmpty() || !stage.moment().subject().get().isPresent()) {
            return;
        }
        segments = 0;
        shader.use();
        points.bind();
        relativeToClip.set(stage.sight().relativeToClip());
        viewport.set(stage.sight().width_px(), stage.sight().height_px());
        tolerance_px = TOLERANCE_PX;
        fade.set(0.4f);
        bands.set(BAND_S);
        for (int i = 0; i < fromLead.size(); i++) {
            if (i == recording.subject()) {
                continue;
            }
            colour.setColour(Palette.withOpacity(stage.palette().inkSoft(), 200));
            bandColour.setColour(Palette.withOpacity(stage.palette().inkSoft(), 0));
            width.set(stage.px(2.4));
            aroundLead(stage, i, other.t_s() - RECENT_S, other.t_s());
            width.set(stage.px(1));
            aroundLead(stage, i, other.t_s() - 10 * RECENT_S, other.t_s());
        }
    }

    private void aroundLead(Stage stage, int participant, double from, double to) {
        Body lead = stage.moment().body(stage.moment().recording().subject());
        centre[0] = lead.east_m();
        centre[1] = lead.north_m();
        centre[2] = lead.up_m();
        cos = Math.cos(stage.moment().leadHeading_rad());
        sin = Math.sin(stage.moment().leadHeading_rad());
        from_s = from;
        to_s = to;
        turn.set((float) cos, (float) sin);
        List<PathTree.Node> tops = fromLead.get(participant).tops();
        for (int i = 0; i < tops.size(); i++) {
            descend(stage, tops.get(i), base[world.size() + participant]);
        }
    }

    private void drawWhole(Stage stage) {
        double now_s = stage.moment().t_s();
        bands.set(0);
        fade.set(1);
        width.set(Math.max(1, stage.px(1.2)));
        for (int i = 0; i < world.size(); i++) {
            colour.setColour(Palette.withOpacity(stage.colour(i), 165));
            path(stage, i, Double.NEGATIVE_INFINITY, now_s);
            colour.setColour(Palette.withOpacity(stage.colour(i), 75));
            path(stage, i, now_s, Double.POSITIVE_INFINITY);
        }
    }

    private void drawRecent(Stage stage) {
        double now_s = stage.moment().t_s();
        bands.set(BAND_S);
        fade.set(0.25f);
        width.set(stage.px(3.6));
        for (int i = 0; i < world.size(); i++) {
            colour.setColour(stage.colour(i));
            bandColour.setColour(Palette.withOpacity(stage.colour(i), 150));
            path(stage, i, now_s - RECENT_S, now_s);
        }
    }

    /**
     * Draws a stretch of one participant's path in the frame chosen; the lead's own, which would be
     * a point as seen from itself, always over the ground.
     */
    private void path(Stage stage, int participant, double from, double to) {
        boolean relative =
                stage.view().frame() == ViewState.Frame.LEAD
                        && participant != recording.subject()
                        && recording.subject() >= 0;
        centre[0] = 0;
        centre[1] = 0;
        centre[2] = 0;
        double heading = 0;
        if (relative) {
            Moment moment = stage.moment();
            Body lead = moment.body(recording.subject());
            if (!lead.isPresent()) {
                return;
            }
            centre[0] = lead.east_m();
            centre[1] = lead.north_m();
            centre[2] = lead.up_m();
            heading = moment.leadHeading_rad();
        }
        cos = Math.cos(heading);
        sin = Math.sin(heading);
        from_s = from;
        to_s = to;
        turn.set((float) cos, (float) sin);
        int first = base[relative ? world.size() + participant : participant];
        List<PathTree.Node> tops = (relative ? fromLead : world).get(participant).tops();
        for (int i = 0; i < tops.size(); i++) {
            descend(stage, tops.get(i), first);
        }
    }

    private void descend(Stage stage, PathTree.Node node, int first) {
        if (node.end_s() <= from_s || node.start_s() >= to_s) {
            return;
        }
        double x = node.anchorX_m();
        double y = node.anchorY_m();
        Vector3d eye = stage.sight().pose().eye();
        double east = x * cos + y * sin + centre[0] - eye.x;
        double north = y * cos - x * sin + centre[1] - eye.y;
        double up = node.anchorZ_m() + centre[2] - eye.z;
        Vector3d f = stage.sight().pose().forward();
        if (east * f.x + north * f.y + up * f.z < -node.radius_m()) {
            return;
        }
        double away =
                Math.max(
                        stage.sight().pose().nearest_m(),
                        Math.sqrt(east * east + north * north + up * up) - node.radius_m());
        double error_px = node.error_m() / away * stage.sight().focal_px();
        boolean coarse = error_px <= tolerance_px || segments > MOST_SEGMENTS;
        if (coarse || node.parts().isEmpty()) {
            offset.set((float) east, (float) north, (float) up);
            window.set(
                    (float) Math.max(-1e6, from_s - node.start_s()),
                    (float) Math.min(1e6, to_s - node.start_s()));
            phase.set((float) (node.start_s() % (2 * BAND_S)));
            points.draw(first + node.first(), node.count());
            segments += node.count() - 1;
            return;
        }
        for (int i = 0; i < node.parts().size(); i++) {
            descend(stage, node.parts().get(i), first);
        }
    }

    @Override
    public void close() {
        points.close();
    }
}
