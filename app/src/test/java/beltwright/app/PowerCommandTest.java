package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.ride.Caution;
import beltwright.ride.LimitSheet;
import beltwright.ride.PowerSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Power as typed; the text is read back against the engine's numbers.
class PowerCommandTest {
    private static final PowerSheet SHEET = PowerSheet.of(DemoKits.SHELF.kit(Typed.KIT));

    @TempDir
    static Path folder;

    static Typed typed;

    @BeforeAll
    static void importSmall() {
        typed = Typed.withSmallWorkshop(folder);
    }

    /// How far a printed number may be from the true one.
    private static double rounding(String number) {
        int point = number.indexOf('.');
        return 0.5001 * Math.pow(10, point < 0 ? 0 : point + 1 - number.length());
    }

    private static void same(String printed, double value) {
        assertThat(Double.parseDouble(printed.replace('−', '-'))).isCloseTo(value, within(rounding(printed)));
    }

    @Test
    void everyAnswerIsPrintedWithItsLimitsItsUnitAndItsConditions() {
        var answer = typed.run("power", Typed.KIT);
        assertThat(answer.err()).isEmpty();
        assertThat(answer.code()).isZero();
        assertThat(answer.out()).startsWith("Power: Market Hill, one motor (market-hill-single), invented");
        assertThat(SHEET.answers()).hasSizeGreaterThan(8);
        for (var a : SHEET.answers()) {
            var line = Pattern.compile(
                            "^" + Pattern.quote(a.name()) + ": (\\S+)(?: \\((\\S+) to (\\S+)\\))?(?: (\\S+))?$",
                            Pattern.MULTILINE)
                    .matcher(answer.out());
            assertThat(line.find()).as(a.key()).isTrue();
            same(line.group(1), a.value().nominal());
            if (line.group(2) != null) {
                same(line.group(2), a.value().low());
                same(line.group(3), a.value().high());
            } else {
                same(line.group(1), a.value().low()); // no band, or none that these digits show
                same(line.group(1), a.value().high());
            }
            assertThat(line.group(4)).isEqualTo(a.unit());
            assertThat(answer.out()).contains("\n  " + a.under() + "\n");
            assertThat(a.governs().isEmpty() || answer.out().contains("governed by: " + a.governs()))
                    .isTrue();
        }
    }

    @Test
    void stopsAndWhatIsLeftAreTheEngines() {
        var lines = typed.run("power", Typed.KIT, "--brakes").out().lines().toList();
        int at = IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).startsWith("from km/h"))
                .findFirst()
                .orElseThrow();
        for (int i = 0; i < SHEET.stops().size(); i++) {
            var cells = lines.get(at + 1 + i).strip().split(" +");
            var row = SHEET.stops().get(i);
            same(cells[0], 3.6 * row.usual().speedMps());
            same(cells[1], row.usual().wayM());
            same(cells[2], row.usual().wholeM());
            same(cells[3], row.usual().timeS());
            same(cells[4], row.packFull().wayM());
            same(cells[5], row.leaningBack().wayM());
            assertThat(row.leaningBack().wayM()).isLessThanOrEqualTo(row.usual().wayM());
        }
        for (var row : SHEET.left()) {
            var line = lines.stream()
                    .filter(l -> l.startsWith(row.what() + " "))
                    .findFirst()
                    .orElseThrow();
            var cells = line.substring(row.what().length()).strip().split(" +");
            same(cells[0], row.slow());
            same(cells[1], row.cruise());
            same(cells[2], row.stop().wayM());
            same(cells[4], row.leaningBack().wayM());
            assertThat(line).contains(row.governs().toString()).endsWith(row.note());
        }
    }

    @Test
    void anEstimatedHeightOfTheMassIsWorthTwoDigits() {
        assertThat(typed.run("power", Typed.KIT).out())
                .containsPattern("tips over: \\d\\.\\d m/s²\\n")
                .contains("m above the road, an estimate");
        var height = Typed.KIT + ".task.massHeightMm={value: 1000 ±50, source: measured}";
        var measured = typed.run("power", Typed.KIT, "--set", height);
        assertThat(measured.out()).containsPattern("tips over: \\d\\.\\d\\d \\(");
    }

    @Test
    void theForceOfTheBrakeStandsUnderEachCharge() {
        var lines = typed.run("power", Typed.KIT, "--brakes").out().lines().toList();
        var head = lines.stream()
                .filter(l -> l.strip().startsWith("km/h "))
                .findFirst()
                .orElseThrow();
        assertThat(head).contains("100 %", "98 %", "20 %");
        var cells = lines.get(lines.indexOf(head) + 3).strip().split(" +");
        same(cells[0], 3.6 * SHEET.curve().get(8).speedMps());
        for (int i = 0; i < SHEET.braking().size(); i++) {
            same(cells[i + 1], -SHEET.braking().get(i).points().get(8).pushN());
        }
    }

    @Test
    void theLimitSheetAloneHasEveryLimitWithItsReasonAndTheTests() {
        var out = typed.run("power", Typed.KIT, "--limits").out();
        assertThat(out).doesNotContain("Top speed, loaded", "What is left");
        assertThat(out).contains("Then try, in this order", "1. Board on a stand", Caution.LAW.toString());
        assertThat(SHEET.limits()).hasSizeGreaterThan(10);
        var lines = out.lines().toList();
        var last = LimitSheet.Spares.RIDER;
        int told = 0;
        for (var line : lines) {
            for (var row : SHEET.limits()) {
                if (line.startsWith(row.spares().toString()) && line.contains("  " + row.name() + "  ")) {
                    assertThat(row.spares()).isGreaterThanOrEqualTo(last);
                    last = row.spares();
                    var after =
                            line.substring(line.indexOf(row.name()) + row.name().length());
                    same(after.strip().split(" ")[0], row.value());
                    assertThat(line).contains(row.unit()).endsWith(row.reason());
                    told++;
                }
            }
        }
        assertThat(told).isEqualTo(SHEET.limits().size() - 4);
        fades(lines, "Supply voltage over which the draw fades", "cut-back-from", "cut-back-to");
        fades(lines, "Winding temperature over which the current fades", "winding-from", "winding-to");
    }

    /// What fades between two limits stands in one row, both ends with their reasons.
    private static void fades(List<String> lines, String name, String from, String to) {
        var line = lines.stream().filter(l -> l.contains(name)).findFirst().orElseThrow();
        var words = line.substring(line.indexOf(name) + name.length()).strip().split(" +");
        assertThat(words).startsWith("from").contains("to");
        same(words[1], limit(from).value());
        same(words[3], limit(to).value());
        assertThat(line)
                .contains("from: " + limit(from).reason())
                .endsWith("to: " + limit(to).reason());
    }

    private static LimitSheet.Row limit(String key) {
        return SHEET.limits().stream()
                .filter(r -> r.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void cautionsStandBesideTheNumbersThatTheyBelongTo() {
        assertThat(typed.run("power", Typed.KIT).out())
                .containsSubsequence(
                        "Top speed, loaded",
                        Caution.SPEED.toString(),
                        Caution.HEAT.toString(),
                        "What is left of the brake",
                        Caution.BRAKE.toString(),
                        Caution.FULL.toString(),
                        "limit to set",
                        Caution.LAW.toString());
    }

    @Test
    void whatItRestsOnIsSaid() {
        var out = typed.run("power", Typed.KIT).out();
        assertThat(SHEET.estimates())
                .isNotEmpty()
                .allSatisfy(e -> assertThat(out).contains("\n  " + e + "\n"));
        assertThat(SHEET.notes()).isNotEmpty().allSatisfy(n -> assertThat(out).contains("note: " + n));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--limits", "--brakes"})
    void withoutEstimatesItCannotTellAndNamesWhatItNeeds(String part) throws IOException {
        var words = part.isEmpty()
                ? new String[] {"power", Typed.KIT, "--no-estimates"}
                : new String[] {"power", Typed.KIT, "--no-estimates", part};
        var answer = typed.run(words);
        assertThat(answer.code()).isEqualTo(Exit.CANNOT_TELL);
        assertThat(answer.err()).isEmpty();
        var needs =
                PowerSheet.of(DemoKits.SHELF.withoutEstimates().kit(Typed.KIT)).needs();
        assertThat(needs).contains("motor-54.windingJPerK");
        assertThat(answer.out())
                .contains("⬚ cannot tell: needs " + String.join(", ", needs))
                .doesNotContain("km/h");
        var json = typed.run("power", Typed.KIT, "--no-estimates", "--json");
        assertThat(json.code()).isEqualTo(Exit.CANNOT_TELL);
        assertThat(StreamSupport.stream(json.json().at("/needs").spliterator(), false)
                        .map(n -> n.asText()))
                .containsExactlyElementsOf(needs);
        assertThat(json.json().at("/answers")).isEmpty();
    }

    @Test
    void anEditMovesTheAnswers() {
        var usual = typed.run("power", Typed.KIT).out();
        var windy = typed.run("power", Typed.KIT, "--set", Typed.KIT + ".task.headWindMps=8");
        assertThat(windy.code()).isZero();
        assertThat(windy.out()).isNotEqualTo(usual).contains("wind of 8 m/s against the board");
    }

    @Test
    void jsonHoldsTheWholeSheetOrThePartThatWasAskedFor() throws IOException {
        var all = typed.run("power", Typed.KIT, "--json").json();
        assertThat(all.at("/answers/0/value").asDouble())
                .isEqualTo(SHEET.answers().getFirst().value().nominal());
        assertThat(all.at("/limits")).hasSameSizeAs(SHEET.limits());
        assertThat(names(typed.run("power", Typed.KIT, "--json", "--limits")))
                .containsExactlyInAnyOrder("schema", "kit", "needs", "estimates", "notes", "limits", "benchTests");
        assertThat(names(typed.run("power", Typed.KIT, "--json", "--brakes")))
                .containsExactlyInAnyOrder("schema", "kit", "needs", "estimates", "notes", "braking", "stops", "left");
    }

    private static List<String> names(Typed.Answer answer) throws IOException {
        return List.copyOf(
                answer.json().properties().stream().map(e -> e.getKey()).toList());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "power no-such-kit; no kit has the id 'no-such-kit'",
                "power market-hill-single --set market-hill-single.task.airC=900; '900' cannot be true",
                "power market-hill-single --set market-hill-single.task.airC=warm; 'warm' cannot be read",
                "power market-hill-single --heat; '--heat' is not an option",
            })
    void badInputGetsOneLineAndCodeTwo(String line, String wrong) {
        var answer = typed.run(line.split(" "));
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.err()).contains(wrong, "; allowed: ");
    }

    @ParameterizedTest
    @ValueSource(ints = {44, 60, 80, 100, 120, 200})
    void noLineIsWiderThanTheTerminal(int columns) {
        var narrow = new Typed(folder).with("COLUMNS", String.valueOf(columns));
        // A field's name is one long word; it is never cut.
        assertThat(narrow.run("power", Typed.KIT)
                        .out()
                        .lines()
                        .filter(l -> l.strip().contains(" ")))
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
    }
}
