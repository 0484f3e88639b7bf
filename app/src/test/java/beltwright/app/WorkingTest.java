package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Checks;
import beltwright.check.Evaluator;
import beltwright.check.Line;
import beltwright.check.Reading;
import beltwright.check.Subject;
import beltwright.check.Working;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Provenance;
import beltwright.quantity.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// The working printed is the calculation made: both ways of asking end at the same bits, and every printed line,
/// evaluated again from its own text, gives its printed value.
@Tag("law")
class WorkingTest {
    private static final Provenance ANY = new Provenance(Source.MEASURED, "");

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void measureAndExplainEndAtTheSameBits(String id) {
        sameBits(around(id));
    }

    @Test
    void kitsWithPinsOrAClampedHubEndAtTheSameBitsAndEvaluate() {
        var kits = List.of(
                FormKits.pinned().kit(FormKits.PINNED), FormKits.clamped(2).kit(FormKits.CLAMPED));
        sameBits(kits);
        assertThat(evaluated(kits)).isGreaterThan(600);
    }

    private static void sameBits(List<Kit> kits) {
        for (var kit : kits) {
            var layout = LayoutSolver.solve(kit);
            for (var subject : Subject.of(kit, layout)) {
                for (var check : Checks.ALL) {
                    if (check.concerns(subject)) {
                        var measured = new Reading();
                        var explained = new Reading();
                        check.measure(subject, measured);
                        check.explain(subject, new Working(), explained);
                        assertThat(explained.same(measured))
                                .as("%s: %s explained, %s measured", check.key(subject), explained, measured)
                                .isTrue();
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kits")
    void everyLineEvaluatesToItsValue(String id) {
        assertThat(evaluated(around(id))).isGreaterThan(500);
    }

    private static int evaluated(List<Kit> kits) {
        int evaluated = 0;
        for (var kit : kits) {
            var dossier = beltwright.dossier.Dossiers.of(kit);
            for (var finding : dossier.findings()) {
                evaluated += evaluate(finding.key(), finding.working());
            }
            for (var number : dossier.numbers()) {
                evaluated += evaluate(number.key(), number.working());
            }
        }
        return evaluated;
    }

    private static int evaluate(String key, List<Line> working) {
        int evaluated = 0;
        for (var line : working) {
            if (Double.isNaN(line.value())) {
                continue;
            }
            double again = quoted(line)
                    ? DimensionText.parse("part." + line.formula(), line.numbers(), ANY)
                            .nominal()
                    : Evaluator.value(line.numbers());
            double rounding = 2e-6 * Math.max(1, largest(line.numbers()));
            assertThat(again)
                    .as("%s: %s", key, line)
                    .isCloseTo(line.value(), org.assertj.core.data.Offset.offset(rounding));
            evaluated++;
        }
        return evaluated;
    }

    /// A line that quotes a dimension holds its text as typed.
    private static boolean quoted(Line line) {
        return line.formula().matches("[a-z0-9-]+\\.[A-Za-z. ]+")
                && !line.formula().endsWith("Screws");
    }

    private static double largest(String numbers) {
        return java.util.regex.Pattern.compile("[0-9]+(?:\\.[0-9]+)?")
                .matcher(numbers)
                .results()
                .mapToDouble(m -> Double.parseDouble(m.group()))
                .max()
                .orElse(1);
    }

    /// {@return the kit as it is, and a few of its neighbours, so that failing answers are explained too}
    private static List<Kit> around(String id) {
        var kits = new ArrayList<Kit>();
        kits.add(DemoKits.SHELF.kit(id));
        var edits = Edits.seeded(id, 17, 30);
        for (var edit : edits) {
            kits.add(DemoKits.SHELF.with(List.of(edit)).kit(id));
        }
        return kits;
    }
}
