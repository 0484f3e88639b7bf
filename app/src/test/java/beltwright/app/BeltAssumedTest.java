package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.part.Belt;
import beltwright.part.BeltTolerance;
import beltwright.quantity.Source;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/// A belt whose length nobody has compared with what is printed on it.
class BeltAssumedTest {
    private static final String DEVIATION = "belt-265-15.lengthDeviationMm";
    private static final Shelf UNMEASURED = DemoKits.SHELF.with(List.of(Edit.parse(DEVIATION + "=unknown")));

    private static Dossier dossier(Shelf shelf) {
        return Dossiers.of(shelf.kit("market-hill-single"));
    }

    private static Finding takeUp(Dossier dossier) {
        return dossier.findings().stream()
                .filter(f -> f.key().startsWith("take-up."))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void hasTheToleranceOfANewOneAndEveryFindingOnItSaysSo() {
        var found = takeUp(dossier(UNMEASURED));
        assertThat(found.verdict()).isNotEqualTo(Verdict.CANNOT_TELL);
        assertThat(found.estimates()).contains(DEVIATION);
        assertThat(dossier(UNMEASURED).findings().stream().flatMap(f -> f.needs().stream()))
                .doesNotContain(DEVIATION);
    }

    @Test
    void staysUnknownWithoutEstimates() {
        var found = takeUp(dossier(UNMEASURED.withoutEstimates()));
        assertThat(found.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(found.needs()).contains(DEVIATION);
    }

    @Test
    void theShelfKeepsWhatWasTyped() {
        assertThat(((Belt) UNMEASURED.part("belt-265-15")).lengthDeviationMm().known())
                .isFalse();
    }

    @Tag("published") // a belt maker's manual, table 37: centre distance ±0.23 mm to 500 mm, the length twice that
    @Test
    void isThatOfTheTable() {
        var d = BeltTolerance.standingIn((Belt) UNMEASURED.part("belt-265-15")).lengthDeviationMm();
        assertThat(new double[] {d.lower(), d.nominal(), d.upper()}).containsExactly(-0.46, 0, 0.46);
        assertThat(d.provenance().source()).isEqualTo(Source.ESTIMATE);
    }

    @Test
    void aBeltPastTheTableStaysUnknown() {
        var longer = UNMEASURED.with(List.of(Edit.parse("belt-265-15.teeth=301")));
        var belt = (Belt) longer.part("belt-265-15");
        assertThat(BeltTolerance.standingIn(belt).lengthDeviationMm().known()).isFalse();
    }

    @Test
    void oneThatWasMeasuredIsLeftAlone() {
        var belt = (Belt) DemoKits.SHELF.part("belt-265-15");
        assertThat(BeltTolerance.standingIn(belt)).isSameAs(belt);
    }
}
