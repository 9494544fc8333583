package pairdown.panel;

import java.util.Optional;
import pairdown.gl.Canvas;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.input.Action;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.phase.Event;
import pairdown.replay.Desk;
import pairdown.replay.Playback;
import pairdown.safety.Finding;
import pairdown.theme.Sizes;
import pairdown.time.Span;
import pairdown.words.Line;

/**
 * The scrub bar with what happened on it, and the buttons of time under it. The bar has four rows,
 * each with its name: events, matched windows, episodes, limits.
 */
final class Transport {
    private static final float LABEL_MM = 19;
    private static final int ROWS = 4;

    /** More pairs share lanes: thinner ones are not seen. */
    private static final int MOST_LANES = 3;

    /** A band of no length is still seen (px). */
    private static final float LEAST_BAND_PX = 3;

    private final Rect bar;
    private final Rect buttons;
    private final float left;
    private final float width;
    private final float rowHeight;
    private final float buttonWidth;
    private final Rect clock;

    Transport(Rect bar, Rect buttons, Sizes sizes) {
        this.bar = bar;
        this.buttons = buttons;
        this.left = bar.x() + sizes.mm(LABEL_MM);
        this.width = bar.right() - sizes.mm(3) - left;
        this.rowHeight = bar.height() / ROWS;
        this.buttonWidth = buttonWidth(sizes);
        int count = BEFORE_CLOCK.length + AFTER_CLOCK.length;
        this.clock =
                new Rect(
                        buttons.x() + BEFORE_CLOCK.length * buttonWidth,
                        buttons.y(),
                        Math.max(sizes.mm(40), buttons.width() - count * buttonWidth),
                        buttons.height());
    }

    private float x(double t_s, Span shown) {
        return left + (float) ((t_s - shown.start_s()) / shown.duration_s() * width);
    }

    /** What changes seldom: bands and events. */
    void paintBar(Sheet sheet, Board board, Desk desk) {
        Canvas canvas = sheet.canvas();
        canvas.fill(bar.x(), bar.y(), bar.width(), bar.height(), sheet.palette().panel());
        canvas.line(
                bar.x(),
                bar.y(),
                bar.right(),
                bar.y(),
                2 * sheet.sizes().hair(),
                sheet.palette().edge());
        row(sheet, 0, "bar.events");
        row(sheet, 1, "bar.matched");
        row(sheet, 2, "bar.episodes");
        row(sheet, 3, "bar.limits");
        Span shown = board.shown(desk);
        pairs(sheet, board, shown);
        for (Span episode : board.episodes()) {
            band(sheet, 2, episode, shown, sheet.palette().episode());
        }
        findings(sheet, board, shown);
        events(sheet, board, shown);
        marks(sheet, board, desk, shown);
        sheet.areas()
                .slider(
                        left,
                        bar.y(),
                        width,
                        bar.height(),
                        Action.SEEK,
                        shown.start_s(),
                        shown.end_s());
    }

    private void pairs(Sheet sheet, Board board, Span shown) {
        int lanes = Math.max(1, Math.min(MOST_LANES, board.debrief().pairs().size()));
        for (int i = 0; i < board.debrief().pairs().size(); i++) {
            PairDebrief pair = board.debrief().pairs().get(i);
            int flyer = board.recording().indexOf(pair.flyer()).orElse(0);
            for (MatchedWindow window : pair.matched().windows()) {
                lane(sheet, i % lanes, lanes, flyer, window.span(), shown);
            }
            for (ClosureExceedance over : pair.closureExceedances()) {
                band(sheet, 3, over.span(), shown, sheet.palette().finding());
            }
        }
    }

    private void findings(Sheet sheet, Board board, Span shown) {
        for (Finding finding : board.debrief().safety()) {
            if (finding.outcome() != Finding.Outcome.CLEAR && finding.time_s().isPresent()) {
                double t_s = finding.time_s().getAsDouble();
                band(sheet, 3, new Span(t_s, t_s), shown, sheet.palette().limit());
            }
        }
    }

    private void events(Sheet sheet, Board board, Span shown) {
        for (Event event : board.recording().events()) {
            if (shown.contains(event.time_s())) {
                float px = x(event.time_s(), shown);
                sheet.canvas()
                        .line(
                                px,
                                bar.y() + 0.2f * rowHeight,
                                px,
                                bar.y() + rowHeight,
                                sheet.sizes().hair() * 1.5f,
                                sheet.palette().inkSoft());
            }
        }
    }

    private void marks(Sheet sheet, Board board, Desk desk, Span shown) {
        float r = sheet.sizes().mm(1.2);
        for (int i = 0; i < desk.marks().size(); i++) {
            double t_s = board.debrief().axis().seconds(desk.marks().get(i).time());
            if (shown.contains(t_s)) {
                float px = x(t_s, shown);
                float py = bar.y() + 0.5f * rowHeight;
                sheet.triangle(px - r, py - r, px + r, py - r, px, py + r, sheet.palette().ink());
            }
        }
    }

    private void row(Sheet sheet, int row, String label) {
        float y = bar.y() + (row + 0.5f) * rowHeight;
        sheet.softText(
                sheet.word(label),
                left - sheet.sizes().mm(1.5),
                y,
                sheet.sizes().small(),
                Align.RIGHT);
        sheet.canvas()
                .fill(
                        left,
                        bar.y() + row * rowHeight + 1,
                        width,
                        rowHeight - 2,
                        sheet.palette().paper());
    }

    private void band(Sheet sheet, int row, Span span, Span shown, int rgba) {
        band(sheet, bar.y() + row * rowHeight + 2, rowHeight - 4, span, shown, rgba);
    }

    /**
     * A matched window in its pair's lane, behind its flyer's shape: two flyers' are told apart.
     */
    private void lane(Sheet sheet, int lane, int lanes, int flyer, Span span, Span shown) {
        float height = (rowHeight - 4) / lanes;
        float gap = lanes > 1 ? 1 : 0;
        float top = bar.y() + rowHeight + 2 + lane * height;
        band(sheet, top, height - gap, span, shown, sheet.palette().matched());
        if (lanes > 1 && shown.contains(span.start_s())) {
            float r = height / 2;
            sheet.marker(flyer, x(span.start_s(), shown) - 1.6f * r, top + r, r);
        }
    }

    private void band(Sheet sheet, float top, float height, Span span, Span shown, int rgba) {
        if (!span.overlaps(shown)) {
            return;
        }
        float from = x(Math.max(span.start_s(), shown.start_s()), shown);
        float to = x(Math.min(span.end_s(), shown.end_s()), shown);
        sheet.canvas().fill(from, top, Math.max(LEAST_BAND_PX, to - from), height, rgba | 0xFF);
    }

    /** What changes with every frame: the loop and the instant shown. */
    void paintNow(Sheet sheet, Board board, Desk desk, Playback playback) {
        Span shown = board.shown(desk);
        Canvas canvas = sheet.canvas();
        canvas.clip(left - sheet.sizes().mm(2), bar.y(), width + sheet.sizes().mm(4), bar.height());
        Optional<Span> loop = playback.loop();
        if (loop.isPresent()) {
            loopEnd(sheet, x(loop.get().start_s(), shown), 1);
            loopEnd(sheet, x(loop.get().end_s(), shown), -1);
        } else if (playback.loopStart_s().isPresent()) {
            loopEnd(sheet, x(playback.loopStart_s().get(), shown), 1);
        }
        float px = x(playback.t_s(), shown);
        float half = sheet.sizes().mm(1.6);
        canvas.line(px, bar.y(), px, bar.bottom(), 2 * sheet.sizes().hair(), sheet.palette().now());
        sheet.triangle(
                px - half,
                bar.y(),
                px + half,
                bar.y(),
                px,
                bar.y() + 1.5f * half,
                sheet.palette().now());
        canvas.unclip();
    }

    /** A bracket at an end of the loop. */
    private void loopEnd(Sheet sheet, float px, int inwards) {
        float foot = inwards * sheet.sizes().mm(1.8);
        float thick = 2 * sheet.sizes().hair();
        int ink = sheet.palette().ink();
        sheet.canvas().line(px, bar.y(), px, bar.bottom(), thick, ink);
        sheet.canvas().line(px, bar.y() + 1, px + foot, bar.y() + 1, thick, ink);
        sheet.canvas().line(px, bar.bottom() - 1, px + foot, bar.bottom() - 1, thick, ink);
    }

    private static final Action[] BEFORE_CLOCK = {
        Action.PREVIOUS_EVENT,
        Action.STEP_BACK,
        Action.PLAY,
        Action.STEP_ON,
        Action.NEXT_EVENT,
        Action.TURN,
        Action.SLOWER,
        Action.REAL_TIME,
        Action.FASTER,
        Action.LOOP
    };

    private static final Action[] AFTER_CLOCK = {
        Action.MARK, Action.UNITS, Action.THEME, Action.STRIPS
    };

    /** The buttons: those left of the clock, the clock, those right of it. */
    void paintButtons(Sheet sheet, Playback playback, Desk desk) {
        sheet.canvas()
                .fill(
                        buttons.x(),
                        buttons.y(),
                        buttons.width(),
                        buttons.height(),
                        sheet.palette().panel());
        float px = buttons.x();
        for (Action action : BEFORE_CLOCK) {
            Rect r = new Rect(px, buttons.y(), buttonWidth, buttons.height());
            boolean on = action == Action.LOOP && loops(playback);
            sheet.buttonFrame(r, action, 0, on);
            icon(sheet, action, r, playback);
            sheet.keyLabel(sheet.keys().label(action), r);
            px += buttonWidth;
        }
        sheet.buttonFrame(clock, Action.TYPE_TIME, 0, false);
        px += clock.width();
        for (Action action : AFTER_CLOCK) {
            Rect r = new Rect(px, buttons.y(), buttonWidth, buttons.height());
            boolean on = action == Action.STRIPS && desk.settings().stripsShare() > 0;
            sheet.button(r, sheet.word("tool." + action.key()), action, 0, on);
            px += buttonWidth;
        }
    }

    private static boolean loops(Playback playback) {
        return playback.loop().isPresent() || playback.loopStart_s().isPresent();
    }

    private float buttonWidth(Sizes sizes) {
        int count = BEFORE_CLOCK.length + AFTER_CLOCK.length;
        float spare = buttons.width() - count * sizes.target() - sizes.mm(50);
        return sizes.target() + Math.max(0, Math.min(sizes.mm(14), spare / count));
    }

    /** A key of what the buttons look like now. */
    static long buttonsKey(Playback playback, Desk desk) {
        long key = Key64.mix(1, playback.isPlaying());
        key = Key64.mix(key, playback.isBackward());
        key = Key64.mix(key, loops(playback));
        key = Key64.mix(key, playback.rate());
        return Key64.mix(key, desk.settings().stripsShare() > 0);
    }

    private void icon(Sheet sheet, Action action, Rect r, Playback playback) {
        float cx = r.x() + r.width() / 2;
        float cy = r.middleY() - sheet.sizes().mm(1.8);
        float s = sheet.sizes().mm(2.4);
        boolean back = playback.isBackward();
        switch (action) {
            case PLAY -> {
                if (playback.isPlaying()) {
                    bar(sheet, cx - 0.55f * s, cy, s);
                    bar(sheet, cx + 0.55f * s, cy, s);
                } else {
                    arrow(sheet, cx, cy, back ? -1.2f * s : 1.2f * s);
                }
            }
            case STEP_ON -> {
                bar(sheet, cx - 0.9f * s, cy, 0.8f * s);
                arrow(sheet, cx + 0.3f * s, cy, 0.8f * s);
            }
            case STEP_BACK -> {
                bar(sheet, cx + 0.9f * s, cy, 0.8f * s);
                arrow(sheet, cx - 0.3f * s, cy, -0.8f * s);
            }
            case NEXT_EVENT -> {
                arrow(sheet, cx - 0.4f * s, cy, 0.8f * s);
                bar(sheet, cx + 0.9f * s, cy, s);
            }
            case PREVIOUS_EVENT -> {
                arrow(sheet, cx + 0.4f * s, cy, -0.8f * s);
                bar(sheet, cx - 0.9f * s, cy, s);
            }
            case TURN -> {
                arrow(sheet, cx - 0.9f * s, cy, -0.7f * s);
                arrow(sheet, cx + 0.9f * s, cy, 0.7f * s);
            }
            case REAL_TIME -> rate(sheet, cx, cy, playback.rate());
            default ->
                    sheet.text(
                            sheet.word("tool." + action.key()),
                            cx,
                            cy,
                            Face.TEXT_BOLD,
                            sheet.sizes().small(),
                            Align.CENTRE);
        }
    }

    private static void rate(Sheet sheet, float cx, float cy, double rate) {
        Line line = sheet.line();
        boolean whole = rate == Math.rint(rate);
        boolean tenths = rate * 10 == Math.rint(rate * 10);
        line.addFixed(rate, whole ? 0 : tenths ? 1 : 2, '.').add(" ×");
        sheet.text(line, cx, cy, Face.FIGURES_BOLD, sheet.sizes().text(), Align.CENTRE);
    }

    private static void arrow(Sheet sheet, float cx, float cy, float s) {
        float h = Math.abs(s);
        sheet.triangle(
                cx - 0.8f * s, cy - h, cx - 0.8f * s, cy + h, cx + s, cy, sheet.palette().ink());
    }

    private static void bar(Sheet sheet, float cx, float cy, float s) {
        sheet.canvas().fill(cx - 0.25f * s, cy - s, 0.5f * s, 2 * s, sheet.palette().ink());
    }

    /** The clock's figures. */
    void paintClock(Sheet sheet, Board board, Playback playback) {
        Line line = sheet.line();
        sheet.figures().addClock(line, board.debrief().axis(), playback.t_s());
        float size = sheet.sizes().figure();
        sheet.text(
                line,
                clock.x() + clock.width() / 2,
                clock.middleY() - sheet.sizes().mm(1.8),
                Face.FIGURES_BOLD,
                size,
                Align.CENTRE);
        sheet.softText(
                hint(sheet, board, clock.width() - sheet.sizes().mm(2)),
                clock.x() + clock.width() / 2,
                clock.bottom() - sheet.sizes().mm(3.2),
                sheet.sizes().mm(2.7),
                Align.CENTRE);
    }

    /**
     * Which attempt it is, in front of what the clock is; only the latter where both are too long.
     */
    private CharSequence hint(Sheet sheet, Board board, float most) {
        Line line = sheet.line().add(board.debrief().attempt().id()).add(" · ");
        line.add(sheet.word("clock.hint"));
        boolean fits = sheet.width(line, Face.TEXT, sheet.sizes().mm(2.7)) <= most;
        return fits ? line : sheet.word("clock.hint");
    }
}
