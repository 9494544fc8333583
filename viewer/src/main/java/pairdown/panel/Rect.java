package pairdown.panel;

/** A rectangle of the window, in pixels from its top left. */
public record Rect(float x, float y, float width, float height) {
    public float right() {
        return x + width;
    }

    public float bottom() {
        return y + height;
    }

    float middleY() {
        return y + height / 2;
    }

    boolean contains(double px, double py) {
        return px >= x && px < right() && py >= y && py < bottom();
    }
}
