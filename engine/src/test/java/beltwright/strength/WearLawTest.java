package beltwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import beltwright.quantity.Refusal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("law")
class WearLawTest {
    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void twiceTheLoadLeavesAnEighthOfTheLife(Draw draw) {
        double rating = draw.between(1000, 6000);
        double load = draw.between(50, 500);
        assertThat(BearingLife.hours(rating, 2 * load, 1000) * 8)
                .isCloseTo(BearingLife.hours(rating, load, 1000), within(1e-6 * Math.pow(rating / load, 3)));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void lifeToRatingToLife(Draw draw) {
        double load = draw.between(50, 500);
        double turns = draw.between(1, 5000);
        assertThat(BearingLife.millionTurns(BearingLife.ratingN(load, turns), load))
                .isCloseTo(turns, within(1e-8));
    }

    @ParameterizedTest // Miner's rule, independent of the formula: the lives used up under each load add up to one
    @MethodSource("beltwright.Seeds#draws")
    void aMixedLoadUsesUpOneLife(Draw draw) {
        double[] turns = {draw.between(1, 50), draw.between(1, 50)};
        double[] loads = {draw.between(50, 500), draw.between(50, 500)};
        double life = BearingLife.millionTurns(3000, BearingLife.meanLoadN(turns, loads));
        double scale = life / (turns[0] + turns[1]);
        double used = scale * turns[0] / BearingLife.millionTurns(3000, loads[0])
                + scale * turns[1] / BearingLife.millionTurns(3000, loads[1]);
        assertThat(used).isCloseTo(1, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void nineOfTenIsTheRatedLifeItself(Draw draw) {
        double turns = draw.between(1, 5000);
        assertThat(BearingLife.ratedTurns(turns, 0.9, 1.17)).isCloseTo(turns, within(1e-9));
        assertThat(BearingLife.ratedTurns(turns, 0.98, 1.17)).isGreaterThan(turns);
    }

    @ParameterizedTest // at the limit e both ways of reckoning the load nearly agree
    @MethodSource("beltwright.Seeds#draws")
    void theTwoLoadsMeetAtTheAxialLimit(Draw draw) {
        double share = draw.between(0.172, 6.89);
        double e = BearingLife.axialLimit(share);
        double loaded =
                BearingLife.equivalentN(1000, 1000 * e, 1, BearingLife.RADIAL_FACTOR, BearingLife.axialFactor(share));
        assertThat(loaded).isCloseTo(1000, within(20.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.17, 6.9, Double.NaN})
    void refusesAxialLoadsThatTheTableDoesNotHold(double share) {
        assertThatThrownBy(() -> BearingLife.axialFactor(share))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("0.172 to 6.89");
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void amplitudeToTurnsToAmplitude(Draw draw) {
        double tensile = draw.between(400, 1200);
        double limit = 0.4 * tensile;
        double amplitude = draw.between(0.42, 0.85) * tensile;
        double turns = Fatigue.turns(tensile, 0.9, limit, amplitude);
        assertThat(turns).isBetween(1e3, 1e6);
        assertThat(Fatigue.amplitudeMpa(tensile, 0.9, limit, turns)).isCloseTo(amplitude, within(1e-8));
    }

    @ParameterizedTest // a bend that swells and fades is kinder than one of the same height that reverses
    @MethodSource("beltwright.Seeds#draws")
    void anAxleThatStandsStillIsSafer(Draw draw) {
        double tensile = draw.between(400, 1200);
        double highest = draw.between(20, 300);
        assertThat(Fatigue.goodman(highest / 2, highest / 2, 0.4 * tensile, tensile))
                .isGreaterThan(Fatigue.goodman(highest, 0, 0.4 * tensile, tensile));
    }

    @ParameterizedTest // independent of the formula: the circle of stress, turned step by step
    @MethodSource("beltwright.Seeds#draws")
    void noDirectionIsStressedMoreThanTheLargest(Draw draw) {
        double bending = draw.between(0, 300);
        double twist = draw.between(0, 200);
        double most = 0;
        for (double turned = 0; turned < Math.PI; turned += 1e-4) {
            double c = Math.cos(turned);
            double s = Math.sin(turned);
            most = Math.max(most, bending * c * c + 2 * twist * s * c);
        }
        assertThat(ShaftStress.largestMpa(bending, twist)).isCloseTo(most, within(1e-4));
    }

    @ParameterizedTest // parts and screw move together: what the screw gains and the parts lose is the pull
    @MethodSource("beltwright.Seeds#draws")
    void screwAndPartsShareThePullByStiffness(Draw draw) {
        double screw = BoltedJoint.screwStiffness(19.6, 14.2, draw.between(0, 10), draw.between(2, 10), 206_000);
        double parts = BoltedJoint.partsStiffness(5, draw.between(5, 20), 70_000);
        double share = BoltedJoint.screwShare(screw, parts);
        double longer = 1000 / (screw + parts);
        assertThat(BoltedJoint.screwForceN(3000, share, 1000)).isCloseTo(3000 + screw * longer, within(1e-8));
    }
}
