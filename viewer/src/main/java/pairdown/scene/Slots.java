package pairdown.scene;

import java.util.List;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Body;
import pairdown.replay.Link;
import pairdown.replay.Moment;
import pairdown.replay.ViewState;
import pairdown.words.Line;
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

    /** Words beside pairs; more would cover the picture. The nearest pairs have them. */
    private static final int MOST_PAIRS_IN_WORDS = 6;

    /** Nearer to its slot on screen than this, a flyer's words stand under its name (px). */
    private static final double TOGETHER_PX = 90;

    private final List<SlotPlace> places;
    private final float[] xy = new float[2];
    private final float[] other = new float[2];

    Slots(List<SlotPlace> places) {
        this.places = places;
    }

    @Override
    public void draw(Stage stage) {
        Moment moment = stage.moment();
        double worded_m = gapOfLastInWords(moment);
        for (int i = 0; i < places.size(); i++) {
            SlotPlace place = places.get(i);
            if (!place.find(moment)) {
                continue;
            }
            if (place.isSlot() && stage.shows(ViewState.Layer.SLOTS)) {
                cross(stage, place);
            }
            if (place.isInUse() && stage.shows(ViewState.Layer.GATES)) {
                gateRing(stage, place);
            }
            for (int k = 0; k < place.links().size(); k++) {
                Link link = place.links().get(k);
                Body flyer = moment.body(link.flyer());
                if (flyer.isPresent() && link.isPresent()) {
                    sightLine(stage, place, link, flyer, worded_m);
                    arrow(stage, link, moment.body(link.lead()), flyer);
                }
            }
        }
    }

    /** The gap up to which pairs are worded: that of the last of those that may be. */
    private static double gapOfLastInWords(Moment moment) {
        List<Link> links = moment.links();
        double gap = Double.POSITIVE_INFINITY;
        for (int i = 0; i < links.size(); i++) {
            int nearer = 0;
            double own = away(links.get(i));
            for (int k = 0; k < links.size() && nearer < MOST_PAIRS_IN_WORDS; k++) {
                nearer += away(links.get(k)) < own ? 1 : 0;
            }
            if (nearer >= MOST_PAIRS_IN_WORDS) {
                gap = Math.min(gap, own);
            }
        }
        return gap;
    }

    /** From the flyer to its slot, or to the lead; NaN outside the flight. */
    private static double away(Link link) {
        double gap = link.figure(Figure.GAP);
        return Double.isNaN(gap) ? link.figure(Figure.SEPARATION) : gap;
    }

    /** Three short lines, thick once the pair is matched. */
    private void cross(Stage stage, SlotPlace place) {
        int rgba = place.colour(stage);
        float width = stage.px(place.isMatched() ? 3.2 : 1.8);
        for (int axis = 0; axis < 3; axis++) {
            double e = axis == 0 ? CROSS_M : 0;
            double n = axis == 1 ? CROSS_M : 0;
            double u = axis == 2 ? CROSS_M : 0;
            stage.line(
                    place.east_m() - e,
                    place.north_m() - n,
                    place.up_m() - u,
                    place.east_m() + e,
                    place.north_m() + n,
                    place.up_m() + u,
                    width,
                    0,
                    rgba);
        }
        if (stage.shows(ViewState.Layer.LABELS)
                && !isTaken(stage, place)
                && stage.sight().project(place.east_m(), place.north_m(), place.up_m(), xy)) {
            Labels.Label label = stage.labels().add(Labels.Rank.SLOT, xy[0], xy[1], rgba);
            label.row(0)
                    .add(stage.word("scene.slot"))
                    .add(' ')
                    .add(place.links().get(0).pair().slot().orElse(""));
        }
    }

    /** Whether a flyer is so near on screen that its own words tell enough. */
    private boolean isTaken(Stage stage, SlotPlace place) {
        for (int i = 0; i < place.links().size(); i++) {
            if (place.links().get(i).isPresent()
                    && isTogether(stage, place, place.links().get(i))) {
                return true;
            }
        }
        return false;
    }

    private boolean isTogether(Stage stage, SlotPlace place, Link link) {
        Body flyer = stage.moment().body(link.flyer());
        return flyer.isPresent()
                && stage.sight().project(place.east_m(), place.north_m(), place.up_m(), other)
                && stage.sight().project(flyer.east_m(), flyer.north_m(), flyer.up_m(), xy)
                && Math.hypot(xy[0] - other[0], xy[1] - other[1]) < stage.px(TOGETHER_PX);
    }

    /** The gate's level circle: dashed while nobody is inside. */
    private static void gateRing(Stage stage, SlotPlace place) {
        if (stage.moment().debrief().attempt().gate_m().isEmpty()) {
            return;
        }
        double gate = stage.moment().debrief().attempt().gate_m().getAsDouble();
        boolean inside = place.isReached(gate);
        int rgba = place.colour(stage);
        double beforeE = place.east_m() + gate;
        double beforeN = place.north_m();
        for (int k = 1; k <= RING_SIDES * 2; k++) {
            double a = Math.PI * k / RING_SIDES;
            double e = place.east_m() + gate * Math.cos(a);
            double n = place.north_m() + gate * Math.sin(a);
            if (inside || k % 2 == 0) {
                double u = place.up_m();
                stage.line(beforeE, beforeN, u, e, n, u, stage.px(1.4), 0, rgba);
            }
            beforeE = e;
            beforeN = n;
        }
    }

    private void sightLine(Stage stage, SlotPlace place, Link link, Body flyer, double worded_m) {
        if (!stage.shows(ViewState.Layer.SIGHT_LINES)) {
            return;
        }
        boolean over = link.isOverClosingLimit();
        stage.line(
                flyer.east_m(),
                flyer.north_m(),
                flyer.up_m(),
                place.east_m(),
                place.north_m(),
                place.up_m(),
                stage.px(over ? 3 : 1.4),
                stage.px(over ? 0 : 6),
                over ? stage.palette().limit() : stage.palette().inkSoft());
        if (away(link) < worded_m && stage.shows(ViewState.Layer.LABELS)) {
            words(stage, place, link, flyer, over);
        }
    }

    private void words(Stage stage, SlotPlace place, Link link, Body flyer, boolean over) {
        int own = stage.labels().indexOf(link.flyer());
        if (own >= 0 && isTogether(stage, place, link)) {
            figures(stage, stage.labels().get(own), link, over);
            return;
        }
        double e = (flyer.east_m() + place.east_m()) / 2;
        double n = (flyer.north_m() + place.north_m()) / 2;
        double u = (flyer.up_m() + place.up_m()) / 2;
        if (stage.sight().project(e, n, u, xy)) {
            Labels.Label label =
                    stage.labels().add(Labels.Rank.PAIR, xy[0], xy[1], stage.colour(link.flyer()));
            label.row(0).add(link.pair().flyer()).add(' ');
            gap(stage, label.row(0), link);
            closure(stage, label.row(1), link);
            state(stage, label.row(2), link, over);
        }
    }

    private static void figures(Stage stage, Labels.Label label, Link link, boolean over) {
        gap(stage, label.nextRow(), link);
        closure(stage, label.nextRow(), link);
        state(stage, label.nextRow(), link, over);
    }

    private static void gap(Stage stage, Line row, Link link) {
        boolean hasSlot = link.pair().slotArm().isPresent();
        row.add(stage.word(hasSlot ? "readout.gap" : "readout.separation")).add(' ');
        stage.figures()
                .add(
                        row,
                        Measure.DISTANCE,
                        link.figure(hasSlot ? Figure.GAP : Figure.SEPARATION),
                        link.figure(hasSlot ? Figure.GAP_SIGMA : Figure.SEPARATION_SIGMA));
    }

    private static void closure(Stage stage, Line row, Link link) {
        double closure = link.figure(Figure.CLOSURE_RATE);
        if (Double.isNaN(closure)) {
            row.add(stage.word("scene.closure-unknown"));
        } else {
            row.add(stage.word(closure >= 0 ? "scene.closing" : "scene.opening")).add(' ');
            double sigma = link.figure(Figure.CLOSURE_SIGMA);
            stage.figures().add(row, Measure.CLOSURE, Math.abs(closure), sigma);
        }
    }

    private static void state(Stage stage, Line row, Link link, boolean over) {
        if (over) {
            row.add(stage.word("readout.over")).add(' ');
            stage.figures().add(row, Measure.CLOSURE, link.figure(Figure.CLOSING_LIMIT));
        } else if (link.isTouching()) {
            row.add(stage.word("readout.matched")).add(", ").add(stage.word("readout.touch"));
        } else if (link.isMatched()) {
            row.add(stage.word("readout.matched"));
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
