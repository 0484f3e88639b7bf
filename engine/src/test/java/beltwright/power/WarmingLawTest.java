package beltwright.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class WarmingLawTest {
    @ParameterizedTest // independent of the formula: warmth followed second by second
    @MethodSource("beltwright.Seeds#draws")
    void oneStretchEndsAtTheWarmthOfSteadyWork(Draw draw) {
        double constant = draw.between(300, 3000);
        double time = draw.between(60, 900);
        double heat = Math.pow(Warming.onceFactor(time, constant), 2);
        double warmth = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            warmth += (heat - warmth) / constant * time / steps;
        }
        assertThat(warmth).isCloseTo(1, within(0.001));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void withoutRestNothingIsGained(Draw draw) {
        double time = draw.between(60, 900);
        assertThat(Warming.repeatedFactor(time, 1200, 0, 1800)).isCloseTo(1, within(1e-12));
        assertThat(Warming.repeatedFactor(time, 1200, 60, 1800))
                .isGreaterThan(1)
                .isLessThan(Warming.onceFactor(time, 1200));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aSteadyCourseIsItsOwnMean(Draw draw) {
        double current = draw.between(1, 60);
        var course = List.of(new Warming.Leg(10, current, current), new Warming.Leg(3, current, current));
        assertThat(Warming.rootMeanSquare(course)).isCloseTo(current, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aRampInTwoLegsIsTheRampInOne(Draw draw) {
        double to = draw.between(1, 60);
        double cut = draw.between(0.1, 0.9);
        var whole = List.of(new Warming.Leg(1, 0, to));
        var parts = List.of(new Warming.Leg(cut, 0, cut * to), new Warming.Leg(1 - cut, cut * to, to));
        assertThat(Warming.rootMeanSquare(parts)).isCloseTo(Warming.rootMeanSquare(whole), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aWindingThatCoolsDownAgainIsWhatItWas(Draw draw) {
        double ohm = draw.between(0.01, 1);
        double warm = draw.between(30, 150);
        double there = MotorModel.resistanceOhm(ohm, 20, 0.00393, 20, warm);
        assertThat(there).isGreaterThan(ohm);
        assertThat(MotorModel.resistanceOhm(there, warm, 0.00393, 20, 20)).isCloseTo(ohm, within(1e-12));
    }

    @ParameterizedTest // work done by the brakes over the way is the energy they take
    @MethodSource("beltwright.Seeds#draws")
    void forceTimesWayIsTheEnergyOfAStop(Draw draw) {
        double mass = draw.between(50, 130);
        double speed = draw.between(1, 15);
        double deceleration = draw.between(0.5, 5);
        assertThat(mass * deceleration * Stopping.wayM(speed, deceleration))
                .isCloseTo(Stopping.energyJ(mass, speed), within(1e-8));
        assertThat(speed * Stopping.timeS(speed, deceleration) / 2)
                .isCloseTo(Stopping.wayM(speed, deceleration), within(1e-9));
    }
}
