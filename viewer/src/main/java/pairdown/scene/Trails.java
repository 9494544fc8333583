package pairdown.scene;

import pairdown.gl.Polyline;
import pairdown.gl.Shaders;
import pairdown.replay.Body;
import pairdown.replay.Moment;
import pairdown.replay.ViewState;
import pairdown.theme.Palette;

/**
 * Where everyone has been: the last seconds as a thick line banded by the second, the whole as a
 * thin one, what is still to come fainter. In the lead-fixed frame paths are as seen from the lead.
 * All points lie in the card's memory.
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

    private final Paths paths;
    private final Polyline points;
    private final PathPen pen;
    private int uploaded;

    /** The points are brought into the card's memory by {@link #upload}. */
    Trails(Shaders shaders, Paths paths) {
        this.paths = paths;
        points = new Polyline(paths.points());
        pen = new PathPen(shaders, points);
    }

    /** Brings a further block of points into the card's memory; false once all are there. */
    boolean upload() {
        if (uploaded < paths.blocks().size()) {
            points.put(paths.firstInBlock(uploaded), paths.blocks().get(uploaded));
            uploaded++;
        }
        return uploaded < paths.blocks().size();
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
        for (int i = 0; i < paths.size(); i++) {
            int rgba = stage.colour(i);
            pen.colours(Palette.withOpacity(rgba, 165), Palette.withOpacity(rgba, 75));
            path(stage, i, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, now_s);
        }
    }

    private void recent(Stage stage) {
        double now_s = stage.moment().t_s();
        pen.tolerate(RECENT_TOLERANCE_PX);
        pen.look(stage.px(3.6), 0.25f, BAND_S);
        for (int i = 0; i < paths.size(); i++) {
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
                        && participant != paths.recording().subject()
                        && paths.recording().subject() >= 0;
        if (relative) {
            Body lead = stage.moment().body(paths.recording().subject());
            if (lead.isPresent()) {
                double heading_rad = stage.moment().leadHeading_rad();
                pen.frame(lead.east_m(), lead.north_m(), lead.up_m(), heading_rad);
                aroundLead(participant, from_s, to_s, changing_s);
            }
        } else {
            pen.frame(0, 0, 0, 0);
            pen.draw(
                    paths.world(participant),
                    paths.firstInWorld(participant),
                    from_s,
                    to_s,
                    changing_s);
        }
    }

    private void aroundLead(int participant, double from_s, double to_s, double changing_s) {
        pen.draw(
                paths.fromLead(participant),
                paths.firstFromLead(participant),
                from_s,
                to_s,
                changing_s);
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
        for (int i = 0; i < paths.size(); i++) {
            if (i != paths.recording().subject()) {
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
