package beltwright.check;

import beltwright.quantity.Dimension;
import beltwright.quantity.Range;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// One member of a chain of dimensions: added or taken away, whole or by half.
///
/// @param symbol as the working prints it
/// @param of the dimension, or null for a value that the layout worked out
/// @param told what a value of the layout is
record Term(int sign, String symbol, @Nullable Dimension of, String told, Range range, int divisor) {
    static Term plus(String symbol, Dimension d) {
        return new Term(1, symbol, d, "", Range.of(d), 1);
    }

    static Term minus(String symbol, Dimension d) {
        return new Term(-1, symbol, d, "", Range.of(d), 1);
    }

    static Term plus(String symbol, String told, Range range) {
        return new Term(1, symbol, null, told, range, 1);
    }

    static Term minus(String symbol, String told, Range range) {
        return new Term(-1, symbol, null, told, range, 1);
    }

    Term half() {
        return new Term(sign, symbol, of, told, range, 2);
    }

    private Range part() {
        return divisor == 1 ? range : range.times(1.0 / divisor);
    }

    /// {@return the whole chain at its limits}
    static Range sum(List<Term> terms) {
        var sum = Range.ZERO;
        for (var term : terms) {
            sum = term.onto(sum);
        }
        return sum;
    }

    Range onto(Range before) {
        return sign > 0 ? before.plus(part()) : before.minus(part());
    }

    /// {@return how this term is written at one limit of the whole chain; `suffix` is empty, `_min` or `_max`}
    String written(boolean first, String suffix) {
        boolean flips = sign < 0;
        String end = switch (suffix) {
            case "" -> "";
            case "_min" -> toleranced() ? flips ? "_max" : "_min" : "";
            default -> toleranced() ? flips ? "_min" : "_max" : "";
        };
        var body = symbol + end + (divisor == 1 ? "" : "/" + divisor);
        return first ? (flips ? "−" : "") + body : (flips ? " − " : " + ") + body;
    }

    boolean toleranced() {
        return range.high() > range.low();
    }
}
