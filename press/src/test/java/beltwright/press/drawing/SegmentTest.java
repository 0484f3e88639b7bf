package beltwright.press.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SegmentTest {
    @ParameterizedTest
    @CsvSource({"0, 3.0", "1, -4.5", "2, 6.2", "-2, -0.4"})
    void anArcCutByACircleJoinsUpAgainAndEachPieceStaysOnOneSide(double start, double sweep) {
        var arc = new Segment.Bow(new Point(10, 0), 8, start, sweep);
        var pieces = arc.cut(Point.ORIGIN, 9);
        joined(arc, pieces);
        for (var p : pieces) {
            double middle = p.halfway().length();
            assertThat(Math.signum(p.from().length() - 9 + 1e-6 * Math.signum(middle - 9)))
                    .isEqualTo(Math.signum(middle - 9));
        }
    }

    @Test
    void aLineIsCutWhereItCrosses() {
        var line = new Segment.Straight(new Point(-10, 3), new Point(10, 3));
        var pieces = line.cut(Point.ORIGIN, 5);
        joined(line, pieces);
        assertThat(pieces).hasSize(3);
        assertThat(pieces.get(1).from().x()).isCloseTo(-4, within(1e-12)); // 3, 4, 5
        assertThat(line.cut(new Point(0, 20), 5)).containsExactly(line);
    }

    private static void joined(Segment whole, List<Segment> pieces) {
        assertThat(pieces.getFirst().from().distance(whole.from())).isLessThan(1e-9);
        assertThat(pieces.getLast().to().distance(whole.to())).isLessThan(1e-9);
        for (int i = 1; i < pieces.size(); i++) {
            assertThat(pieces.get(i).from().distance(pieces.get(i - 1).to())).isLessThan(1e-9);
        }
    }

    @Test
    void anArcThroughThreePointsPassesThemAll() {
        var arc = (Segment.Bow) Segment.through(new Point(0, 0), new Point(1.5, -2), new Point(3, 0));
        assertThat(arc.from().distance(new Point(0, 0))).isLessThan(1e-9);
        assertThat(arc.to().distance(new Point(3, 0))).isLessThan(1e-9);
        assertThat(arc.halfway().distance(new Point(1.5, -2))).isLessThan(1e-9);
    }

    @Test
    void boundsOfAnArcReachItsQuarterPoints() {
        var b = new Segment.Bow(Point.ORIGIN, 5, -0.1, Math.PI / 2 + 0.2).bounds();
        assertThat(b.right()).isCloseTo(5, within(1e-12));
        assertThat(b.top()).isCloseTo(5, within(1e-12));
    }

    @Test
    void aMirroredArcRunsTheOtherWay() {
        var arc = new Segment.Bow(new Point(3, 1), 2, 0.3, 1.1);
        var mirrored = arc.mapped(Placing.MIRROR);
        assertThat(mirrored.from().distance(Placing.MIRROR.of(arc.from()))).isLessThan(1e-12);
        assertThat(mirrored.to().distance(Placing.MIRROR.of(arc.to()))).isLessThan(1e-12);
    }
}
