package beltwright.check;

import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import beltwright.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/// The working of one answer, line by line. A formula is written with symbols; the numbers put in are taken from the
/// lines above, so what is printed is what was used.
public final class Working {
    private static final Set<String> FUNCTIONS =
            Set.of("asin", "acos", "atan", "sin", "cos", "tan", "min", "max", "abs", "floor", "π");
    private static final int DIGITS = 9;
    private static final double ROUNDING = 1e-9;

    private final List<Line> lines = new ArrayList<>();
    private final Map<String, Double> values = new HashMap<>();
    private final Set<String> needs = new LinkedHashSet<>();
    private final Set<String> estimates = new LinkedHashSet<>();
    private final boolean told;

    public Working() {
        this(true);
    }

    private Working(boolean told) {
        this.told = told;
    }

    /// {@return a working of which only what it needs and what it rests on is asked: it writes no line}
    static Working untold() {
        return new Working(false);
    }

    /// Quotes a dimension: its text as typed, its limits ready as `symbol_min` and `symbol_max`.
    public Dimension given(String symbol, Dimension d) {
        if (told) {
            if (quotedBefore(symbol, d.nominal())) {
                return d;
            }
            keep(symbol, Range.of(d));
            lines.add(new Line(
                    symbol,
                    d.of(),
                    d.text(),
                    d.nominal(),
                    d.unit().symbol(),
                    d.provenance().words()));
        }
        if (!d.known()) {
            needs.add(d.of());
        } else if (d.estimated()) {
            estimates.add(d.of());
        }
        return d;
    }

    /// Quotes a number that is no dimension of a part: a required value, a table value, a count.
    public double given(String symbol, String what, double value, String unit, String source) {
        if (told && !quotedBefore(symbol, value)) {
            keep(symbol, Range.exact(value));
            lines.add(new Line(symbol, what, Numbers.significant(value, DIGITS), value, unit, source));
        }
        return value;
    }

    /// Quotes a range that the layout worked out.
    public Range given(String symbol, String what, Range range, String source) {
        if (told && !quotedBefore(symbol, range.nominal())) {
            keep(symbol, range);
            lines.add(new Line(
                    symbol,
                    what,
                    Numbers.significant(range.nominal(), DIGITS),
                    range.nominal(),
                    Unit.MM.symbol(),
                    source));
            if (range.high() > range.low()) {
                quote(symbol + "_min", what + ", lowest", range.low(), source);
                quote(symbol + "_max", what + ", highest", range.high(), source);
            }
        }
        return range;
    }

    /// A symbol stands for one number in one working; sums taken in another order may differ in the last bits.
    private boolean quotedBefore(String symbol, double value) {
        var before = values.get(symbol);
        if (before != null && Math.abs(before - value) > ROUNDING) {
            throw new IllegalStateException("'" + symbol + "' stands for " + before + " already, not for " + value);
        }
        return before != null;
    }

    private void quote(String symbol, String what, double value, String source) {
        lines.add(new Line(symbol, what, Numbers.significant(value, DIGITS), value, Unit.MM.symbol(), source));
    }

    /// Writes one computed line.
    public double line(String symbol, String formula, double value, String unit, String source) {
        if (told) {
            lines.add(new Line(symbol, formula, putIn(formula), value, unit, source));
            values.put(symbol, value);
        }
        return value;
    }

    /// Writes a chain of dimensions at nominal, and at both limits where any of its members has limits.
    Range chain(String symbol, String unit, String source, List<Term> terms) {
        var sum = Range.ZERO;
        for (var term : terms) {
            if (term.of() != null) {
                given(term.symbol(), term.of());
            } else {
                given(term.symbol(), term.told(), term.range(), "layout");
            }
            sum = term.onto(sum);
        }
        line(symbol, written(terms, ""), sum.nominal(), unit, source);
        if (terms.stream().anyMatch(Term::toleranced)) {
            line(symbol + "_min", written(terms, "_min"), sum.low(), unit, source);
            line(symbol + "_max", written(terms, "_max"), sum.high(), unit, source);
        }
        return sum;
    }

    private static String written(List<Term> terms, String suffix) {
        var text = new StringBuilder();
        for (var term : terms) {
            text.append(term.written(text.isEmpty(), suffix));
        }
        return text.toString();
    }

    private void keep(String symbol, Range range) {
        values.put(symbol, range.nominal());
        values.put(symbol + "_min", range.low());
        values.put(symbol + "_max", range.high());
    }

    private String putIn(String formula) {
        var text = new StringBuilder(formula.length() * 2);
        int at = 0;
        while (at < formula.length()) {
            int end = at;
            while (end < formula.length() && inWord(formula.charAt(end), end > at)) {
                end++;
            }
            if (end == at) {
                text.append(formula.charAt(at++));
            } else {
                text.append(number(formula.substring(at, end)));
                at = end;
            }
        }
        return text.toString();
    }

    private static boolean inWord(char c, boolean begun) {
        return c >= 'A' && c <= 'Z'
                || c >= 'a' && c <= 'z'
                || c >= 'Α' && c <= 'ω'
                || begun && (c == '_' || c >= '0' && c <= '9');
    }

    private String number(String word) {
        if (FUNCTIONS.contains(word)) {
            return word;
        }
        var value = values.get(word);
        if (value == null) {
            throw new IllegalStateException("the working uses '" + word + "' before it stands in a line");
        }
        var text = Numbers.significant(value, DIGITS);
        return text.startsWith("−") ? "(" + text + ")" : text;
    }

    boolean has(String symbol) {
        return lines.stream().anyMatch(l -> l.symbol().equals(symbol));
    }

    /// A number is missing: says which.
    public void needs(String what) {
        needs.add(what);
    }

    /// The estimates of another working that this one takes a result from.
    void rests(Set<String> others) {
        estimates.addAll(others);
    }

    /// {@return a working that begins with all these lines}
    Working copy() {
        var copy = new Working();
        copy.lines.addAll(lines);
        copy.values.putAll(values);
        copy.needs.addAll(needs);
        copy.estimates.addAll(estimates);
        return copy;
    }

    public List<Line> lines() {
        return List.copyOf(lines);
    }

    public Set<String> needs() {
        return needs;
    }

    public Set<String> estimates() {
        return estimates;
    }
}
