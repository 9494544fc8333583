package pairdown.panel;

import org.jspecify.annotations.Nullable;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Link;
import pairdown.replay.Moment;
import pairdown.words.Line;
import pairdown.words.Measure;

/** Gap and closure of the second attempt laid over, and what the one shown has more than it. */
final class GhostReadout {
    private GhostReadout() {}

    static void paint(
            Sheet sheet, Link shown, Moment ghost, float left, float right, float firstRow) {
        Link other = likeOf(shown, ghost);
        double gap_m = other == null ? Double.NaN : Readout.gap(other);
        double closure_mps = other == null ? Double.NaN : other.figure(Figure.CLOSURE_RATE);
        Line line = sheet.line();
        sheet.figures().addNumber(line, Measure.DISTANCE, gap_m);
        end(sheet, line, closure_mps);
        row(sheet, "readout.ghost", line, left, right, firstRow);
        sheet.figures().addSigned(sheet.line(), Measure.DISTANCE, Readout.gap(shown) - gap_m);
        end(sheet, line, shown.figure(Figure.CLOSURE_RATE) - closure_mps);
        row(sheet, "readout.difference", line, left, right, firstRow + sheet.sizes().mm(5));
    }

    private static void end(Sheet sheet, Line line, double closure_mps) {
        sheet.figures().addUnit(line, Measure.DISTANCE);
        sheet.figures().addSigned(line.add("  "), Measure.CLOSURE, closure_mps);
        sheet.figures().addUnit(line, Measure.CLOSURE);
    }

    private static void row(
            Sheet sheet, String name, Line line, float left, float right, float row) {
        sheet.softText(sheet.word(name), left, row, sheet.sizes().text(), Align.LEFT);
        sheet.text(line, right, row, Face.FIGURES, sheet.sizes().text(), Align.RIGHT);
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
