package beltwright.check;

import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;

/// Reads the numbers of a working line again and computes them with a general-purpose evaluator, so that what is
/// printed can be held against what was used.
///
/// Understood: `+ − · / ^`, brackets, `√(…)`, `π`, `asin acos atan sin cos tan` (radians), `abs floor`, `min max` of
/// two or more, `unknown` (not a number) and `∞`.
public final class Evaluator {
    private Evaluator() {}

    /// @param numbers the text of [Line#numbers()] of a computed line
    /// @return its value; NaN where a number in it is unknown
    public static double value(String numbers) {
        var text = pairwise(numbers.replace('−', '-').replace('·', '*').replace("√", "sqrt"))
                .replace("π", "pi")
                .replace("∞", "infinite");
        Expression expression = new ExpressionBuilder(text)
                .functions(MIN, MAX)
                .variables("unknown", "infinite")
                .build()
                .setVariable("unknown", Double.NaN)
                .setVariable("infinite", Double.POSITIVE_INFINITY);
        return expression.evaluate();
    }

    private static final Function MIN = new Function("min", 2) {
        @Override
        public double apply(double... members) {
            return Math.min(members[0], members[1]);
        }
    };

    private static final Function MAX = new Function("max", 2) {
        @Override
        public double apply(double... members) {
            return Math.max(members[0], members[1]);
        }
    };

    /// The evaluator's functions have a fixed number of members: `max(a, b, c)` becomes `max(max(a, b), c)`.
    private static String pairwise(String text) {
        for (var name : new String[] {"min(", "max("}) {
            for (int from = text.lastIndexOf(name); from >= 0; from = text.lastIndexOf(name, from - 1)) {
                text = nested(text, from, name);
            }
        }
        return text;
    }

    private static String nested(String text, int from, String name) {
        int depth = 0;
        int start = from + name.length();
        int member = start;
        var joined = "";
        int members = 0;
        for (int i = start; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ends = c == ')' && depth == 0;
            if (depth == 0 && (c == ',' || ends)) {
                var one = text.substring(member, i).strip();
                joined = joined.isEmpty() ? one : name + joined + ", " + one + ")";
                member = i + 1;
                members++;
            }
            if (ends) {
                if (members < 2) {
                    throw new IllegalArgumentException(name + "…) with " + members + " members in " + text);
                }
                return text.substring(0, from) + joined + text.substring(i + 1);
            }
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
        }
        throw new IllegalArgumentException("bracket left open in " + text);
    }
}
