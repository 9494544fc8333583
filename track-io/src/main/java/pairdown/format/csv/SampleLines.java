package pairdown.format.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.format.source.ByteLines;
import pairdown.format.source.Numbers;
import pairdown.units.LoggedUnit;

/** The first lines of a file split into cells, comments and blank lines included to keep count. */
final class SampleLines {
    private static final int MOST = 60;
    private static final int LONGEST = 1 << 16;

    private final List<List<String>> lines;

    private SampleLines(List<List<String>> lines) {
        this.lines = lines;
    }

    static SampleLines of(byte[] head, Dialect dialect) {
        List<List<String>> lines = new ArrayList<>();
        Cells cells = new Cells(dialect.delimiter());
        ByteLines in = new ByteLines(new java.io.ByteArrayInputStream(head), LONGEST);
        try {
            while (lines.size() < MOST && in.next()) {
                cells.split(in);
                List<String> texts = new ArrayList<>();
                for (int i = 0; i < cells.size(); i++) {
                    String text = cells.text(i);
                    texts.add(i == 0 && text.startsWith("#") ? text.substring(1).strip() : text);
                }
                lines.add(texts);
            }
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException("memory can't fail", e);
        }
        return new SampleLines(lines);
    }

    int size() {
        return lines.size();
    }

    List<String> cells(int index) {
        return lines.get(index);
    }

    /** The file's line number of an index. */
    long lineNumber(int index) {
        return index + 1L;
    }

    /** The lines from an index on. */
    List<List<String>> from(int index) {
        return lines.subList(Math.min(index, lines.size()), lines.size());
    }

    /** Whether a row is one of units: no number in it, and a cell that spells a unit. */
    static boolean isUnits(List<String> cells) {
        boolean unit = false;
        for (String cell : cells) {
            if (!Double.isNaN(Numbers.parse(cell))) {
                return false;
            }
            unit |= unit(cell).isPresent();
        }
        return unit;
    }

    /** The unit a cell of such a row spells, in brackets or not. */
    static Optional<LoggedUnit> unit(String cell) {
        return LoggedUnit.of(cell.replaceAll("^[(\\[{]|[)\\]}]$", ""));
    }
}
