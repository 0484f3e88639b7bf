package beltwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import beltwright.part.PropertyClass;
import beltwright.part.Thread;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class PlateLawTest {
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aRoundSlotIsAHoleInAWidePlate(Draw draw) {
        double hole = draw.between(3, 8);
        assertThat(Plate.slotFactor(hole, hole / 2)).isEqualTo(3);
        assertThat(Plate.holeFactor(hole, 1e6 * hole)).isCloseTo(3, within(1e-4));
        assertThat(Plate.slotFactor(hole + 5, hole / 2)).isGreaterThan(3);
        assertThat(Plate.holeFactor(hole, 2 * hole)).isBetween(2.0, 3.0);
    }

    /// What finite elements find of slots 4.5 mm wide in a wide plate, rounded to two places.
    @ParameterizedTest
    @CsvSource({"1, 2.62", "2.25, 2.49", "4.5, 2.40", "9, 2.30", "13.5, 2.25", "27, 2.19"})
    void aSlotAlongThePullIsMilderTheLongerItIs(double travel, double found) {
        assertThat(Plate.slotAlongFactor(travel, 4.5)).isCloseTo(found, within(0.05 * found));
        assertThat(Plate.slotAlongFactor(2 * travel, 4.5)).isLessThan(Plate.slotAlongFactor(travel, 4.5));
        assertThat(Plate.slotAlongFactor(0, 4.5)).isEqualTo(3);
        assertThat(Plate.bentSlotFactor(travel, 4.5, 8) / Plate.bentHoleFactor(4.5, 8))
                .isCloseTo(Plate.slotAlongFactor(travel, 4.5) / 3, within(1e-12));
    }

    @Test // a hole that is small against the thickness is a hole under pull; a large one that of thin plates, ν = 0.3
    void aBentHoleLiesBetweenPullAndThinPlate() {
        assertThat(Plate.bentHoleFactor(1e-6, 8)).isCloseTo(3, within(0.03));
        assertThat(Plate.bentHoleFactor(1e6, 8)).isCloseTo((5 + 3 * 0.3) / (3 + 0.3), within(0.005));
        assertThat(Plate.bentHoleFactor(4.5, 8)).isCloseTo(2.447, within(0.001)); // the formula by hand, x = 0.5625
        assertThat(Plate.bentHoleFactor(8, 8)).isCloseTo(2.245, within(0.001)); // x = 1
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void beamStressBesideASlotRisesWithItsPlace(Draw draw) {
        double width = draw.between(30, 60);
        double slot = draw.between(3, 6);
        double off = draw.between(6, 10);
        double edge = Plate.edgewiseMpa(20, width, 6, 0, 0, 10);
        assertThat(Plate.besideSlotMpa(20, width, 6, slot, width / 2 - slot / 2, 10))
                .isCloseTo(edge, within(1e-9));
        assertThat(Plate.besideSlotMpa(20, width, 6, slot, off, 10) / edge)
                .isCloseTo((2 * off + slot) / width, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void slotsTakeFromAPlate(Draw draw) {
        double width = draw.between(30, 60);
        double slot = draw.between(3, 6);
        double net = Plate.netMm(width, 2, slot);
        assertThat(Plate.flatwiseMpa(5, net, 6) / Plate.flatwiseMpa(5, width, 6))
                .isCloseTo(width / net, within(1e-9));
        assertThat(Plate.pullMpa(500, net, 6) * net * 6).isCloseTo(500, within(1e-9));
        assertThat(Plate.flatwiseMpa(5, net, 12)).isCloseTo(Plate.flatwiseMpa(5, net, 6) / 4, within(1e-9));
    }

    @ParameterizedTest // independent of the formula: stress in proportion to height, its moments summed in strips
    @MethodSource("beltwright.Seeds#draws")
    void edgewiseStressBalancesTheBending(Draw draw) {
        double width = draw.between(30, 60);
        double thick = draw.between(4, 8);
        double slot = draw.between(0, 6);
        double off = draw.between(4, 10);
        double edge = Plate.edgewiseMpa(20, width, thick, slot, off);
        int strips = 20_000;
        double moment = 0;
        for (int i = 0; i < strips; i++) {
            double y = width * ((i + 0.5) / strips - 0.5);
            boolean open = Math.abs(Math.abs(y) - off) < slot / 2;
            moment += open ? 0 : edge * y / (width / 2) * y * thick * width / strips;
        }
        assertThat(moment / 1000).isCloseTo(20, within(0.01));
        assertThat(Plate.edgewiseMpa(20, width, thick, 0, off))
                .isCloseTo(Plate.flatwiseMpa(20, thick, width), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void fatigueGoesThroughBothPointsAndFalls(Draw draw) {
        double high = draw.between(150, 250);
        double turns = draw.between(1e5, 1e8);
        assertThat(Plate.fatigueMpa(1e3, 1e3, high, 5e8, 96.5)).isCloseTo(high, within(1e-9));
        assertThat(Plate.fatigueMpa(5e8, 1e3, high, 5e8, 96.5)).isCloseTo(96.5, within(1e-9));
        assertThat(Plate.fatigueMpa(2 * turns, 1e3, high, 5e8, 96.5))
                .isBetween(96.5, Plate.fatigueMpa(turns, 1e3, high, 5e8, 96.5));
        // the two-point line of steel is the same line
        assertThat(Plate.fatigueMpa(1e5, 1e3, 0.9 * 600, 1e6, 250))
                .isCloseTo(Fatigue.amplitudeMpa(600, 0.9, 250, 1e5), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aPlasticLosesByWarmth(Draw draw) {
        double soft = draw.between(50, 150);
        double warm = draw.between(24, 50);
        assertThat(Plate.heatShare(23, soft)).isEqualTo(1);
        assertThat(Plate.heatShare(-10, soft)).isEqualTo(1);
        assertThat(Plate.heatShare(soft + 1, soft)).isZero();
        assertThat(Plate.heatShare(warm, soft)).isBetween(0.0, 1.0);
        assertThat(Plate.heatShare(warm + 1, soft)).isLessThanOrEqualTo(Plate.heatShare(warm, soft));
    }

    @ParameterizedTest // the pull beyond the front bearing: forces and moments balance
    @MethodSource("beltwright.Seeds#draws")
    void motorBearingsBalanceThePull(Draw draw) {
        double pull = draw.between(50, 900);
        double overhang = draw.between(5, 25);
        double apart = draw.between(20, 60);
        double front = StaticBearing.frontN(pull, overhang, apart);
        double rear = StaticBearing.rearN(pull, overhang, apart);
        assertThat(front - rear).isCloseTo(pull, within(1e-9));
        assertThat(rear * apart / 1000).isCloseTo(StaticBearing.bendingNm(pull, overhang), within(1e-9));
        assertThat(front).isGreaterThan(pull);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aStandingBearingFeelsAtLeastItsRadialLoad(Draw draw) {
        double radial = draw.between(10, 900);
        double axial = draw.between(0, 900);
        double load = StaticBearing.equivalentN(radial, axial);
        assertThat(load).isGreaterThanOrEqualTo(radial);
        assertThat(StaticBearing.equivalentN(radial, 0.8 * radial)).isCloseTo(radial, within(1e-9));
        assertThat(StaticBearing.safety(load, load)).isEqualTo(1);
        assertThat(StaticBearing.lifeKm(1000, 100)).isCloseTo(1e9 * Math.PI * 1e-4, within(1e-3));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void teethShareThePull(Draw draw) {
        int mesh = draw.whole(4, 12);
        double pull = draw.between(50, 600);
        assertThat(ToothShear.toothN(pull, mesh, 1) * mesh).isCloseTo(pull, within(1e-9));
        assertThat(ToothShear.toothN(pull, mesh, 1.5)).isGreaterThan(ToothShear.toothN(pull, mesh, 1));
        double lug = ToothShear.lugN(20, 5, 25);
        assertThat(lug * 5 * 25 / 1000).isCloseTo(20, within(1e-9));
        // a lug as high as it is thick bears on its flank what it shears at its root
        assertThat(ToothShear.shearMpa(lug, 4, 8)).isEqualTo(ToothShear.bearingMpa(lug, 4, 8));
        assertThat(ToothShear.bendingMpa(lug, 4, 4, 8)).isCloseTo(6 * ToothShear.shearMpa(lug, 4, 8), within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(Thread.class)
    void weakerPartsWantMoreThread(Thread thread) {
        double tensile = PropertyClass.C8_8.tensileMpa();
        double steel = ThreadStrip.fullStrengthMm(thread, tensile, tensile);
        double light = ThreadStrip.fullStrengthMm(thread, tensile, 310);
        // common practice: about 0.8 of the diameter in steel, 1.5 and more in light metal
        assertThat(steel / thread.majorMm()).isBetween(0.4, 0.9);
        assertThat(light).isGreaterThan(1.5 * steel);
        assertThat(ThreadStrip.fullStrengthMm(thread, tensile, 10 * tensile)).isLessThanOrEqualTo(steel);
        // at that engagement the tapped thread carries what breaks the screw, at half of its tensile strength in shear
        assertThat(ThreadStrip.forceN(thread, light, 310 / 2.0))
                .isCloseTo(tensile * thread.stressAreaMm2(), within(1e-6 * tensile * thread.stressAreaMm2()));
    }
}
