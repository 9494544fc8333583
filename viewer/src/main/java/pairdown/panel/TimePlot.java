package pairdown.panel;

/** Where instants lie on the strips. */
record TimePlot(float left, float width) {
    /**
     * The place of an instant where {@code from_s} is at the left edge and {@code to_s} at the
     * right.
     */
    float x(double t_s, double from_s, double to_s) {
        return left + (float) ((t_s - from_s) / (to_s - from_s) * width);
    }

    float right() {
        return left + width;
    }
}
