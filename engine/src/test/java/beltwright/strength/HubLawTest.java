package beltwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import beltwright.strength.PressFit.Stuff;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("law")
class HubLawTest {
    private static final Stuff STEEL = new Stuff(207_000, 0.292, 11.5e-6);
    private static final Stuff LIGHT = new Stuff(70_000, 0.33, 23.6e-6);

    @ParameterizedTest // one material: the short formula of a solid shaft
    @MethodSource("beltwright.Seeds#draws")
    void oneMaterialIsTheShortFormula(Draw draw) {
        double d = draw.between(5, 20);
        double hub = d * draw.between(1.2, 4);
        double interference = draw.between(0.001, 0.04);
        assertThat(PressFit.pressureMpa(interference, 0, d, hub, STEEL, STEEL))
                .isCloseTo(207_000 * interference / (2 * d) * (1 - d * d / (hub * hub)), within(1e-9));
    }

    @ParameterizedTest // independent of the formula: what the bore grows and the shaft shrinks is the interference
    @MethodSource("beltwright.Seeds#draws")
    void strainsAddUpToTheInterference(Draw draw) {
        double inner = draw.between(0, 4);
        double d = draw.between(5, 20);
        double hub = d * draw.between(1.2, 4);
        double interference = draw.between(0.001, 0.04);
        double p = PressFit.pressureMpa(interference, inner, d, hub, STEEL, LIGHT);
        double bore = d * (PressFit.hubHoopMpa(p, d, hub) + LIGHT.poisson() * p) / LIGHT.youngMpa();
        double shaft = d * (PressFit.shaftHoopMpa(p, inner, d) + STEEL.poisson() * p) / STEEL.youngMpa();
        assertThat(bore - shaft).isCloseTo(interference, within(1e-12));
    }

    @ParameterizedTest // balance of half a hub: hoop pull of a thin one carries the pressure on its bore
    @MethodSource("beltwright.Seeds#draws")
    void aThinHubIsAPipe(Draw draw) {
        double d = draw.between(10, 20);
        double wall = d * 0.001;
        double p = draw.between(1, 20);
        assertThat(PressFit.hubHoopMpa(p, d, d + 2 * wall)).isCloseTo(p * d / (2 * wall), within(p));
        assertThat(PressFit.hubStressMpa(p, d, d + 2 * wall)).isGreaterThan(PressFit.hubHoopMpa(p, d, d + 2 * wall));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void warmthLoosensALightHubAndPlayHoldsNothing(Draw draw) {
        double d = draw.between(5, 20);
        double interference = draw.between(0.001, 0.02);
        double warm = PressFit.interferenceMm(interference, d, STEEL, LIGHT, 60);
        assertThat(warm).isLessThan(interference);
        assertThat(PressFit.interferenceMm(interference, d, STEEL, STEEL, 60)).isEqualTo(interference);
        assertThat(PressFit.pressureMpa(-interference, 0, d, 2 * d, STEEL, LIGHT))
                .isZero();
        double p = PressFit.pressureMpa(interference, 0, d, 2 * d, STEEL, LIGHT);
        assertThat(PressFit.torqueNm(p, 0.12, d, 10))
                .isCloseTo(PressFit.axialN(p, 0.12, d, 10) * d / 2000, within(1e-9))
                .isPositive();
    }

    @Test
    void anUnknownInterferenceStaysUnknown() {
        assertThat(PressFit.pressureMpa(Double.NaN, 0, 10, 20, STEEL, STEEL)).isNaN();
    }

    @ParameterizedTest // independent of the formula: pressure summed around the section, as a cosine and as lines
    @MethodSource("beltwright.Seeds#draws")
    void linesHoldLeastAndEvenPressureMost(Draw draw) {
        double press = ClampGrip.pressN(draw.whole(1, 4), draw.between(1000, 5000), 1, 1);
        double d = draw.between(10, 25);
        double lines = ClampGrip.twoLinesNm(press, 0.12, d);
        double even = ClampGrip.evenNm(press, 0.12, d);
        double sum = 0;
        double pull = 0;
        int steps = 10_000;
        for (int i = 0; i < steps; i++) {
            double angle = Math.PI * ((i + 0.5) / steps - 0.5);
            sum += Math.cos(angle);
            pull += Math.cos(angle) * Math.cos(angle);
        }
        double cosine = 2 * 0.12 * press * sum / pull * d / 2000;
        assertThat(cosine).isBetween(lines, even);
        assertThat(ClampGrip.roundNm(press, 0.12, d)).isEqualTo(lines);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aSlitClampGainsByItsLever(Draw draw) {
        double arm = draw.between(10, 20);
        double press = ClampGrip.pressN(2, 3000, arm, arm);
        assertThat(press).isCloseTo(6000, within(1e-9));
        assertThat(ClampGrip.pressN(2, 3000, 2 * arm, arm)).isCloseTo(2 * press, within(1e-9));
    }

    @ParameterizedTest // independent of the formula: a triangle of pressure on either flat, summed in strips
    @MethodSource("beltwright.Seeds#draws")
    void flatsBearATriangleOfPressure(Draw draw) {
        double b = draw.between(8, 30);
        double length = draw.between(10, 40);
        double p = draw.between(50, 300);
        int strips = 2000;
        double sum = 0;
        double lift = 0;
        for (int i = 0; i < strips; i++) {
            double x = b / 2 * (i + 0.5) / strips;
            sum += 2 * p * x / (b / 2) * x * length * b / 2 / strips;
            // just lifting: pressure goes from nothing at one edge to twice the mean at the other
            lift += 2 * 2 * x / b * 2 * x / b * b / 2 / strips;
        }
        assertThat(ClampGrip.crushNm(b, length, p)).isCloseTo(sum / 1000, within(1e-5 * sum));
        assertThat(ClampGrip.liftNm(5000, b)).isCloseTo(5000 * lift / 1000, within(1e-4 * lift * 5000));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void theWorstScrewOfACircleCarriesTorqueAndSide(Draw draw) {
        int screws = draw.whole(2, 8);
        double circle = draw.between(20, 60);
        double torque = draw.between(1, 30);
        double side = draw.between(0, 800);
        double worst = FlangeGrip.worstScrewN(screws, torque, circle, side);
        assertThat(FlangeGrip.worstScrewN(screws, torque, circle, 0) * screws * circle / 2000)
                .isCloseTo(torque, within(1e-9));
        assertThat(worst).isGreaterThanOrEqualTo(side / screws);
        assertThat(FlangeGrip.frictionNm(screws, worst / 0.12, 0.12, circle)).isGreaterThanOrEqualTo(torque - 1e-9);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aPinThatIsStrongEnoughInShearAndWallIsStrongEnough(Draw draw) {
        double d = draw.between(2, 6);
        double circle = draw.between(20, 60);
        double shear = FlangeGrip.shearNm(2, d, 300, circle);
        assertThat(FlangeGrip.shearNm(4, d, 300, circle)).isCloseTo(2 * shear, within(1e-9));
        double depth = 300 * Math.PI / 4 * d / 400; // wall and pin give together
        assertThat(FlangeGrip.bearingNm(2, d, depth, 400, circle)).isCloseTo(shear, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void lengthToTorqueToLengthOfAKey(Draw draw) {
        double width = draw.between(2, 8);
        double torque = draw.between(1, 50);
        double length = Key.shearLengthMm(torque, width, 200, 10);
        assertThat(Key.shearNm(width, length, 200, 10)).isCloseTo(torque, within(1e-9));
        double side = Key.bearingLengthMm(torque, width / 2, 400, 10);
        assertThat(Key.bearingNm(width / 2, side, 400, 10)).isCloseTo(torque, within(1e-9));
        assertThat(side).isCloseTo(length, within(1e-9)); // a square key whose side bears twice its shear
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aLargerSetScrewHoldsMore(Draw draw) {
        double screw = draw.between(1.6, 12);
        assertThat(SetScrewHold.holdingN(screw + 0.6)).isGreaterThan(SetScrewHold.holdingN(screw));
        assertThat(SetScrewHold.seatingNm(screw + 0.6)).isGreaterThan(SetScrewHold.seatingNm(screw));
        double half = SetScrewHold.seatingNm(screw) / 2;
        assertThat(SetScrewHold.holdingN(screw, half)).isCloseTo(SetScrewHold.holdingN(screw) / 2, within(1e-9));
        double steady = SetScrewHold.steadyNm(SetScrewHold.holdingN(screw), 8);
        assertThat(SetScrewHold.reversingNm(SetScrewHold.holdingN(screw), 8)).isCloseTo(steady / 4, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.5, 12.8, Double.NaN})
    void saysNothingOfSetScrewsThatTheTableDoesNotHold(double screw) {
        assertThat(SetScrewHold.holdingN(screw)).isNaN();
        assertThat(SetScrewHold.seatingNm(screw)).isNaN();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 59, 181, Double.NaN})
    void saysNothingOfAnglesThatTheChartDoesNotHold(double apart) {
        assertThat(SetScrewHold.twoScrews(apart)).isNaN();
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void twoScrewsHoldMoreThanOneAndLessThanTwo(Draw draw) {
        double apart = draw.between(60, 179);
        assertThat(SetScrewHold.twoScrews(apart)).isBetween(1.0, 2.0);
        assertThat(SetScrewHold.twoScrews(apart + 1)).isLessThan(SetScrewHold.twoScrews(apart));
    }

    @ParameterizedTest // independent of the formula: pressure on half of the tip's disc, summed in strips
    @MethodSource("beltwright.Seeds#draws")
    void aFlatIsTurnedByHalfATip(Draw draw) {
        double tip = draw.between(1.5, 5);
        int strips = 4000;
        double sum = 0;
        for (int i = 0; i < strips; i++) {
            double x = tip / 2 * (i + 0.5) / strips;
            sum += 500 * x * 2 * Math.sqrt(tip * tip / 4 - x * x) * tip / 2 / strips;
        }
        assertThat(SetScrewHold.onFlatNm(tip, 500)).isCloseTo(sum / 1000, within(1e-5 * sum));
        assertThat(SetScrewHold.tipBearingNm(tip, Math.PI / 4 * tip, 500, 8))
                .isCloseTo(SetScrewHold.tipShearNm(tip, 500, 8), within(1e-9));
    }
}
