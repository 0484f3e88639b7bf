package beltwright.part;

import static org.assertj.core.api.Assertions.assertThat;

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
