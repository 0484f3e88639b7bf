package beltwright.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class SpanFrequencyLawTest {
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aBeltWithoutStiffnessIsAString(Draw draw) {
        double tension = draw.between(30, 200);
        double span = draw.between(50, 120);
        double f = SpanFrequency.stiffHz(tension, 0.0525, span, 0);
        assertThat(f).isCloseTo(SpanTension.frequencyHz(tension, 0.0525, span), within(1e-9));
        assertThat(SpanFrequency.factor(0.0525, span) * f * f).isCloseTo(tension, within(1e-9));
    }

    @ParameterizedTest // a stiff belt sounds higher, so the string formula takes it for tighter than it is
    @MethodSource("beltwright.Seeds#draws")
    void stiffnessMakesAReadingHigh(Draw draw) {
        double tension = draw.between(30, 200);
        double span = draw.between(50, 120);
        double stiff = SpanFrequency.stiffHz(tension, 0.0525, span, draw.between(1000, 20_000));
        assertThat(SpanTension.tensionN(stiff, 0.0525, span)).isGreaterThan(tension);
    }

    @ParameterizedTest // weights hung on a made-up stiff belt give its stiffness and mass back
    @MethodSource("beltwright.Seeds#draws")
    void weightsTeachStiffnessAndMass(Draw draw) {
        double span = draw.between(50, 120);
        double bending = draw.between(1000, 20_000);
        double mass = draw.between(0.03, 0.09);
        double[] tensions = {40, 80, 120, 160};
        var heard = new double[tensions.length];
        for (int i = 0; i < heard.length; i++) {
            heard[i] = SpanFrequency.stiffHz(tensions[i], mass, span, bending);
        }
        var hung = SpanFrequency.fit(tensions, heard);
        assertThat(hung.factor()).isCloseTo(SpanFrequency.factor(mass, span), within(1e-9));
        assertThat(hung.bendingNmm2(span)).isCloseTo(bending, within(1e-4));
        double between = draw.between(41, 159);
        assertThat(hung.tensionN(hung.frequencyHz(between))).isCloseTo(between, within(1e-9));
        assertThat(hung.frequencyHz(161)).isNaN();
        assertThat(hung.tensionN(1000 * heard[0])).isNaN();
    }

    @Test
    void oneFrequencyTeachesNothing() {
        assertThat(SpanFrequency.fit(new double[] {50, 80}, new double[] {200, 200})
                        .factor())
                .isNaN();
    }

    @ParameterizedTest // independent of the formula: the span's length before and after, and Hooke's law
    @MethodSource("beltwright.Seeds#draws")
    void rippleIsTheStrainOfTheRunOut(Draw draw) {
        double span = draw.between(50, 120);
        double runOut = draw.between(0, 0.3);
        double stiffness = draw.between(5000, 50_000);
        assertThat(SpanFrequency.rippleN(stiffness, runOut, span))
                .isCloseTo(stiffness * ((span + runOut) / span - 1), within(1e-6));
    }

    @ParameterizedTest // up to the limit, a straight taut span is stretched by less than a thousandth
    @MethodSource("beltwright.Seeds#draws")
    void withinTheLimitTheSpanHardlyStretches(Draw draw) {
        double span = draw.between(50, 500);
        double deflection = SpanFrequency.mostDeflectionMm(span);
        assertThat(2 * Math.hypot(span / 2, deflection) / span).isBetween(1.0, 1.001);
    }
}
