package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.ride.Board;
import beltwright.ride.Calibration;
import beltwright.ride.Coefficient;
import beltwright.workshop.Workshop;
import beltwright.workshop.log.Calibrated;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Calibrating as typed; what is printed is read back against the engine, what is kept against later answers.
class CalibrateCommandTest {
    private static final String KIT = DemoLogs.KIT;
    private static final String COAST = "--log river-coast --find rolling,drag";
    private static final String FILE =
            "--log coast.csv --columns time=t:ms,speed=v:km/h --belts off --find rolling,drag";

    @TempDir
    static Path once;

    @TempDir
    Path folder;

    Typed typed;

    @BeforeAll
    static void demo() {
        assertThat(new Typed(once).run("demo", "--no-serve").code()).isZero();
    }

    @BeforeEach
    void copy() throws IOException {
        typed = new Typed(folder);
        Files.copy(once.resolve("demo-out").resolve("demo.db"), folder.resolve("workshop.db"));
        Files.copy(DemoLogs.FOLDER.resolve("river-coast.csv"), folder.resolve("coast.csv"));
        var lines = Files.readAllLines(folder.resolve("coast.csv"));
        Files.write(folder.resolve("short.csv"), lines.subList(0, 12));
        Files.write(
                folder.resolve("back.csv"),
                Stream.concat(lines.stream(), Stream.of("0;3.6;")).toList());
        Files.write(
                folder.resolve("gap.csv"),
                Stream.concat(lines.stream(), Stream.of("99000;3.6;")).toList());
        Files.write(folder.resolve("even.csv"), even(lines));
        Files.writeString(folder.resolve("empty.csv"), "");
        Files.writeString(folder.resolve("words.csv"), "t;v\n0;fast\n1;slow\n2;stop\n");
    }

    /// The same speed in every row: nothing rolls, nothing drags.
    private static List<String> even(List<String> lines) {
        return lines.stream()
                .map(l -> l.startsWith("t") ? l : l.substring(0, l.indexOf(';')) + ";20;")
                .toList();
    }

    private Typed.Answer calibrate(String words) {
        return typed.run(("calibrate " + KIT + " " + words).split(" "));
    }

    private static Calibration.Result coast() {
        return Calibration.of(
                Board.of(DemoKits.SHELF.kit(KIT)),
                DemoKits.SHELF.log("river-coast"),
                EnumSet.of(Coefficient.ROLLING, Coefficient.DRAG_AREA));
    }

    private String workshop() {
        return Workshop.open(folder.resolve("workshop.db")).store().contentHash();
    }

    @Test
    void whatIsPrintedIsTheEnginesWithItsIntervalAndWhatItWasBefore() {
        var before = workshop();
        var answer = calibrate(COAST);
        assertThat(answer.err()).isEmpty();
        assertThat(answer.code()).isZero();
        var result = coast();
        for (var f : result.found()) {
            assertThat(answer.out())
                    .contains(f.what() + ": " + Calibrated.text(f) + " "
                            + f.what().unit() + ", 95 % interval; before: ");
            var typedNumbers = Calibrated.text(f).split(" ±");
            assertThat(Double.parseDouble(typedNumbers[0])).isCloseTo(f.value(), within(f.halfWidth() / 10));
            assertThat(Double.parseDouble(typedNumbers[1])).isBetween(f.halfWidth(), 1.11 * f.halfWidth());
        }
        assertThat(answer.out()).contains("belts off", "root mean square", "Nothing is kept.", "Rests on 4 estimates");
        assertThat(result.notes())
                .isNotEmpty()
                .allSatisfy(n -> assertThat(oneLine(answer)).contains("note: " + n));
        assertThat(workshop()).isEqualTo(before);
    }

    private static String oneLine(Typed.Answer answer) {
        return answer.out().replaceAll("\\s+", " ");
    }

    @Test
    void aFileOfARecorderSaysTheSameAsTheLogThatIsKept() throws IOException {
        var kept = calibrate(COAST + " --json").json();
        var file = calibrate(FILE + " --json").json();
        for (var at : List.of("/found/0/value", "/found/1/value", "/leftOver")) {
            // The file has km/h to two decimals, the log m/s.
            assertThat(file.at(at).asDouble()).isCloseTo(kept.at(at).asDouble(), within(0.002));
        }
        assertThat(oneLine(calibrate(FILE)))
                .contains("'t' is read as time in ms, 'v' is read as speed in km/h; left out: 'remark'");
    }

    @Test
    void theTruthBehindALogIsFoundAndKeptAndLaterAnswersRestOnIt() throws IOException {
        var power = typed.run("power", KIT, "--json").json();
        var ride = typed.run("ride", KIT, "--route", "river-flat", "--json").json();
        var answer = calibrate(COAST + " --keep coast-1 --json");
        assertThat(answer.err()).isEmpty();
        assertThat(answer.json().at("/kept").asText()).isEqualTo("coast-1");
        assertThat(between(answer.json().at("/found/0"), DemoLogs.ROLLING_PERCENT))
                .isTrue();
        assertThat(between(answer.json().at("/found/1"), DemoLogs.DRAG_AREA_M2)).isTrue();

        var task =
                Workshop.open(folder.resolve("workshop.db")).shelf().draft(KIT).task();
        var rolling = coast().found().getFirst();
        assertThat(task.rollingPercent().text()).isEqualTo(Calibrated.text(rolling));
        assertThat(task.rollingPercent().provenance().words())
                .isEqualTo("measured, coast-down on the river path, invented, log river-coast; limits are the 95 %"
                        + " interval, 2026-11-14");
        var after = typed.run("power", KIT, "--json").json();
        assertThat(after.at("/answers/6/key").asText()).isEqualTo("consumption");
        assertThat(after.at("/answers/6/value").asDouble())
                .isNotEqualTo(power.at("/answers/6/value").asDouble());
        assertThat(after.at("/estimates").toString())
                .doesNotContain("task.rollingPercent", "task.dragAreaM2")
                .contains("task.bearingDragN");
        var again = typed.run("ride", KIT, "--route", "river-flat", "--json").json();
        assertThat(again.at("/energy/rollingJ").asDouble())
                .isCloseTo(
                        ride.at("/energy/rollingJ").asDouble() * rolling.value() / 1.5,
                        within(0.002 * ride.at("/energy/rollingJ").asDouble()));
        // The log that is kept can be asked again, and says what it said, now against what was found.
        var second = calibrate(COAST + " --json").json();
        assertThat(second.at("/found/0/before").asDouble())
                .isCloseTo(rolling.value(), within(rolling.halfWidth() / 10));
        assertThat(second.at("/found/0/value").asDouble()).isCloseTo(rolling.value(), within(1e-4));
    }

    private static boolean between(JsonNode found, double truth) {
        return found.get("low").asDouble() <= truth
                && truth <= found.get("high").asDouble();
    }

    @Test
    void aFileIsKeptWithItsMeasurement() throws IOException {
        var answer = calibrate(FILE + " --keep coast-2 --when 2026-11-20 --by anna --with stopwatch");
        assertThat(answer.err()).isEmpty();
        assertThat(oneLine(answer))
                .contains(
                        "Kept as measurement 'coast-2' of steep-street, from log 'coast-2-log'; answers for this kit rest");
        var shelf = Workshop.open(folder.resolve("workshop.db")).shelf();
        var log = shelf.log("coast-2-log");
        assertThat(log.kit()).isEqualTo(KIT);
        assertThat(log.by()).isEqualTo("anna");
        assertThat(log.with()).isEqualTo("stopwatch");
        assertThat(log.when()).hasToString("2026-11-20");
        assertThat(log.belts()).hasToString("off");
        assertThat(shelf.measurements().getLast().id()).isEqualTo("coast-2");
        assertThat(calibrate("--log coast-2-log --find rolling --json").code()).isZero();
    }

    @Test
    void whatWarmsTheMotorIsKeptWithTheMotor() throws IOException {
        var hot = typed.run("power", KIT, "--json").json();
        var answer = calibrate("--log hill-test --find winding,air --keep heat-1");
        assertThat(answer.err()).isEmpty();
        assertThat(oneLine(answer))
                .contains("'heat-1' of motor-63", "answers for every kit with this motor rest on it");
        var motor = (beltwright.part.Motor)
                Workshop.open(folder.resolve("workshop.db")).shelf().part("motor-63");
        assertThat(motor.windingToCaseKPerW().lower()).isLessThanOrEqualTo(DemoLogs.WINDING_TO_CASE);
        assertThat(motor.windingToCaseKPerW().upper()).isGreaterThanOrEqualTo(DemoLogs.WINDING_TO_CASE);
        assertThat(motor.caseToAirKPerW().toleranced()).isTrue();
        var now = typed.run("power", KIT, "--json").json();
        assertThat(now.at("/answers/4/key").asText()).isEqualTo("hill-minutes");
        assertThat(now.at("/answers/4/value").asDouble())
                .isNotEqualTo(hot.at("/answers/4/value").asDouble());
    }

    @Test
    void aRideWithCurrentTellsTheMass() throws IOException {
        var json = calibrate("--log hill-test --find mass,rolling,drag --json").json();
        assertThat(json.at("/found")).hasSize(3);
        assertThat(json.at("/found/2/field").asText()).isEqualTo("steep-street.task.allUpMassKg");
        assertThat(between(json.at("/found/2"), DemoLogs.MASS_KG)).isTrue();
    }

    @Test
    void aLaterMeasurementThatLiesOverItIsSaid() {
        assertThat(calibrate(FILE + " --keep new --when 2026-12-24").code()).isZero();
        assertThat(oneLine(calibrate(FILE + " --keep old --when 2026-10-01")))
                .contains("but a later measurement lies over task.dragAreaM2 (new), task.rollingPercent (new).");
    }

    @Test
    void whatIsSetForTheDayIsWrittenIntoTheSource() {
        var warm = calibrate("--log hill-test --find winding,air --keep warm --set steep-street.task.airC=17");
        assertThat(warm.err()).isEmpty();
        var motor = (beltwright.part.Motor)
                Workshop.open(folder.resolve("workshop.db")).shelf().part("motor-63");
        assertThat(motor.caseToAirKPerW().provenance().words()).contains("taken with steep-street.task.airC=17");
    }

    @Test
    void whatIsToBeFoundNeedNotBeKnown() throws IOException {
        var answer = calibrate(COAST + " --json --set steep-street.task.rollingPercent=unknown");
        assertThat(answer.code()).isZero();
        assertThat(answer.json().at("/found/0/before").isNull()).isTrue();
        assertThat(between(answer.json().at("/found/0"), DemoLogs.ROLLING_PERCENT))
                .isTrue();
        assertThat(calibrate(COAST + " --set steep-street.task.rollingPercent=unknown")
                        .out())
                .contains("before: not known");
    }

    @Test
    void withoutEstimatesItCannotTellAndNamesWhatItNeeds() throws IOException {
        var before = workshop();
        var answer = calibrate(COAST + " --keep none --no-estimates");
        assertThat(answer.code()).isEqualTo(Exit.CANNOT_TELL);
        assertThat(answer.out())
                .contains("cannot tell: needs ", "steep-street.task.bearingDragN")
                .doesNotContain("rollingPercent");
        var json = calibrate(COAST + " --no-estimates --json");
        assertThat(json.code()).isEqualTo(Exit.CANNOT_TELL);
        assertThat(json.json().at("/needs")).isNotEmpty();
        assertThat(json.json().at("/found")).isEmpty();
        assertThat(workshop()).isEqualTo(before);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "--log river-coast; --find",
                "--find drag; --log",
                "--log river-coast --find speed; --find: 'speed' is nothing that a log tells; allowed: rolling, drag, mass, winding, air",
                "--log river-coast --find rolling,air; --find: ",
                "--log river-coast --find mass; says nothing of the mass",
                "--log river-coast --find winding; winding temperature: was not measured",
                "--log nowhere --find drag; '--log: 'nowhere' is neither a log of this workshop nor a file; allowed: a CSV file, or one of hill-test, river-coast",
                "--log empty.csv --find drag; is empty",
                "--log river-coast --belts off --find drag; --belts: 'off', but the log 'river-coast' is kept",
                "--log river-coast --when 2026-11-20 --find drag; --when: ",
                "--log coast.csv --find drag; nothing says in which unit the time is",
                "--log words.csv --columns time=t:s,speed=v:m/s --belts off --find drag; 'fast'",
                "--log coast.csv --columns time=t:ms,speed=v --belts off --find drag; nothing says in which unit the speed is",
                "--log coast.csv --columns time=t:ms,speed=v:knots --belts off --find drag; 'knots' is not a unit",
                "--log coast.csv --columns time=t:ms,speed=V:km/h --belts off --find drag; no column is headed 'V'",
                "--log coast.csv --columns time=t:ms,speed=v:km/h --find drag; --belts: nothing says whether the belts were on",
                "--log coast.csv --columns time=t:ms,speed=v:km/h --belts up --find drag; --belts: 'up'; allowed: on, off",
                "--log coast.csv --columns time=t:ms,speed=v:m/s --belts on --find drag; is this column in km/h?",
                "--log coast.csv --columns time=t:s,speed=v:km/h --belts off --find drag; if this column is in ms",
                "--log back.csv --columns time=t:ms,speed=v:km/h --belts off --find drag; is before the row before",
                "--log gap.csv --columns time=t:ms,speed=v:km/h --belts off --find drag; a gap of 62.2 s",
                "--log short.csv --columns time=t:ms,speed=v:km/h --belts off --find drag; 11 rows; allowed: at least 30 rows",
                "--log even.csv --columns time=t:ms,speed=v:km/h --belts off --find rolling,drag; cannot tell ",
                "--log coast.csv --columns time=t:ms,speed=v:km/h --belts off --find drag --when today; --when: 'today' is not a day",
                "--log coast.csv --columns time=t:ms,speed=v:km/h --belts off --motor-current loud --find drag; --motor-current: 'loud'",
                "--log river-coast --find rolling --keep mill-hill; --keep: mill-hill: is the id of something else",
                "--log river-coast --find rolling --keep Bad_Id!; --keep: ",
                "--log river-coast --find rolling --set steep-street.task.airC=900; '900' cannot be true",
            })
    void badInputGetsOneLineAndCodeTwoAndNothingIsKept(String words, String wrong) {
        var before = workshop();
        var keep = words.contains("--keep") || !words.contains("--find") ? "" : " --keep new-one";
        var answer = calibrate(words + keep);
        assertThat(answer.code()).as(answer.err()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.err()).contains(wrong.replaceFirst("^'", ""), "; allowed: ");
        assertThat(workshop()).isEqualTo(before);
    }

    @Test
    void aLogOfAnotherKitIsRefused() {
        var answer = typed.run(("calibrate market-hill-single " + COAST).split(" "));
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.err())
                .isEqualTo("--log: 'river-coast' is a ride of 'steep-street'; allowed: a log of 'market-hill-single';"
                        + " name another\n");
        assertThat(typed.run(("calibrate nobody " + COAST).split(" ")).err()).contains("no kit has the id 'nobody'");
    }

    @Test
    void aUnitThatLooksWrongIsDoubtedAheadOfTheNumbers() throws IOException {
        var words = FILE.replace("v:km/h", "v:m/s");
        var answer = calibrate(words);
        assertThat(answer.code()).isZero();
        assertThat(oneLine(answer))
                .containsSubsequence(
                        "? speed reaches 30.6 m/s, 110 km/h: is this column in another unit?",
                        "rolling resistance: 4.69",
                        "1.8 times what the motors of this kit turn without load",
                        "rolling resistance comes out at 3.1 times what the kit had: look at the units");
        assertThat(calibrate(words + " --json").json().at("/notes").toString()).contains("in another unit?");
    }

    @Test
    void millisecondsThatAreSecondsAreRefused() throws IOException {
        var seconds = Files.readAllLines(folder.resolve("coast.csv")).stream()
                .map(l -> l.replaceFirst("000;", ";").replaceFirst("(250|500|750);", ".$1;"))
                .toList();
        Files.write(folder.resolve("seconds.csv"), seconds, java.nio.charset.StandardCharsets.UTF_8);
        var answer = calibrate(FILE.replace("coast.csv", "seconds.csv"));
        assertThat(answer.code()).as(answer.out()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.err()).contains("time rises by 0.00025 s from row to row: is this column s?");
    }

    @ParameterizedTest
    @ValueSource(ints = {44, 60, 80, 100, 120, 200})
    void noLineIsWiderThanTheTerminal(int columns) {
        typed.with("COLUMNS", String.valueOf(columns));
        // A field's name is one long word; it is never cut.
        assertThat(calibrate("--log hill-test --find winding,air")
                        .out()
                        .lines()
                        .filter(l -> l.strip().contains(" ")))
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
    }
}
