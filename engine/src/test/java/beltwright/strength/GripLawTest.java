package beltwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class GripLawTest {
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void preloadToSlipToPreload(Draw draw) {
        int screws = draw.whole(1, 6);
        double preload = draw.between(500, 6000);
        double friction = draw.between(0.1, 0.15);
        double slip = FrictionGrip.slipN(screws, preload, friction, 1);
        assertThat(FrictionGrip.preloadN(screws, slip, friction, 1)).isCloseTo(preload, within(1e-8));
        assertThat(FrictionGrip.slipN(screws, preload, friction, 2)).isCloseTo(2 * slip, within(1e-8));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void theAimLiesMidwayBetweenItsLimits(Draw draw) {
        double aim = draw.between(500, 6000);
        for (double scatter : new double[] {FrictionGrip.HAND_KEY, FrictionGrip.TORQUE_KEY, FrictionGrip.ANGLE}) {
            double low = FrictionGrip.lowestN(aim, scatter);
            double high = FrictionGrip.highestN(aim, scatter);
            assertThat(low).isBetween(0.0, aim);
            assertThat((low + high) / 2).isCloseTo(aim, within(1e-9));
        }
        assertThat(FrictionGrip.lowestN(aim, FrictionGrip.TORQUE_KEY))
                .isGreaterThan(FrictionGrip.lowestN(aim, FrictionGrip.HAND_KEY));
    }

    @ParameterizedTest // two springs in a row: what they give up together is what settled
    @MethodSource("beltwright.Seeds#draws")
    void screwAndPartsGiveUpWhatSettled(Draw draw) {
        double screw = draw.between(20_000, 200_000);
        double parts = draw.between(100_000, 900_000);
        double settled = FrictionGrip.settledUm(draw.whole(1, 2), draw.whole(1, 3));
        double lost = FrictionGrip.lostN(settled, screw, parts);
        assertThat(1000 * (lost / screw + lost / parts)).isCloseTo(settled, within(1e-9));
    }

    @ParameterizedTest // statics: the screw pulls as hard as the parts press and the outside pulls
    @MethodSource("beltwright.Seeds#draws")
    void screwBalancesClampAndPull(Draw draw) {
        double preload = draw.between(500, 6000);
        double share = draw.between(0.05, 0.6);
        double pull = draw.between(0, 3000);
        assertThat(BoltedJoint.screwForceN(preload, share, pull))
                .isCloseTo(BoltedJoint.clampN(preload, share, pull) + pull, within(1e-9));
        double parts = BoltedJoint.separationFactor(preload, share, pull);
        assertThat(BoltedJoint.clampN(preload, share, parts * pull)).isCloseTo(0, within(1e-6));
        double more = BoltedJoint.loadFactor(830, 14.2, preload, share, pull);
        assertThat(BoltedJoint.screwFactor(830, 14.2, preload, share, more * pull))
                .isCloseTo(1, within(1e-9));
    }

    @ParameterizedTest // the closed formula is that of two equal cones
    @MethodSource("beltwright.Seeds#draws")
    void twoConesMakeTheJoint(Draw draw) {
        double screw = draw.between(3, 10);
        double grip = draw.between(4, 30);
        double cone = BoltedJoint.coneStiffness(1.5 * screw, screw, grip / 2, 70_000);
        double joint = BoltedJoint.partsStiffness(screw, grip, 70_000);
        assertThat(BoltedJoint.inSeries(cone, cone)).isCloseTo(joint, within(1e-3 * joint));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aSlotWithoutLengthIsAHole(Draw draw) {
        double hole = draw.between(3.2, 5.5);
        double head = hole + draw.between(0.5, 6);
        assertThat(HeadPressure.overSlotMm2(head, hole, 0, 0))
                .isCloseTo(HeadPressure.overHoleMm2(head, hole), within(1e-9));
    }

    @ParameterizedTest // independent of the formula: the area is cut into thin strips across the slot
    @MethodSource("beltwright.Seeds#draws")
    void theAreaOverASlotIsTheSumOfItsStrips(Draw draw) {
        double slot = draw.between(3.2, 5.5);
        double head = slot + draw.between(0.5, 6);
        double one = draw.between(0, 6);
        double other = draw.between(0, 6);
        int strips = 20_000;
        double sum = 0;
        for (int i = 0; i < strips; i++) {
            double x = head * ((i + 0.5) / strips - 0.5);
            double beyond = Math.max(0, Math.max(x - one, -x - other));
            double open = Math.sqrt(Math.max(0, slot * slot / 4 - beyond * beyond));
            sum += 2 * Math.max(0, Math.sqrt(head * head / 4 - x * x) - open) * head / strips;
        }
        assertThat(HeadPressure.overSlotMm2(head, slot, one, other)).isCloseTo(sum, within(1e-4 * head * head));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aLongerSlotLeavesLessToPressOn(Draw draw) {
        double slot = draw.between(3.2, 5.5);
        double head = slot + draw.between(0.5, 6);
        double one = draw.between(0, 6);
        double area = HeadPressure.overSlotMm2(head, slot, one, 1);
        assertThat(HeadPressure.overSlotMm2(head, slot, one + 0.5, 1)).isLessThanOrEqualTo(area + 1e-9);
        assertThat(HeadPressure.overSlotMm2(head, slot, 1, one)).isCloseTo(area, within(1e-9));
        assertThat(HeadPressure.overLongSlotMm2(head, slot)).isBetween(0.0, area);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aWasherSpreadsNoFurtherThanItself(Draw draw) {
        double head = draw.between(5, 10);
        double washer = head + draw.between(0, 6);
        double thick = draw.between(0.5, 2);
        assertThat(HeadPressure.spreadMm(head, washer, thick)).isBetween(head, washer);
        assertThat(HeadPressure.pressureMpa(3000, HeadPressure.overHoleMm2(washer, 4.5)))
                .isLessThanOrEqualTo(HeadPressure.pressureMpa(3000, HeadPressure.overHoleMm2(head, 4.5)));
    }
}
