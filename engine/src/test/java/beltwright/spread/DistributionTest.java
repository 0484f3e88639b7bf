package beltwright.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.quantity.Dimension;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Provenance;
import beltwright.quantity.Source;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DistributionTest {
    private static Dimension typed(String text, Source source) {
        return DimensionText.parse("part.sizeMm", text, new Provenance(source, ""));
    }

    @Tag("published") // Wichura, Algorithm AS 241, Applied Statistics 37 (1988): the values it prints (from memory)
    @ParameterizedTest
    @CsvSource({"0.25, -0.6744897501960817", "0.001, -3.090232306167814", "1e-20, -9.262340089798408"})
    void quantilesAreThoseOfTheAlgorithm(double share, double z) {
        assertThat(NormalQuantile.of(share)).isCloseTo(z, within(2e-15 * Math.abs(z)));
    }

    @Tag("law") // a library's error function takes each quantile back to where it came from
    @Test
    void theErrorFunctionUndoesTheQuantile() {
        for (int i = 1; i < 2000; i++) {
            double share = i / 2000.0;
            double z = NormalQuantile.of(share);
            double back = 0.5 * org.hipparchus.special.Erf.erfc(-z / Math.sqrt(2));
            assertThat(back).isCloseTo(share, within(1e-14));
        }
    }

    // referee: truncnorm(-a, a).var() of a general-purpose statistics library, scipy 1.17.1
    @ParameterizedTest
    @CsvSource({"DATA_SHEET, 3, 0.9733369246625415", "MEASURED, 2, 0.7737413035499232"})
    void varianceIsThatOfATruncatedNormal(Source source, double cut, double variance) {
        var d = Distribution.of(typed("10 ±0.3", source));
        assertThat(d.mean()).isCloseTo(10, within(1e-12));
        assertThat(d.variance()).isCloseTo(variance * 0.09 / (cut * cut), within(1e-14));
    }

    @Tag("law") // moments by the midpoint rule over the quantiles, without the formula
    @ParameterizedTest
    @EnumSource(Source.class)
    void momentsAreThoseOfTheQuantiles(Source source) {
        var d = Distribution.of(typed("14 +0.1/-0.3", source));
        int n = 200_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double x = d.at((i + 0.5) / n) - 13.9;
            sum += x;
            squares += x * x;
        }
        assertThat(sum / n).isCloseTo(0, within(1e-9));
        assertThat(squares / n).isCloseTo(d.variance(), within(1e-5 * d.variance()));
        assertThat(d.mean()).isCloseTo(13.9, within(1e-12));
    }

    @Tag("law")
    @ParameterizedTest
    @EnumSource(Source.class)
    void nothingIsDrawnOutsideTheLimits(Source source) {
        var size = typed("8 h6", source);
        var d = Distribution.of(size);
        assertThat(d.at(0x1p-54)).isBetween(size.lower() - 1e-12, size.upper() + 1e-12);
        assertThat(d.at(1 - 0x1p-53)).isBetween(size.lower() - 1e-12, size.upper() + 1e-12);
        assertThat(d.at(0.5)).isCloseTo((size.lower() + size.upper()) / 2, within(1e-12));
        assertThat(d.at(0.3)).isLessThan(d.at(0.6));
    }

    @Test
    void withoutLimitsNothingIsDrawn() {
        var d = Distribution.of(typed("63", Source.DATA_SHEET));
        assertThat(d.at(0.1)).isEqualTo(63);
        assertThat(d.toString()).isEqualTo("fixed");
    }

    @Tag("law") // even numbers: each tenth gets its tenth, and two inputs have nothing to do with each other
    @ParameterizedTest
    @ValueSource(longs = {0, 1, -7, Long.MAX_VALUE})
    void drawsAreEvenAndApart(long seed) {
        int n = 100_000;
        var tenths = new int[10];
        long left = Draws.stream(seed, "left wheel#0/wheel-97.widthMm");
        long right = Draws.stream(seed, "right wheel#0/wheel-97.widthMm");
        double together = 0;
        for (int k = 0; k < n; k++) {
            double u = Draws.even(left, k);
            tenths[(int) (10 * u)]++;
            together += (u - 0.5) * (Draws.even(right, k) - 0.5);
        }
        for (int count : tenths) { // five standard errors
            assertThat(count).isBetween(n / 10 - 475, n / 10 + 475);
        }
        assertThat(together / n * 12).isBetween(-5 / Math.sqrt(n), 5 / Math.sqrt(n));
    }
}
