package pairdown.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pairdown.gl.Polyline;
import pairdown.gl.Shaders;
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

    private static final double RECENT_TOLERANCE_PX = 0.35;

    /** Segments of whole paths in one picture; where there would be more, the tolerance grows. */
    private static final int MOST_SEGMENTS = 8_000;

    private static final double COARSER = 1.5;
    private static final double COARSEST_PX = 10_000;
    private static final float BAND_S = 1;

    private final Recording recording;
    private final List<PathTree> world = new ArrayList<>();
    private final List<PathTree> fromLead = new ArrayList<>();
    private final int[] base;
    private final PathPen pen;

    Trails(Shaders shaders, Recording recording) {
        this.recording = recording;
        sample();
        base = new int[2 * world.size()];
        pen = new PathPen(shaders, upload());
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

    /** Segments drawn last. */
    int segments() {
        return pen.segments();
    }

    void draw(Stage stage) {
        pen.begin(stage);
        if (stage.shows(ViewState.Layer.WHOLE_PATHS)) {
            double tolerance_px = TOLERANCE_PX;
            pen.measure(true);
            whole(stage, tolerance_px);
            while (pen.segments() > MOST_SEGMENTS && tolerance_px < COARSEST_PX) {
                tolerance_px *= COARSER;
                pen.measure(true);
                whole(stage, tolerance_px);
            }
            pen.measure(false);
            whole(stage, tolerance_px);
        }
        if (stage.shows(ViewState.Layer.TRAILS)) {
            recent(stage);
        }
    }

    private void whole(Stage stage, double tolerance_px) {
        double now_s = stage.moment().t_s();
        pen.tolerate(tolerance_px);
        pen.look(Math.max(1, stage.px(1.2)), 1, 0);
        for (int i = 0; i < world.size(); i++) {
            int rgba = stage.colour(i);
            pen.colours(Palette.withOpacity(rgba, 165), Palette.withOpacity(rgba, 75));
            path(stage, i, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, now_s);
        }
    }

    private void recent(Stage stage) {
        double now_s = stage.moment().t_s();
        pen.tolerate(RECENT_TOLERANCE_PX);
        pen.look(stage.px(3.6), 0.25f, BAND_S);
        for (int i = 0; i < world.size(); i++) {
            int rgba = stage.colour(i);
            pen.colours(rgba, Palette.withOpacity(rgba, 150));
            path(stage, i, now_s - RECENT_S, now_s, 0);
        }
    }

    /**
     * A stretch of one participant's path in the frame chosen; the lead's own, which would be a
     * point as seen from itself, always over the ground.
     */
    private void path(Stage stage, int participant, double from_s, double to_s, double changing_s) {
        boolean relative =
                stage.view().frame() == ViewState.Frame.LEAD
                        && participant != recording.subject()
                        && recording.subject() >= 0;
        if (relative) {
            Body lead = stage.moment().body(recording.subject());
            if (lead.isPresent()) {
                double heading_rad = stage.moment().leadHeading_rad();
                pen.frame(lead.east_m(), lead.north_m(), lead.up_m(), heading_rad);
                aroundLead(participant, from_s, to_s, changing_s);
            }
        } else {
            pen.frame(0, 0, 0, 0);
            pen.draw(world.get(participant).tops(), base[participant], from_s, to_s, changing_s);
        }
    }

    private void aroundLead(int participant, double from_s, double to_s, double changing_s) {
        int first = base[world.size() + participant];
        pen.draw(fromLead.get(participant).tops(), first, from_s, to_s, changing_s);
    }

    /**
     * Draws this attempt's paths as seen from its lead round the lead of the stage: dashed they
     * would hide the bands, so they are grey and thin.
     */
    void drawAsGhost(Stage stage, Moment other) {
        if (stage.moment().subject().isEmpty() || !stage.moment().subject().get().isPresent()) {
            return;
        }
        Body lead = stage.moment().body(stage.moment().recording().subject());
        pen.begin(stage);
        pen.tolerate(TOLERANCE_PX);
        pen.frame(lead.east_m(), lead.north_m(), lead.up_m(), stage.moment().leadHeading_rad());
        int soft = stage.palette().inkSoft();
        pen.colours(Palette.withOpacity(soft, 200), Palette.withOpacity(soft, 0));
        for (int i = 0; i < fromLead.size(); i++) {
            if (i != recording.subject()) {
                pen.look(stage.px(2.4), 0.4f, BAND_S);
                aroundLead(i, other.t_s() - RECENT_S, other.t_s(), 0);
                pen.look(stage.px(1), 0.4f, BAND_S);
                aroundLead(i, other.t_s() - 10 * RECENT_S, other.t_s(), 0);
            }
        }
    }

    @Override
    public void close() {
        pen.close();
    }
}
