package beltwright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class GreatCircleTest {
    /// A worked example that is often printed for the haversine formula, 36.12 −86.67 to 33.94 −118.40: 2887.26 km on a
    /// radius of 6372.8 km. From memory.
    @Test
    void agreesWithAWorkedExample() {
        double metres = GreatCircle.distanceM(36.12, -86.67, 33.94, -118.40);
        assertThat(metres / GreatCircle.RADIUS_M * 6372.8).isCloseTo(2887.26, within(0.005));
    }

    @Test
    @Tag("law")
    void aQuarterOfTheEquatorAndOneDegreeOfAMeridian() {
        double quarter = Math.PI / 2 * GreatCircle.RADIUS_M;
        assertThat(GreatCircle.distanceM(0, 0, 0, 90)).isCloseTo(quarter, within(1e-6));
        assertThat(GreatCircle.distanceM(0, 17, 90, 5)).isCloseTo(quarter, within(1e-6));
        assertThat(GreatCircle.distanceM(50, 8, 51, 8)).isCloseTo(quarter / 90, within(1e-6));
        assertThat(GreatCircle.distanceM(10, 179.5, 10, -179.5))
                .isCloseTo(GreatCircle.distanceM(10, 0, 10, 1), within(1e-6));
        assertThat(GreatCircle.distanceM(10, 20, -10, -160)).isCloseTo(2 * quarter, within(0.5)); // steep there
    }

    @Test
    @Tag("law")
    void aSlopeRisesByItsGrade() {
        double rise = GreatCircle.riseM(100, 75);
        assertThat(rise).isCloseTo(60, within(1e-9)); // 3 to 4 to 5
        assertThat(GreatCircle.slopeM(80, rise)).isCloseTo(100, within(1e-9));
        assertThat(GreatCircle.riseM(100, -75)).isCloseTo(-60, within(1e-9));
    }
}
