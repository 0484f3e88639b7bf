package beltwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.quantity.Refusal;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/// Tables of sizes and tolerances end where their source ends.
class TablesTest {
    static Stream<Arguments> beyond() {
        return Stream.of(
                refused("belt length: 1501 mm", () -> BeltTolerance.centreDistanceMm(1501)),
                refused("belt length: ", () -> BeltTolerance.lengthMm(Double.NaN)),
                refused("belt width: 2 mm", () -> BeltTolerance.widthMm(2, 300)),
                refused("belt length: 900 mm", () -> BeltTolerance.widthMm(15, 900)),
                refused("belt length: 601 mm", () -> StockLengths.atLeastMm(601)),
                refused("belt width: 12 mm", () -> PulleyFace.leastMm(12, true)),
                refused("number of grooves: 11", () -> GrooveForm.of(11)),
                refused("outside diameter: 176 mm", () -> PulleyTolerance.outsideMm(176)),
                refused("outside diameter: 101 mm", () -> PulleyTolerance.quarterTurnMm(101)),
                refused("bore: 20 mm", () -> BearingSize.boreTolerance(20)));
    }

    private static Arguments refused(String begins, ThrowingCallable asked) {
        return Arguments.of(begins, asked);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("beyond")
    void refusesWhatTheSourceDoesNotPrint(String begins, ThrowingCallable asked) {
        assertThatThrownBy(asked)
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith(begins)
                .hasMessageContaining("allowed: ");
    }

    @ParameterizedTest
    @EnumSource(Thread.class)
    void aCoarserHoleIsWider(Thread thread) {
        assertThat(thread.clearanceHoleMm(Thread.Series.CLOSE))
                .isGreaterThan(thread.majorMm())
                .isLessThan(thread.clearanceHoleMm(Thread.Series.MEDIUM));
        assertThat(thread.clearanceHoleMm(Thread.Series.COARSE))
                .isGreaterThan(thread.clearanceHoleMm(Thread.Series.MEDIUM));
    }

    @Test // the belt's tooth must not stand on the floor
    void everyGrooveIsNearlyAsDeepAsTheTooth() {
        for (int teeth : new int[] {12, 17, 26, 81}) {
            assertThat(GrooveForm.of(teeth).depthMm())
                    .isBetween(BeltProfile.H5M.toothHeightMm() - 0.1, BeltProfile.H5M.toothHeightMm());
        }
    }

    @Test
    void theWallUnderAGrooveIsWhatIsLeftOfTheRadius() {
        assertThat(GrooveForm.of(15).wallMm(22.73, 8)).isEqualTo((22.73 - 8) / 2 - 1.989);
    }
}
