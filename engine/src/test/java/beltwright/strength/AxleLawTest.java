package beltwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class AxleLawTest {
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aLargerFilletIsKinderAndALargerStepHarsher(Draw draw) {
        double step = draw.between(1.2, 5.5);
        double radius = draw.between(0.01, 0.29);
        double kt = ShoulderFillet.bending(step, 1, radius);
        assertThat(kt).isGreaterThan(1);
        assertThat(ShoulderFillet.bending(step, 1, radius + 0.01)).isBetween(1.0, kt);
        // the printed lines cross a little where the radius is large
        assertThat(ShoulderFillet.bending(step + 0.5, 1, radius)).isGreaterThan(0.97 * kt);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void twistingIsMultipliedLessThanBending(Draw draw) {
        double step = draw.between(1.2, 2);
        double radius = draw.between(0.01, 0.3);
        assertThat(ShoulderFillet.twisting(step, 1, radius)).isBetween(1.0, ShoulderFillet.bending(step, 1, radius));
    }

    @ParameterizedTest // size does not matter, only the form
    @MethodSource("beltwright.Seeds#draws")
    void aStepTwiceAsLargeIsTheSameStep(Draw draw) {
        double small = draw.between(5, 12);
        double large = small * draw.between(1.1, 3);
        double radius = small * draw.between(0.02, 0.2);
        assertThat(ShoulderFillet.bending(2 * large, 2 * small, 2 * radius))
                .isCloseTo(ShoulderFillet.bending(large, small, radius), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1.009, 0.1", "6.1, 0.1", "1.5, 0.009", "1.5, 0.31", "NaN, 0.1", "1.5, NaN"})
    void saysNothingOutsideTheCharts(double step, double radius) {
        assertThat(ShoulderFillet.bending(step, 1, radius)).isNaN();
        assertThat(ShoulderFillet.twisting(step, 1, radius)).isNaN();
    }

    @ParameterizedTest // rigid body: the bearings together answer force and moment of what acts on the wheel
    @MethodSource("beltwright.Seeds#draws")
    void bearingsBalanceTheWheel(Draw draw) {
        double force = draw.between(-900, 900);
        double at = draw.between(-30, 80);
        double inner = draw.between(10, 20);
        double outer = inner + draw.between(10, 40);
        double o = Axle.outerN(force, at, inner, outer);
        double i = Axle.innerN(force, at, inner, outer);
        assertThat(i + o).isCloseTo(force, within(1e-9));
        assertThat(i * inner + o * outer).isCloseTo(force * at, within(1e-6));
    }

    @ParameterizedTest // inside both bearings the axle feels the force itself, whatever the bearings' places
    @MethodSource("beltwright.Seeds#draws")
    void theStepFeelsForceTimesArm(Draw draw) {
        double force = draw.between(-900, 900);
        double at = draw.between(-30, 80);
        double inner = draw.between(10, 20);
        double outer = inner + draw.between(10, 40);
        double step = draw.between(-5, 10);
        assertThat(Axle.bendingNm(step, force, at, inner, outer)).isCloseTo(force * (at - step) / 1000, within(1e-9));
        assertThat(Axle.bendingNm(outer, force, at, inner, outer)).isZero();
        double o = Axle.outerN(force, at, inner, outer);
        assertThat(Axle.bendingNm(inner, force, at, inner, outer)).isCloseTo(o * (outer - inner) / 1000, within(1e-9));
    }

    @ParameterizedTest // a couple is two equal forces apart: the axle feels it as it feels those two
    @MethodSource("beltwright.Seeds#draws")
    void aCoupleIsTwoForces(Draw draw) {
        double force = draw.between(-900, 900);
        double at = draw.between(-30, 80);
        double apart = draw.between(1, 60);
        double inner = draw.between(10, 20);
        double outer = inner + draw.between(10, 40);
        double section = draw.between(-5, outer);
        double couple = force * apart / 1000;
        double pair = Axle.bendingNm(section, force, at + apart, inner, outer)
                - Axle.bendingNm(section, force, at, inner, outer);
        assertThat(Axle.coupledNm(section, couple, inner, outer)).isCloseTo(pair, within(1e-9));
        assertThat(Axle.coupleN(couple, inner, outer) * (outer - inner) / 1000).isCloseTo(couple, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void meanAndAmplitudeReachBothStates(Draw draw) {
        double up = draw.between(0, 50);
        double fore = draw.between(-30, 30);
        assertThat(Axle.amplitude(up, fore, 0, 0)).isCloseTo(Axle.resultant(up, fore) / 2, within(1e-12));
        assertThat(Axle.mean(up, fore, up, fore)).isCloseTo(Axle.resultant(up, fore), within(1e-12));
        assertThat(Axle.amplitude(up, fore, up, fore)).isZero();
        assertThat(Axle.mean(up, fore, -up, -fore)).isZero();
    }

    @ParameterizedTest // a bend that comes and goes is kinder to an axle than turning under it is to a shaft
    @MethodSource("beltwright.Seeds#draws")
    void standingStillIsKinderThanTurning(Draw draw) {
        double tensile = draw.between(400, 1200);
        double bending = draw.between(20, 300);
        double notch = draw.between(1, 2.5);
        double limit =
                Fatigue.limitMpa(tensile, Fatigue.surfaceFactor(tensile), Fatigue.sizeFactor(8), Fatigue.RELIABLE_99);
        assertThat(Fatigue.standingFactor(0, bending, notch, limit, tensile))
                .isGreaterThan(Fatigue.turningFactor(bending, notch, limit));
        assertThat(Fatigue.standingFactor(-bending, bending, notch, limit, tensile))
                .isCloseTo(Fatigue.turningFactor(bending, notch, limit), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void anAxleThatStandsStillCountsAsASmallerOne(Draw draw) {
        double diameter = draw.between(3, 50);
        assertThat(Fatigue.standingSizeFactor(diameter))
                .isGreaterThanOrEqualTo(Math.min(1, Fatigue.sizeFactor(diameter)))
                .isLessThanOrEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void theNutsPullComesOnTopOfTheBend(Draw draw) {
        double bending = draw.between(50, 300);
        double axial = Axle.axialMpa(draw.between(1000, 9000), draw.between(6, 10));
        double twist = draw.between(1, 50);
        double n = Axle.yieldFactor(900, bending, 0, 0);
        assertThat(n).isCloseTo(900 / bending, within(1e-9));
        assertThat(Axle.yieldFactor(900, bending, axial, 0)).isLessThan(n);
        assertThat(Axle.yieldFactor(900, bending, axial, twist))
                .isLessThan(Axle.yieldFactor(900, bending, axial, 0))
                .isGreaterThan(900 / (bending + axial + Math.sqrt(3) * twist));
    }
}
