package pairdown.scene;

import org.joml.Vector3f;
import pairdown.attempt.LeverArm;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Body;
import pairdown.replay.Link;
import pairdown.replay.Moment;
import pairdown.replay.ViewState;
import pairdown.words.Figures;
import pairdown.words.Measure;

/**
 * The slots on the lead, the line from each flyer to its own with gap and closure, and how the
 * flyer moves against the lead.
 */
final class Slots implements Drawable {
    /** An arrow shows where the flyer would be against the lead after this time (s). */
    static final double ARROW_S = 2;

    /** Half the size of a slot's cross (m). */
    private static final double CROSS_M = 0.6;

    private static final int RING_SIDES = 32;

    private final Vector3f arm = new Vector3f();
    private final double[] slot = new double[3];
    private final float[] xy = new float[2];

    @Override
    public void draw(Stage stage) {
        Moment moment = stage.moment();
        for (int i = 0; i < moment.links().size(); i++) {
            Link link = moment.links().get(i);
            Body lead = moment.body(link.lead());
            Body flyer = moment.body(link.flyer());
            if (!lead.isPresent()) {
                continue;
            }
            LeverArm place = link.pair().slotArm().orElse(LeverArm.NONE);
            lead.bodyToEnu()
                    .transform(
                            arm.set(
                                    (float) place.right_m(),
                                    (float) place.ahead_m(),
                                    (float) place.above_m()));
            slot[0] = lead.east_m() + arm.x;
            slot[1] = lead.north_m() + arm.y;
            slot[2] = lead.up_m() + arm.z;
            if (link.pair().slotArm().isPresent() && stage.shows(ViewState.Layer.SLOTS)) {
                cross(stage, link);
            }
            if (stage.shows(ViewState.Layer.GATES)) {
                gateRing(stage, link);
            }
            if (flyer.isPresent() && link.isPresent()) {
                sightLine(stage, link, flyer);
                arrow(stage, link, lead, flyer);
            }
        }
    }

    /** Three short lines, thick once the pair is matched. */
    private void cross(Stage stage, Link link) {
        int rgba = stage.colour(link.flyer());
        float width = stage.px(link.isPresent() && link.isMatched() ? 3.2 : 1.8);
        for (int axis = 0; axis < 3; axis++) {
            double e = axis == 0 ? CROSS_M : 0;
            double n = axis == 1 ? CROSS_M : 0;
            double u = axis == 2 ? CROSS_M : 0;
            stage.line(
                    slot[0] - e,
                    slot[1] - n,
                    slot[2] - u,
                    slot[0] + e,
                    slot[1] + n,
                    slot[2] + u,
                    width,
                    0,
                    rgba);
        }
        if (stage.shows(ViewState.Layer.LABELS)
                && stage.sight().project(slot[0], slot[1], slot[2], xy)) {
            Labels.Label label = stage.labels().add(Labels.Rank.SLOT, xy[0], xy[1], rgba);
            label.row(0).add("slot ").add(link.pair().slot().orElse(""));
        }
    }

    /** The gate's level circle: dashed outside, whole once the flyer is inside. */
    private void gateRing(Stage stage, Link link) {
        if (stage.moment().debrief().attempt().gate_m().isEmpty()) {
            return;
        }
        double gate = stage.moment().debrief().attempt().gate_m().getAsDouble();
        boolean inside = link.figure(Figure.GAP) <= gate;
        double beforeE = slot[0] + gate;
        double beforeN = slot[1];
        for (int k = 1; k <= RING_SIDES * 2; k++) {
            double a = Math.PI * k / RING_SIDES;
            double e = slot[0] + gate * Math.cos(a);
            double n = slot[1] + gate * Math.sin(a);
            if (inside || k % 2 == 0) {
                stage.line(
                        beforeE,
                        beforeN,
                        slot[2],
                        e,
                        n,
                        slot[2],
                        stage.px(1.4),
                        0,
                        stage.colour(link.flyer()));
            }
            beforeE = e;
            beforeN = n;
        }
    }

    private void sightLine(Stage stage, Link link, Body flyer) {
        if (!stage.shows(ViewState.Layer.SIGHT_LINES)) {
            return;
        }
        boolean over = link.isOverClosingLimit();
        stage.line(
                flyer.east_m(),
                flyer.north_m(),
                flyer.up_m(),
                slot[0],
                slot[1],
                slot[2],
                stage.px(over ? 3 : 1.4),
                stage.px(over ? 0 : 6),
                over ? stage.palette().limit() : stage.palette().inkSoft());
        double e = (flyer.east_m() + slot[0]) / 2;
        double n = (flyer.north_m() + slot[1]) / 2;
        double u = (flyer.up_m() + slot[2]) / 2;
        if (stage.shows(ViewState.Layer.LABELS) && stage.sight().project(e, n, u, xy)) {
            words(stage, link, over);
        }
    }

    private void words(Stage stage, Link link, boolean over) {
        Figures figures = stage.figures();
        Labels.Label label =
                stage.labels().add(Labels.Rank.PAIR, xy[0], xy[1], stage.colour(link.flyer()));
        boolean hasSlot = link.pair().slotArm().isPresent();
        label.row(0).add(link.pair().flyer()).add(hasSlot ? " gap " : " separation ");
        figures.add(
                label.row(0),
                Measure.DISTANCE,
                link.figure(hasSlot ? Figure.GAP : Figure.SEPARATION),
                link.figure(hasSlot ? Figure.GAP_SIGMA : Figure.SEPARATION_SIGMA));
        double closure = link.figure(Figure.CLOSURE_RATE);
        if (Double.isNaN(closure)) {
            label.row(1).add("closure not known this near");
        } else {
            label.row(1).add(closure >= 0 ? "closing " : "opening ");
            figures.add(label.row(1), Measure.CLOSURE, Math.abs(closure));
        }
        if (over) {
            label.row(2).add("over closing limit ");
            figures.add(label.row(2), Measure.CLOSURE, link.figure(Figure.CLOSING_LIMIT));
        } else if (link.isTouching()) {
            label.row(2).add("matched, touch evidence");
        } else if (link.isMatched()) {
            label.row(2).add("matched");
        }
    }

    /** The flyer's velocity against the lead. */
    private void arrow(Stage stage, Link link, Body lead, Body flyer) {
        if (!stage.shows(ViewState.Layer.VECTORS)) {
            return;
        }
        double ve = flyer.velocityEast_mps() - lead.velocityEast_mps();
        double vn = flyer.velocityNorth_mps() - lead.velocityNorth_mps();
        double vu = flyer.velocityUp_mps() - lead.velocityUp_mps();
        double size = Math.sqrt(ve * ve + vn * vn + vu * vu) * ARROW_S;
        double pixel = stage.metresPerPixel(flyer.east_m(), flyer.north_m(), flyer.up_m());
        if (!(size > 4 * pixel)) {
            return;
        }
        Arrows.draw(
                stage,
                flyer.east_m(),
                flyer.north_m(),
                flyer.up_m(),
                ve * ARROW_S,
                vn * ARROW_S,
                vu * ARROW_S,
                stage.px(2.6),
                stage.colour(link.flyer()));
    }
}
