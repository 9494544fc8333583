package pairdown.panel;

import pairdown.gl.Canvas;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.input.Action;
import pairdown.replay.Desk;
import pairdown.settings.StripKind;
import pairdown.theme.Sizes;
import pairdown.words.Line;

/**
 * Draws the strips: what changes seldom into a kept picture, then each frame the instant shown, the
 * cursors and the values at them.
 */
final class StripPainter {
    private static final StripKind[] KINDS = StripKind.values();
    private static final float LABEL_MM = 41;
    private static final float ROW_LEAST_MM = 21;
    private static final float AXIS_MM = 6;

    /** A few strips alone would grow out of all shape. */
    private static final int LEAST_ROWS = 3;

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

    private final Rect area;
    private final TimePlot plot;
    private final StripRow rows;
    private final StripValues values;
    private final float rowsHeight;
    private final int rowCount;

    StripPainter(Rect area, Sizes sizes) {
        this.area = area;
        float left = area.x() + sizes.mm(LABEL_MM);
        this.plot = new TimePlot(left, area.right() - sizes.target() - sizes.mm(1) - left);
        this.rows = new StripRow(area, plot);
        this.values = new StripValues(area, plot);
        this.rowsHeight = area.height() - sizes.mm(AXIS_MM);
        this.rowCount = Math.max(1, (int) (rowsHeight / sizes.mm(ROW_LEAST_MM)));
    }

    /** Fewer strips than there is room for share all of it. */
    private float rowHeight(Desk desk) {
        int chosen = desk.settings().strips().size() - desk.stripScroll();
        return rowsHeight / Math.max(1, Math.min(rowCount, Math.max(LEAST_ROWS, chosen)));
    }

    private float rowTop(Desk desk, int row) {
        return area.y() + row * rowHeight(desk);
    }

    /**
     * The kind in the n-th row shown, skipping hidden ones; what an attempt has nothing for comes
     * last. Past the end the answer is -1.
     */
    private static int kindAt(Board board, Desk desk, int row) {
        int wanted = desk.stripScroll() + row;
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < KINDS.length; i++) {
                boolean isEmpty = board.strips().get(KINDS[i]).isEmpty();
                boolean isNow = isEmpty == (pass == 1);
                if (isNow && desk.settings().strips().contains(KINDS[i]) && wanted-- == 0) {
                    return i;
                }
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
            int kind = kindAt(board, desk, row);
            if (kind >= 0) {
                rows.paint(
                        sheet,
                        board,
                        desk,
                        board.strips().get(KINDS[kind]),
                        rowTop(desk, row),
                        rowHeight(desk),
                        from_s,
                        to_s);
            }
        }
        paintTimeAxis(sheet, board, from_s, to_s);
        paintTools(sheet);
        sheet.areas()
                .slider(
                        plot.left(),
                        area.y(),
                        plot.width(),
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

    private void paintTimeAxis(Sheet sheet, Board board, double from_s, double to_s) {
        float y = area.bottom() - sheet.sizes().mm(AXIS_MM) / 2;
        double step_s =
                Axis.niceTime_s((to_s - from_s) / Math.max(2, plot.width() / sheet.sizes().mm(32)));
        double epoch_s = board.debrief().axis().epoch().toEpochMilli() / 1000.0 % 86_400;
        double first = Math.ceil((from_s + epoch_s) / step_s) * step_s - epoch_s;
        for (double t_s = first; t_s <= to_s; t_s += step_s) {
            float px = plot.x(t_s, from_s, to_s);
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
            CharSequence label = line.subSequence(0, step_s < 1 ? 12 : 8);
            float half = sheet.width(label, Face.FIGURES, sheet.sizes().small()) / 2;
            if (px + half <= plot.right()) {
                sheet.text(
                        label,
                        px,
                        y,
                        Face.FIGURES,
                        sheet.sizes().small(),
                        Align.CENTRE,
                        sheet.palette().inkSoft());
            }
        }
    }

    /** What changes with every frame. */
    void paintNow(Sheet sheet, Board board, Desk desk, double t_s) {
        double from_s = board.windowStart_s(desk);
        double to_s = board.windowEnd_s(desk);
        float bottom = area.bottom() - sheet.sizes().mm(AXIS_MM);
        cursor(sheet, desk.cursorA_s(), "A", from_s, to_s, bottom);
        cursor(sheet, desk.cursorB_s(), "B", from_s, to_s, bottom);
        if (t_s >= from_s && t_s <= to_s) {
            float px = plot.x(t_s, from_s, to_s);
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
            int kind = kindAt(board, desk, row);
            if (kind >= 0) {
                values.paint(
                        sheet,
                        board.strips().get(KINDS[kind]),
                        rowTop(desk, row),
                        rowHeight(desk),
                        board.pair(desk),
                        desk,
                        t_s);
            }
        }
    }

    private void cursor(
            Sheet sheet, double at_s, String name, double from_s, double to_s, float bottom) {
        if (!(at_s >= from_s && at_s <= to_s)) {
            return;
        }
        float px = plot.x(at_s, from_s, to_s);
        sheet.dashedDown(px, area.y(), bottom, sheet.palette().ink());
        float box = sheet.sizes().mm(4.4);
        sheet.canvas().fill(px - box / 2, bottom, box, box, sheet.palette().chosen());
        sheet.text(name, px, bottom + box / 2, Face.TEXT_BOLD, sheet.sizes().small(), Align.CENTRE);
    }
}
