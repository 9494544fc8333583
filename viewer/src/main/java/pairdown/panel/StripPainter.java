package pairdown.panel;

import pairdown.gl.Canvas;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.input.Action;
import pairdown.pair.MatchedWindow;
import pairdown.replay.Desk;
import pairdown.settings.StripKind;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.time.Span;
import pairdown.words.Line;

/**
 * Draws the strips: what changes seldom into a kept picture, then each frame the instant shown, the
 * cursors and the values at them.
 */
final class StripPainter {
    /** Points a curve is drawn with at most: more are not seen and cost. */
    static final int MOST_POINTS = 500;

    private static final StripKind[] KINDS = StripKind.values();
    private static final float LABEL_MM = 41;
    private static final float ROW_LEAST_MM = 21;
    private static final float AXIS_MM = 6;

    /** Values end this far left of the plot, axis numbers stand between (mm). */
    private static final float VALUES_END_MM = 12.5f;

    private static final int MOST_VALUES = 3;

    /** Opacity of the curves of flyers that are not chosen. */
    private static final int FAINT = 0x90;

    /** Uncertainty up to which a bar of data is full, and up to which it is half (m). */
    private static final double FULL_TRUST_M = 3;

    private static final double HALF_TRUST_M = 8;

    private static final Action[] TOOLS = {
        Action.STRIPS_ZOOM_IN,
        Action.STRIPS_ZOOM_OUT,
        Action.STRIPS_ALL,
        Action.STRIPS_DOWN,
        Action.STRIPS_UP,
        Action.CURSOR_A,
        Action.CURSOR_B,
        Action.NO_CURSORS,
        Action.STRIPS_LATER,
        Action.STRIPS_EARLIER
    };

    private final float[] points = new float[2 * MOST_POINTS];
    private final Rect area;
    private final float plotLeft;
    private final float plotWidth;
    private final float rowsHeight;
    private final int rowCount;

    StripPainter(Rect area, Sizes sizes) {
        this.area = area;
        this.plotLeft = area.x() + sizes.mm(LABEL_MM);
        this.plotWidth = area.right() - sizes.target() - sizes.mm(1) - plotLeft;
        this.rowsHeight = area.height() - sizes.mm(AXIS_MM);
        this.rowCount = Math.max(1, (int) (rowsHeight / sizes.mm(ROW_LEAST_MM)));
    }

    /** How many strips fit at once. */
    int rowCount() {
        return rowCount;
    }

    float plotLeft() {
        return plotLeft;
    }

    float plotWidth() {
        return plotWidth;
    }

    private float rowHeight() {
        return rowsHeight / rowCount;
    }

    private float rowTop(int row) {
        return area.y() + row * rowHeight();
    }

    /** The kind in the n-th row shown, skipping hidden ones; past the end the last answer is -1. */
    private static int kindAt(Desk desk, int row) {
        int wanted = desk.stripScroll() + row;
        for (int i = 0; i < KINDS.length; i++) {
            if (desk.settings().strips().contains(KINDS[i]) && wanted-- == 0) {
                return i;
            }
        }
        return -1;
    }

    /** What changes seldom. */
    void paint(Sheet sheet, Board board, Desk desk) {
        Canvas canvas = sheet.canvas();
        canvas.fill(area.x(), area.y(), area.width(), area.height(), sheet.palette().paper());
        double from_s = board.windowStart_s(desk);
        double to_s = board.windowEnd_s(desk);
        for (int row = 0; row < rowCount; row++) {
            int kind = kindAt(desk, row);
            if (kind >= 0) {
                paintRow(sheet, board, desk, board.strips().get(KINDS[kind]), row, from_s, to_s);
            }
        }
        paintTimeAxis(sheet, board, from_s, to_s);
        paintTools(sheet);
        sheet.areas()
                .slider(
                        plotLeft,
                        area.y(),
                        plotWidth,
                        area.height(),
                        Action.SEEK_ON_STRIP,
                        from_s,
                        to_s);
    }

    private void paintTools(Sheet sheet) {
        float side = sheet.sizes().target();
        int count = Math.min(TOOLS.length, (int) (area.height() / side));
        float height = area.height() / Math.max(1, count);
        for (int i = 0; i < count; i++) {
            sheet.button(
                    new Rect(area.right() - side, area.y() + i * height, side, height),
                    sheet.word("tool." + TOOLS[i].key()),
                    TOOLS[i],
                    0,
                    false);
        }
    }

    private void paintRow(
            Sheet sheet,
            Board board,
            Desk desk,
            StripData strip,
            int row,
            double from_s,
            double to_s) {
        float top = rowTop(row) + sheet.sizes().hair();
        float height = rowHeight() - 2 * sheet.sizes().hair();
        Canvas canvas = sheet.canvas();
        canvas.line(
                area.x(),
                rowTop(row),
                area.right(),
                rowTop(row),
                sheet.sizes().hair(),
                sheet.palette().edge());
        float text = sheet.sizes().text();
        sheet.text(
                sheet.word("strip." + strip.kind().key()),
                area.x() + sheet.sizes().mm(1.5),
                top + sheet.sizes().mm(3),
                Face.TEXT_BOLD,
                text,
                Align.LEFT);
        sheet.softText(
                sheet.figures().symbol(strip.measure()),
                plotLeft - sheet.sizes().mm(VALUES_END_MM),
                top + sheet.sizes().mm(3),
                sheet.sizes().small(),
                Align.RIGHT);
        if (strip.isEmpty()) {
            sheet.softText(
                    strip.why(),
                    plotLeft + sheet.sizes().mm(2),
                    top + height / 2,
                    text,
                    Align.LEFT);
            return;
        }
        canvas.clip(plotLeft, top, plotWidth, height);
        shadeSpans(sheet, board, desk, strip.kind(), top, height, from_s, to_s);
        if (strip.kind() == StripKind.TRUST) {
            paintTrust(sheet, strip, top, height, from_s, to_s);
            canvas.unclip();
            return;
        }
        Axis axis = Axis.of(strip, board.pair(desk), new Span(from_s, to_s), top, height);
        paintGround(sheet, strip, axis);
        for (Curve curve : strip.curves()) {
            if (!curve.isStrong(board.pair(desk))) {
                paintCurve(sheet, curve, axis, board.pair(desk), from_s, to_s);
            }
        }
        for (Curve curve : strip.curves()) {
            if (curve.isStrong(board.pair(desk))) {
                paintCurve(sheet, curve, axis, board.pair(desk), from_s, to_s);
            }
        }
        canvas.unclip();
        paintAxis(sheet, strip, axis);
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
            case POWER, ELEVATOR, RUDDER, EFFECTIVENESS, RETARDING -> {
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
        float left = x(Math.max(from_s, span.start_s()), from_s, to_s);
        float right = x(Math.min(to_s, span.end_s()), from_s, to_s);
        if (right > left) {
            sheet.canvas().fill(left, top, Math.max(2, right - left), height, rgba);
        }
    }

    private void paintGround(Sheet sheet, StripData strip, Axis axis) {
        Canvas canvas = sheet.canvas();
        for (StripData.Band band : strip.bands()) {
            float high = axis.y(band.to());
            canvas.fill(
                    plotLeft,
                    high,
                    plotWidth,
                    axis.y(band.from()) - high,
                    sheet.palette().tolerance());
        }
        double step = axis.step(sheet.figures(), strip.measure());
        for (double v = axis.firstTick(step); v <= axis.greatestShown(); v += step) {
            float y = axis.yOfShown(v);
            canvas.line(plotLeft, y, plotLeft + plotWidth, y, 1, sheet.palette().grid());
        }
        for (StripData.Level level : strip.lines()) {
            float y = axis.y(level.value());
            sheet.dashedAcross(
                    plotLeft,
                    plotLeft + plotWidth,
                    y,
                    sheet.sizes().curve(),
                    sheet.palette().limit());
            sheet.softText(
                    level.label(),
                    plotLeft + plotWidth - sheet.sizes().mm(1),
                    y - sheet.sizes().mm(1.9),
                    sheet.sizes().small(),
                    Align.RIGHT);
        }
    }

    private void paintAxis(Sheet sheet, StripData strip, Axis axis) {
        double step = axis.step(sheet.figures(), strip.measure());
        float margin = sheet.sizes().small() * 0.5f;
        for (double v = axis.firstTick(step); v <= axis.greatestShown(); v += step) {
            float y = axis.yOfShown(v);
            if (y > axis.top() + margin && y < axis.top() + axis.height() - margin) {
                Line line = sheet.line().addFixed(v, step < 1 ? 1 : 0, '.');
                sheet.text(
                        line,
                        plotLeft - sheet.sizes().mm(1),
                        y,
                        Face.FIGURES,
                        sheet.sizes().small(),
                        Align.RIGHT,
                        sheet.palette().inkSoft());
            }
        }
    }

    private void paintCurve(
            Sheet sheet, Curve curve, Axis axis, int chosen, double from_s, double to_s) {
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
        CurvePath path = new CurvePath(sheet.canvas(), points, dash);
        path.draw(
                curve.values(),
                axis,
                plotLeft,
                plotWidth,
                from_s,
                to_s,
                own ? thickness : thickness * 0.6f,
                own ? rgba : Palette.withOpacity(rgba, FAINT));
        if (own && !curve.isLimit()) {
            markAlong(sheet, curve, axis, from_s, to_s);
        }
    }

    /** Markers along a curve, so that it is known without its colour. */
    private void markAlong(Sheet sheet, Curve curve, Axis axis, double from_s, double to_s) {
        float apart = sheet.sizes().mm(28);
        // Curves of different numbers have theirs at different places.
        float first = apart * (0.15f + 0.23f * (curve.number() % 4));
        for (float px = first; px < plotWidth; px += apart) {
            double value = curve.values().at(from_s + px / plotWidth * (to_s - from_s));
            if (!Double.isNaN(value)) {
                float y = axis.y(value);
                sheet.marker(curve.number(), plotLeft + px, y, sheet.sizes().marker());
            }
        }
    }

    /** A bar for each participant: full where sure, thin where not, nothing where no data are. */
    private void paintTrust(
            Sheet sheet, StripData strip, float top, float height, double from_s, double to_s) {
        float lane = height / strip.curves().size();
        int columns = (int) Math.min(plotWidth, MOST_POINTS);
        float width = plotWidth / columns;
        for (int i = 0; i < strip.curves().size(); i++) {
            Curve curve = strip.curves().get(i);
            float middle = top + (i + 0.5f) * lane;
            sheet.canvas()
                    .line(
                            plotLeft,
                            middle,
                            plotLeft + plotWidth,
                            middle,
                            1,
                            sheet.palette().grid());
            int rgba = sheet.palette().participant(curve.number());
            int run = 0;
            float runHeight = 0;
            for (int c = 0; c <= columns; c++) {
                float h = c == columns ? -1 : trustHeight(curve, c, columns, from_s, to_s, lane);
                if (h != runHeight) {
                    if (runHeight > 0) {
                        sheet.canvas()
                                .fill(
                                        plotLeft + run * width,
                                        middle - runHeight / 2,
                                        (c - run) * width,
                                        runHeight,
                                        rgba);
                    }
                    run = c;
                    runHeight = h;
                }
            }
        }
    }

    private static float trustHeight(
            Curve curve, int column, int columns, double from_s, double to_s, float lane) {
        double t_s = from_s + (column + 0.5) / columns * (to_s - from_s);
        double sigma_m = curve.values().at(t_s);
        if (Double.isNaN(sigma_m)) {
            return 0;
        }
        float full = 0.7f * lane;
        return sigma_m <= FULL_TRUST_M
                ? full
                : sigma_m <= HALF_TRUST_M ? 0.45f * full : 0.18f * full;
    }

    private void paintTimeAxis(Sheet sheet, Board board, double from_s, double to_s) {
        float y = area.bottom() - sheet.sizes().mm(AXIS_MM) / 2;
        double step_s =
                Axis.niceTime_s((to_s - from_s) / Math.max(2, plotWidth / sheet.sizes().mm(32)));
        double epoch_s = board.debrief().axis().epoch().toEpochMilli() / 1000.0 % 86_400;
        double first = Math.ceil((from_s + epoch_s) / step_s) * step_s - epoch_s;
        for (double t_s = first; t_s <= to_s; t_s += step_s) {
            float px = x(t_s, from_s, to_s);
            sheet.canvas()
                    .line(
                            px,
                            area.y(),
                            px,
                            area.bottom() - sheet.sizes().mm(AXIS_MM),
                            1,
                            sheet.palette().grid());
            Line line = sheet.line();
            sheet.figures().addClock(line, board.debrief().axis(), t_s);
            sheet.text(
                    line.subSequence(0, step_s < 1 ? 12 : 8),
                    px,
                    y,
                    Face.FIGURES,
                    sheet.sizes().small(),
                    Align.CENTRE,
                    sheet.palette().inkSoft());
        }
    }

    private float x(double t_s, double from_s, double to_s) {
        return plotLeft + (float) ((t_s - from_s) / (to_s - from_s) * plotWidth);
    }

    /** What changes with every frame. */
    void paintNow(Sheet sheet, Board board, Desk desk, double t_s) {
        double from_s = board.windowStart_s(desk);
        double to_s = board.windowEnd_s(desk);
        float bottom = area.bottom() - sheet.sizes().mm(AXIS_MM);
        cursor(sheet, desk.cursorA_s(), "A", from_s, to_s, bottom);
        cursor(sheet, desk.cursorB_s(), "B", from_s, to_s, bottom);
        if (t_s >= from_s && t_s <= to_s) {
            float px = x(t_s, from_s, to_s);
            sheet.canvas()
                    .line(
                            px,
                            area.y(),
                            px,
                            bottom,
                            1.6f * sheet.sizes().hair(),
                            sheet.palette().now());
        }
        for (int row = 0; row < rowCount; row++) {
            int kind = kindAt(desk, row);
            if (kind >= 0) {
                values(sheet, board.strips().get(KINDS[kind]), row, board.pair(desk), desk, t_s);
            }
        }
    }

    private void cursor(
            Sheet sheet, double at_s, String name, double from_s, double to_s, float bottom) {
        if (!(at_s >= from_s && at_s <= to_s)) {
            return;
        }
        float px = x(at_s, from_s, to_s);
        sheet.dashedDown(px, area.y(), bottom, sheet.palette().ink());
        float box = sheet.sizes().mm(4.4);
        sheet.canvas().fill(px - box / 2, bottom, box, box, sheet.palette().chosen());
        sheet.text(name, px, bottom + box / 2, Face.TEXT_BOLD, sheet.sizes().small(), Align.CENTRE);
    }

    private void values(Sheet sheet, StripData strip, int row, int chosen, Desk desk, double t_s) {
        boolean both = !Double.isNaN(desk.cursorA_s()) && !Double.isNaN(desk.cursorB_s());
        float y = rowTop(row) + sheet.sizes().mm(7.6);
        float pitch = Math.min(sheet.sizes().mm(4.6), (rowHeight() - sheet.sizes().mm(6)) / 3);
        int shown = 0;
        for (int i = 0; i < strip.curves().size() && shown < MOST_VALUES; i++) {
            Curve curve = strip.curves().get(i);
            boolean own = curve.isStrong(chosen);
            if (!own) {
                continue;
            }
            if (both && (curve.pair() == chosen || !hasPair(strip, chosen))) {
                differences(sheet, strip, curve, desk, y, pitch);
                return;
            }
            if (!both) {
                value(sheet, strip, curve, curve.values().at(t_s), y);
                y += pitch;
                shown++;
            }
        }
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
            sheet.softText(
                    curve.label(),
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
                plotLeft - sheet.sizes().mm(VALUES_END_MM),
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
        sheet.softText("B \u2212 A", left, y + 2 * pitch, small, Align.LEFT);
        Line line = sheet.line();
        double shownA = sheet.figures().shown(strip.measure(), a);
        double shownB = sheet.figures().shown(strip.measure(), b);
        double si = sheet.figures().fromShown(strip.measure(), shownB - shownA);
        sheet.figures().addSigned(line, strip.measure(), si);
        sheet.text(
                line,
                plotLeft - sheet.sizes().mm(VALUES_END_MM),
                y + 2 * pitch,
                Face.FIGURES_BOLD,
                sheet.sizes().text(),
                Align.RIGHT);
    }
}
