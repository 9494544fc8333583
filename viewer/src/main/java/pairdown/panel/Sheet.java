package pairdown.panel;

import java.util.ArrayList;
import java.util.List;
import pairdown.gl.Canvas;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.input.Action;
import pairdown.input.HitAreas;
import pairdown.input.Keymap;
import pairdown.theme.Marker;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Line;
import pairdown.words.Words;

/**
 * What panels draw with: the canvas, the looks, the texts, and the list of what can be pressed. A
 * few shapes that many panels share are here.
 */
final class Sheet {
    /** Half the height of capitals, as a share of the size, in both families of faces. */
    private static final float HALF_CAPITAL = 0.364f;

    /** A wrapped text's lines are this far apart, in sizes. */
    private static final float LEADING = 1.35f;

    private final Canvas canvas;
    private final Theme theme;
    private final HitAreas areas;
    private final Words words;
    private final Figures figures;
    private final Keymap keys;
    private final Line line = new Line();
    private final float[] corners = new float[8];

    Sheet(Canvas canvas, Theme theme, HitAreas areas, Words words, Figures figures, Keymap keys) {
        this.canvas = canvas;
        this.theme = theme;
        this.areas = areas;
        this.words = words;
        this.figures = figures;
        this.keys = keys;
    }

    Canvas canvas() {
        return canvas;
    }

    Palette palette() {
        return theme.palette();
    }

    Sizes sizes() {
        return theme.sizes();
    }

    HitAreas areas() {
        return areas;
    }

    Words words() {
        return words;
    }

    String word(String key) {
        return words.get(key);
    }

    Figures figures() {
        return figures;
    }

    Keymap keys() {
        return keys;
    }

    /** The one line for text made each frame, emptied. */
    Line line() {
        return line.clear();
    }

    /** What stands in that line. */
    Line written() {
        return line;
    }

    /** Text whose capitals are centred on {@code middleY}. */
    void text(CharSequence text, float x, float middleY, Face face, float size, Align align) {
        text(text, x, middleY, face, size, align, palette().ink());
    }

    void softText(CharSequence text, float x, float middleY, float size, Align align) {
        text(text, x, middleY, Face.TEXT, size, align, palette().inkSoft());
    }

    void text(
            CharSequence text,
            float x,
            float middleY,
            Face face,
            float size,
            Align align,
            int rgba) {
        canvas.text(text, x, middleY + HALF_CAPITAL * size, face, size, align, rgba);
    }

    float width(CharSequence text, Face face, float size) {
        return canvas.textWidth(text, face, size);
    }

    /** The text, cut with an ellipsis where it is wider than {@code most}. */
    String fitting(String text, Face face, float size, float most) {
        if (width(text, face, size) <= most) {
            return text;
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end) + "…", face, size) > most) {
            end--;
        }
        return text.substring(0, end).strip() + "…";
    }

    /** A text in lines no wider than {@code most}; a word wider than that stays whole. */
    List<String> wrapped(String text, Face face, float size, float most) {
        List<String> lines = new ArrayList<>();
        StringBuilder current = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = current.isEmpty() ? word : current + " " + word;
            if (!current.isEmpty() && width(longer, face, size) > most) {
                lines.add(current.toString());
                current.setLength(0);
                current.append(word);
            } else {
                current.setLength(0);
                current.append(longer);
            }
        }
        lines.add(current.toString());
        return lines;
    }

    float leading(float size) {
        return LEADING * size;
    }

    /** A paragraph from {@code top} on; the answer is where it ends. */
    float paragraph(String text, float x, float top, float most, Face face, float size, int rgba) {
        float y = top;
        for (String part : wrapped(text, face, size, most)) {
            text(part, x, y + leading(size) / 2, face, size, Align.LEFT, rgba);
            y += leading(size);
        }
        return y;
    }

    /** A button with a text and its key under it. */
    void button(Rect r, String label, Action action, double value, boolean isOn) {
        buttonFrame(r, action, value, isOn);
        String key = keys.label(action);
        float size = sizes().small();
        float shift = key.isEmpty() ? 0 : sizes().mm(2);
        text(
                fitting(label, Face.TEXT_BOLD, size, r.width() - sizes().mm(1)),
                r.x() + r.width() / 2,
                r.middleY() - shift,
                Face.TEXT_BOLD,
                size,
                Align.CENTRE);
        keyLabel(key, r);
    }

    /** The key's name at the foot of a button. */
    void keyLabel(String key, Rect r) {
        if (!key.isEmpty()) {
            softText(
                    key,
                    r.x() + r.width() / 2,
                    Math.min(r.bottom() - sizes().mm(3.2), r.middleY() + sizes().mm(4.8)),
                    sizes().mm(2.7),
                    Align.CENTRE);
        }
    }

    /** A button's ground and edge, and the area that answers. */
    void buttonFrame(Rect r, Action action, double value, boolean isOn) {
        float hair = sizes().hair();
        canvas.roundFill(
                r.x() + hair,
                r.y() + hair,
                r.width() - 2 * hair,
                r.height() - 2 * hair,
                sizes().mm(1.2),
                isOn ? palette().chosen() : palette().control());
        canvas.outline(
                r.x() + hair,
                r.y() + hair,
                r.width() - 2 * hair,
                r.height() - 2 * hair,
                sizes().mm(1.2),
                isOn ? 2.5f * hair : hair,
                isOn ? palette().ink() : palette().edge());
        areas.button(r.x(), r.y(), r.width(), r.height(), action, value);
    }

    /** The shape that stands for a participant. */
    void marker(int number, float x, float y, float radius) {
        marker(Marker.of(number), palette().participant(number), x, y, radius);
    }

    private void marker(Marker shape, int rgba, float x, float y, float r) {
        switch (shape) {
            case DISC -> canvas.disc(x, y, r, rgba);
            case SQUARE -> canvas.fill(x - 0.9f * r, y - 0.9f * r, 1.8f * r, 1.8f * r, rgba);
            case TRIANGLE -> triangle(x - r, y + 0.8f * r, x + r, y + 0.8f * r, x, y - r, rgba);
            case POINT_DOWN -> triangle(x - r, y - 0.8f * r, x + r, y - 0.8f * r, x, y + r, rgba);
            case DIAMOND -> {
                corner(0, x, y - 1.2f * r);
                corner(1, x + 1.2f * r, y);
                corner(2, x, y + 1.2f * r);
                corner(3, x - 1.2f * r, y);
                canvas.polygon(corners, 4, rgba);
            }
            case CROSS -> {
                canvas.line(x - r, y - r, x + r, y + r, 0.6f * r, rgba);
                canvas.line(x - r, y + r, x + r, y - r, 0.6f * r, rgba);
            }
            case RING -> canvas.outline(x - r, y - r, 2 * r, 2 * r, r, 0.5f * r, rgba);
            case BAR -> canvas.fill(x - r, y - 0.4f * r, 2 * r, 0.8f * r, rgba);
        }
    }

    void triangle(float x0, float y0, float x1, float y1, float x2, float y2, int rgba) {
        corner(0, x0, y0);
        corner(1, x1, y1);
        corner(2, x2, y2);
        canvas.polygon(corners, 3, rgba);
    }

    private void corner(int i, float x, float y) {
        corners[2 * i] = x;
        corners[2 * i + 1] = y;
    }

    /** An upright line in dashes: what may be, not what is. */
    void dashedDown(float x, float top, float bottom, int rgba) {
        float dash = sizes().mm(1.4);
        for (float y = top; y < bottom; y += 2 * dash) {
            canvas.line(x, y, x, Math.min(bottom, y + dash), sizes().hair(), rgba);
        }
    }

    /** A level line in dashes. */
    void dashedAcross(float left, float right, float y, float thickness, int rgba) {
        float dash = sizes().mm(1.8);
        for (float x = left; x < right; x += 2 * dash) {
            canvas.line(x, y, Math.min(right, x + dash), y, thickness, rgba);
        }
    }
}
