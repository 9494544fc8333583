package pairdown.gl;

/**
 * Flat drawing, a dozen verbs. Places are pixels from the top left, y downwards; colours are red,
 * green, blue, opacity from the top byte down. Verbs allocate nothing.
 */
public interface Canvas {
    /** The faces of the letters. Figures have one width each in the last two. */
    enum Face {
        TEXT,
        TEXT_BOLD,
        FIGURES,
        FIGURES_BOLD
    }

    /** Which part of a text stands at its place. */
    enum Align {
        LEFT,
        CENTRE,
        RIGHT
    }

    void fill(float x, float y, float width, float height, int rgba);

    void roundFill(float x, float y, float width, float height, float radius, int rgba);

    /** An edge lying inside the rectangle. */
    void outline(
            float x, float y, float width, float height, float radius, float thickness, int rgba);

    void line(float x0, float y0, float x1, float y1, float thickness, int rgba);

    /** An open line through {@code count} points, x and y in turn. */
    void polyline(float[] xy, int count, float thickness, int rgba);

    /** A filled shape round {@code count} points, x and y in turn, without holes. */
    void polygon(float[] xy, int count, int rgba);

    void disc(float x, float y, float radius, int rgba);

    /** Text on one line; {@code baseline} is where its letters stand. */
    void text(
            CharSequence text,
            float x,
            float baseline,
            Face face,
            float size,
            Align align,
            int rgba);

    /** The width a text takes. */
    float textWidth(CharSequence text, Face face, float size);

    /** Keeps drawing inside a rectangle, and inside earlier ones, until {@link #unclip}. */
    void clip(float x, float y, float width, float height);

    void unclip();

    /**
     * Begins a picture that is kept: where the one kept under {@code slot} has this key, size and
     * place, it is shown again and the answer is false; else what is drawn until {@link
     * #endPicture} makes it anew. The key must differ whenever the drawing would. Not inside
     * another picture or a clip.
     *
     * @param slot small and not negative
     */
    boolean beginPicture(int slot, long key, float x, float y, float width, float height);

    /** Ends what {@link #beginPicture} began by answering true, and shows it. */
    void endPicture();
}
