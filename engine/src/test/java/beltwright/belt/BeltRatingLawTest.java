package beltwright.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import beltwright.part.BeltGrade;
import beltwright.quantity.Refusal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("law")
class BeltRatingLawTest {
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void oneMoreToothCarriesMoreAtTheSpeedOfABoard(Draw draw) {
        int teeth = draw.whole(14, 39);
        double rpm = draw.between(1000, 8000);
        for (var grade : BeltGrade.PUBLISHED.values()) {
            assertThat(BeltRating.tableW(grade, teeth + 1, rpm)).isGreaterThan(BeltRating.tableW(grade, teeth, rpm));
        }
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aReinforcedBeltCarriesTwiceAStandardOneAtLeast(Draw draw) {
        int teeth = draw.whole(14, 40);
        double rpm = draw.between(1000, 10_000);
        assertThat(BeltRating.tableW(BeltGrade.REINFORCED, teeth, rpm))
                .isGreaterThan(2 * BeltRating.tableW(BeltGrade.STANDARD, teeth, rpm));
    }

    @ParameterizedTest // between 9 and 30 mm every millimetre carries more than the one before
    @MethodSource("beltwright.Seeds#draws")
    void aWideBeltCarriesMoreOnEachMillimetre(Draw draw) {
        double width = draw.between(9, 29);
        assertThat(BeltRating.widthFactor(width + 1) / (width + 1))
                .isGreaterThan(BeltRating.widthFactor(width) / width * 0.99);
        assertThat(BeltRating.widthFactor(width + 1)).isGreaterThan(BeltRating.widthFactor(width));
    }

    @Test
    void betweenTwoPrintedNumbersLiesTheirMean() {
        assertThat(BeltRating.tableW(BeltGrade.STANDARD, 15, 4000)).isCloseTo((443 + 513) / 2.0, within(1e-9));
        assertThat(BeltRating.tableW(BeltGrade.STANDARD, 16, 4500)).isCloseTo((513 + 605) / 2.0, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {99, 10_001, Double.NaN})
    void refusesSpeedsThatTheTableDoesNotHold(double rpm) {
        assertThatThrownBy(() -> BeltRating.tableW(BeltGrade.STANDARD, 16, rpm))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("pulley speed")
                .hasMessageContaining("100 to 10000 rpm");
    }

    @ParameterizedTest
    @ValueSource(ints = {12, 41})
    void refusesPulleysThatTheTableDoesNotHold(int teeth) {
        assertThatThrownBy(() -> BeltRating.tableW(BeltGrade.REINFORCED, teeth, 4000))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(teeth + " teeth")
                .hasMessageContaining("14 to 40 teeth");
    }
}
