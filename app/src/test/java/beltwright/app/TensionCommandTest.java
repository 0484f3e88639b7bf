package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.check.TensionCard;
import beltwright.check.WeakestLink;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.quantity.Numbers;
import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Belt tension and the weakest link as typed; what is printed is the engine's.
class TensionCommandTest {
    private static final Kit KIT = DemoKits.SHELF.kit(Typed.KIT);
    private static final TensionCard CARD =
            TensionCard.of(KIT, LayoutSolver.solve(KIT)).getFirst();
    private static final WeakestLink.Chain CHAIN =
            WeakestLink.of(KIT, LayoutSolver.solve(KIT)).getFirst();
    private static final String JUMPS = Typed.KIT + ".placements.left.jumpTests=";

    @TempDir
    static Path folder;

    static Typed typed;

    @BeforeAll
    static void importSmall() {
        typed = Typed.withSmallWorkshop(folder);
    }

    @Test
    void theCardPrintsTargetAndBandAsTensionSoundAndForce() {
        var answer = typed.run("tension", Typed.KIT);
        assertThat(answer.code()).isZero();
        assertThat(answer.out()).startsWith("Belt tension: Market Hill, one motor (market-hill-single), invented");
        var band = Pattern.compile("^Band +(\\d+) to (\\d+) N, (\\d+) to (\\d+) Hz", Pattern.MULTILINE)
                .matcher(answer.out());
        assertThat(band.find()).isTrue();
        assertThat(Double.parseDouble(band.group(1))).isEqualTo(Math.ceil(CARD.leastN()));
        assertThat(Double.parseDouble(band.group(2))).isEqualTo(Math.floor(CARD.mostN()));
        assertThat(Double.parseDouble(band.group(3))).isEqualTo(Math.ceil(CARD.frequencyHz(CARD.leastN())));
        assertThat(Double.parseDouble(band.group(4))).isEqualTo(Math.floor(CARD.frequencyHz(CARD.mostN())));
        assertThat(answer.out())
                .contains(
                        Numbers.fixed(CARD.forceN(CARD.setN()), 1) + " N at mid-span",
                        "k = " + Numbers.significant(CARD.factor(), 4) + " N/Hz²",
                        "after the first ride, after 10 km, then every 100 km");
        TensionCard.CAUTIONS.forEach(c -> assertThat(answer.out()).contains("! " + c));
    }

    @Test
    void theJsonLetsAReaderTurnASoundIntoATension() throws IOException {
        var card = typed.run("tension", Typed.KIT, "--json").json().at("/cards/0");
        for (var at : new String[] {"least", "target", "most"}) {
            double hertz = card.at("/" + at + "/frequencyHz").asDouble();
            double tension = card.at("/kNPerHz2").asDouble() * hertz * hertz
                    - card.at("/offsetN").asDouble();
            assertThat(tension).isCloseTo(card.at("/" + at + "/tensionN").asDouble(), within(1e-9));
        }
        assertThat(card.at("/most/tensionN").asDouble()).isEqualTo(CARD.mostN());
    }

    @Test
    void withoutABandItSaysWhyAndEndsWithOne() {
        var answer = typed.run(
                "tension",
                Typed.KIT,
                "--set",
                Typed.KIT + ".task.jointFriction=0.02",
                "--set",
                Typed.KIT + ".task.motorJoltFactor=20");
        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.out())
                .containsPattern("Band +no band: because the pull at work alone is too much for the slot screws");
        var jumpy = typed.run("tension", Typed.KIT, "--set", JUMPS + "100 N 1 Nm, 200 N 2 Nm, 400 N 4 Nm");
        assertThat(jumpy.code()).isEqualTo(1);
        assertThat(jumpy.out())
                .containsPattern("Band +no band: because \\d+ N is the most, by the wheel's bearings, and \\d+ N is");
    }

    @Test
    void aTargetOutsideItsBandEndsWithOne() throws IOException {
        for (double tension : new double[] {
            Math.floor(CARD.leastN()) - 1,
            Math.ceil(CARD.leastN()),
            Math.floor(CARD.mostN()),
            Math.ceil(CARD.mostN()) + 1
        }) {
            boolean outside = tension < CARD.leastN() || tension > CARD.mostN();
            var set = Typed.KIT + ".placements.left.tensionN=" + Numbers.plain(tension);
            var answer = typed.run("tension", Typed.KIT, "--set", set);
            assertThat(answer.code()).as(set).isEqualTo(outside ? 1 : 0);
            assertThat(flat(answer.out()).contains("chosen for this kit, outside the band"))
                    .isEqualTo(outside);
            var json = typed.run("tension", Typed.KIT, "--json", "--set", set);
            assertThat(json.code()).isEqualTo(outside ? 1 : 0);
            assertThat(json.json().at("/cards/0/outside").asBoolean()).isEqualTo(outside);
        }
    }

    @Test
    void withoutEstimatesItSaysWhatIsMissingAndEndsWithThree() {
        var answer = typed.run("tension", Typed.KIT, "--no-estimates");
        assertThat(answer.code()).isEqualTo(3);
        assertThat(answer.out()).contains("cannot tell: needs ", "jointFriction");
        assertThat(typed.run("weakest", Typed.KIT, "--no-estimates").code()).isEqualTo(3);
    }

    @Test
    void jumpTestsTakeOverFromTheHabitAndReachNoFurtherThanTheyWere() {
        var tried = typed.run("tension", Typed.KIT, "--set", JUMPS + "90 N 2.1 Nm, 120 N 3.1 Nm, 150 N 4.1 Nm");
        assertThat(tried.code()).isZero();
        assertThat(tried.out())
                .contains("the least by 3 jump tests from 90 to 150 N")
                .doesNotContain("is habit");

        var low = typed.run("tension", Typed.KIT, "--set", JUMPS + "20 N 0.7 Nm, 30 N 1.0 Nm, 40 N 1.4 Nm");
        assertThat(low.code()).isEqualTo(3);
        assertThat(low.out()).contains("cannot tell: needs a jump test at a higher tension");

        var few = typed.run("tension", Typed.KIT, "--set", JUMPS + "60 N 2.1 Nm, 90 N 3.1 Nm");
        assertThat(few.code()).isZero();
        assertThat(few.out()).contains("is habit", "a jump at one more tension and the tests tell it");

        var falling = typed.run("tension", Typed.KIT, "--set", JUMPS + "60 N 4.1 Nm, 90 N 3.1 Nm, 120 N 2 Nm");
        assertThat(falling.code()).isEqualTo(2);
        assertThat(falling.err()).containsOnlyOnce("\n").contains("jumpTests", "torque does not rise with tension");
    }

    @Test
    void hungWeightsGiveTheSoundOfTheBelt() throws IOException {
        var belt = KIT.drives().getFirst().belt().id();
        var hung = typed.run(
                        "tension",
                        Typed.KIT,
                        "--json",
                        "--set",
                        belt + ".hungWeights=span 64.5 mm: 100 N 350 Hz, 200 N 490 Hz")
                .json()
                .at("/cards/0");
        assertThat(hung.at("/calibrated").asText()).isEqualTo("2 hung weights on 64.5 mm");
        assertThat(hung.at("/offsetN").asDouble()).isPositive();
        assertThat(hung.at("/target/tensionN").asDouble()).isEqualTo(CARD.setN());

        var wrong = typed.run("tension", Typed.KIT, "--set", belt + ".hungWeights=50 N 150 Hz");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err())
                .containsOnlyOnce("\n")
                .contains("hungWeights", "span 64.5 mm: 50 N 265 Hz, 100 N 355 Hz");
    }

    @Test
    void weightsThatMakeNoSenseAreRefusedDoubtedOrNotTold() throws IOException {
        var hung = KIT.drives().getFirst().belt().id() + ".hungWeights=span 64.5 mm: ";
        var falls = typed.run("tension", Typed.KIT, "--set", hung + "50 N 250 Hz, 100 N 150 Hz");
        assertThat(falls.code()).isEqualTo(2);
        assertThat(falls.err())
                .containsOnlyOnce("\n")
                .contains("does not rise with the pull: 100 N 150 Hz after 50 N 250 Hz", "pluck those two again");

        var octave = typed.run("tension", Typed.KIT, "--set", hung + "100 N 700 Hz, 200 N 980 Hz");
        assertThat(octave.code()).isZero();
        assertThat(flat(octave.out())).containsPattern("k is 0\\.2\\d times that of a string .* an octave away\\?");

        var below = typed.run("tension", Typed.KIT, "--set", hung + "50 N 150 Hz, 100 N 235 Hz");
        assertThat(below.code()).isZero();
        assertThat(flat(below.out())).contains("T_0 is below 0, but stiffness only ever adds");

        var mute = new String[] {"tension", Typed.KIT, "--set", hung + "400 N 100 Hz, 410 N 700 Hz"};
        var told = typed.run(mute);
        assertThat(told.code()).isEqualTo(3);
        assertThat(flat(told.out()))
                .containsPattern("By sound +cannot tell: needs weights hung nearer to the target")
                .doesNotContain("unknown");
        var json = typed.run(mute[0], mute[1], mute[2], mute[3], "--json");
        assertThat(json.code()).isEqualTo(3);
        assertThat(json.json().at("/cards/0/needs/0").asText()).isEqualTo("weights hung nearer to the target");
        assertThat(typed.run("tension", Typed.KIT).out()).doesNotContain("octave", "below 0");
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void everyLinkIsPrintedInItsOrder() {
        var answer = typed.run("weakest", Typed.KIT);
        assertThat(answer.code()).isZero();
        int at = 0;
        for (var link : CHAIN.links()) {
            int next = answer.out().indexOf("\n" + link.name(), at);
            assertThat(next).as(link.name()).isPositive();
            var line = answer.out().substring(next + 1, answer.out().indexOf('\n', next + 1));
            assertThat(line).contains(Numbers.fixed(link.driveNm(), 1), Numbers.fixed(link.brakeNm(), 1));
            assertThat(line).contains(link.kind().toString());
            at = next;
        }
        assertThat(answer.out())
                .contains("driving, gives first: "
                        + CHAIN.firstToGive(false).orElseThrow().name());
    }

    @Test
    void everyLinkLeadsToAFindingOfTheKit() throws IOException {
        var links = typed.run("weakest", Typed.KIT, "--json").json().at("/chains/0/links");
        var findings = typed.run("check", Typed.KIT, "--json").json().at("/findings");
        var keys = StreamSupport.stream(findings.spliterator(), false)
                .map(f -> f.at("/key").asText())
                .toList();
        assertThat(links.size()).isEqualTo(CHAIN.links().size());
        for (var link : links) {
            if (!link.at("/finding").asText().isEmpty()) {
                assertThat(keys).contains(link.at("/finding").asText());
            }
        }
    }

    @Test
    void aBeltThatIsTooLooseJumpsBeforeTheWorstTorque() {
        var answer = typed.run("weakest", Typed.KIT, "--set", Typed.KIT + ".placements.left.tensionN=40");
        assertThat(answer.code()).isEqualTo(1);
        assertThat(answer.out()).containsPattern("a tooth jumps .*slips, before the worst torque");
    }
}
