package pairdown.geodesy;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.zip.InflaterInputStream;

/**
 * Height of the EGM96 geoid ("mean sea level") above the WGS 84 ellipsoid.
 *
 * <p>Model: the 15-minute grid of EGM96 (NGA file WW15MGH.DAC, centimetres), between its points
 * Catmull-Rom bicubic. Error against the full model: at most 0.17 m, 7 mm rms (GeographicLib
 * manual, "Geoid height", cubic on this grid); the model itself is some 0.5 m rms off the newer
 * EGM2008, and what receivers call the geoid is off by up to 5 m.
 *
 * <p>Sign: ellipsoid height = MSL height + undulation.
 */
public final class Geoid {
    static final int ROWS = 721;
    static final int COLUMNS = 1440;
    private static final double CELLS_PER_DEG = 4;
    private static final double M_PER_COUNT = 0.01;
    private static final String RESOURCE = "egm96-15min.deflate";

    private final short[] grid;

    private Geoid(short[] grid) {
        this.grid = grid;
    }

    /** The model, loaded at first use. */
    public static Geoid egm96() {
        return Loaded.EGM96;
    }

    private static final class Loaded {
        static final Geoid EGM96 = load();
    }

    /**
     * Geoid above ellipsoid (m).
     *
     * @param latitude_deg −90 to 90
     * @param longitude_deg east positive, any finite turn
     * @throws IllegalArgumentException outside those ranges
     */
    public double undulation_m(double latitude_deg, double longitude_deg) {
        Geodetic place = Geodetic.ofDegrees(latitude_deg, longitude_deg, 0);
        double south = (90 - place.latitude_deg()) * CELLS_PER_DEG;
        double east = place.longitude_deg() * CELLS_PER_DEG;
        int row = Math.min((int) south, ROWS - 2);
        double column = Math.floor(east);
        double[] across = weights(east - column);
        double[] down = weights(south - row);
        int west = Math.floorMod((long) column, COLUMNS);
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                sum += down[i] * across[j] * count(row + i - 1, west + j - 1);
            }
        }
        return sum * M_PER_COUNT;
    }

    /** Catmull-Rom weights of the four points around a share {@code x} of the middle interval. */
    private static double[] weights(double x) {
        return new double[] {
            ((-0.5 * x + 1) * x - 0.5) * x,
            (1.5 * x - 2.5) * x * x + 1,
            ((-1.5 * x + 2) * x + 0.5) * x,
            (0.5 * x - 0.5) * x * x
        };
    }

    /** A grid value; rows beyond a pole continue down the opposite meridian. */
    int count(int row, int column) {
        int r = row;
        int c = column;
        if (r < 0) {
            r = -r;
            c += COLUMNS / 2;
        } else if (r >= ROWS) {
            r = 2 * (ROWS - 1) - r;
            c += COLUMNS / 2;
        }
        return grid[r * COLUMNS + Math.floorMod(c, COLUMNS)];
    }

    private static Geoid load() {
        try (InputStream packed =
                        Objects.requireNonNull(
                                Geoid.class.getResourceAsStream(RESOURCE), RESOURCE);
                InputStream in =
                        new BufferedInputStream(new InflaterInputStream(packed), 1 << 16)) {
            return new Geoid(unpack(in));
        } catch (IOException e) {
            throw new UncheckedIOException("the geoid grid in the jar is damaged", e);
        }
    }

    private static short[] unpack(InputStream in) throws IOException {
        short[] grid = new short[ROWS * COLUMNS];
        for (int i = 0; i < grid.length; i++) {
            boolean first = i % COLUMNS == 0;
            int west = first ? 0 : grid[i - 1];
            int north = i < COLUMNS ? 0 : grid[i - COLUMNS];
            int northWest = first || i < COLUMNS ? 0 : grid[i - COLUMNS - 1];
            grid[i] = (short) (west + north - northWest + difference(in));
        }
        return grid;
    }

    private static int difference(InputStream in) throws IOException {
        int folded = 0;
        int shift = 0;
        while (true) {
            int b = in.read();
            if (b < 0) {
                throw new EOFException("grid ends early");
            }
            folded |= (b & 0x7f) << shift;
            if (b < 0x80) {
                return (folded >>> 1) ^ -(folded & 1);
            }
            shift += 7;
        }
    }
}
