package pairdown.panel;

import org.jspecify.annotations.Nullable;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Link;
import pairdown.replay.Moment;
import pairdown.words.Line;
import pairdown.words.Measure;

/**
 * Gap and closure of the second attempt laid over, and what the one shown has more than it, each
 * with one sigma: the two attempts' receivers know nothing of each other.
 */
final class GhostReadout {
    private GhostReadout() {}

    static void paint(
            Sheet sheet, Link shown, Moment ghost, float left, float right, float firstRow) {
        Link other = likeOf(shown, ghost);
        double gap_m = other == null ? Double.NaN : Readout.gap(other);
        double gapSigma_m = other == null ? Double.NaN : Readout.gapSigma(other);
        double closure_mps = figure(other, Figure.CLOSURE_RATE);
        double closureSigma_mps = figure(other, Figure.CLOSURE_SIGMA);
        Line line = sheet.line();
        sheet.figures().addNumber(line, Measure.DISTANCE, gap_m);
        end(sheet, line, gap_m, gapSigma_m, closure_mps, closureSigma_mps);
        row(sheet, "readout.ghost", line, left, right, firstRow);
        double more_m = Readout.gap(shown) - gap_m;
        sheet.figures().addSigned(sheet.line(), Measure.DISTANCE, more_m);
        end(
                sheet,
                line,
                more_m,
                Math.hypot(Readout.gapSigma(shown), gapSigma_m),
                shown.figure(Figure.CLOSURE_RATE) - closure_mps,
                Math.hypot(shown.figure(Figure.CLOSURE_SIGMA), closureSigma_mps));
        row(sheet, "readout.difference", line, left, right, firstRow + sheet.sizes().mm(5));
    }

    private static double figure(@Nullable Link link, Figure figure) {
        return link == null ? Double.NaN : link.figure(figure);
    }

    private static void end(
            Sheet sheet,
            Line line,
            double gap_m,
            double gapSigma_m,
            double closure_mps,
            double closureSigma_mps) {
        sheet.figures().addPlusMinus(line, Measure.DISTANCE, gap_m, gapSigma_m);
        sheet.figures().addUnit(line, Measure.DISTANCE);
        sheet.figures().addSigned(line.add("  "), Measure.CLOSURE, closure_mps);
        sheet.figures().addPlusMinus(line, Measure.CLOSURE, closure_mps, closureSigma_mps);
        sheet.figures().addUnit(line, Measure.CLOSURE);
    }

    /** As large as fits: with long units it is somewhat smaller. */
    private static void row(
            Sheet sheet, String name, Line line, float left, float right, float row) {
        float size = sheet.sizes().small();
        sheet.softText(sheet.word(name), left, row, size, Align.LEFT);
        float named = sheet.width(sheet.word(name), Face.TEXT, size) + sheet.sizes().mm(1);
        float fit = (right - left - named) / Math.max(1, sheet.width(line, Face.FIGURES, size));
        sheet.text(line, right, row, Face.FIGURES, size * Math.min(1, fit), Align.RIGHT);
    }

    /** The same flyer's pair in the other attempt; else its first. */
    private static @Nullable Link likeOf(Link shown, Moment ghost) {
        for (int i = 0; i < ghost.links().size(); i++) {
            if (ghost.links().get(i).pair().flyer().equals(shown.pair().flyer())) {
                return ghost.links().get(i);
            }
        }
        return ghost.links().isEmpty() ? null : ghost.links().get(0);
    }
}
