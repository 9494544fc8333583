package pairdown.scene;

import pairdown.gl.Canvas;
import pairdown.theme.Marker;

/** The shapes that stand for participants, on a canvas. */
final class Marks {
    private static final float[] XY = new float[24];

    private Marks() {}

    /**
     * @param radius half the width
     * @param hollow an outline: the data have a gap
     * @param halo what keeps the shape apart from what is behind
     */
    static void draw(
            Canvas canvas,
            Marker marker,
            float x,
            float y,
            float radius,
            int rgba,
            boolean hollow,
            int halo) {
        shape(canvas, marker, x, y, radius * 1.35f, halo);
        shape(canvas, marker, x, y, radius, rgba);
        if (hollow) {
            shape(canvas, marker, x, y, radius * 0.6f, halo);
        }
    }

    private static void shape(Canvas canvas, Marker marker, float x, float y, float r, int rgba) {
        switch (marker) {
            case DISC -> canvas.disc(x, y, r, rgba);
            case SQUARE -> canvas.fill(x - r * 0.88f, y - r * 0.88f, r * 1.76f, r * 1.76f, rgba);
            case TRIANGLE -> polygon(canvas, x, y, r * 1.15f, 3, -90, rgba);
            case POINT_DOWN -> polygon(canvas, x, y, r * 1.15f, 3, 90, rgba);
            case DIAMOND -> polygon(canvas, x, y, r * 1.15f, 4, 0, rgba);
            case CROSS -> {
                canvas.fill(x - r, y - r * 0.35f, 2 * r, r * 0.7f, rgba);
                canvas.fill(x - r * 0.35f, y - r, r * 0.7f, 2 * r, rgba);
            }
            case RING -> canvas.outline(x - r, y - r, 2 * r, 2 * r, r, r * 0.5f, rgba);
            case BAR -> canvas.fill(x - r, y - r * 0.4f, 2 * r, r * 0.8f, rgba);
        }
    }

    private static void polygon(
            Canvas canvas, float x, float y, float r, int corners, double first_deg, int rgba) {
        for (int i = 0; i < corners; i++) {
            double a = Math.toRadians(first_deg + 360.0 * i / corners);
            XY[2 * i] = x + r * (float) Math.cos(a);
            XY[2 * i + 1] = y + r * (float) Math.sin(a);
        }
        canvas.polygon(XY, corners, rgba);
    }
}
