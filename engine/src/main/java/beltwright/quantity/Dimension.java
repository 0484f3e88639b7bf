package beltwright.quantity;

import java.util.Objects;

/// A number as the trade knows it: nominal, limits, the text it was typed as, and where it was read.
///
/// An unknown dimension has NaN for all three numbers, so whatever is computed from it is NaN too and the check that
/// needed it answers "cannot tell".
///
/// @param of what is measured, as `part.field`; the working and the list of needs print it
/// @param text as typed, kept to the letter
/// @param nominal in the unit that the field name ends with
/// @param lower lowest limit, same unit
/// @param upper highest limit, same unit
public record Dimension(String of, String text, double nominal, double lower, double upper, Provenance provenance) {
    public Dimension {
        Objects.requireNonNull(of);
        Objects.requireNonNull(text);
        Objects.requireNonNull(provenance);
        if (!Double.isNaN(nominal) && !(lower <= nominal && nominal <= upper && Double.isFinite(upper - lower))) {
            throw new Refusal(
                    of,
                    "limits " + lower + " and " + upper + " do not enclose " + nominal,
                    "lower ≤ nominal ≤ upper",
                    "correct the limits");
        }
    }

    public static Dimension unknown(String of, Provenance provenance) {
        return new Dimension(of, "unknown", Double.NaN, Double.NaN, Double.NaN, provenance);
    }

    /// A dimension without a spread, such as one that a standard fixes.
    public static Dimension exact(String of, double value, Provenance provenance) {
        return new Dimension(of, Numbers.plain(value), value, value, value, provenance);
    }

    public boolean known() {
        return !Double.isNaN(nominal);
    }

    public boolean estimated() {
        return provenance.source() == Source.ESTIMATE;
    }

    public boolean toleranced() {
        return upper > lower;
    }

    public Unit unit() {
        return Unit.of(of);
    }

    /// {@return this dimension of one piece that has exactly this value}
    public Dimension drawn(double value) {
        return new Dimension(of, text, value, value, value, provenance);
    }

    public Dimension forgotten() {
        return unknown(of, provenance);
    }
}
