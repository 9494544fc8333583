package pairdown.panel;

import java.util.List;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.settings.PanelKind;

/** Draws a side panel: its name, as many rows as fit, and two buttons to go through the rest. */
final class RowPainter {
    private static final float HEAD_MM = 9;

    private final Sheet sheet;
    private final Rect area;
    private final float margin;
    private final float text;
    private final float small;

    RowPainter(Sheet sheet, Rect area) {
        this.sheet = sheet;
        this.area = area;
        this.margin = sheet.sizes().mm(2.5);
        this.text = sheet.sizes().text();
        this.small = sheet.sizes().small() * 1.08f;
    }

    /** Paints a panel; the answer is where it ends, from where on another may follow. */
    float paint(PanelKind panel, List<Row> rows, int scroll) {
        sheet.canvas()
                .fill(area.x(), area.y(), area.width(), area.height(), sheet.palette().panel());
        sheet.canvas()
                .line(
                        area.x(),
                        area.y(),
                        area.x(),
                        area.bottom(),
                        2 * sheet.sizes().hair(),
                        sheet.palette().edge());
        sheet.areas().wall(area.x(), area.y(), area.width(), area.height());
        float headHeight = sheet.sizes().mm(HEAD_MM);
        sheet.text(
                sheet.word("panel." + panel.key()),
                area.x() + margin,
                area.y() + headHeight / 2,
                Face.TEXT_BOLD,
                sheet.sizes().heading(),
                Align.LEFT);
        float top = area.y() + headHeight;
        boolean allFit = heightOf(rows) <= area.bottom() - top;
        float bottom = allFit ? area.bottom() : area.bottom() - sheet.sizes().target();
        int first = allFit ? 0 : Math.min(scroll, Math.max(0, rows.size() - 1));
        sheet.canvas().clip(area.x(), top, area.width(), bottom - top);
        float y = top;
        int whole = 0;
        for (int i = first; i < rows.size() && y < bottom; i++) {
            y = paint(rows.get(i), y, bottom);
            whole += y <= bottom ? 1 : 0;
        }
        sheet.canvas().unclip();
        if (!allFit) {
            paging(first, Math.max(1, whole), rows.size());
        }
        return allFit ? y : area.bottom();
    }

    /** Two buttons that go on by what is shown. */
    private void paging(int first, int shown, int count) {
        float side = sheet.sizes().target();
        float half = area.width() / 2;
        float y = area.bottom() - side;
        sheet.button(
                new Rect(area.x(), y, half, side),
                sheet.word("panel.up"),
                Action.PANEL_UP,
                shown,
                first > 0);
        sheet.button(
                new Rect(area.x() + half, y, half, side),
                sheet.words()
                        .get(
                                "panel.down",
                                (first + 1) + "–" + Math.min(count, first + shown) + " / " + count),
                Action.PANEL_DOWN,
                shown,
                first + shown < count);
    }

    /** How many of the rows fit whole. */
    int fitting(List<Row> rows) {
        float free = area.height() - sheet.sizes().mm(HEAD_MM);
        int fit = 0;
        while (fit < rows.size() && free >= height(rows.get(fit))) {
            free -= height(rows.get(fit));
            fit++;
        }
        return fit;
    }

    private float heightOf(List<Row> rows) {
        float sum = 0;
        for (Row row : rows) {
            sum += height(row);
        }
        return sum;
    }

    private float textWidth(Row row) {
        return area.width() - 2 * margin - asideWidth(row);
    }

    private float asideWidth(Row row) {
        return row.aside().isPresent() ? sheet.sizes().target() + sheet.sizes().gap() : 0;
    }

    /** Of several sentences each begins at a point, or nobody sees where one ends. */
    private float indent(Row row) {
        return row.lines().size() > 1 ? sheet.sizes().mm(2.6) : 0;
    }

    private boolean hasHead(Row row) {
        return !row.left().isEmpty() || !row.right().isEmpty();
    }

    private float height(Row row) {
        float h = sheet.sizes().mm(2.2);
        if (hasHead(row)) {
            h += sheet.leading(text);
        }
        int cellLines = (row.cells().size() + 1) / 2;
        h += cellLines * sheet.leading(small);
        h += row.picture().map(p -> sheet.sizes().mm(p.height_mm())).orElse(0f);
        for (String line : row.lines()) {
            h +=
                    sheet.wrapped(line, Face.TEXT, small, textWidth(row) - indent(row)).size()
                            * sheet.leading(small);
        }
        return row.command().isPresent() ? Math.max(h, sheet.sizes().target()) : h;
    }

    private float paint(Row row, float top, float limit) {
        float height = height(row);
        row.command().ifPresent(command -> ground(row, command, top, height, limit));
        row.aside().ifPresent(other -> aside(other, top, height, limit));
        float content = height;
        float y = top + sheet.sizes().mm(1.1);
        boolean lone = row.cells().isEmpty() && row.lines().isEmpty();
        if (lone && row.command().isPresent()) {
            y = top + (content - sheet.leading(text)) / 2;
        }
        if (hasHead(row)) {
            head(row, y + sheet.leading(text) / 2);
            y += sheet.leading(text);
        }
        y = cells(row, y);
        if (row.picture().isPresent()) {
            Row.Picture picture = row.picture().get();
            float side = sheet.sizes().mm(picture.height_mm());
            picture.paint(sheet, new Rect(area.x() + margin, y, textWidth(row), side));
            y += side;
        }
        for (String line : row.lines()) {
            if (indent(row) > 0) {
                float middle = y + sheet.leading(small) / 2;
                sheet.softText("•", area.x() + margin, middle, small, Align.LEFT);
            }
            y =
                    sheet.paragraph(
                            line,
                            area.x() + margin + indent(row),
                            y,
                            textWidth(row) - indent(row),
                            Face.TEXT,
                            small,
                            sheet.palette().inkSoft());
        }
        return top + height;
    }

    private void aside(Row.Aside other, float top, float height, float limit) {
        float side = sheet.sizes().target();
        // A button cut off by the panel's end would be too thin to press.
        if (top + height <= limit) {
            Rect r = new Rect(area.right() - margin / 2 - side, top, side, height);
            sheet.button(
                    r,
                    other.label(),
                    other.command().action(),
                    other.command().value(),
                    other.isOn());
        }
    }

    private void ground(Row row, Command command, float top, float height, float limit) {
        float gap = sheet.sizes().hair();
        float width = area.width() - margin - asideWidth(row);
        sheet.canvas()
                .roundFill(
                        area.x() + margin / 2,
                        top + gap,
                        width,
                        height - 2 * gap,
                        sheet.sizes().mm(1.2),
                        row.isOn() ? sheet.palette().chosen() : sheet.palette().control());
        if (row.isOn()) {
            sheet.canvas()
                    .outline(
                            area.x() + margin / 2,
                            top + gap,
                            width,
                            height - 2 * gap,
                            sheet.sizes().mm(1.2),
                            2 * gap,
                            sheet.palette().ink());
        }
        // A row cut off by the panel's end is seen but not pressed: it would be too thin.
        if (top + height <= limit) {
            sheet.areas()
                    .button(
                            area.x() + margin / 2,
                            top,
                            width,
                            height,
                            command.action(),
                            command.value());
        }
    }

    private void head(Row row, float middle) {
        float x = area.x() + margin;
        if (row.number() >= 0) {
            float r = sheet.sizes().marker() * 1.3f;
            sheet.marker(row.number(), x + r, middle, r);
            x += 2 * r + sheet.sizes().mm(1.5);
        }
        Face face = row.isStrong() ? Face.TEXT_BOLD : Face.TEXT;
        float right = sheet.width(row.right(), Face.TEXT_BOLD, text);
        float end = area.right() - margin - asideWidth(row);
        float room = end - right - sheet.sizes().mm(1) - x;
        sheet.text(sheet.fitting(row.left(), face, text, room), x, middle, face, text, Align.LEFT);
        sheet.text(row.right(), end, middle, Face.TEXT_BOLD, text, Align.RIGHT);
    }

    private float cells(Row row, float top) {
        float y = top;
        float half = textWidth(row) / 2;
        for (int i = 0; i < row.cells().size(); i += 2) {
            cell(row.cells().get(i), area.x() + margin, y, half - sheet.sizes().mm(1.5));
            if (i + 1 < row.cells().size()) {
                cell(row.cells().get(i + 1), area.x() + margin + half, y, half);
            }
            y += sheet.leading(small);
        }
        return y;
    }

    private void cell(Row.Cell cell, float x, float top, float width) {
        float middle = top + sheet.leading(small) / 2;
        // Words are not figures and would be too wide in their face.
        boolean isWord = !cell.figure().isEmpty() && Character.isLetter(cell.figure().charAt(0));
        Face face = isWord ? Face.TEXT_BOLD : Face.FIGURES_BOLD;
        float figure = sheet.width(cell.figure(), face, small);
        String name =
                sheet.fitting(
                        cell.name(), Face.TEXT, small, width - figure - sheet.sizes().mm(0.8));
        sheet.softText(name, x, middle, small, Align.LEFT);
        sheet.text(
                sheet.fitting(cell.figure(), face, small, width),
                x + width,
                middle,
                face,
                small,
                Align.RIGHT);
    }
}
