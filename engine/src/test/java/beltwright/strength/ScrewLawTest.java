package beltwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import beltwright.part.PropertyClass;
import beltwright.part.ScrewHead;
import beltwright.part.Thread;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class ScrewLawTest {
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void forceToEngagementToForce(Draw draw) {
        var thread = Thread.values()[draw.whole(0, Thread.values().length - 1)];
        double shear = draw.between(30, 300);
        double force = draw.between(100, 20_000);
        double engagement = ThreadStrip.engagementMm(thread, force, shear);
        assertThat(ThreadStrip.forceN(thread, engagement, shear)).isCloseTo(force, within(1e-8));
    }

    @ParameterizedTest // independent of the formula: what is sheared lies between the minor and the major cylinder
    @EnumSource(Thread.class)
    void theShearedAreaIsAShareOfTheCylinder(Thread thread) {
        assertThat(ThreadStrip.areaPerMm(thread))
                .isBetween(0.5 * Math.PI * thread.majorMm(), Math.PI * thread.majorMm());
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void torqueGrowsWithPreloadAndWithFriction(Draw draw) {
        var thread = Thread.values()[draw.whole(0, Thread.values().length - 1)];
        double preload = draw.between(500, 20_000);
        double friction = draw.between(0.1, 0.2);
        double head = Tightening.headFrictionMm(thread, ScrewHead.CAP);
        double torque = Tightening.torqueNm(thread, preload, friction, head);
        assertThat(Tightening.torqueNm(thread, 2 * preload, friction, head)).isCloseTo(2 * torque, within(1e-9));
        assertThat(Tightening.torqueNm(thread, preload, friction + 0.01, head)).isGreaterThan(torque);
    }

    @ParameterizedTest // work in = work out: without friction one turn of torque lifts the preload by one pitch
    @EnumSource(Thread.class)
    void withoutFrictionATurnLiftsOnePitch(Thread thread) {
        double torque = Tightening.torqueNm(thread, 1000, 0, 10);
        assertThat(torque * 2 * Math.PI).isCloseTo(1000 * thread.pitchMm() / 1000, within(0.001 * thread.pitchMm()));
    }

    @ParameterizedTest
    @EnumSource(Thread.class)
    void theHighestPreloadStaysUnderTheProofLoad(Thread thread) {
        double proof = PropertyClass.C12_9.proofMpa() * thread.stressAreaMm2();
        double aimed = Tightening.preloadN(thread, PropertyClass.C12_9);
        double highest = FrictionGrip.highestN(aimed, FrictionGrip.HAND_KEY);
        assertThat(highest).isLessThan(proof).isGreaterThan(aimed);
    }

    @ParameterizedTest
    @EnumSource(Thread.class)
    void aTapDrillLeavesThreadAndAClearanceHoleLeavesRoom(Thread thread) {
        assertThat(thread.tapDrillMm()).isBetween(thread.minorDiameterMm(), thread.pitchDiameterMm());
        assertThat(thread.clearanceHoleMm()).isGreaterThan(thread.majorMm());
        assertThat(thread.stressAreaMm2())
                .isLessThan(Math.PI / 4 * thread.pitchDiameterMm() * thread.pitchDiameterMm())
                .isGreaterThan(Math.PI / 4 * thread.minorDiameterMm() * thread.minorDiameterMm());
    }
}
