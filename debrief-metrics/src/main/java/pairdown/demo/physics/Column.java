package pairdown.demo.physics;

import java.util.Arrays;

/** A column of numbers that grows. */
final class Column {
    private double[] values = new double[4096];
    private int size;

    void add(double value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    double last() {
        return values[size - 1];
    }

    int size() {
        return size;
    }

    double[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
