package beltwright.press.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LetteringTest {
    @ParameterizedTest
    @CsvSource({"77.63887, 77.64", "62, 62", "9.96, 9.96", "2.80, 2.8", "100, 100", "0.004, 0", "-1.5, −1.5"})
    void printsTwoDecimalsAtMostAndNoIdleZeros(double mm, String printed) {
        assertThat(Lettering.number(mm)).isEqualTo(printed);
    }

    /// Helvetica's published metrics: every figure is 0.556 of the type size wide, a full stop 0.278. From memory.
    @Test
    void allFiguresAreEquallyWide() {
        for (int digit = 0; digit < 10; digit++) {
            assertThat(Lettering.widthMm("" + digit, 10, false)).isCloseTo(5.56 * 1.1, within(1e-9));
        }
        assertThat(Lettering.widthMm(".", 10, false)).isCloseTo(2.78 * 1.1, within(1e-9));
    }

    @Test
    void cutsWhatIsTooLongAndSaysSo() {
        var cut = Lettering.fitted("Steep Street, two motors", 3, false, 20);
        assertThat(cut).startsWith("Steep").endsWith("…");
        assertThat(Lettering.widthMm(cut, 3, false)).isLessThanOrEqualTo(20);
        assertThat(Lettering.fitted("short", 3, false, 20)).isEqualTo("short");
    }

    @Test
    void slopingTextsThatPassEachOtherDoNotOverlap() {
        var here = new Placing(1, Point.ORIGIN);
        var a = text(0, 0, 45).box(here);
        assertThat(a.overlaps(text(0, 8, 45).box(here))).isFalse();
        assertThat(a.bounds().within(a.bounds().with(text(0, 8, 45).box(here).bounds())))
                .isTrue();
        assertThat(a.overlaps(text(3, 0, 0).box(here))).isTrue();
        assertThat(a.meets(new Segment.Straight(new Point(-5, 8), new Point(12, 2))))
                .isTrue();
        assertThat(a.meets(new Segment.Straight(new Point(6, 0), new Point(12, 2))))
                .isFalse();
    }

    private static Entity.Text text(double x, double y, double angle) {
        return new Entity.Text(new Point(x, y), "77.64", 3.5, Entity.Text.Anchor.START, angle, false, Tag.NONE);
    }
}
