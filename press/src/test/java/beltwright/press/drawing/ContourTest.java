package beltwright.press.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContourTest {
    /// Each piece begins where the one before ends.
    static void closes(Contour outline, String of) {
        var pieces = outline.segments();
        for (int i = 0; i < pieces.size(); i++) {
            var next = pieces.get((i + 1) % pieces.size());
            assertThat(pieces.get(i).to().distance(next.from()))
                    .as("%s, piece %d", of, i)
                    .isLessThan(1e-6);
        }
    }

    /// Flats apart, flats that meet in a corner, flats opposite each other.
    @ParameterizedTest
    @CsvSource({"8, 7, 90", "8, 7, 60", "8, 6.4, 90", "10, 9.2, 180"})
    void twoFlatsLieAtTheirDistanceAndTheShaftStaysRoundBetween(double diameter, double across, double apartDeg) {
        var centre = new Point(3, -2);
        double apart = Math.toRadians(apartDeg);
        var shaft = Contour.flatted(centre, diameter, across, 0.3, 0.3 + apart);
        closes(shaft, "shaft");
        int flats = 0;
        for (var piece : shaft.segments()) {
            switch (piece) {
                case Segment.Straight flat -> {
                    var along = flat.to().minus(flat.from()).unit();
                    double off = Math.abs(along.cross(centre.minus(flat.from())));
                    assertThat(off).isCloseTo(across - diameter / 2, within(1e-9));
                    assertThat(flat.length()).isPositive();
                    flats++;
                }
                case Segment.Bow round -> {
                    assertThat(round.radius()).isEqualTo(diameter / 2);
                    assertThat(round.sweep()).isPositive();
                }
            }
        }
        assertThat(flats).isEqualTo(2);
    }
}
