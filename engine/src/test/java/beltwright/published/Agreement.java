package beltwright.published;

import beltwright.published.PublishedCase.Value;
import beltwright.quantity.Numbers;
import java.math.BigDecimal;
import java.math.RoundingMode;

/// A printed number held against ours: agreement means that ours rounds to the printed digits, or lies within the
/// stated tolerance.
record Agreement(Value value, double ours) {
    static Agreement of(Value value) {
        return new Agreement(value, Answers.to(value));
    }

    private BigDecimal printed() {
        return new BigDecimal(value.printed());
    }

    boolean agrees() {
        var tolerance = value.tolerance();
        if (tolerance == null) {
            return new BigDecimal(ours)
                            .setScale(printed().scale(), RoundingMode.HALF_UP)
                            .compareTo(printed())
                    == 0;
        }
        double allowed = tolerance.endsWith(" %")
                ? Math.abs(printed().doubleValue()) * Double.parseDouble(tolerance.replace(" %", "")) / 100
                : Double.parseDouble(tolerance);
        return Math.abs(ours - printed().doubleValue()) <= allowed;
    }

    /// {@return the rule in words}
    String rule() {
        return value.tolerance() == null ? "printed digits" : "±" + value.tolerance();
    }

    /// {@return ours with two digits more than were printed}
    String oursText() {
        return Numbers.fixed(ours, Math.max(printed().scale(), 0) + 2);
    }

    String deviationText() {
        double off = ours - printed().doubleValue();
        var text = Numbers.fixed(off, Math.max(printed().scale(), 0) + 2);
        return off > 0 && !text.matches("[0.]+") ? "+" + text : text;
    }

    double relative() {
        double printed = printed().doubleValue();
        return printed == 0 ? 0 : (ours - printed) / Math.abs(printed);
    }

    @Override
    public String toString() {
        return value.what() + " (" + value.inputs() + "): printed " + value.printed() + " " + value.unit() + ", ours "
                + oursText() + ", rule " + rule();
    }
}
