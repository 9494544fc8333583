package pairdown.panel;

import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.replay.Desk;
import pairdown.words.Line;

/** Draws a strip's values at the instant shown, or at both cursors with what lies between. */
final class StripValues {
    /** Values end this far left of the plot, axis numbers stand between (mm). */
    static final float VALUES_END_MM = 12.5f;

    private static final int MOST_VALUES = 3;

    /** What lies between the cursors, as a value's name. */
    private static final String BETWEEN = "B \u2212 A";

    private final Rect area;
    private final TimePlot plot;

    StripValues(Rect area, TimePlot plot) {
        this.area = area;
        this.plot = plot;
    }

    void paint(
            Sheet sheet,
            StripData strip,
            float rowTop,
            float rowHeight,
            int chosen,
            Desk desk,
            double t_s) {
        boolean both = !Double.isNaN(desk.cursorA_s()) && !Double.isNaN(desk.cursorB_s());
        float y = rowTop + sheet.sizes().mm(7.6);
        float pitch = Math.min(sheet.sizes().mm(4.6), (rowHeight - sheet.sizes().mm(6)) / 3);
        int shown = 0;
        for (int i = 0; i < strip.curves().size() && shown < MOST_VALUES; i++) {
            Curve curve = strip.curves().get(i);
            boolean own = curve.isStrong(chosen);
            if (!own) {
                continue;
            }
            boolean measured = curve.pair() == chosen || !hasPair(strip, chosen);
            if (both && measured && of(strip, chosen) == 1) {
                differences(sheet, strip, curve, desk, y, pitch);
                return;
            }
            if (both && measured && !curve.isLimit()) {
                difference(sheet, strip, curve, desk, y);
                y += pitch;
                shown++;
            }
            if (!both) {
                value(sheet, strip, curve, curve.values().at(t_s), y);
                y += pitch;
                shown++;
            }
        }
    }

    /** How many curves of the chosen flyer's, or of the lead's where it has none, are measured. */
    private static int of(StripData strip, int chosen) {
        boolean pairs = hasPair(strip, chosen);
        int count = 0;
        for (int i = 0; i < strip.curves().size(); i++) {
            Curve curve = strip.curves().get(i);
            boolean measured = pairs ? curve.pair() == chosen : curve.isStrong(chosen);
            count += measured && !curve.isLimit() ? 1 : 0;
        }
        return count;
    }

    private static boolean hasPair(StripData strip, int chosen) {
        for (int i = 0; i < strip.curves().size(); i++) {
            if (strip.curves().get(i).pair() == chosen) {
                return true;
            }
        }
        return false;
    }

    private void value(Sheet sheet, StripData strip, Curve curve, double value, float y) {
        float left = area.x() + sheet.sizes().mm(3);
        if (curve.isLimit()) {
            sheet.softText(
                    sheet.word("strip.limit"),
                    left + sheet.sizes().mm(2.2),
                    y,
                    sheet.sizes().small(),
                    Align.LEFT);
        } else {
            sheet.marker(curve.number(), left, y, sheet.sizes().marker());
            // The lead's only curve has the strip's name already.
            boolean isNamed = strip.curves().size() == 1 && curve.pair() == Curve.ALWAYS;
            sheet.softText(
                    isNamed ? "" : curve.label(),
                    left + sheet.sizes().mm(2.2),
                    y,
                    sheet.sizes().small(),
                    Align.LEFT);
        }
        figure(sheet, strip, value, y);
    }

    private void figure(Sheet sheet, StripData strip, double value, float y) {
        Line line = sheet.line();
        if (strip.isSigned()) {
            sheet.figures().addSigned(line, strip.measure(), value);
        } else {
            sheet.figures().addNumber(line, strip.measure(), value);
        }
        sheet.text(
                line,
                plot.left() - sheet.sizes().mm(VALUES_END_MM),
                y,
                Face.FIGURES_BOLD,
                sheet.sizes().text(),
                Align.RIGHT);
    }

    /** With both cursors set: the chosen flyer's curve at A, at B, and what lies between. */
    private void differences(
            Sheet sheet, StripData strip, Curve curve, Desk desk, float y, float pitch) {
        float left = area.x() + sheet.sizes().mm(3);
        double a = curve.values().at(desk.cursorA_s());
        double b = curve.values().at(desk.cursorB_s());
        float small = sheet.sizes().small();
        float marked = left + sheet.sizes().mm(5);
        sheet.marker(curve.number(), marked, y, sheet.sizes().marker());
        sheet.softText("A", left, y, small, Align.LEFT);
        figure(sheet, strip, a, y);
        sheet.softText("B", left, y + pitch, small, Align.LEFT);
        figure(sheet, strip, b, y + pitch);
        sheet.softText(BETWEEN, left, y + 2 * pitch, small, Align.LEFT);
        between(sheet, strip, curve, desk, y + 2 * pitch);
    }

    /** One of several curves: there is room for what lies between alone. */
    private void difference(Sheet sheet, StripData strip, Curve curve, Desk desk, float y) {
        float left = area.x() + sheet.sizes().mm(3);
        float small = sheet.sizes().small();
        sheet.marker(curve.number(), left, y, sheet.sizes().marker());
        sheet.softText(BETWEEN, left + sheet.sizes().mm(2.2), y, small, Align.LEFT);
        between(sheet, strip, curve, desk, y);
    }

    private void between(Sheet sheet, StripData strip, Curve curve, Desk desk, float y) {
        double a = curve.values().at(desk.cursorA_s());
        double b = curve.values().at(desk.cursorB_s());
        Line line = sheet.line();
        double shownA = sheet.figures().shown(strip.measure(), a);
        double shownB = sheet.figures().shown(strip.measure(), b);
        double si = sheet.figures().fromShown(strip.measure(), shownB - shownA);
        sheet.figures().addSigned(line, strip.measure(), si);
        sheet.text(
                line,
                plot.left() - sheet.sizes().mm(VALUES_END_MM),
                y,
                Face.FIGURES_BOLD,
                sheet.sizes().text(),
                Align.RIGHT);
    }
}
