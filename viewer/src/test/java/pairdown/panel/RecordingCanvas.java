package pairdown.panel;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import pairdown.gl.Canvas;

/** A canvas that keeps what is asked of it; text is as wide as in the fonts that are shipped. */
final class RecordingCanvas implements Canvas {
    /** A text and the box its letters take. */
    record Text(String text, float left, float right, float baseline, float size, int rgba) {}

    /** A stroke of many points. */
    record Stroke(int points, int rgba) {}

    /** A straight stroke. */
    record Straight(float x0, float y0, float x1, float y1, int rgba) {}

    private static final FontRenderContext RENDERING = new FontRenderContext(null, true, true);
    private static final Map<Face, Font> FONTS = fonts();

    final List<Text> texts = new ArrayList<>();
    final List<Stroke> strokes = new ArrayList<>();
    final List<Straight> lines = new ArrayList<>();
    final List<float[]> rounds = new ArrayList<>();
    final List<float[]> discs = new ArrayList<>();
    final List<Integer> painted = new ArrayList<>();
    final List<float[]> fills = new ArrayList<>();
    private final Map<Integer, Long> keys = new java.util.HashMap<>();

    private static Map<Face, Font> fonts() {
        Map<Face, Font> fonts = new EnumMap<>(Face.class);
        fonts.put(Face.TEXT, font("Inter-Regular"));
        fonts.put(Face.TEXT_BOLD, font("Inter-SemiBold"));
        fonts.put(Face.FIGURES, font("JetBrainsMono-Regular"));
        fonts.put(Face.FIGURES_BOLD, font("JetBrainsMono-Bold"));
        return fonts;
    }

    private static Font font(String name) {
        try (InputStream in =
                Objects.requireNonNull(
                        Canvas.class.getResourceAsStream("/fonts/" + name + ".ttf"))) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void fill(float x, float y, float width, float height, int rgba) {
        fills.add(new float[] {x, y, width, height});
    }

    @Override
    public void roundFill(float x, float y, float width, float height, float radius, int rgba) {
        fills.add(new float[] {x, y, width, height});
    }

    @Override
    public void outline(
            float x, float y, float w, float h, float radius, float thickness, int rgba) {}

    @Override
    public void line(float x0, float y0, float x1, float y1, float thickness, int rgba) {
        lines.add(new Straight(x0, y0, x1, y1, rgba));
    }

    @Override
    public void polyline(float[] xy, int count, float thickness, int rgba) {
        strokes.add(new Stroke(count, rgba));
        rounds.add(Arrays.copyOf(xy, 2 * count));
    }

    @Override
    public void polygon(float[] xy, int count, int rgba) {}

    @Override
    public void disc(float x, float y, float radius, int rgba) {
        discs.add(new float[] {x, y});
    }

    @Override
    public void text(
            CharSequence text,
            float x,
            float baseline,
            Face face,
            float size,
            Align align,
            int rgba) {
        float width = textWidth(text, face, size);
        float left =
                switch (align) {
                    case LEFT -> x;
                    case CENTRE -> x - width / 2;
                    case RIGHT -> x - width;
                };
        texts.add(new Text(text.toString(), left, left + width, baseline, size, rgba));
    }

    @Override
    public float textWidth(CharSequence text, Face face, float size) {
        Font font = Objects.requireNonNull(FONTS.get(face)).deriveFont(size);
        return (float) font.getStringBounds(text.toString(), RENDERING).getWidth();
    }

    @Override
    public void clip(float x, float y, float width, float height) {}

    @Override
    public void unclip() {}

    @Override
    public boolean beginPicture(int slot, long key, float x, float y, float width, float height) {
        Long before = keys.put(slot, key);
        boolean stale = before == null || before != key;
        if (stale) {
            painted.add(slot);
        }
        return stale;
    }

    @Override
    public void endPicture() {}

    boolean says(String part) {
        return texts.stream().anyMatch(t -> t.text().contains(part));
    }
}
