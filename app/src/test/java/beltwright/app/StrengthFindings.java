package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Finding;
import beltwright.dossier.Dossiers;
import beltwright.workshop.Edit;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/// Findings of the demo kits after edits, and how they move: for tests of strength.
final class StrengthFindings {
    private StrengthFindings() {}

    /// {@return the findings of these checks}
    static List<Finding> of(String kit, Collection<String> slugs, List<Edit> edits) {
        return Dossiers.of(DemoKits.SHELF.with(edits).kit(kit)).findings().stream()
                .filter(f -> slugs.contains(f.key().substring(0, f.key().lastIndexOf('.'))))
                .toList();
    }

    /// {@return the finding of the left side, or of the right where that alone is asked}
    static Finding one(String kit, String slug, String... edits) {
        return of(kit, List.of(slug), Arrays.stream(edits).map(Edit::parse).toList()).stream()
                .min(Comparator.comparing(Finding::key))
                .orElseThrow();
    }

    /// {@return the same, the flanged kit without its dowel pins: else they decide, whatever the screws are}
    private static Finding screwed(String kit, String slug, String edit) {
        return one(kit, slug, kit.equals(FormKits.PINNED) ? FormKits.bare(edit) : new String[] {edit});
    }

    static void nominalIsEnclosed(Finding f, Edit edit) {
        assertThat(f.demandBest()).as(f.key() + edit).isLessThanOrEqualTo(f.demand());
        assertThat(f.demand()).as(f.key() + edit).isLessThanOrEqualTo(f.demandWorst());
        assertThat(f.capacityWorst()).as(f.key() + edit).isLessThanOrEqualTo(f.capacity());
        assertThat(f.capacity()).as(f.key() + edit).isLessThanOrEqualTo(f.capacityBest());
    }

    /// {@return the last of these numbers, none of which is less than the one before}
    static double neverLess(String kit, String slug, String field, String values, ToDoubleFunction<Finding> number) {
        double before = 0;
        for (var value : values.split(" ")) {
            double now = number.applyAsDouble(screwed(kit, slug, field + "=" + value));
            assertThat(now).as("%s with %s=%s", slug, field, value).isGreaterThanOrEqualTo(before);
            before = now;
        }
        return before;
    }

    /// {@return the last of these numbers, none of which is more than the one before}
    static double neverMore(String kit, String slug, String field, String values, ToDoubleFunction<Finding> number) {
        double before = Double.POSITIVE_INFINITY;
        for (var value : values.split(" ")) {
            double now = number.applyAsDouble(screwed(kit, slug, field + "=" + value));
            assertThat(now).as("%s with %s=%s", slug, field, value).isLessThanOrEqualTo(before);
            before = now;
        }
        return before;
    }
}
