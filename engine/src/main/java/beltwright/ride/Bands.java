package beltwright.ride;

import beltwright.kit.Kit;
import beltwright.quantity.Dimension;
import beltwright.quantity.Range;
import java.util.List;
import java.util.function.Function;

/// Carries limits through any answer: each number of the kit is set to its limits alone, and what the answer moves by
/// is
/// added up.
///
/// - Source: linear worst case, as for a chain of dimensions.
/// - Valid: while answers move about in proportion within the limits.
/// - Neglects: numbers that make each other worse.
public final class Bands {
    private Bands() {}

    /// Takes one number at a limit and all others at nominal, by the order in which a board reads them.
    private static final class One implements Board.Pick {
        private final int which;
        private final boolean upper;
        private int reads;
        private boolean toleranced;

        One(int which, boolean upper) {
            this.which = which;
            this.upper = upper;
        }

        @Override
        public double of(Dimension d) {
            if (reads++ != which) {
                return d.nominal();
            }
            toleranced = d.toleranced();
            return upper ? d.upper() : d.lower();
        }
    }

    /// {@return the answers of a kit, each with its worst case}
    ///
    /// @param answers the same numbers in the same order for any board
    public static Range[] of(Kit kit, Function<Board, double[]> answers) {
        var counting = new One(-1, false);
        var nominal = answers.apply(Board.of(kit, counting));
        var low = nominal.clone();
        var high = nominal.clone();
        for (int i = 0; i < counting.reads; i++) {
            for (boolean upper : List.of(false, true)) {
                var one = new One(i, upper);
                var board = Board.of(kit, one);
                if (one.toleranced) {
                    move(nominal, answers.apply(board), low, high);
                }
            }
        }
        var ranges = new Range[nominal.length];
        for (int i = 0; i < nominal.length; i++) {
            ranges[i] = new Range(low[i], nominal[i], high[i]);
        }
        return ranges;
    }

    private static void move(double[] nominal, double[] moved, double[] low, double[] high) {
        for (int i = 0; i < nominal.length; i++) {
            double by = moved[i] - nominal[i];
            if (by > 0) {
                high[i] += by;
            } else if (by < 0) {
                low[i] += by;
            }
        }
    }
}
