package beltwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BearingSizeTest {
    @Tag("published") // four bearing makers' general catalogues
    @ParameterizedTest
    @CsvSource({
        "608, 8, 22, 7", "688, 8, 16, 4", "688 sealed, 8, 16, 5", "698, 8, 19, 6",
        "6800, 10, 19, 5", "6900, 10, 22, 6", "6801, 12, 21, 5", "6901, 12, 24, 6",
        "6001, 12, 28, 8", "6902, 15, 28, 7", "6002, 15, 32, 9"
    })
    void isWhatTheCataloguesPrint(String designation, double bore, double outside, double width) {
        var size = BearingSize.named(designation).orElseThrow();
        assertThat(new double[] {size.boreMm(), size.outsideMm(), size.widthMm()})
                .containsExactly(bore, outside, width);
        assertThat(size.source()).contains("read");
    }

    @Tag("published") // the same catalogues, kN: C and C0 of each that was read
    @ParameterizedTest
    @CsvSource({
        "608, 3.45 3.30 3.3 3.3, 1.37 1.37 1.4 1.3",
        "6800, 1.38 1.72 1.7 1.3, 0.585 0.84 0.8 0.6",
        "6900, 2.08 2.70 2.7 2, 0.85 1.27 1.3 0.7",
        "688, 1.33 1.61, 0.57 0.71",
        "688 sealed, 1.33 1.61, 0.57 0.71",
        "698, 1.90 2.24, 0.735 0.91",
        "6801, 1.43, 0.67",
        "6901, 2.25, 0.98",
        "6001, 5.10, 2.37",
        "6002, 5.60, 2.83",
        "6902, 4.35, 2.26"
    })
    void carriesTheLowestRatingsOfTheCatalogues(String designation, String rated, String standing) {
        var size = BearingSize.named(designation).orElseThrow();
        assertThat(size.ratedN()).isEqualTo(1000 * least(rated), within(1e-9));
        assertThat(size.staticN()).isEqualTo(1000 * least(standing), within(1e-9));
        assertThat(size.ratingSource()).contains("catalogue");
    }

    private static double least(String values) {
        return Arrays.stream(values.split(" "))
                .mapToDouble(Double::parseDouble)
                .min()
                .orElseThrow();
    }

    @Test
    void whatNoCatalogueWasReadForIsUnknown() {
        assertThat(BearingSize.B6000.ratedN()).isNaN();
        assertThat(BearingSize.B6000.staticN()).isNaN();
        assertThat(BearingSize.B6000.ratingSource()).contains("not read");
    }

    @ParameterizedTest
    @EnumSource(BearingSize.class)
    void isFoundByItsOwnSizesAlsoWhenMeasuredOrWorn(BearingSize size) {
        assertThat(BearingSize.named(size.toString())).contains(size);
        assertThat(BearingSize.of(size.boreMm(), size.outsideMm(), size.widthMm()))
                .contains(size);
        assertThat(BearingSize.of(size.boreMm() - 0.008, size.outsideMm() - 0.009, size.widthMm() - 0.12))
                .contains(size);
    }

    @ParameterizedTest // designations of ISO 15 series end in the bore: its mm below 10, else 00, 01, 02 for 10, 12, 15
    // mm
    @EnumSource(BearingSize.class)
    void theDesignationEndsInTheBore(BearingSize size) {
        var number = size.toString().replace(" sealed", "");
        double bore = number.length() == 3
                ? Integer.parseInt(number.substring(2))
                : switch (number.substring(2)) {
                    case "00" -> 10;
                    case "01" -> 12;
                    case "02" -> 15;
                    default -> Double.NaN;
                };
        assertThat(size.boreMm()).isEqualTo(bore);
    }

    @Test
    void whatIsNoStandardSizeIsNotFound() {
        assertThat(BearingSize.of(8, 22, 6)).isEmpty();
        assertThat(BearingSize.of(8, 16, 4.5)).isEmpty();
        assertThat(BearingSize.of(Double.NaN, 22, 7)).isEmpty();
        assertThat(BearingSize.named("608 ")).isEmpty();
    }
}
