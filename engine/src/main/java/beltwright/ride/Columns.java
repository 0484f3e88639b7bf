package beltwright.ride;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/// Growing columns of numbers, one for each channel, filled row by row.
final class Columns {
    private final double[][] columns = new double[Channel.values().length][1024];
    private final int[] sizes = new int[columns.length];

    void add(Channel channel, double value) {
        int c = channel.ordinal();
        if (sizes[c] == columns[c].length) {
            columns[c] = Arrays.copyOf(columns[c], 2 * sizes[c]);
        }
        columns[c][sizes[c]++] = value;
    }

    int rows() {
        return sizes[Channel.TIME.ordinal()];
    }

    /// Keeps the first of every two rows.
    void halve() {
        for (int c = 0; c < columns.length; c++) {
            sizes[c] = (sizes[c] + 1) / 2;
            for (int i = 0; i < sizes[c]; i++) {
                columns[c][i] = columns[c][2 * i];
            }
        }
    }

    Map<Channel, double[]> values() {
        var values = new EnumMap<Channel, double[]>(Channel.class);
        for (var channel : Channel.values()) {
            values.put(channel, Arrays.copyOf(columns[channel.ordinal()], sizes[channel.ordinal()]));
        }
        return values;
    }
}
