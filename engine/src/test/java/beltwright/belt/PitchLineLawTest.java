package beltwright.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import beltwright.quantity.Refusal;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class PitchLineLawTest {
    private static PitchLine pulleys(Draw draw) {
        return new PitchLine(draw.between(15, 60), draw.between(15, 140));
    }

    private static double length(Draw draw, PitchLine line) {
        return Math.PI * Math.max(line.driveMm(), line.drivenMm()) + draw.between(1, 600);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aLongerBeltGivesALongerCentreDistance(Draw draw) {
        var line = pulleys(draw);
        double length = length(draw, line);
        double longer = length + draw.between(0.01, 50);
        assertThat(line.centreDistanceMm(longer)).isGreaterThan(line.centreDistanceMm(length));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void lengthToCentreDistanceToLength(Draw draw) {
        var line = pulleys(draw);
        double length = length(draw, line);
        assertThat(line.lengthMm(line.centreDistanceMm(length))).isCloseTo(length, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void centreDistanceToLengthToCentreDistance(Draw draw) {
        var line = pulleys(draw);
        double centre = (line.driveMm() + line.drivenMm()) / 2 + draw.between(0, 300);
        assertThat(line.centreDistanceMm(line.lengthMm(centre))).isCloseTo(centre, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void swappingThePulleysChangesOnlyWhichIsWhich(Draw draw) {
        var line = pulleys(draw);
        var swapped = new PitchLine(line.drivenMm(), line.driveMm());
        double length = length(draw, line);
        double centre = line.centreDistanceMm(length);
        assertThat(swapped.centreDistanceMm(length)).isCloseTo(centre, within(1e-9));
        assertThat(swapped.spanMm(centre)).isCloseTo(line.spanMm(centre), within(1e-9));
        assertThat(line.driveWrapRad(centre) + swapped.driveWrapRad(centre)).isCloseTo(2 * Math.PI, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void theBeltIsItsArcsAndItsSpans(Draw draw) {
        var line = pulleys(draw);
        double length = length(draw, line);
        double centre = line.centreDistanceMm(length);
        double drive = line.driveWrapRad(centre);
        double arcs = drive * line.driveMm() / 2 + (2 * Math.PI - drive) * line.drivenMm() / 2;
        assertThat(arcs + 2 * line.spanMm(centre)).isCloseTo(length, within(1e-8));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void anIndependentSolverFindsTheSameCentreDistance(Draw draw) {
        var line = pulleys(draw);
        double length = length(draw, line);
        assertThat(line.centreDistanceMm(length)).isCloseTo(referee(line, length), within(1e-6));
    }

    @ParameterizedTest // root of the exact length equation by independent general-purpose solvers; derived
    @CsvSource({"15, 36, 265, 66.643584", "16, 40, 300, 77.6389", "16, 36, 270, 68.1325", "12, 36, 255, 64.6583"})
    void anIndependentSolverFindsTheAnchors(int drive, int driven, double length, double centre) {
        var line = new PitchLine(drive * 5 / Math.PI, driven * 5 / Math.PI);
        assertThat(referee(line, length)).isCloseTo(centre, within(5e-5));
        assertThat(line.centreDistanceMm(length)).isCloseTo(centre, within(5e-5));
    }

    /// The length as Shigley's eq. 17-1 and 17-2 write it, solved by the other library.
    private static double referee(PitchLine line, double length) {
        double small = Math.min(line.driveMm(), line.drivenMm());
        double large = Math.max(line.driveMm(), line.drivenMm());
        double apart = large - small;
        return new BrentSolver(1e-10)
                .solve(
                        500,
                        c -> {
                            double lean = 2 * Math.asin(Math.min(1, apart / (2 * c)));
                            return Math.sqrt(Math.max(0, 4 * c * c - apart * apart))
                                    + (large * (Math.PI + lean) + small * (Math.PI - lean)) / 2
                                    - length;
                        },
                        Math.max(apart / 2, 1e-6),
                        length);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void aBeltThatDoesNotGoAroundHasNoCentreDistance(Draw draw) {
        var line = pulleys(draw);
        double tooShort = Math.PI * Math.max(line.driveMm(), line.drivenMm()) - draw.between(0, 30);
        assertThat(line.closes(tooShort)).isFalse();
        assertThat(line.centreDistanceMm(tooShort)).isNaN();
    }

    @ParameterizedTest
    @CsvSource({"0, 20", "20, 0", "-1, 20", "NaN, 20", "20, NaN"})
    void refusesAPulleyWithoutDiameter(double drive, double driven) {
        assertThatThrownBy(() -> new PitchLine(drive, driven))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("pitch diameter");
    }
}
