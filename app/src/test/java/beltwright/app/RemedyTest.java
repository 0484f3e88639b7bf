package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Finding;
import beltwright.check.Ladder;
import beltwright.check.Verdict;
import beltwright.layout.LayoutSolver;
import beltwright.workshop.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A remedy that names by how much is enough: done as told, the finding holds.
class RemedyTest {
    private static final Pattern BY = Pattern.compile("(\\d+(?:\\.\\d+)?) mm");

    /// @param way up or down goes the field when the remedy is done; 0 where the remedy says which
    @ParameterizedTest
    @CsvSource({
        "steep-street, shaft-flat.left, pulley-16.boreFlatMm, 6.5, 9.2, 0, 0.02",
        "market-hill-single, lug-width.left, wheel-90.openingWidthMm, 8, 11, 0, 0.1",
        "market-hill-single, lug-depth.left, wheel-pulley-36.lugLengthMm, 15, 19, -1, 0.2",
        "harbour-mile, cover-pulley.left, cover-15.depthMm, 24, 34, 1, 0.2",
        "harbour-mile, cover-stones.left, cover-15.stoneOpeningMm, 2, 12, 1, 0.3"
    })
    void doneAsToldItHolds(String kit, String key, String field, double from, double to, int way, String limits) {
        var failed = new ArrayList<String>();
        int mended = 0;
        for (int i = 0; i < 30; i++) {
            double nominal = from + (to - from) * (i * 0.6180339887 % 1);
            var before = finding(kit, key, edit(field, nominal, limits));
            var by = BY.matcher(before.remedy());
            if (before.verdict() == Verdict.HOLDS || !by.find()) {
                continue;
            }
            int sign = way != 0 ? way : before.remedy().endsWith("smaller") ? -1 : 1;
            mended++;
            var after = finding(kit, key, edit(field, nominal + sign * Double.parseDouble(by.group(1)), limits));
            if (after.verdict() != Verdict.HOLDS) {
                failed.add(nominal + ": " + before.remedy() + ", then " + after.says());
            }
        }
        assertThat(failed).isEmpty();
        assertThat(mended).isGreaterThan(5);
    }

    private static Edit edit(String field, double nominal, String limits) {
        return Edit.parse(field + "=" + String.format(Locale.ROOT, "%.4f ±%s", nominal, limits));
    }

    private static Finding finding(String kit, String key, Edit edit) {
        var edited = DemoKits.SHELF.with(List.of(edit)).kit(kit);
        return Ladder.findings(edited, LayoutSolver.solve(edited)).stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
