package pairdown.format.source;

import java.util.Arrays;

/** A growing list of numbers, without an object for each. */
public final class Doubles {
    private double[] values = new double[64];
    private int size;

    public void add(double value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    public void set(int i, double value) {
        values[i] = value;
    }

    public double get(int i) {
        return values[i];
    }

    public int size() {
        return size;
    }
}
