package pairdown.format.csv;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import pairdown.format.source.ByteLines;

/**
 * How a CSV file separates cells and marks decimals.
 *
 * @param delimiter comma, semicolon, tab or bar
 * @param decimalMark point or comma
 */
record Dialect(byte delimiter, byte decimalMark) {
    /** The ones a decimal comma can't be mistaken for come first. */
    private static final byte[] DELIMITERS = {'\t', ';', '|', ','};

    private static final int SAMPLE_LINES = 40;
    private static final int LONGEST = 1 << 16;

    /** The first lines of a file, without comments and blank ones. */
    static List<byte[]> sample(byte[] head) {
        List<byte[]> lines = new ArrayList<>();
        ByteLines in = new ByteLines(new ByteArrayInputStream(head), LONGEST);
        try {
            while (lines.size() < SAMPLE_LINES && in.next()) {
                if (!in.isBlank()) {
                    lines.add(java.util.Arrays.copyOfRange(in.bytes(), in.from(), in.to()));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("memory can't fail", e);
        }
        return lines;
    }

    /** The dialect under which most lines have the same number of cells. */
    static Dialect of(byte[] head) {
        List<byte[]> lines = sample(head);
        byte best = ',';
        int bestSupport = 0;
        for (byte delimiter : DELIMITERS) {
            int support = support(lines, delimiter);
            if (support > bestSupport) {
                best = delimiter;
                bestSupport = support;
            }
        }
        return new Dialect(best, decimalMark(lines, best));
    }

    /** How many lines share the commonest number of cells, if that is more than one. */
    private static int support(List<byte[]> lines, byte delimiter) {
        int[] counts = new int[lines.size()];
        Cells cells = new Cells(delimiter);
        for (int i = 0; i < counts.length; i++) {
            cells.split(lines.get(i), 0, lines.get(i).length);
            counts[i] = cells.size();
        }
        int best = 0;
        for (int count : counts) {
            int same = 0;
            for (int other : counts) {
                same += count > 1 && other == count ? 1 : 0;
            }
            best = Math.max(best, same);
        }
        return best;
    }

    static byte decimalMark(List<byte[]> lines, byte delimiter) {
        if (delimiter == ',') {
            return '.';
        }
        int commas = 0;
        int points = 0;
        Cells cells = new Cells(delimiter);
        for (byte[] line : lines) {
            cells.split(line, 0, line.length);
            for (int i = 0; i < cells.size(); i++) {
                String cell = cells.ascii(i);
                commas += cell.matches("[-+]?\\d+,\\d+") ? 1 : 0;
                points += cell.matches("[-+]?\\d+\\.\\d+") ? 1 : 0;
            }
        }
        return (byte) (commas > points ? ',' : '.');
    }
}
