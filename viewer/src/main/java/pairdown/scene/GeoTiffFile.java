package pairdown.scene;

import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.stream.ImageInputStream;

/**
 * Elevation in GeoTIFF with latitude and longitude as its axes. Projected ones are refused in
 * words: turning them would need every projection there is.
 *
 * <p>Source: OGC GeoTIFF Standard 1.1 (19-008r4): tags 33550 ModelPixelScale, 33922 ModelTiepoint,
 * 34735 GeoKeyDirectory; key 1024 GTModelType with 2 for geographic, key 1025 GTRasterType with 2
 * for pixel-is-point.
 */
final class GeoTiffFile {
    private static final int PIXEL_SCALE = 33550;
    private static final int TIE_POINT = 33922;
    private static final int GEO_KEYS = 34735;
    private static final int NO_DATA = 42113;
    private static final int MODEL_TYPE = 1024;
    private static final int GEOGRAPHIC = 2;
    private static final int RASTER_TYPE = 1025;
    private static final int PIXEL_IS_POINT = 2;

    /** Below the deepest land there is: what some writers put for a void. */
    private static final float LOWEST_M = -500;

    private GeoTiffFile() {}

    static boolean isNamed(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.endsWith(".tif") || name.endsWith(".tiff");
    }

    /**
     * @throws IOException if it is no elevation on latitude and longitude
     */
    static ElevationTile read(Path file) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName("tiff");
            if (in == null || !readers.hasNext()) {
                throw new IOException("it can't be read as TIFF");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in);
                return tile(reader);
            } catch (IllegalArgumentException
                    | IndexOutOfBoundsException
                    | UnsupportedOperationException e) {
                throw new IOException("it is damaged: " + e.getMessage(), e);
            } finally {
                reader.dispose();
            }
        }
    }

    private static ElevationTile tile(ImageReader reader) throws IOException {
        IIOMetadata metadata = reader.getImageMetadata(0);
        TIFFDirectory tags = TIFFDirectory.createFromMetadata(metadata);
        TIFFField scale = field(tags, PIXEL_SCALE, "pixel scale");
        TIFFField tie = field(tags, TIE_POINT, "tie point");
        TIFFField keys = field(tags, GEO_KEYS, "coordinate keys");
        if (key(keys, MODEL_TYPE) != GEOGRAPHIC) {
            throw new IOException("its axes are not latitude and longitude");
        }
        double half = key(keys, RASTER_TYPE) == PIXEL_IS_POINT ? 0 : 0.5;
        double stepX = scale.getAsDouble(0);
        double stepY = scale.getAsDouble(1);
        double west = tie.getAsDouble(3) + (half - tie.getAsDouble(0)) * stepX;
        double north = tie.getAsDouble(4) - (half - tie.getAsDouble(1)) * stepY;
        Raster raster = samples(reader);
        float nothing = noData(tags);
        int columns = raster.getWidth();
        int rows = raster.getHeight();
        float[] heights = raster.getSamples(0, 0, columns, rows, 0, new float[columns * rows]);
        for (int i = 0; i < heights.length; i++) {
            heights[i] = heights[i] == nothing || heights[i] < LOWEST_M ? Float.NaN : heights[i];
        }
        return new GridTile(north, west, stepY, stepX, columns, rows, heights);
    }

    /** The samples as they are stored, not turned into grey. */
    private static Raster samples(ImageReader reader) throws IOException {
        ImageReadParam asStored = reader.getDefaultReadParam();
        asStored.setDestinationType(reader.getRawImageType(0));
        return reader.read(0, asStored).getRaster();
    }

    private static TIFFField field(TIFFDirectory tags, int number, String name) throws IOException {
        TIFFField field = tags.getTIFFField(number);
        if (field == null) {
            throw new IOException("it has no " + name + ": no GeoTIFF");
        }
        return field;
    }

    private static int key(TIFFField keys, int wanted) {
        for (int i = 4; i + 3 < keys.getCount(); i += 4) {
            if (keys.getAsInt(i) == wanted) {
                return keys.getAsInt(i + 3);
            }
        }
        return 0;
    }

    private static float noData(TIFFDirectory tags) {
        TIFFField field = tags.getTIFFField(NO_DATA);
        try {
            return field == null ? Float.NaN : Float.parseFloat(field.getAsString(0).trim());
        } catch (NumberFormatException e) {
            return Float.NaN;
        }
    }
}
