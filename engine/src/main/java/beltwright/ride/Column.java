package beltwright.ride;

import java.util.Arrays;

/// A growing column of numbers.
final class Column {
    private double[] values = new double[1024];
    private int size;

    void add(double value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    double[] values() {
        return Arrays.copyOf(values, size);
    }
}
