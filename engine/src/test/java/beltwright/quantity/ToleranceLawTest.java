package beltwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class ToleranceLawTest {
    private static final String[] SHAFTS = {"c", "d", "e", "f", "g", "h", "js", "k", "m", "n", "p", "r"};

    private static double size(Draw draw) {
        return draw.between(0.5, 120);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void everyFieldHasWidth(Draw draw) {
        for (var letter : SHAFTS) {
            int grade = draw.whole(5, 11);
            var field = Tolerance.iso286(size(draw), letter + grade);
            assertThat(field.upper()).as(letter + grade).isGreaterThan(field.lower());
        }
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aCoarserGradeIsWider(Draw draw) {
        double size = size(draw);
        double before = 0;
        for (int grade = 5; grade <= 11; grade++) {
            double width = Tolerance.iso286(size, "h" + grade).lower() * -1;
            assertThat(width).as("IT" + grade).isGreaterThan(before);
            before = width;
        }
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aLargerSizeIsNeverNarrower(Draw draw) {
        double size = draw.between(0.5, 60);
        double larger = size * 2;
        for (int grade = 5; grade <= 11; grade++) {
            assertThat(-Tolerance.iso286(larger, "h" + grade).lower())
                    .isGreaterThanOrEqualTo(-Tolerance.iso286(size, "h" + grade).lower());
        }
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void clearanceHolesMirrorClearanceShafts(Draw draw) {
        double size = size(draw);
        int grade = draw.whole(5, 11);
        for (var letter : new String[] {"c", "d", "e", "f", "g", "h", "js"}) {
            var shaft = Tolerance.iso286(size, letter + grade);
            var hole = Tolerance.iso286(size, letter.toUpperCase(java.util.Locale.ROOT) + grade);
            assertThat(hole.lower()).as(letter + grade).isEqualTo(-shaft.upper());
            assertThat(hole.upper()).as(letter + grade).isEqualTo(-shaft.lower());
        }
    }

    /// The system's own rule: `H7/p6` and `P7/h6` are the same fit.
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void theSameFitOnTheHoleBasisAndOnTheShaftBasis(Draw draw) {
        double size = draw.between(3.001, 120);
        for (var letter : new String[] {"k", "m", "n", "p", "r"}) {
            for (int hole = 6; hole <= (letter.equals("p") || letter.equals("r") ? 7 : 8); hole++) {
                var basisHole = Tolerance.iso286(size, "H" + hole);
                var shaft = Tolerance.iso286(size, letter + (hole - 1));
                var fitted = Tolerance.iso286(size, letter.toUpperCase(java.util.Locale.ROOT) + hole);
                var basisShaft = Tolerance.iso286(size, "h" + (hole - 1));
                assertThat(fitted.upper() - basisShaft.lower())
                        .as("largest clearance of " + letter + hole + " at " + size)
                        .isCloseTo(basisHole.upper() - shaft.lower(), within(1e-12));
                assertThat(fitted.lower() - basisShaft.upper())
                        .as("smallest clearance of " + letter + hole + " at " + size)
                        .isCloseTo(basisHole.lower() - shaft.upper(), within(1e-12));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"0, h6", "-8, h6", "NaN, h6", "121, h6", "8, h4", "8, h12", "8, z6", "8, K9", "8, P8", "8, h", "8, 6"})
    void refusesWhatTheTableDoesNotHold(double size, String code) {
        assertThatThrownBy(() -> Tolerance.iso286(size, code))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(code);
    }
}
