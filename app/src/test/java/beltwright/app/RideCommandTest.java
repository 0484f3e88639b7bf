package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.check.CardPull;
import beltwright.press.json.RideJson;
import beltwright.quantity.Numbers;
import beltwright.ride.Board;
import beltwright.ride.Caution;
import beltwright.ride.Ride;
import beltwright.ride.RideSolver;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Rides as typed; the text is read back against the engine's numbers.
class RideCommandTest {
    private static final String KIT = "steep-street";
    private static final Ride RIDE = ride(KIT);

    @TempDir
    static Path folder;

    static Typed typed;

    private static Ride ride(String kit) {
        return RideSolver.ride(
                kit, Board.of(DemoKits.SHELF.kit(kit)), DemoKits.SHELF.route("mill-hill"), RideSolver.Options.USUAL);
    }

    @BeforeAll
    static void demo() throws IOException {
        typed = new Typed(folder);
        assertThat(typed.run("demo", "--no-serve").code()).isZero();
        Files.writeString(folder.resolve("gap.gpx"), track("47.000", "47.001", "47.002", "47.090", "47.091"));
        Files.writeString(folder.resolve("long.yaml"), """
                schema: 1
                route: far
                name: Far
                source: estimate, made up
                points: |
                  0 10
                  2000000 10
                """);
        Files.writeString(folder.resolve("back.yaml"), """
                schema: 1
                route: back
                name: Back
                source: estimate, made up
                points: |
                  0 10
                  100 10
                  90 11
                """);
        Files.writeString(folder.resolve("wall.yaml"), """
                schema: 1
                route: wall
                name: Wall
                source: estimate, made up
                points: |
                  0 10
                  10 18
                """);
        Files.writeString(folder.resolve("free.yaml"), """
                schema: 1
                route: free
                name: Free
                source: estimate, made up
                points: |
                  0 10
                  600 12
                """);
        Files.writeString(folder.resolve("empty.csv"), "");
        Files.writeString(folder.resolve("taken.csv"), "mine");
    }

    private static String track(String... latitudes) {
        var text = new StringBuilder("<gpx version=\"1.1\"><trk><trkseg>");
        for (var latitude : latitudes) {
            text.append("<trkpt lat=\"" + latitude + "\" lon=\"8\"><ele>400</ele></trkpt>");
        }
        return text.append("</trkseg></trk></gpx>").toString();
    }

    private static double number(String out, String row) {
        var found = Pattern.compile("^" + Pattern.quote(row) + " +(−?[0-9.]+)", Pattern.MULTILINE)
                .matcher(out);
        assertThat(found.find()).as(row).isTrue();
        return Double.parseDouble(found.group(1).replace('−', '-'));
    }

    @Test
    void whatIsPrintedIsTheEnginesRide() {
        var answer = typed.run("ride", KIT, "--route", "mill-hill");
        assertThat(answer.err()).isEmpty();
        assertThat(answer.code()).isZero();
        var out = answer.out();
        assertThat(out)
                .contains(
                        "Route: Mill Hill (mill-hill), invented",
                        "arrives after " + Numbers.clock(RIDE.timeS()) + " min");
        assertThat(number(out, "distance (km)")).isCloseTo(RIDE.distanceM() / 1000, within(0.006));
        assertThat(number(out, "mean speed (km/h)")).isCloseTo(RIDE.meanKmh(), within(0.06));
        assertThat(number(out, "energy (Wh)")).isCloseTo(RIDE.usedWh(), within(0.06));
        assertThat(number(out, "energy for each kilometre (Wh/km)")).isCloseTo(RIDE.whPerKm(), within(0.06));
        assertThat(number(out, "hottest winding (°C)")).isCloseTo(RIDE.hottestC(), within(0.6));
        assertThat(number(out, "charge left (%)")).isCloseTo(100 * RIDE.chargeLeft(), within(0.06));
        var card = CardPull.of(DemoKits.SHELF.kit(KIT));
        for (boolean braking : new boolean[] {false, true}) {
            var pull = braking ? RIDE.pulls().braking() : RIDE.pulls().driving();
            double made = braking ? card.brakingN() : card.drivingN();
            assertThat(pull.effectiveN()).isPositive().isLessThan(made);
            assertThat(out)
                    .contains(Numbers.fixed(pull.effectiveN(), 0) + " of " + Numbers.fixed(made, 0) + ", after "
                            + Numbers.clock(pull.timeS()) + " min at " + Numbers.fixed(pull.distanceM(), 0) + " m");
        }
        RIDE.governed()
                .forEach((limit, seconds) ->
                        assertThat(number(out, limit.toString())).isCloseTo(seconds, within(0.06)));
        assertThat(RIDE.events())
                .hasSizeGreaterThan(3)
                .allSatisfy(e -> assertThat(out)
                        .containsPattern(Pattern.quote(Numbers.clock(e.timeS())) + " +[0-9.]+  " + e.words()));
        assertThat(out).contains(Caution.BRAKE.toString(), Caution.LAW.toString(), "Rests on ");
    }

    @Test
    void theEnergyTableClosesAsPrinted() {
        var lines = typed.run("ride", KIT, "--route", "mill-hill").out().lines().toList();
        var values = new ArrayList<Double>();
        int at = lines.indexOf("Energy (Wh)");
        for (int i = at + 1; i <= at + 12; i++) {
            var words = lines.get(i).split(" ");
            values.add(Double.parseDouble(words[words.length - 1].replace('−', '-')));
        }
        double given = values.getFirst();
        double parts =
                values.subList(1, 11).stream().mapToDouble(Double::doubleValue).sum();
        assertThat(given).isCloseTo(RIDE.energy().cellsJ() / 3600, within(0.006));
        assertThat(parts).isCloseTo(given, within(11 * 0.005));
        assertThat(values.get(11)).isCloseTo(given, within(0.011));
    }

    @Test
    void aRideThatDoesNotArriveSaysWhereAndWhyAndEndsWithOne() throws IOException {
        var single = ride("market-hill-single");
        assertThat(single.arrived()).isFalse();
        var answer = typed.run("ride", "market-hill-single", "--route", "mill-hill");
        assertThat(answer.code()).isEqualTo(Exit.SOMETHING_FAILS);
        var last = single.events().getLast();
        assertThat(answer.out())
                .contains(
                        "does not arrive: " + last.words() + " at " + Math.round(last.distanceM()) + " m of 3000 after "
                                + Numbers.clock(last.timeS()) + " min; what governs there: " + last.governs());
        var json = typed.run("ride", "market-hill-single", "--route", "mill-hill", "--json");
        assertThat(json.code()).isEqualTo(Exit.SOMETHING_FAILS);
        assertThat(json.json().at("/arrived").asBoolean()).isFalse();
    }

    @Test
    void twoKitsStandSideBySide() throws IOException {
        var answer = typed.run("ride", KIT, "--route", "mill-hill", "--with", "market-hill-single");
        assertThat(answer.code()).isZero();
        assertThat(answer.out())
                .containsPattern("\n +steep-street +market-hill-single\n")
                .contains("does not arrive");
        assertThat(number(answer.out(), "energy (Wh)")).isCloseTo(RIDE.usedWh(), within(0.06));
        var json = typed.run("ride", KIT, "--route", "mill-hill", "--with", "market-hill-single", "--json")
                .json();
        assertThat(json.at("/rides").findValuesAsText("kit")).containsExactly(KIT, "market-hill-single");
        assertThat(json.at("/rides/0/usedWh").asDouble()).isEqualTo(RIDE.usedWh());
    }

    @Test
    void channelsGoToAFileThatIsNotThereYet() throws IOException {
        var answer = typed.run("ride", KIT, "--route", "mill-hill", "--csv", "channels.csv", "--every", "5");
        assertThat(answer.code()).isZero();
        assertThat(answer.out()).contains("Channels written to channels.csv: ", "one every 5 s");
        var options =
                new RideSolver.Options(RideSolver.Options.USUAL.rider(), 30, RideSolver.Options.USUAL.tolerance(), 5);
        var five = RideSolver.ride(KIT, Board.of(DemoKits.SHELF.kit(KIT)), DemoKits.SHELF.route("mill-hill"), options);
        assertThat(Files.readString(folder.resolve("channels.csv"))).isEqualTo(RideJson.csv(five));
        var again = typed.run("ride", KIT, "--route", "mill-hill", "--csv", "taken.csv");
        assertThat(again.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(again.err()).startsWith("--csv: 'taken.csv' is there already; allowed: ");
        assertThat(Files.readString(folder.resolve("taken.csv"))).isEqualTo("mine");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--braking 0.4", "--smooth 200", "--set steep-street.task.allUpMassKg=70"})
    void whatIsChosenMovesTheRide(String option) throws IOException {
        var words = new ArrayList<>(List.of("ride", KIT, "--route", "mill-hill", "--json"));
        words.addAll(List.of(option.split(" ")));
        var json = typed.run(words.toArray(String[]::new)).json();
        assertThat(json.at("/usedWh").asDouble()).isNotEqualTo(RIDE.usedWh());
    }

    @Test
    void theCruiseSpeedHoldsWhereTheRouteLeavesItToTheRider() throws IOException {
        double slow = speed("12");
        assertThat(slow).isBetween(9.0, 12.0);
        assertThat(speed("24")).isGreaterThan(slow + 5);
        assertThat(typed.run("ride", KIT, "--route", "mill-hill", "--cruise", "12")
                        .out())
                .contains("the cruise speed plays no part");
        assertThat(typed.run("ride", KIT, "--route", "free.yaml").out()).doesNotContain("plays no part");
    }

    private static double speed(String cruise) throws IOException {
        return typed.run("ride", KIT, "--route", "free.yaml", "--cruise", cruise, "--json")
                .json()
                .at("/meanKmh")
                .asDouble();
    }

    @Test
    void aRouteOfTheWorkshopAndItsFileAreTheSameRide() throws IOException {
        var file = Typed.ROOT
                .resolve("demo/routes/mill-hill.yaml")
                .toAbsolutePath()
                .toString();
        assertThat(typed.run("ride", KIT, "--route", file, "--json").out())
                .isEqualTo(
                        typed.run("ride", KIT, "--route", "mill-hill", "--json").out());
    }

    @Test
    void withoutEstimatesItCannotTellAndNamesWhatItNeeds() throws IOException {
        var needs = Board.of(DemoKits.SHELF.withoutEstimates().kit(KIT)).needs();
        var answer = typed.run("ride", KIT, "--route", "mill-hill", "--no-estimates");
        assertThat(answer.code()).isEqualTo(Exit.CANNOT_TELL);
        assertThat(answer.out()).contains("⬚ cannot tell: needs " + String.join(", ", needs));
        var json = typed.run("ride", KIT, "--route", "mill-hill", "--no-estimates", "--json");
        assertThat(json.code()).isEqualTo(Exit.CANNOT_TELL);
        assertThat(json.json().at("/needs")).hasSameSizeAs(needs);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "no-such-kit --route mill-hill; no kit has the id 'no-such-kit'",
                "steep-street --route nowhere; --route: 'nowhere' is neither a route of this workshop nor a file; allowed: a file, or one of mill-hill, river-flat",
                "steep-street --route none.gpx; 'none.gpx' is neither",
                "steep-street --route long.yaml; 2000000",
                "steep-street --route back.yaml; 90 m is no further than 100 m",
                "steep-street --route wall.yaml --smooth 0; slope of ",
                "steep-street --route gap.gpx; jumps 9.79 km",
                "steep-street --route empty.csv; is empty",
                "steep-street --route mill-hill --cruise fast; --cruise: 'fast' cannot be read",
                "steep-street --route mill-hill --cruise 900; --cruise: '900' cannot be true",
                "steep-street --route mill-hill --braking -1; --braking: ",
                "steep-street --route mill-hill --braking hard; --braking",
                "steep-street --route mill-hill --smooth 5000; --smooth: 5000",
                "steep-street --route mill-hill --smooth NaN; --smooth: NaN",
                "steep-street --route mill-hill --every 0; --every: 0",
                "steep-street --route mill-hill --csv no/such/folder.csv; --csv: ",
                "steep-street --route mill-hill --with steep-street; --with: ",
                "steep-street --route mill-hill --with nobody; no kit has the id 'nobody'",
                "steep-street --route mill-hill --with harbour-mile --csv x.csv; --csv: two rides",
                "steep-street; --route",
            })
    void badInputGetsOneLineAndCodeTwo(String line, String wrong) {
        var answer = typed.run(("ride " + line).split(" "));
        assertThat(answer.code()).as(answer.err()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.err()).contains(wrong, "; allowed: ");
    }

    @ParameterizedTest
    @ValueSource(ints = {44, 60, 80, 100, 120, 200})
    void noLineIsWiderThanTheTerminal(int columns) {
        var narrow = new Typed(folder).with("COLUMNS", String.valueOf(columns));
        // A field's name is one long word; it is never cut.
        assertThat(narrow.run("ride", KIT, "--route", "mill-hill", "--with", "market-hill-single")
                        .out()
                        .lines()
                        .filter(l -> l.strip().contains(" ")))
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
    }
}
