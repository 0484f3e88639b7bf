package beltwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("law")
class DimensionTextLawTest {
    private static final Provenance TYPED = new Provenance(Source.MEASURED, "caliper");

    private static Dimension parse(String text) {
        return DimensionText.parse("part.lengthMm", text, TYPED);
    }

    private static BigDecimal drawn(Draw draw, double low, double high, int decimals) {
        return BigDecimal.valueOf(draw.between(low, high)).setScale(decimals, RoundingMode.HALF_EVEN);
    }

    private static void near(Dimension d, double nominal, double lower, double upper) {
        assertThat(d.nominal()).as(d.text()).isCloseTo(nominal, within(1e-9));
        assertThat(d.lower()).as(d.text()).isCloseTo(lower, within(1e-9));
        assertThat(d.upper()).as(d.text()).isCloseTo(upper, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void readsWhatItMeans(Draw draw) {
        double n = drawn(draw, 1, 200, 2).doubleValue();
        double t = drawn(draw, 0.01, 0.9, 3).doubleValue();
        double u = drawn(draw, 0.01, 0.9, 3).doubleValue();
        near(parse(text(n)), n, n, n);
        near(parse(text(n) + " ±" + text(t)), n, n - t, n + t);
        near(parse(text(n) + " +/-" + text(t)), n, n - t, n + t);
        near(parse(text(n) + " +" + text(t) + "/-" + text(u)), n, n - u, n + t);
        near(parse(text(n) + " +" + text(t) + "/−" + text(u)), n, n - u, n + t);
        near(parse(text(n) + ".." + text(n + t)), n + t / 2, n, n + t);
        near(parse(text(n) + " +" + text(t) + " -" + text(u)), n, n - u, n + t);
        near(parse(text(n) + " +" + text(t) + " 0"), n, n, n + t);
        near(parse(text(n) + " (±" + text(t) + ")"), n, n - t, n + t);
        near(parse(text(n) + " ( +- " + text(t) + " )"), n, n - t, n + t);
        near(parse(text(n) + "-" + text(n + t)), n + t / 2, n, n + t);
        near(parse(text(n) + " – " + text(n + t)), n + t / 2, n, n + t);
        near(parse((text(n) + " to " + text(n + t)).replace('.', ',')), n + t / 2, n, n + t);
        near(parse(text(n) + " mm ± " + text(t) + " mm"), n, n - t, n + t);
        near(parse(text(n) + " cm"), 10 * n, 10 * n, 10 * n);
        near(parse(text(n) + " (±" + text(t) + ") cm"), 10 * n, 10 * (n - t), 10 * (n + t));
        near(parse(text(n) + " ±5 %"), n, 0.95 * n, 1.05 * n);
        near(parse(text(n) + " in"), 25.4 * n, 25.4 * n, 25.4 * n);
        near(parse(text(n) + " ±" + text(t) + " in"), 25.4 * n, 25.4 * (n - t), 25.4 * (n + t));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aFractionOfAnInchIsItsDecimals(Draw draw) {
        int whole = draw.whole(1, 9);
        int below = 1 << draw.whole(1, 6);
        int above = draw.whole(1, below);
        double inches = (double) above / below;
        for (var unit : new String[] {" in", "\"", " ″"}) {
            near(parse(above + "/" + below + unit), 25.4 * inches, 25.4 * inches, 25.4 * inches);
            var typed = whole + " " + above + "/" + below + " ± 1/64" + unit;
            double nominal = 25.4 * (whole + inches);
            near(parse(typed), nominal, nominal - 25.4 / 64, nominal + 25.4 / 64);
            assertThat(parse(typed).text()).isEqualTo(typed);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "3/8 in, 9.525, 9.525, 9.525",
        "1 1/4 in, 31.75, 31.75, 31.75",
        "'3/8\"', 9.525, 9.525, 9.525",
        "'2.5\"', 63.5, 63.5, 63.5",
        "'2,5\"', 63.5, 63.5, 63.5",
        "1/4..3/8 in, 7.9375, 6.35, 9.525",
        "63 ± 0.2, 63, 62.8, 63.2",
        "63 ± 0.2 mm, 63, 62.8, 63.2",
        "2.5in, 63.5, 63.5, 63.5",
        "63mm, 63, 63, 63",
        "8 +0.1 -0.2, 8, 7.8, 8.1",
        "8 −0.2 +0.1, 8, 7.8, 8.1",
        "8 +0.2 0, 8, 8, 8.2",
        "7.9-8.1, 8, 7.9, 8.1",
        "7.9 – 8.1 mm, 8, 7.9, 8.1",
        "'7,9 to 8,1', 8, 7.9, 8.1",
        "-2 to 3, 0.5, -2, 3",
        "1/4-3/8 in, 7.9375, 6.35, 9.525",
        "8 (±0.2), 8, 7.8, 8.2",
        "8(+-0.2), 8, 7.8, 8.2",
        "8 (+0.1/-0.2), 8, 7.8, 8.1",
        "8 (h6), 8, 7.991, 8",
        "8 mm ±0.2, 8, 7.8, 8.2",
        "8 mm (±0.2), 8, 7.8, 8.2",
        "1.2cm, 12, 12, 12"
    })
    void readsInchesAndSpacedSigns(String typed, double nominal, double lower, double upper) {
        near(parse(typed), nominal, lower, upper);
        assertThat(parse(typed).text()).isEqualTo(typed);
    }

    @ParameterizedTest
    @CsvSource({
        "63, false",
        "63 mm, true",
        "3/8 in, true",
        "'2.5\"', true",
        "8 h6, false",
        "unknown, false",
        "1.2 cm, true",
        "8 mm ±0.2, true"
    })
    void aLengthMayNameItsUnit(String typed, boolean named) {
        assertThat(DimensionText.namesUnit(typed)).isEqualTo(named);
    }

    @Test
    void onlyLengthsAreInInches() {
        for (var typed : new String[] {"3/8 in", "3/8\"", "2.5\"", "2 cm", "2 mm ±1"}) {
            assertThatThrownBy(() -> DimensionText.parse("part.massKg", typed, TYPED))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("part.massKg");
        }
    }

    private static String text(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aCommaIsADecimalPoint(Draw draw) {
        var point = drawn(draw, 1, 200, 2) + " ±" + drawn(draw, 0.01, 0.9, 3);
        near(
                parse(point.replace('.', ',')),
                parse(point).nominal(),
                parse(point).lower(),
                parse(point).upper());
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void whatIsWrittenIsReadBack(Draw draw) {
        var typed = switch (draw.whole(0, 4)) {
            case 0 -> drawn(draw, 1, 200, 2).toString();
            case 1 -> drawn(draw, 1, 200, 2) + " ±" + drawn(draw, 0.01, 0.9, 3);
            case 2 -> drawn(draw, 1, 200, 2) + " +" + drawn(draw, 0.1, 0.9, 2) + "/-" + drawn(draw, 0.1, 0.9, 2);
            case 3 -> draw.whole(4, 100) + " h" + draw.whole(5, 11);
            default -> draw.whole(4, 100) + " N" + draw.whole(6, 8);
        };
        var once = parse("  " + typed + " ");
        assertThat(once.text()).isEqualTo(typed);
        assertThat(parse(once.text())).isEqualTo(once);
        near(
                parse(Numbers.plain(once.lower()) + ".." + Numbers.plain(once.upper())),
                (once.lower() + once.upper()) / 2,
                once.lower(),
                once.upper());
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aCodeIsItsLimitsWrittenOut(Draw draw) {
        int size = draw.whole(4, 100);
        var field = Tolerance.iso286(size, "js7");
        near(parse(size + " js7"), size, size + field.lower(), size + field.upper());
    }

    @ParameterizedTest // a size outside its own limits: no piece has it, so the middle of the limits is what a part is
    // like
    @CsvSource({"8 g6, 7.9905, 7.986, 7.995", "10 +0.3/+0.1, 10.2, 10.1, 10.3"})
    void aSizeOutsideItsLimitsTakesTheirMiddle(String typed, double nominal, double lower, double upper) {
        near(parse(typed), nominal, lower, upper);
        assertThat(parse(typed).text()).isEqualTo(typed);
    }

    @Test
    void unknownStaysUnknown() {
        assertThat(parse("unknown").known()).isFalse();
        assertThat(parse("unknown").text()).isEqualTo("unknown");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "about 8",
                "8 z6",
                "8 h",
                "8..",
                "9..8",
                "8 ±",
                "8 mm mm",
                "1e3",
                "8 ±-0.1",
                "8 +0.1-0.2",
                "8 +0.2",
                "8 -0.2",
                "8-0.2",
                "8 +0.2 0.1",
                "8 to",
                "8.1-7.9",
                "8.1 to 7.9",
                "1-1/4 in",
                "7.9--8.1",
                "8 ((±0.2))",
                "(8 ±0.2)",
                "8 (0.2)",
                "8 ()",
                "1e+400",
                "3/8",
                "1 1/4 mm",
                "3/0 in",
                "3/8\"\"",
                "8 ±1/2 %",
                "1/2 3/4 in",
                "NaN",
                "∞"
            })
    void refusesWhatItCannotRead(String typed) {
        assertThatThrownBy(() -> parse(typed))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("part.lengthMm")
                .hasMessageContaining("allowed");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8 +0.2 | write '8 +0.2/-0' where it may only be larger, '8 ±0.2' where it may be either",
                "8 - 0,2 mm | write '8 +0/-0,2' where it may only be smaller, '8 ±0,2' where it may be either",
                "8-0.2 | write '8 +0/-0.2' where it may only be smaller, '8 ±0.2' where it may be either",
                "8 +0.1-0.2 | write '8 +0.1/-0.2'",
                "1e3 | write the number out, '1000'",
                "2,5E-2 | write the number out, '0.025'",
                "1-1/4 in | write '1 1/4 in' for whole and fraction of an inch",
                "about 8 | correct the text"
            })
    void aRefusalSaysWhatToWrite(String typed, String mend) {
        assertThatThrownBy(() -> parse(typed))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.mend()).isEqualTo(mend));
    }

    /// Whatever is typed is a dimension with its limits in order, kept to the letter, or one refusal.
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void anyTextIsReadOrRefused(Draw draw) {
        var scraps = new String[] {
            "8", "0.2", "7,9", "1/4", "+", "-", "−", "–", "±", "+/-", "/", "..", " to ", " ", " in", "\"", " mm", " cm",
            "(", ")", "%", "h6", "e3", "unknown", ".", ","
        };
        for (int i = 0; i < 400; i++) {
            var typed = new StringBuilder();
            for (int n = draw.whole(1, 6); n > 0; n--) {
                typed.append(scraps[draw.whole(0, scraps.length - 1)]);
            }
            try {
                var d = parse(typed.toString());
                assertThat(d.text()).isEqualTo(typed.toString().strip());
                assertThat(!d.known() || (d.lower() <= d.nominal() && d.nominal() <= d.upper()))
                        .isTrue();
            } catch (Refusal r) {
                assertThat(r.where()).isEqualTo("part.lengthMm");
                assertThat(r.mend()).isNotEmpty();
            }
        }
    }
}
