package pairdown.geodesy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ShortBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Makes the grid that {@link Geoid} reads out of the published file: {@code GeoidPacker WW15MGH.DAC
 * egm96-15min.deflate}. Each cell is stored as its difference from what its west, north and
 * north-west neighbours predict, folded to a non-negative number, in groups of seven bits.
 */
public final class GeoidPacker {
    private GeoidPacker() {}

    public static void main(String[] args) throws IOException {
        ShortBuffer grid = ByteBuffer.wrap(Files.readAllBytes(Path.of(args[0]))).asShortBuffer();
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (OutputStream out =
                new DeflaterOutputStream(packed, new Deflater(Deflater.BEST_COMPRESSION))) {
            for (int row = 0; row < Geoid.ROWS; row++) {
                for (int column = 0; column < Geoid.COLUMNS; column++) {
                    write(out, cell(grid, row, column) - predicted(grid, row, column));
                }
            }
        }
        Files.write(Path.of(args[1]), packed.toByteArray());
    }

    private static int predicted(ShortBuffer grid, int row, int column) {
        return cell(grid, row, column - 1)
                + cell(grid, row - 1, column)
                - cell(grid, row - 1, column - 1);
    }

    private static int cell(ShortBuffer grid, int row, int column) {
        return row < 0 || column < 0 ? 0 : grid.get(row * Geoid.COLUMNS + column);
    }

    private static void write(OutputStream out, int difference) throws IOException {
        int rest = (difference << 1) ^ (difference >> 31);
        while (rest >= 0x80) {
            out.write((rest & 0x7f) | 0x80);
            rest >>>= 7;
        }
        out.write(rest);
    }
}
