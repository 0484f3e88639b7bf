package beltwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import java.util.ArrayList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// A chain of dimensions against a thousand parts drawn within their limits.
@Tag("law")
class RangeLawTest {
    private static final int SAMPLES = 1000;
    private static final Provenance DRAWN = new Provenance(Source.MEASURED, "drawn");

    private static Range range(Draw draw) {
        double low = draw.between(-40, 40);
        double nominal = low + draw.between(0, 2);
        return new Range(low, nominal, nominal + draw.between(0, 2));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void noSampleLeavesAChainAndItsEndsAreReached(Draw draw) {
        var members = new ArrayList<Range>();
        var sign = new ArrayList<Double>();
        var chain = Range.ZERO;
        for (int i = 0; i < 5; i++) {
            var member = range(draw);
            double times = draw.whole(0, 1) == 0 ? 1 : 0.5;
            boolean added = draw.whole(0, 1) == 0;
            members.add(member);
            sign.add(added ? times : -times);
            chain = added ? chain.plus(member.times(times)) : chain.minus(member.times(times));
        }
        double least = 0;
        double most = 0;
        for (int i = 0; i < 5; i++) {
            double a = sign.get(i) * members.get(i).low();
            double b = sign.get(i) * members.get(i).high();
            least += Math.min(a, b);
            most += Math.max(a, b);
        }
        assertThat(chain.low()).isCloseTo(least, within(1e-9));
        assertThat(chain.high()).isCloseTo(most, within(1e-9));
        for (int sample = 0; sample < SAMPLES; sample++) {
            double sum = 0;
            for (int i = 0; i < 5; i++) {
                sum += sign.get(i) * inside(draw, members.get(i));
            }
            assertThat(sum).isBetween(chain.low() - 1e-9, chain.high() + 1e-9);
        }
    }

    private static double inside(Draw draw, Range range) {
        return range.low() + draw.between(0, 1) * (range.high() - range.low());
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void sizeWithoutSignHoldsEverySample(Draw draw) {
        double low = draw.between(-3, 3);
        var range = new Range(low, low + 0.5, low + draw.between(0.5, 4));
        var size = range.absolute();
        double nearest = Double.POSITIVE_INFINITY;
        double furthest = 0;
        for (int sample = 0; sample <= SAMPLES; sample++) {
            double at = range.low() + (range.high() - range.low()) * sample / SAMPLES;
            nearest = Math.min(nearest, Math.abs(at));
            furthest = Math.max(furthest, Math.abs(at));
        }
        assertThat(size.low()).isCloseTo(nearest, within(0.01)).isLessThanOrEqualTo(nearest);
        assertThat(size.high()).isCloseTo(furthest, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void takingAwayIsAddingTheNegative(Draw draw) {
        var a = range(draw);
        var b = range(draw);
        assertThat(a.minus(b)).isEqualTo(a.plus(b.negated()));
        assertThat(b.negated().negated()).isEqualTo(b);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aDimensionIsItsRange(Draw draw) {
        var range = range(draw);
        var dimension = new Dimension("part.lengthMm", "", range.nominal(), range.low(), range.high(), DRAWN);
        var other = range(draw);
        assertThat(other.plus(dimension)).isEqualTo(other.plus(range));
        assertThat(other.minus(dimension)).isEqualTo(other.minus(range));
    }

    @Test
    void oneUnknownMakesTheChainUnknown() {
        var chain =
                Range.exact(3).plus(Dimension.unknown("part.lengthMm", DRAWN)).minus(Range.exact(1));
        assertThat(chain.known()).isFalse();
        assertThat(chain.low()).isNaN();
        assertThat(chain.high()).isNaN();
    }
}
