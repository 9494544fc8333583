package pairdown.format.source;

import java.util.Arrays;

/** A growing list of whole numbers, without an object for each. */
public final class Longs {
    private long[] values = new long[64];
    private int size;

    public void add(long value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    public void set(int i, long value) {
        values[i] = value;
    }

    public long get(int i) {
        return values[i];
    }

    public int size() {
        return size;
    }
}
