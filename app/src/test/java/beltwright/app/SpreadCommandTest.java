package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.press.table.SpreadTables;
import beltwright.spread.Sampling;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Spread as typed; text and JSON are read back against the engine's numbers.
class SpreadCommandTest {
    private static final String[] DEMO = {"--workshop", "demo-out/demo.db", "--kits", "400"};

    @TempDir
    static Path folder;

    static Typed typed;

    @BeforeAll
    static void demo() {
        typed = new Typed(folder);
        typed.run("demo", "--no-serve");
    }

    private static Typed.Answer run(String... words) {
        return typed.run(Stream.concat(Stream.of(words), Stream.of(DEMO)).toArray(String[]::new));
    }

    @Test
    void theTextSaysWhatTheEngineCounts() {
        var spread = Sampling.of(DemoKits.SHELF.kit("quarry-road-load"), 400, 1);
        var answer = run("spread", "quarry-road-load");
        assertThat(answer.err()).isEmpty();
        assertThat(answer.code()).isZero();
        assertThat(answer.out())
                .startsWith("Spread: Quarry Road, load carrier (quarry-road-load), invented")
                .contains("400 kits drawn, seed 1; " + spread.inputs() + " numbers with limits in each")
                .contains("Goes together first time: " + SpreadTables.told(spread.goesTogether()))
                .contains(spread.sure().size() + " findings hold at the worst limits and in every kit drawn");
        assertThat(spread.unsure())
                .hasSizeGreaterThan(1)
                .allSatisfy(o -> assertThat(answer.out())
                        .contains(
                                SpreadTables.name(o),
                                SpreadTables.percent(o.share().value())));
    }

    @Test
    void oneFindingIsToldWithAllThatItRestsOn() {
        var answer = run("spread", "quarry-road-load", "--of", "pulley-screw-reach.left");
        assertThat(answer.err() + answer.out())
                .contains(
                        "worst limits",
                        "root-sum-square, low",
                        "To spare (mm): nominal 0.50, at the worst limits −0.50; half of the kits drawn have less than",
                        "the worst of several pieces counts",
                        "50 % of kits below",
                        "wheel-pulley-48-wide.threadDepthMm",
                        "left pulley screws, 6 pieces",
                        "normal, limits at 2 σ");
        assertThat(answer.code()).isZero();
    }

    @Test
    void threadsChangeNoByteAndTheSeedDoes() {
        var one = run("spread", "steep-street", "--threads", "1", "--json").out();
        assertThat(run("spread", "steep-street", "--threads", "7", "--json").out())
                .isEqualTo(one);
        assertThat(run("spread", "steep-street", "--seed", "2", "--json").out()).isNotEqualTo(one);
    }

    @Test
    void exitCodesAreThoseOfTheKit() throws IOException {
        assertThat(run("spread", "steep-street").code()).isZero();
        assertThat(run("spread", "steep-street-light").code()).isEqualTo(1);
        var untold = run("spread", "steep-street", "--no-estimates", "--json");
        assertThat(untold.code()).isEqualTo(3);
        assertThat(StreamSupport.stream(untold.json().at("/findings").spliterator(), false)
                        .filter(f -> f.path("odds").isNull()))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.path("needs")).isNotEmpty());
    }

    @Test
    void narrowerLimitsRaiseTheOdds() throws IOException {
        double before = run("spread", "quarry-road-load", "--json")
                .json()
                .at("/together/odds")
                .asDouble();
        double after = run(
                        "spread",
                        "quarry-road-load",
                        "--json",
                        "--set",
                        "wheel-pulley-48-wide.threadDepthMm=10 ±0.1",
                        "--set",
                        "screw-m4x35.lengthMm=35 ±0.2")
                .json()
                .at("/together/odds")
                .asDouble();
        assertThat(before).isBetween(0.7, 0.97);
        assertThat(after).isGreaterThan(before + 0.02).isCloseTo(1, within(0.1));
    }

    @Test
    void theLadderShowsMarginBandAndOdds() {
        var out = typed.run("check", "orchard-lane", "--odds", "--workshop", "demo-out/demo.db")
                .out();
        assertThat(out)
                .containsPattern("margin \\+\\d+ %, −\\d+ % to \\+\\d+ %; holds in 99\\.\\d+ % of 10000 kits drawn");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--kits=0|--kits: 0 kits; allowed: 1 to 200000",
                "--threads=0|--threads: 0 threads; allowed: 1 to 64",
                "--of=nothing|--of: kit steep-street has no finding 'nothing'",
                "--seed=x|'x'"
            })
    void badInputIsOneLine(String option, String says) {
        var answer = typed.run("spread", "steep-street", option, "--workshop", "demo-out/demo.db");
        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err()).contains(says);
        assertThat(answer.err().strip().lines()).hasSize(1);
    }
}
