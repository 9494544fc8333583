package pairdown.panel;

import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.words.Line;

/** The field of a small chart on a side panel, with round numbers along its edges. */
final class PanelPlot {
    private static final float LEFT_MM = 13;
    private static final float FOOT_MM = 6;
    private static final float HEAD_MM = 6;

    private final Sheet sheet;
    private final Rect field;

    PanelPlot(Sheet sheet, Rect area) {
        this.sheet = sheet;
        float left = area.x() + sheet.sizes().mm(LEFT_MM);
        float top = area.y() + sheet.sizes().mm(HEAD_MM);
        float bottom = area.bottom() - sheet.sizes().mm(FOOT_MM);
        this.field = new Rect(left, top, area.right() - left, bottom - top);
    }

    Rect field() {
        return field;
    }

    /** The paper it is drawn on, and what the upright axis is, over its upper end. */
    void ground(String upright) {
        sheet.canvas()
                .fill(field.x(), field.y(), field.width(), field.height(), sheet.palette().paper());
        sheet.softText(
                upright,
                field.x() - sheet.sizes().mm(LEFT_MM - 1),
                field.y() - sheet.sizes().mm(HEAD_MM) / 2,
                sheet.sizes().small(),
                Align.LEFT);
    }

    /** What the level axis is, at its right end over the field. */
    void level(String name) {
        sheet.softText(
                name,
                field.right(),
                field.y() - sheet.sizes().mm(HEAD_MM) / 2,
                sheet.sizes().small(),
                Align.RIGHT);
    }

    /** A grid line across with its number. */
    void across(float y, double shown) {
        sheet.canvas().line(field.x(), y, field.right(), y, 1, sheet.palette().grid());
        number(shown, field.x() - sheet.sizes().mm(1), y, Align.RIGHT);
    }

    /** A grid line down with its number. */
    void down(float x, double shown) {
        sheet.canvas().line(x, field.y(), x, field.bottom(), 1, sheet.palette().grid());
        number(shown, x, field.bottom() + sheet.sizes().mm(3), Align.CENTRE);
    }

    private void number(double shown, float x, float middleY, Align align) {
        int decimals = shown == Math.rint(shown) ? 0 : 1;
        Line line = sheet.figures().addPlain(sheet.line(), shown, decimals);
        sheet.text(
                line,
                x,
                middleY,
                Face.FIGURES,
                sheet.sizes().small(),
                align,
                sheet.palette().inkSoft());
    }

    /** A round step that divides a length in about so many. */
    static double step(double length, int parts) {
        double rough = length / parts;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double lead = rough / power;
        return power * (lead <= 1.3 ? 1 : lead <= 2.8 ? 2 : lead <= 6.5 ? 5 : 10);
    }
}
