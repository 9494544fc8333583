package pairdown.scene;

import pairdown.camera.Ground;
import pairdown.gl.Mesh;

/**
 * Relief in the attempt's frame: heights on a regular grid of east and north, bilinear between.
 * Outside the grid its nearest edge.
 */
public final class Relief implements Ground {
    private final double west_m;
    private final double south_m;
    private final double step_m;
    private final int columns;
    private final int rows;
    private final float[] up_m;
    private final float[] vertices;
    private final int[] indices;

    /**
     * @param west_m east coordinate of the first column
     * @param south_m north coordinate of the first row
     * @param step_m between columns and between rows
     * @param up_m up coordinates, row by row from the south
     */
    public Relief(
            double west_m, double south_m, double step_m, int columns, int rows, float[] up_m) {
        if (columns < 2 || rows < 2 || up_m.length != columns * rows || !(step_m > 0)) {
            throw new IllegalArgumentException(
                    "a relief of "
                            + columns
                            + "×"
                            + rows
                            + " needs that many heights, not "
                            + up_m.length);
        }
        this.west_m = west_m;
        this.south_m = south_m;
        this.step_m = step_m;
        this.columns = columns;
        this.rows = rows;
        this.up_m = up_m.clone();
        this.vertices = vertices();
        this.indices = indices();
    }

    @Override
    public double up_m(double east_m, double north_m) {
        double x = Math.max(0, Math.min(columns - 1.000001, (east_m - west_m) / step_m));
        double y = Math.max(0, Math.min(rows - 1.000001, (north_m - south_m) / step_m));
        int i = (int) x;
        int k = (int) y;
        double fx = x - i;
        double fy = y - k;
        int at = k * columns + i;
        double south = up_m[at] + fx * (up_m[at + 1] - up_m[at]);
        double north = up_m[at + columns] + fx * (up_m[at + columns + 1] - up_m[at + columns]);
        return south + fy * (north - south);
    }

    double lowest_m() {
        float low = Float.POSITIVE_INFINITY;
        for (float up : up_m) {
            low = Math.min(low, up);
        }
        return low;
    }

    /** Into the card's memory, with normals. */
    Mesh upload() {
        return new Mesh(vertices, indices, 3, 3);
    }

    private float[] vertices() {
        float[] made = new float[columns * rows * 6];
        int at = 0;
        for (int k = 0; k < rows; k++) {
            for (int i = 0; i < columns; i++) {
                made[at++] = (float) (west_m + i * step_m);
                made[at++] = (float) (south_m + k * step_m);
                made[at++] = up_m[k * columns + i];
                float dx = value(i + 1, k) - value(i - 1, k);
                float dy = value(i, k + 1) - value(i, k - 1);
                float two = (float) (2 * step_m);
                float n = (float) Math.sqrt(dx * dx + dy * dy + two * two);
                made[at++] = -dx / n;
                made[at++] = -dy / n;
                made[at++] = two / n;
            }
        }
        return made;
    }

    private int[] indices() {
        int[] made = new int[(columns - 1) * (rows - 1) * 6];
        int n = 0;
        for (int k = 0; k + 1 < rows; k++) {
            for (int i = 0; i + 1 < columns; i++) {
                int a = k * columns + i;
                int b = a + columns;
                made[n++] = a;
                made[n++] = a + 1;
                made[n++] = b + 1;
                made[n++] = a;
                made[n++] = b + 1;
                made[n++] = b;
            }
        }
        return made;
    }

    private float value(int i, int k) {
        int ii = Math.max(0, Math.min(columns - 1, i));
        int kk = Math.max(0, Math.min(rows - 1, k));
        return up_m[kk * columns + ii];
    }
}
