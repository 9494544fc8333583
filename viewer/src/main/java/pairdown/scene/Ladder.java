package pairdown.scene;

import org.joml.Vector3d;
import pairdown.camera.Pose;
import pairdown.replay.Body;
import pairdown.replay.Heights;
import pairdown.replay.ViewState;
import pairdown.units.Unit;
import pairdown.words.Measure;

/**
 * A scale of heights beside the lead, in the person's unit. Its steps are round and wide enough to
 * read; it stands to the left of the picture at the lead's distance.
 */
final class Ladder implements Drawable {
    /** Least distance of two steps on screen (px at 100 %). */
    private static final double STEP_PX = 56;

    /** How far left of the lead, as a share of half the picture's width. */
    private static final double ASIDE = 0.8;

    /** Looking down or up more steeply, heights lie behind one another. */
    private static final double STEEPEST = 0.85;

    private final Heights heights;
    private final float[] xy = new float[2];

    Ladder(Heights heights) {
        this.heights = heights;
    }

    @Override
    public void draw(Stage stage) {
        int subject = stage.moment().recording().subject();
        Pose pose = stage.sight().pose();
        if (subject < 0
                || !stage.shows(ViewState.Layer.LADDER)
                || Math.abs(pose.forward().z) > STEEPEST) {
            return;
        }
        Body lead = stage.moment().body(subject);
        double depth = stage.sight().depth_m(lead.east_m(), lead.north_m(), lead.up_m());
        if (depth < 12) {
            return;
        }
        double pixel = depth / stage.sight().focal_px();
        // At the left however far the picture is shifted, out of the way of what it is about.
        double aside = (ASIDE + pose.lensShift()) * pixel * stage.sight().width_px() / 2;
        // The middle of the picture at the lead's depth, moved to the left on the level.
        Vector3d eye = pose.eye();
        Vector3d f = pose.forward();
        Vector3d r = pose.right();
        double level = Math.hypot(r.x, r.y);
        double e = eye.x + f.x * depth - r.x / level * aside;
        double n = eye.y + f.y * depth - r.y / level * aside;
        double u = eye.z + f.z * depth;
        double reach = pixel * stage.sight().height_px() / 2 / Math.max(0.2, pose.up().z);
        steps(stage, e, n, u - reach, u + reach, pixel, r, level);
    }

    private void steps(
            Stage stage,
            double e,
            double n,
            double low,
            double high,
            double pixel,
            Vector3d r,
            double level) {
        Unit unit = stage.figures().units().of(Measure.HEIGHT);
        double step = unit.toBase(round(unit.fromBase(pixel * stage.px(STEP_PX))));
        int soft = stage.palette().inkSoft();
        double bottom = heights.height_m(e, n, low);
        double top = heights.height_m(e, n, high);
        stage.line(e, n, low, e, n, high, stage.px(1.2), 0, soft);
        double tick = stage.px(9) * pixel / level;
        boolean datumSaid = false;
        for (double h = Math.floor(top / step) * step; h >= bottom; h -= step) {
            double u = heights.up_m(e, n, h);
            stage.line(e, n, u, e + r.x * tick, n + r.y * tick, u, stage.px(1.6), 0, soft);
            if (stage.sight().project(e + r.x * tick, n + r.y * tick, u, xy)
                    && xy[1] > stage.theme().sizes().small()) {
                Labels.Label label =
                        stage.labels().add(Labels.Rank.SCALE, xy[0], xy[1], soft).fixed();
                stage.figures().addNumber(label.row(0), Measure.HEIGHT, h);
                // The first may lie under the read-out: what the numbers are stands at each.
                stage.figures().addUnit(label.row(0), Measure.HEIGHT);
                if (!datumSaid) {
                    label.row(0).add(' ').add(heights.datum());
                    datumSaid = true;
                }
            }
        }
    }

    /** The next of 1, 2, 5, 10, 20 … at or above a length. */
    static double round(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        double lead = least / power;
        return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
    }
}
