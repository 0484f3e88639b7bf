package beltwright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// A stop takes no more grip than the stance of its rider gives, and a brake is not said to hold more than it does.
class StanceTest {
    private static final Board BOARD = Boards.usual();

    @Tag("law") // the share is written once, the moments about the axles a second time
    @Test
    void anUprightRiderBrakesAsHardAsTheMomentsAllow() {
        var road = BOARD.road();
        assertThat(BOARD.upright().road().gripN(0, true)).isCloseTo(road.rigidGripN(true), within(1e-9));
        assertThat(BOARD.upright().road().gripN(0, true) / road.massKg()).isLessThan(road.tipsAtMps2());
        assertThat(BOARD.upright().road().gripN(0, false)).isEqualTo(road.gripN(0, false));
    }

    @Test
    void standingUprightNeverGivesMoreThanWasTyped() {
        var r = BOARD.road();
        var little = new Road(
                r.massKg(),
                r.inertiaKg(),
                r.rollingShare(),
                r.dragAreaM2(),
                r.airKgM3(),
                r.bearingN(),
                r.headWindMps(),
                r.gripShare(),
                r.drivenShare(),
                0.1,
                r.massHeightM(),
                r.wheelbaseM());
        assertThat(little.upright().drivenBrakingShare()).isEqualTo(0.1);
    }

    @Test
    void oneWheelCarriesHalfOfItsAxle() {
        var road = BOARD.road();
        assertThat(road.onWheels(1).gripN(0, true)).isCloseTo(road.gripN(0, true) / 2, within(1e-9));
        assertThat(road.onWheels(2)).isEqualTo(road);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 6, 20, 60})
    void theStopOfAnUprightRiderIsNeverShorter(double mps) {
        var upright = new Steady(BOARD.upright()).stop(mps / 3.6, BOARD.charge());
        var leaning = new Steady(BOARD.leaningBack()).stop(mps / 3.6, BOARD.charge());
        assertThat(upright.wayM()).isGreaterThanOrEqualTo(leaning.wayM());
    }

    @Tag("law") // on the slope that is held, the load of a slow board is the brake and nothing is left over
    @ParameterizedTest
    @ValueSource(doubles = {0, 5, 40, 200})
    void aSlopeThatIsHeldIsInBalance(double brakeN) {
        var road = BOARD.road();
        double sine = Road.sine(road.heldPercent(brakeN));
        double balance = road.slopeN(sine) - road.rollingN(sine) - road.bearingN() - brakeN;
        assertThat(balance).isCloseTo(0, within(1e-9));
    }

    @Test
    void aBrakeStrongerThanTheWeightHoldsAnySlope() {
        assertThat(BOARD.road().heldPercent(2 * 9.81 * BOARD.road().massKg())).isInfinite();
    }
}
