package pairdown.panel;

import pairdown.gl.Canvas;

/** Draws a pyramid as a line of at most as many points as fit the pixels; holes stay holes. */
final class CurvePath {
    /** A finer step than this is not seen. */
    static final float LEAST_COLUMN_PX = 1.5f;

    private final Canvas canvas;
    private final float[] xy;
    private final float dash;
    private final float column_px;
    private int count;

    /**
     * @param dash length of dashes and of what lies between; 0 for a line without
     * @param column_px width of the columns whose least and greatest are drawn
     * @param xy filled over and over; its length bounds the points of one stroke
     */
    CurvePath(Canvas canvas, float[] xy, float dash, float column_px) {
        this.canvas = canvas;
        this.xy = xy;
        this.dash = dash;
        this.column_px = column_px;
    }

    void draw(
            Pyramid values,
            Axis axis,
            float left,
            float width,
            double from_s,
            double to_s,
            float thickness,
            int rgba) {
        count = 0;
        double samples = (to_s - from_s) / values.step_s();
        int columns = (int) Math.min(width / column_px, xy.length / 4.0 - 1);
        if (samples < 2.0 * columns) {
            samples(values, axis, left, width, from_s, to_s, thickness, rgba);
        } else {
            columns(values, axis, left, width / columns, columns, from_s, to_s, thickness, rgba);
        }
        stroke(thickness, rgba);
    }

    /** Few samples: each is a point. */
    private void samples(
            Pyramid values,
            Axis axis,
            float left,
            float width,
            double from_s,
            double to_s,
            float thickness,
            int rgba) {
        double step_s = values.step_s();
        int first = Math.max(0, (int) Math.floor((from_s - values.start_s()) / step_s));
        int last = Math.min(values.size() - 1, (int) Math.ceil((to_s - values.start_s()) / step_s));
        for (int i = first; i <= last; i++) {
            double t_s = values.start_s() + i * step_s;
            double value = values.at(t_s);
            float x = left + (float) ((t_s - from_s) / (to_s - from_s) * width);
            if (Double.isNaN(value) || isBetweenDashes(x)) {
                stroke(thickness, rgba);
            } else {
                point(x, axis.y(value));
            }
        }
    }

    /** Many samples: the least and greatest of each column, the nearer to the last point first. */
    private void columns(
            Pyramid values,
            Axis axis,
            float left,
            float columnWidth,
            int columns,
            double from_s,
            double to_s,
            float thickness,
            int rgba) {
        double step_s = (to_s - from_s) / columns;
        for (int c = 0; c < columns; c++) {
            double t_s = from_s + c * step_s;
            float low = values.least(t_s, t_s + step_s);
            // The two side by side: above one another a slope in wide columns would be stairs.
            float x = left + (c + 0.25f) * columnWidth;
            if (Float.isNaN(low) || isBetweenDashes(x)) {
                stroke(thickness, rgba);
                continue;
            }
            float yLow = axis.y(low);
            float yHigh = axis.y(values.greatest(t_s, t_s + step_s));
            boolean lowFirst =
                    count == 0
                            || Math.abs(xy[2 * count - 1] - yLow)
                                    < Math.abs(xy[2 * count - 1] - yHigh);
            point(x, lowFirst ? yLow : yHigh);
            if (Math.abs(yLow - yHigh) > 0.5f) {
                point(x + columnWidth / 2, lowFirst ? yHigh : yLow);
            }
        }
    }

    private boolean isBetweenDashes(float x) {
        return dash > 0 && ((int) (x / dash) & 1) == 1;
    }

    private void point(float x, float y) {
        if (2 * count + 1 < xy.length) {
            xy[2 * count] = x;
            xy[2 * count + 1] = y;
            count++;
        }
    }

    private void stroke(float thickness, int rgba) {
        if (count == 1) {
            canvas.disc(xy[0], xy[1], thickness, rgba);
        } else {
            canvas.polyline(xy, count, thickness, rgba);
        }
        count = 0;
    }
}
