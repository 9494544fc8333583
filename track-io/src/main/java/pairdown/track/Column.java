package pairdown.track;

import java.util.Arrays;

/** One channel's values, in single or double precision as the channel needs; NaN where missing. */
final class Column {
    private final boolean wide;
    private double[] doubles = {};
    private float[] floats = {};

    Column(Channel channel) {
        this.wide = channel.needsDouble();
    }

    private Column(double[] doubles, float[] floats, boolean wide) {
        this.doubles = doubles;
        this.floats = floats;
        this.wide = wide;
    }

    double get(int row) {
        if (wide) {
            return row < doubles.length ? doubles[row] : Double.NaN;
        }
        return row < floats.length ? floats[row] : Float.NaN;
    }

    void set(int row, double value) {
        ensure(row + 1);
        if (wide) {
            doubles[row] = value;
        } else {
            floats[row] = (float) value;
        }
    }

    private void ensure(int rows) {
        int have = wide ? doubles.length : floats.length;
        if (rows <= have) {
            return;
        }
        int want = Math.max(rows, Math.max(64, have + (have >> 1)));
        if (wide) {
            doubles = Arrays.copyOf(doubles, want);
            Arrays.fill(doubles, have, want, Double.NaN);
        } else {
            floats = Arrays.copyOf(floats, want);
            Arrays.fill(floats, have, want, Float.NaN);
        }
    }

    /** Exactly {@code size} rows, put in {@code order} unless that is empty. */
    Column finished(int size, int[] order) {
        Column out = new Column(new double[wide ? size : 0], new float[wide ? 0 : size], wide);
        for (int i = 0; i < size; i++) {
            out.put(i, get(order.length == 0 ? i : order[i]));
        }
        return out;
    }

    /** The given rows alone, in that order. */
    Column finished(int[] rows) {
        return finished(rows.length, rows);
    }

    boolean hasValue() {
        return Arrays.stream(doubles).anyMatch(v -> !Double.isNaN(v)) || hasFloat();
    }

    private boolean hasFloat() {
        for (float v : floats) {
            if (!Float.isNaN(v)) {
                return true;
            }
        }
        return false;
    }

    private void put(int row, double value) {
        if (wide) {
            doubles[row] = value;
        } else {
            floats[row] = (float) value;
        }
    }

    Column slice(int from, int to) {
        return new Column(
                wide ? Arrays.copyOfRange(doubles, from, to) : doubles,
                wide ? floats : Arrays.copyOfRange(floats, from, to),
                wide);
    }
}
