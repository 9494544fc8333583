package pairdown.scene;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * SRTM tiles: one degree square, big-endian 16-bit metres from the north-west corner, the
 * south-west corner in the file's name, edges shared with the neighbours.
 *
 * <p>Source: NASA/USGS, SRTM Topography (documentation of version 2.1), section 3.
 */
final class HgtFile {
    private static final Pattern NAME = Pattern.compile("([ns])(\\d{1,2})([ew])(\\d{1,3})\\.hgt");

    private static final short VOID = Short.MIN_VALUE;

    private HgtFile() {}

    static boolean isNamed(Path file) {
        return NAME.matcher(name(file)).matches();
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    }

    /**
     * @throws IOException if the file is no square of samples
     */
    static ElevationTile read(Path file) throws IOException {
        Matcher name = NAME.matcher(name(file));
        if (!name.matches()) {
            throw new IOException("its name gives no corner, like N52E013.hgt");
        }
        int south = Integer.parseInt(name.group(2)) * ("s".equals(name.group(1)) ? -1 : 1);
        int west = Integer.parseInt(name.group(4)) * ("w".equals(name.group(3)) ? -1 : 1);
        byte[] bytes = Files.readAllBytes(file);
        int side = (int) Math.round(Math.sqrt(bytes.length / 2.0));
        if (side < 2 || (long) side * side * 2 != bytes.length) {
            throw new IOException("its " + bytes.length + " bytes are no square of samples");
        }
        ShortBuffer samples = ByteBuffer.wrap(bytes).order(ByteOrder.BIG_ENDIAN).asShortBuffer();
        float[] heights = new float[side * side];
        for (int i = 0; i < heights.length; i++) {
            short s = samples.get(i);
            heights[i] = s == VOID ? Float.NaN : s;
        }
        double step = 1.0 / (side - 1);
        return new GridTile(south + 1, west, step, step, side, side, heights);
    }
}
