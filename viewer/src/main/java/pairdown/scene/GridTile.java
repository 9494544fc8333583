package pairdown.scene;

/**
 * A tile of samples row by row from the north, bilinear between; a void among the four neighbours
 * makes a void.
 */
final class GridTile implements ElevationTile {
    private final double north_deg;
    private final double west_deg;
    private final double stepLatitude_deg;
    private final double stepLongitude_deg;
    private final int columns;
    private final int rows;
    private final float[] height_m;

    /**
     * @param north_deg latitude of the first row's samples
     * @param west_deg longitude of the first column's samples
     * @param height_m NaN where void; not copied
     */
    GridTile(
            double north_deg,
            double west_deg,
            double stepLatitude_deg,
            double stepLongitude_deg,
            int columns,
            int rows,
            float[] height_m) {
        this.north_deg = north_deg;
        this.west_deg = west_deg;
        this.stepLatitude_deg = stepLatitude_deg;
        this.stepLongitude_deg = stepLongitude_deg;
        this.columns = columns;
        this.rows = rows;
        this.height_m = height_m;
    }

    @Override
    public double height_m(double latitude_deg, double longitude_deg) {
        double x = (longitude_deg - west_deg) / stepLongitude_deg;
        double y = (north_deg - latitude_deg) / stepLatitude_deg;
        if (!(x >= 0 && y >= 0 && x <= columns - 1 && y <= rows - 1)) {
            return Double.NaN;
        }
        int i = Math.min((int) x, columns - 2);
        int k = Math.min((int) y, rows - 2);
        double fx = x - i;
        double fy = y - k;
        int at = k * columns + i;
        double north = height_m[at] + fx * (height_m[at + 1] - height_m[at]);
        double south =
                height_m[at + columns] + fx * (height_m[at + columns + 1] - height_m[at + columns]);
        return north + fy * (south - north);
    }
}
