package pairdown.panel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pairdown.gl.Canvas;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.input.Action;
import pairdown.replay.Desk;

/** What lies over everything for a while: start panel, list of keys, questions, notices. */
final class Overlays {
    private static final int HELP_COLUMNS = 4;

    private static final float MESSAGE_MM = 190;

    /** A narrower message has no room for a sentence beside its buttons. */
    private static final float LEAST_MESSAGE_MM = 90;

    private final Sheet sheet;
    private final Rect whole;

    Overlays(Sheet sheet, Rect whole) {
        this.sheet = sheet;
        this.whole = whole;
    }

    /** What one can do first, what was opened before, and the cautions. */
    void paintStart(Desk desk) {
        sheet.areas().wall(whole.x(), whole.y(), whole.width(), whole.height());
        sheet.canvas()
                .fill(whole.x(), whole.y(), whole.width(), whole.height(), sheet.palette().paper());
        float margin = sheet.sizes().mm(9);
        float left = whole.x() + margin;
        float columnWidth = (whole.width() - 3 * margin) / 2;
        float y = whole.y() + margin;
        sheet.text(
                sheet.word("app.name"), left, y, Face.TEXT_BOLD, sheet.sizes().mm(8.5), Align.LEFT);
        y =
                sheet.paragraph(
                        sheet.word("app.sentence"),
                        left,
                        y + sheet.sizes().mm(6),
                        columnWidth,
                        Face.TEXT,
                        sheet.sizes().text(),
                        sheet.palette().inkSoft());
        y += sheet.sizes().mm(3);
        float side = sheet.sizes().mm(16);
        startButton(left, y, columnWidth, side, "start.open", Action.OPEN);
        y += side + sheet.sizes().mm(2);
        startButton(left, y, columnWidth, side, "start.path", Action.OPEN_PATH);
        y += side + sheet.sizes().mm(2);
        sheet.softText(
                sheet.word("start.drop"),
                left,
                y + sheet.sizes().mm(2),
                sheet.sizes().text(),
                Align.LEFT);
        y += sheet.sizes().mm(7);
        recent(desk, left, y, columnWidth);
        cautions(left + columnWidth + margin, whole.y() + margin, columnWidth);
    }

    private void startButton(
            float x, float y, float width, float height, String text, Action action) {
        Rect r = new Rect(x, y, width, height);
        sheet.buttonFrame(r, action, 0, false);
        sheet.text(
                sheet.word(text),
                x + sheet.sizes().mm(4),
                r.middleY(),
                Face.TEXT_BOLD,
                sheet.sizes().text(),
                Align.LEFT);
        sheet.softText(
                sheet.keys().label(action),
                r.right() - sheet.sizes().mm(4),
                r.middleY(),
                sheet.sizes().small(),
                Align.RIGHT);
    }

    private void recent(Desk desk, float left, float top, float width) {
        List<String> folders = desk.settings().recent();
        if (folders.isEmpty()) {
            return;
        }
        sheet.text(
                sheet.word("start.recent"),
                left,
                top + sheet.sizes().mm(2),
                Face.TEXT_BOLD,
                sheet.sizes().text(),
                Align.LEFT);
        float side = sheet.sizes().target();
        float y = top + sheet.sizes().mm(6);
        for (int i = 0;
                i < folders.size() && y + side < whole.bottom() - sheet.sizes().mm(4);
                i++) {
            Rect r = new Rect(left, y, width, side);
            sheet.buttonFrame(r, Action.OPEN_RECENT, i, false);
            float text = sheet.sizes().text();
            sheet.text(
                    tail(folders.get(i), width - sheet.sizes().mm(8), text),
                    left + sheet.sizes().mm(4),
                    r.middleY(),
                    Face.TEXT,
                    text,
                    Align.LEFT);
            y += side + sheet.sizes().mm(1);
        }
    }

    /** The end of a path tells more than its beginning. */
    private String tail(String path, float most, float size) {
        int from = 0;
        while (from < path.length()
                && sheet.width("…" + path.substring(from), Face.TEXT, size) > most) {
            from++;
        }
        return from == 0 ? path : "…" + path.substring(from);
    }

    private void cautions(float left, float top, float width) {
        float y = top;
        sheet.text(
                sheet.word("start.cautions"),
                left,
                y,
                Face.TEXT_BOLD,
                sheet.sizes().heading(),
                Align.LEFT);
        y += sheet.sizes().mm(5);
        int count = Integer.parseInt(sheet.word("caution.count"));
        for (int i = 1; i <= count; i++) {
            y =
                    sheet.paragraph(
                                    sheet.word("caution." + i),
                                    left,
                                    y,
                                    width,
                                    Face.TEXT,
                                    sheet.sizes().text() * 1.12f,
                                    sheet.palette().ink())
                            + sheet.sizes().mm(2.5);
        }
    }

    /** Every action with its key, by group, in columns. */
    void paintHelp() {
        sheet.areas().button(0, 0, whole.width(), whole.height(), Action.HELP);
        sheet.canvas()
                .fill(whole.x(), whole.y(), whole.width(), whole.height(), sheet.palette().paper());
        List<Entry> entries = entries();
        int rows = (entries.size() + HELP_COLUMNS - 1) / HELP_COLUMNS;
        float margin = sheet.sizes().mm(4);
        float column = (whole.width() - 2 * margin) / HELP_COLUMNS;
        float pitch = (whole.height() - sheet.sizes().mm(12)) / rows;
        float size = Math.min(sheet.sizes().text(), pitch * 0.78f);
        sheet.text(
                sheet.word("help.title"),
                margin,
                sheet.sizes().mm(5),
                Face.TEXT_BOLD,
                sheet.sizes().heading(),
                Align.LEFT);
        sheet.softText(
                sheet.word("help.close"),
                whole.width() - margin,
                sheet.sizes().mm(5),
                sheet.sizes().text(),
                Align.RIGHT);
        for (int i = 0; i < entries.size(); i++) {
            int at = i / rows;
            float x = margin + at * column;
            float y = sheet.sizes().mm(10) + (i % rows + 0.5f) * pitch;
            entry(entries.get(i), x, y, column, size);
        }
    }

    private record Entry(String text, String key) {}

    private List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (Action.Group group : Action.Group.values()) {
            if (group == Action.Group.POINTED) {
                continue;
            }
            entries.add(new Entry(sheet.word("group." + group.key()), ""));
            Arrays.stream(Action.values())
                    .filter(a -> a.group() == group)
                    .forEach(
                            a ->
                                    entries.add(
                                            new Entry(
                                                    sheet.word("action." + a.key()),
                                                    sheet.keys().label(a))));
        }
        return entries;
    }

    private void entry(Entry entry, float x, float y, float column, float size) {
        if (entry.key().isEmpty()) {
            sheet.text(entry.text(), x, y, Face.TEXT_BOLD, size, Align.LEFT);
            return;
        }
        float keyWidth = sheet.sizes().mm(24);
        sheet.text(
                entry.key(),
                x + keyWidth - sheet.sizes().mm(2),
                y,
                Face.TEXT_BOLD,
                size * 0.94f,
                Align.RIGHT);
        sheet.softText(
                sheet.fitting(
                        entry.text(), Face.TEXT, size, column - keyWidth - sheet.sizes().mm(1)),
                x + keyWidth,
                y,
                size,
                Align.LEFT);
    }

    /**
     * A question with what is typed, a notice, or what is going on, a few at once: over what the
     * start panel leaves free, whose cautions stay readable.
     */
    void paintMessages(Desk desk) {
        float width = Math.min(whole.width() * 0.62f, sheet.sizes().mm(MESSAGE_MM));
        paintMessages(desk, (whole.width() - width) / 2, 0.56f * whole.height(), width);
    }

    /**
     * Over the scene and nothing else: read-out and side panel stay to be read.
     *
     * @param corner what the read-out takes of its width
     */
    void paintMessages(Desk desk, Rect scene, float corner) {
        float gap = sheet.sizes().gap();
        float least = Math.min(whole.width() - 2 * gap, sheet.sizes().mm(LEAST_MESSAGE_MM));
        float room = Math.max(least, scene.width() - corner - 2 * gap);
        float width = Math.min(room, sheet.sizes().mm(MESSAGE_MM));
        float x = Math.min(scene.x() + corner + gap, whole.width() - width - gap);
        paintMessages(desk, x, scene.y() + gap, width);
    }

    private void paintMessages(Desk desk, float x, float top, float width) {
        float y = top;
        if (desk.progress().isPresent()) {
            y = progress(desk.progress().get(), x, y, width);
        }
        if (desk.notice().isPresent()) {
            y = notice(desk.notice().get(), x, y, width);
        }
        if (desk.asking() != Desk.Asking.NOTHING) {
            question(desk, x, y, width);
        }
    }

    private void card(float x, float y, float width, float height) {
        sheet.canvas()
                .roundFill(x, y, width, height, sheet.sizes().mm(1.6), sheet.palette().paper());
        sheet.canvas()
                .outline(
                        x,
                        y,
                        width,
                        height,
                        sheet.sizes().mm(1.6),
                        2 * sheet.sizes().hair(),
                        sheet.palette().ink());
        sheet.areas().wall(x, y, width, height);
    }

    private float progress(Desk.Progress progress, float x, float y, float width) {
        float height = sheet.sizes().mm(15);
        card(x, y, width, height);
        float pad = sheet.sizes().mm(4);
        sheet.text(
                sheet.fitting(progress.what(), Face.TEXT, sheet.sizes().text(), width - 2 * pad),
                x + pad,
                y + sheet.sizes().mm(5),
                Face.TEXT,
                sheet.sizes().text(),
                Align.LEFT);
        float barY = y + sheet.sizes().mm(9.5);
        float barHeight = sheet.sizes().mm(2.6);
        sheet.canvas().fill(x + pad, barY, width - 2 * pad, barHeight, sheet.palette().control());
        double share = Double.isNaN(progress.share()) ? 0.5 : progress.share();
        sheet.canvas()
                .fill(
                        x + pad,
                        barY,
                        (float) ((width - 2 * pad) * share),
                        barHeight,
                        sheet.palette().ink());
        return y + height + sheet.sizes().gap();
    }

    private float notice(Desk.Notice notice, float x, float y, float width) {
        float pad = sheet.sizes().mm(4);
        float text = sheet.sizes().text();
        float side = sheet.sizes().target();
        List<String> lines = sheet.wrapped(notice.text(), Face.TEXT, text, width - 2 * pad - side);
        float head = sheet.sizes().mm(7);
        float inset = sheet.sizes().gap() / 2;
        float height = Math.max(side + 2 * inset, head + lines.size() * sheet.leading(text) + pad);
        card(x, y, width, height);
        sheet.text(
                sheet.word(notice.isProblem() ? "notice.problem" : "notice.note"),
                x + pad,
                y + sheet.sizes().mm(4.5),
                Face.TEXT_BOLD,
                text,
                Align.LEFT);
        float lineY = y + head;
        for (String line : lines) {
            sheet.text(line, x + pad, lineY + sheet.leading(text) / 2, Face.TEXT, text, Align.LEFT);
            lineY += sheet.leading(text);
        }
        sheet.button(
                new Rect(x + width - side - inset, y + inset, side, side),
                sheet.word("notice.close"),
                Action.CANCEL,
                0,
                false);
        return y + height + sheet.sizes().gap();
    }

    private void question(Desk desk, float x, float y, float width) {
        float side = sheet.sizes().target();
        float height = sheet.sizes().mm(14) + side;
        card(x, y, width, height);
        float pad = sheet.sizes().mm(4);
        sheet.text(
                sheet.fitting(
                        sheet.word(asked(desk)),
                        Face.TEXT_BOLD,
                        sheet.sizes().text(),
                        width - 2 * pad),
                x + pad,
                y + sheet.sizes().mm(5),
                Face.TEXT_BOLD,
                sheet.sizes().text(),
                Align.LEFT);
        float fieldY = y + sheet.sizes().mm(10);
        float fieldWidth = width - 2 * pad - 2 * side - sheet.sizes().mm(2);
        field(desk.typed() + "▏", new Rect(x + pad, fieldY, fieldWidth, side));
        float buttonX = x + width - pad - 2 * side;
        sheet.button(
                new Rect(buttonX, fieldY, side, side),
                sheet.word("ask.accept"),
                Action.ACCEPT,
                0,
                true);
        sheet.button(
                new Rect(buttonX + side, fieldY, side, side),
                sheet.word("ask.cancel"),
                Action.CANCEL,
                0,
                false);
    }

    private static String asked(Desk desk) {
        return switch (desk.asking()) {
            case TIME -> "ask.time";
            case NOTE -> "ask.note";
            case GAP -> "ask.gap";
            case PATH, NOTHING -> "ask.path";
        };
    }

    /** A text being typed; of one too long for its field the end shows. */
    private void field(String typed, Rect field) {
        Canvas canvas = sheet.canvas();
        canvas.fill(field.x(), field.y(), field.width(), field.height(), sheet.palette().control());
        canvas.outline(
                field.x(),
                field.y(),
                field.width(),
                field.height(),
                0,
                2 * sheet.sizes().hair(),
                sheet.palette().ink());
        float inset = sheet.sizes().mm(2);
        float size = sheet.sizes().figure() * 0.8f;
        boolean tooWide = sheet.width(typed, Face.FIGURES, size) > field.width() - 4 * inset;
        canvas.clip(field.x(), field.y(), field.width(), field.height());
        sheet.text(
                typed,
                tooWide ? field.right() - 2 * inset : field.x() + inset,
                field.y() + field.height() / 2,
                Face.FIGURES,
                size,
                tooWide ? Align.RIGHT : Align.LEFT);
        canvas.unclip();
    }
}
