package beltwright.quantity;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Reads a dimension as it is written on paper.
///
///     63            63 ±0.2        8 h6          22 N7         14 +0.1/-0.3     14 +0.1 -0.3
///     62..74        7.9-8.1        7,9 to 8,1    190 ±5 %      8 (±0.2)         unknown
///     2.5 in        8,5            3/8 in        1 1/4 in      3/8"             1.2 cm
///
/// A comma may stand for the decimal point. `in`, `"` and `cm` convert to millimetres; only inches come
/// in fractions. A range `a..b` has its nominal in the middle, and so has a size that lies outside
/// its own limits, such as `8 g6`: no piece has the size 8. One deviation alone, `8 +0.2`, may mean either of two
/// things, and is refused with both of them written out.
public final class DimensionText {
    private static final double MM_PER_INCH = 25.4;
    private static final double MM_PER_CM = 10;
    private static final String FRACTION = "(?:[0-9]{1,4}\\s+)?[0-9]{1,4}/[1-9][0-9]{0,3}";
    private static final String BARE = "[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+";
    private static final String NUMBER = "(" + FRACTION + "|[+-]?[0-9]+(?:[.,][0-9]+)?|[+-]?[.,][0-9]+)";
    private static final Pattern INCHES = Pattern.compile("(.*[^\\s\"″])\\s*(?:in|[\"″])");
    private static final Pattern MILLIMETRES = Pattern.compile("(.*\\S)\\s*mm");
    private static final Pattern CENTIMETRES = Pattern.compile("(.*\\S)\\s*cm");
    private static final Pattern MILLIMETRES_FIRST = Pattern.compile("(" + BARE + ")\\s*mm(\\s*\\(?[±+-].*)");
    private static final Pattern IN_BRACKETS = Pattern.compile("([^()]*[^()\\s])\\s*\\(\\s*([^()]*[^()\\s])\\s*\\)");
    private static final Pattern RANGE = Pattern.compile(NUMBER + "(?:\\s*\\.\\.\\s*|\\s+to\\s+)" + NUMBER);
    private static final Pattern DASHED =
            Pattern.compile("(" + FRACTION + "|" + BARE + ")(?:[-–]|\\s+[-–]\\s+)(" + FRACTION + "|" + BARE + ")");
    private static final Pattern WITH_LIMITS = Pattern.compile(NUMBER + "(?:\\s*(?:(?:±|\\+/-|\\+-)\\s*" + NUMBER
            + "\\s*(%)?|([+-][0-9.,]+)(?:\\s*/\\s*([+-]?[0-9.,]+)|\\s+([+-][0-9.,]+|0))|([A-Za-z]{1,2}[0-9]{1,2})))?");
    private static final Pattern ONE_SIDED = Pattern.compile("(" + BARE + ")\\s*([+-])\\s*(" + BARE + ")");
    private static final Pattern TWO_SIDED =
            Pattern.compile("(" + BARE + ")\\s*([+-](?:" + BARE + "))\\s*([+-](?:" + BARE + "))");
    private static final Pattern HYPHENED = Pattern.compile("([0-9]+)\\s*[+-]\\s*([0-9]+/[0-9]+)");
    private static final Pattern EXPONENT = Pattern.compile("[+-]?(?:" + BARE + ")[eE][+-]?[0-9]{1,2}");
    public static final String ALLOWED =
            "a number with optional limits ('63', '63 ±0.2', '14 +0.1/-0.3', '8 h6', '62..74', '190 ±5 %', '2.5 in', '3/8 in') or 'unknown'";

    private DimensionText() {}

    /// @param of what is measured, `part.field`
    /// @throws Refusal naming the text, what is allowed and what to write instead
    public static Dimension parse(String of, String typed, Provenance provenance) {
        var text = typed.strip();
        if (text.equals("unknown")) {
            return Dimension.unknown(of, provenance);
        }
        var body = text.replace('−', '-');
        double scale = 1;
        if (Unit.of(of) == Unit.MM) {
            var inches = INCHES.matcher(body);
            var millimetres = MILLIMETRES.matcher(body);
            var centimetres = CENTIMETRES.matcher(body);
            if (inches.matches()) {
                body = inches.group(1);
                scale = MM_PER_INCH;
            } else if (centimetres.matches()) {
                body = centimetres.group(1);
                scale = MM_PER_CM;
            } else {
                body = millimetres.matches() ? millimetres.group(1) : body;
                var first = MILLIMETRES_FIRST.matcher(body);
                body = first.matches() ? first.group(1) + first.group(2) : body;
            }
        }
        var bracketed = IN_BRACKETS.matcher(body);
        if (bracketed.matches()) {
            body = bracketed.group(1) + " " + bracketed.group(2);
        }
        var range = RANGE.matcher(body);
        var dashed = DASHED.matcher(body);
        if (range.matches() || dashed.matches()) {
            var limits = range.matches() ? range : dashed;
            double low = number(of, limits.group(1), scale);
            double high = number(of, limits.group(2), scale);
            if (low <= high || limits == range) {
                return make(of, text, (low + high) / 2, low, high, provenance);
            }
        }
        var m = WITH_LIMITS.matcher(body);
        if (!m.matches() || (scale == MM_PER_INCH && HYPHENED.matcher(body).matches())) {
            throw new Refusal(of, "'" + text + "' cannot be read as a dimension", ALLOWED, mend(body));
        }
        double nominal = number(of, m.group(1), scale);
        var deviation = deviation(of, m, nominal, scale);
        return make(of, text, nominal, nominal + deviation.lower(), nominal + deviation.upper(), provenance);
    }

    /// {@return what to write instead, as far as the text shows what may have been meant}
    private static String mend(String body) {
        var two = TWO_SIDED.matcher(body);
        if (two.matches()) {
            return "write '" + two.group(1) + " " + two.group(2) + "/" + two.group(3) + "'";
        }
        var one = ONE_SIDED.matcher(body);
        if (one.matches()) {
            boolean plus = one.group(2).equals("+");
            var size = one.group(3);
            return "write '" + one.group(1) + (plus ? " +" + size + "/-0" : " +0/-" + size) + "' where it may only be "
                    + (plus ? "larger" : "smaller") + ", '" + one.group(1) + " ±" + size + "' where it may be either";
        }
        var hyphened = HYPHENED.matcher(body);
        if (hyphened.matches()) {
            return "write '" + hyphened.group(1) + " " + hyphened.group(2) + " in' for whole and fraction of an inch";
        }
        if (EXPONENT.matcher(body).matches()) {
            var written = new BigDecimal(body.replace(',', '.')).toPlainString();
            return "write the number out, '" + written + "'";
        }
        return "correct the text";
    }

    /// {@return whether a length is typed with its unit}
    public static boolean namesUnit(String typed) {
        var text = typed.strip();
        return INCHES.matcher(text).matches()
                || MILLIMETRES.matcher(text).matches()
                || CENTIMETRES.matcher(text).matches()
                || MILLIMETRES_FIRST.matcher(text.replace('−', '-')).matches();
    }

    private static Tolerance deviation(String of, Matcher m, double nominal, double scale) {
        if (m.group(2) != null) {
            double half = number(of, m.group(2), m.group(3) != null ? Math.abs(nominal) / 100 : scale);
            return new Tolerance(-half, half);
        }
        if (m.group(4) != null) {
            double a = number(of, m.group(4), scale);
            double b = number(of, m.group(5) != null ? m.group(5) : m.group(6), scale);
            return new Tolerance(Math.min(a, b), Math.max(a, b));
        }
        if (m.group(7) != null) {
            try {
                return Tolerance.iso286(nominal, m.group(7));
            } catch (Refusal r) {
                boolean exponent = EXPONENT.matcher(m.group()).matches();
                throw new Refusal(of, r.wrong(), r.allowed(), exponent ? mend(m.group()) : r.mend());
            }
        }
        return new Tolerance(0, 0);
    }

    private static Dimension make(
            String of, String text, double nominal, double lower, double upper, Provenance provenance) {
        if (lower > upper) {
            throw new Refusal(
                    of,
                    "'" + text + "' has its limits the wrong way round",
                    "lower limit ≤ upper limit",
                    "swap the limits");
        }
        double typical = lower <= nominal && nominal <= upper ? nominal : (lower + upper) / 2;
        return new Dimension(of, text, typical, lower, upper, provenance);
    }

    private static double number(String of, String text, double scale) {
        if (text.indexOf('/') >= 0) {
            return scale * fraction(of, text, scale);
        }
        try {
            return scale * Double.parseDouble(text.replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new Refusal(of, "'" + text + "' is not a number", ALLOWED, "correct the text");
        }
    }

    private static double fraction(String of, String text, double scale) {
        if (scale != MM_PER_INCH) {
            throw new Refusal(of, "'" + text + "' is a fraction, but not of an inch", ALLOWED, "write 'in' behind it");
        }
        var numbers = text.split("[\\s/]+");
        int last = numbers.length - 1;
        double part = Double.parseDouble(numbers[last - 1]) / Double.parseDouble(numbers[last]);
        return last == 1 ? part : Double.parseDouble(numbers[0]) + part;
    }
}
