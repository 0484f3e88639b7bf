package beltwright.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class SpanTensionLawTest {
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void tensionToFrequencyToTension(Draw draw) {
        double tension = draw.between(10, 600);
        double mass = draw.between(0.02, 0.2);
        double span = draw.between(30, 500);
        double frequency = SpanTension.frequencyHz(tension, mass, span);
        assertThat(SpanTension.tensionN(frequency, mass, span)).isCloseTo(tension, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void anOctaveUpIsFourTimesTheTension(Draw draw) {
        double frequency = draw.between(80, 500);
        double mass = draw.between(0.02, 0.2);
        double span = draw.between(30, 500);
        assertThat(SpanTension.tensionN(2 * frequency, mass, span))
                .isCloseTo(4 * SpanTension.tensionN(frequency, mass, span), within(1e-6));
    }

    @ParameterizedTest // independent of the formula: both half spans pull back, each with the sine of its slope
    @MethodSource("beltwright.Seeds#draws")
    void theForceAtMidSpanBalancesBothHalves(Draw draw) {
        double tension = draw.between(10, 600);
        double span = draw.between(30, 500);
        double deflection = span / 50;
        double balance = 2 * tension * deflection / Math.hypot(deflection, span / 2);
        assertThat(SpanTension.deflectionForceN(tension, deflection, span)).isCloseTo(balance, within(balance * 0.001));
    }
}
