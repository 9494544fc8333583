package pairdown.panel;

import pairdown.gl.Canvas;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.pair.MatchedWindow;
import pairdown.replay.Desk;
import pairdown.settings.StripKind;
import pairdown.theme.Palette;
import pairdown.time.Span;
import pairdown.words.Line;

/** Draws one strip: its name, bands, limits, curves and axis. */
final class StripRow {
    /** Points a curve is drawn with at most: more are not seen and cost. */
    static final int MOST_POINTS = 4000;

    /** With more curves than these the faint ones are drawn more coarsely. */
    private static final float CROWD = 8;

    private static final float MOST_COARSE = 4;

    /** Opacity of the curves of flyers that are not chosen. */
    private static final int FAINT = 0x90;

    private final float[] points = new float[2 * MOST_POINTS];
    private final Rect area;
    private final TimePlot plot;

    StripRow(Rect area, TimePlot plot) {
        this.area = area;
        this.plot = plot;
    }

    void paint(
            Sheet sheet,
            Board board,
            Desk desk,
            StripData strip,
            float rowTop,
            float rowHeight,
            double from_s,
            double to_s) {
        float top = rowTop + sheet.sizes().hair();
        float height = rowHeight - 2 * sheet.sizes().hair();
        Canvas canvas = sheet.canvas();
        canvas.line(
                area.x(),
                rowTop,
                area.right(),
                rowTop,
                sheet.sizes().hair(),
                sheet.palette().edge());
        boolean slotless = strip.kind() == StripKind.GAP && !board.hasSlot(desk);
        paintHead(sheet, strip, slotless, top);
        if (strip.isEmpty()) {
            sheet.softText(
                    strip.why(),
                    plot.left() + sheet.sizes().mm(2),
                    top + height / 2,
                    sheet.sizes().text(),
                    Align.LEFT);
            return;
        }
        canvas.clip(plot.left(), top, plot.width(), height);
        shadeSpans(sheet, board, desk, strip.kind(), top, height, from_s, to_s);
        if (strip.kind() == StripKind.TRUST) {
            TrustBars.paint(sheet, plot, strip, top, height, from_s, to_s);
            canvas.unclip();
            return;
        }
        Axis axis = Axis.of(strip, board.pair(desk), new Span(from_s, to_s), top, height);
        paintGround(sheet, strip, axis);
        if (!slotless) {
            paintLevels(sheet, strip, axis);
        }
        paintCurves(sheet, strip, axis, board.pair(desk), from_s, to_s);
        canvas.unclip();
        paintAxis(sheet, strip, axis);
    }

    private void paintHead(Sheet sheet, StripData strip, boolean slotless, float top) {
        float middle = top + sheet.sizes().mm(3);
        sheet.text(
                sheet.word(slotless ? "strip.separation" : "strip." + strip.kind().key()),
                area.x() + sheet.sizes().mm(1.5),
                middle,
                Face.TEXT_BOLD,
                sheet.sizes().text(),
                Align.LEFT);
        sheet.softText(
                sheet.figures().symbol(strip.measure()),
                plot.left() - sheet.sizes().mm(StripValues.VALUES_END_MM),
                middle,
                sheet.sizes().small(),
                Align.RIGHT);
    }

    /** Those of the chosen pair last, over the others. */
    private void paintCurves(
            Sheet sheet, StripData strip, Axis axis, int chosen, double from_s, double to_s) {
        for (Curve curve : strip.curves()) {
            if (strip.showsOthers() && !curve.isStrong(chosen)) {
                paintCurve(sheet, strip, curve, axis, chosen, from_s, to_s);
            }
        }
        for (Curve curve : strip.curves()) {
            if (curve.isStrong(chosen)) {
                paintCurve(sheet, strip, curve, axis, chosen, from_s, to_s);
            }
        }
    }

    /** Matched windows of the chosen pair behind pair strips, episodes behind the lead's. */
    private void shadeSpans(
            Sheet sheet,
            Board board,
            Desk desk,
            StripKind kind,
            float top,
            float height,
            double from_s,
            double to_s) {
        switch (kind) {
            case POWER, ELEVATOR, RUDDER, TURNING, EFFECTIVENESS, RETARDING -> {
                for (Span span : board.episodes()) {
                    shade(sheet, span, top, height, from_s, to_s, sheet.palette().episode());
                }
            }
            case TRUST -> {}
            default -> {
                int pair = board.pair(desk);
                if (pair >= 0) {
                    for (MatchedWindow window :
                            board.debrief().pairs().get(pair).matched().windows()) {
                        shade(
                                sheet,
                                window.span(),
                                top,
                                height,
                                from_s,
                                to_s,
                                Palette.withOpacity(sheet.palette().matched(), 0x30));
                    }
                }
            }
        }
    }

    private void shade(
            Sheet sheet, Span span, float top, float height, double from_s, double to_s, int rgba) {
        float left = plot.x(Math.max(from_s, span.start_s()), from_s, to_s);
        float right = plot.x(Math.min(to_s, span.end_s()), from_s, to_s);
        if (right > left) {
            sheet.canvas().fill(left, top, Math.max(2, right - left), height, rgba);
        }
    }

    private void paintGround(Sheet sheet, StripData strip, Axis axis) {
        Canvas canvas = sheet.canvas();
        for (StripData.Band band : strip.bands()) {
            float high = axis.y(band.to());
            canvas.fill(
                    plot.left(),
                    high,
                    plot.width(),
                    axis.y(band.from()) - high,
                    sheet.palette().tolerance());
        }
        double step = axis.step(sheet.figures(), strip.measure());
        for (double v = axis.firstTick(step); v <= axis.greatestShown(); v += step) {
            float y = axis.yOfShown(v);
            canvas.line(plot.left(), y, plot.right(), y, 1, sheet.palette().grid());
        }
    }

    private void paintLevels(Sheet sheet, StripData strip, Axis axis) {
        float lastLabel = Float.NaN;
        for (StripData.Level level : strip.lines()) {
            float y = axis.y(level.value());
            sheet.dashedAcross(
                    plot.left(), plot.right(), y, sheet.sizes().curve(), sheet.palette().limit());
            lastLabel = levelLabel(sheet, level.label(), axis, y, lastLabel);
        }
    }

    /** Above its line, or below where it would be cut off or cover the one before. */
    private float levelLabel(Sheet sheet, String label, Axis axis, float y, float last) {
        float off = sheet.sizes().mm(1.9);
        float size = sheet.sizes().small();
        float middle = y - off;
        if (middle - size / 2 < axis.top() || Math.abs(middle - last) < size) {
            middle = y + off;
        }
        float right = plot.right() - sheet.sizes().mm(1);
        float width = sheet.width(label, Face.TEXT, size);
        sheet.canvas()
                .fill(
                        right - width,
                        middle - size / 2,
                        width,
                        size,
                        Palette.withOpacity(sheet.palette().paper(), 0xC0));
        sheet.softText(label, right, middle, size, Align.RIGHT);
        return middle;
    }

    private void paintAxis(Sheet sheet, StripData strip, Axis axis) {
        double step = axis.step(sheet.figures(), strip.measure());
        float margin = sheet.sizes().small() * 0.5f;
        for (double v = axis.firstTick(step); v <= axis.greatestShown(); v += step) {
            float y = axis.yOfShown(v);
            if (y > axis.top() + margin && y < axis.top() + axis.height() - margin) {
                Line line = sheet.figures().addPlain(sheet.line(), v, step < 1 ? 1 : 0);
                sheet.text(
                        line,
                        plot.left() - sheet.sizes().mm(1),
                        y,
                        Face.FIGURES,
                        sheet.sizes().small(),
                        Align.RIGHT,
                        sheet.palette().inkSoft());
            }
        }
    }

    private void paintCurve(
            Sheet sheet,
            StripData strip,
            Curve curve,
            Axis axis,
            int chosen,
            double from_s,
            double to_s) {
        boolean own = curve.isStrong(chosen);
        if (!own && curve.isLimit()) {
            return;
        }
        int rgba =
                curve.isLimit()
                        ? sheet.palette().limit()
                        : sheet.palette().participant(curve.number());
        float thickness = sheet.sizes().curve();
        float dash = curve.isLimit() ? sheet.sizes().mm(2.4) : 0;
        float column = own ? 1 : coarseness(strip.curves().size());
        CurvePath path =
                new CurvePath(sheet.canvas(), points, dash, column * CurvePath.LEAST_COLUMN_PX);
        path.draw(
                curve.values(),
                axis,
                plot.left(),
                plot.width(),
                from_s,
                to_s,
                own ? thickness : thickness * 0.6f,
                own ? rgba : Palette.withOpacity(rgba, FAINT));
        if (own && !curve.isLimit()) {
            markAlong(sheet, curve, axis, from_s, to_s);
        }
    }

    /** Where many lie faintly over each other, finer columns of each are not seen. */
    private static float coarseness(int curves) {
        return Math.max(1, Math.min(MOST_COARSE, curves / CROWD));
    }

    /** Markers along a curve, so that it is known without its colour. */
    private void markAlong(Sheet sheet, Curve curve, Axis axis, double from_s, double to_s) {
        float apart = sheet.sizes().mm(28);
        // Curves of different numbers have theirs at different places.
        float first = apart * (0.15f + 0.23f * (curve.number() % 4));
        for (float px = first; px < plot.width(); px += apart) {
            double value = curve.values().at(from_s + px / plot.width() * (to_s - from_s));
            if (!Double.isNaN(value)) {
                float y = axis.y(value);
                sheet.marker(curve.number(), plot.left() + px, y, sheet.sizes().marker());
            }
        }
    }
}
