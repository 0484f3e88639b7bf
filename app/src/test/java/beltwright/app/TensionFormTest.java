package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.app.bench.Bench;
import beltwright.check.TensionCard;
import beltwright.kit.JumpTests;
import beltwright.kit.Side;
import beltwright.layout.LayoutSolver;
import beltwright.part.Belt;
import beltwright.part.Controller;
import beltwright.part.HungWeights;
import beltwright.quantity.Numbers;
import beltwright.workshop.Workshop;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Jump tests and hung weights as the tension page takes them: what is true is kept at once, and of what is not nothing
/// is.
class TensionFormTest {
    private static final String KIT = "steep-street";
    private static final String BELT = "belt-300-15";
    private static final Map<String, String> JUMP = Map.of(
            "side", "left and right",
            "tension", "120",
            "told", "N at rest",
            "torque", "4.1",
            "torqueAs", "N·m at the motor's shaft",
            "outcome", "a tooth jumped",
            "by", "Ann O.",
            "when", "2026-11-20");
    private static final Map<String, String> HUNG = Map.of(
            "belt", "belt-265-15",
            "span", "64,5",
            "pull", "49",
            "pullAs", "N",
            "sound", "229",
            "by", "workshop",
            "when", "2026-11-20");

    @TempDir
    Path folder;

    private final HttpClient client = HttpClient.newHttpClient();
    private Workshop workshop;
    private Bench bench;

    @BeforeEach
    void open() {
        workshop = Workshop.open(folder.resolve("w.db"));
        assertThat(workshop.importFolders(Stream.of("parts", "kits", "measurements")
                                .map(f -> DemoKits.ROOT.resolve("demo").resolve(f))
                                .toList())
                        .mistakes())
                .isEmpty();
        bench = Bench.start(workshop, 0);
    }

    @AfterEach
    void close() {
        bench.close();
        client.close();
    }

    private HttpResponse<String> post(String path, Map<String, String> form, String origin) throws Exception {
        var body = form.entrySet().stream()
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        var request = HttpRequest.newBuilder(URI.create(bench.address() + "kits/" + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Accept", "text/html");
        if (!origin.isEmpty()) {
            request.header("Origin", origin);
        }
        return client.send(request.POST(BodyPublishers.ofString(body)).build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, Map<String, String> form) throws Exception {
        return post(path, form, "http://127.0.0.1:" + bench.port());
    }

    private String page(String path) throws Exception {
        var request = HttpRequest.newBuilder(URI.create(bench.address() + "kits/" + path));
        return client.send(request.build(), BodyHandlers.ofString()).body();
    }

    private static Map<String, String> with(Map<String, String> form, String... changes) {
        var changed = new TreeMap<>(form);
        for (int i = 0; i < changes.length; i += 2) {
            changed.put(changes[i], changes[i + 1]);
        }
        return changed;
    }

    private String kept(String kit, Side side) {
        return Objects.requireNonNull(workshop.shelf().draft(kit).placements().get(side))
                .jumpTests();
    }

    private TensionCard card(String kit) {
        var resolved = workshop.shelf().kit(kit);
        return TensionCard.of(resolved, LayoutSolver.solve(resolved)).getFirst();
    }

    @Test
    void threeTensionsTakeTheHabitsPlace() throws Exception {
        var answer = post(KIT + "/tension/jump", with(JUMP, "tension", "90,5", "torque", "2,9"));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location").orElseThrow()).isEqualTo("/kits/" + KIT + "/tension#tests");
        assertThat(kept(KIT, Side.LEFT))
                .isEqualTo("90.5 N 2.9 Nm (Ann O. 2026-11-20)")
                .isEqualTo(kept(KIT, Side.RIGHT));
        assertThat(page(KIT + "/tension"))
                .contains("A tooth jumped at 1 of 3 different tensions: 2 more are needed", "Ann O.", "90.5 N");
        double habit = card(KIT).leastN();

        var none = with(JUMP, "tension", "150", "torque", "6", "outcome", "no tooth jumped up to it");
        assertThat(post(KIT + "/tension/jump", none).statusCode()).isEqualTo(303);
        post(KIT + "/tension/jump", with(JUMP, "tension", "130", "torque", "4.2"));
        assertThat(page(KIT + "/tension")).contains("did not jump up to it", "2 of 3 different tensions: 1 more is");
        assertThat(card(KIT).leastN()).isEqualTo(habit);

        post(KIT + "/tension/jump", with(JUMP, "tension", "170", "torque", "5.4"));
        var tests = JumpTests.parse(kept(KIT, Side.LEFT));
        assertThat(tests.tests()).hasSize(4);
        assertThat(tests.tell()).isTrue();
        assertThat(card(KIT).leastN()).isNotEqualTo(habit);
        assertThat(card(KIT).notes()).noneMatch(n -> n.contains("habit"));
        assertThat(page(KIT + "/tension")).contains("told by a line through 3 jump tests from 90.5 to 170 N: 2.9 N·m");
    }

    @Test
    void aSoundBecomesATensionByTheCard() throws Exception {
        double hertz = 357;
        double tension = card(KIT).tensionN(hertz);
        var answer = post(
                KIT + "/tension/jump", with(JUMP, "side", "right", "tension", "357", "told", "Hz of the free span"));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(kept(KIT, Side.LEFT)).isEmpty();
        var test = JumpTests.parse(kept(KIT, Side.RIGHT)).tests().getFirst();
        assertThat(test.tensionN()).isCloseTo(tension, within(0.051));
        assertThat(test.heardHz()).isEqualTo(hertz);
        assertThat(page(KIT + "/tension")).contains("Jump tests, right", ", by 357 Hz");
    }

    /// Torque of a motor is Kt·I, and Kt is 60/(2π·Kv): the form takes the least that Kv leaves open.
    @Test
    void aCurrentBecomesATorqueAndIsKept() throws Exception {
        var kit = workshop.shelf().kit(KIT);
        double kt =
                60 / (2 * Math.PI * kit.drives().getFirst().motor().kvRpmPerV().upper());
        assertThat(post(KIT + "/tension/jump", with(JUMP, "torque", "40", "torqueAs", "A, motor current, direct"))
                        .statusCode())
                .isEqualTo(303);
        var direct = JumpTests.parse(kept(KIT, Side.LEFT)).tests().getFirst();
        assertThat(direct.amperes()).isEqualTo(40);
        assertThat(direct.torqueNm()).isBetween(40 * kt - 0.0101, 40 * kt);
        assertThat(page(KIT + "/tension")).contains(", by 40 A");

        var stated = with(
                JUMP, "tension", "140", "torque", "40", "torqueAs", "A, phase current as the controller states it");
        assertThat(post(KIT + "/tension/jump", stated).statusCode()).isEqualTo(303);
        double share = kit.controller().currentIs() == Controller.CurrentIs.DIRECT ? 1 : Math.sqrt(3) / 2;
        assertThat(JumpTests.parse(kept(KIT, Side.LEFT)).tests().getLast().torqueNm())
                .isBetween(share * 40 * kt - 0.0101, share * 40 * kt);

        var before = workshop.store().contentHash();
        var pack = post(KIT + "/tension/jump", with(JUMP, "torque", "600", "torqueAs", "A, motor current, direct"));
        assertThat(pack.statusCode()).isEqualTo(422);
        assertThat(error(pack.body(), "jump-torque")).contains("0.01 to 500 A");
        assertThat(workshop.store().contentHash()).isEqualTo(before);
    }

    @Test
    void aWeightMayBeTypedInKilograms() throws Exception {
        assertThat(post("market-hill-single/tension/hung", with(HUNG, "pull", "10", "pullAs", "kg hung on it"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(((Belt) workshop.shelf().part("belt-265-15")).hungWeights()).contains(": 98.1 N 229 Hz");
    }

    /// A test heard before weights were hung is another tension after them: the page says both, and what to do.
    @Test
    void aSoundThatIsAnotherTensionTodayIsSaid() throws Exception {
        var kit = "market-hill-single";
        var heard = with(JUMP, "side", "left", "tension", "270", "told", "Hz of the free span");
        assertThat(post(kit + "/tension/jump", heard).statusCode()).isEqualTo(303);
        double was = JumpTests.parse(kept(kit, Side.LEFT)).tests().getFirst().tensionN();
        assertThat(page(kit + "/tension")).doesNotContain("; by this card");
        post(kit + "/tension/hung", HUNG);
        post(kit + "/tension/hung", with(HUNG, "pull", "98", "sound", "306"));
        double is = card(kit).tensionN(270);
        assertThat(Math.abs(is / was - 1)).isGreaterThan(0.05);
        assertThat(page(kit + "/tension"))
                .contains(
                        Numbers.plain(was) + " N, by 270 Hz; by this card " + Numbers.fixed(is, 1) + " N",
                        "was kept as " + Numbers.plain(was) + " N, but by this card 270 Hz is " + Numbers.fixed(is, 1)
                                + " N",
                        "take it out and record it");
    }

    @Test
    void weightsHungOneAfterTheOtherTellTheSound() throws Exception {
        var kit = "market-hill-single";
        assertThat(post(kit + "/tension/hung", HUNG).statusCode()).isEqualTo(303);
        assertThat(page(kit + "/tension")).contains("one more weight is needed");
        assertThat(card(kit).calibrated()).isEmpty();
        assertThat(post(kit + "/tension/hung", with(HUNG, "pull", "98", "sound", "306"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(card(kit).calibrated()).isEqualTo("2 hung weights on 64.5 mm");
        assertThat(((Belt) workshop.shelf().part("belt-265-15")).hungWeights())
                .isEqualTo("span 64.5 mm: 49 N 229 Hz (workshop 2026-11-20), 98 N 306 Hz (workshop 2026-11-20)");

        var again = post(kit + "/tension/hung", with(HUNG, "span", "70", "pull", "147", "sound", "365"));
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(error(again.body(), "hung-span")).contains("were taken on 64.5 mm");
    }

    /// {@return what is said beside a field, empty where nothing is wrong with it}
    private static String error(String page, String field) {
        var found = Pattern.compile("id=\"" + field + "-says\"><strong>(.*?)</strong>")
                .matcher(page);
        return found.find() ? found.group(1).replace("&#39;", "'") : "";
    }

    @ParameterizedTest(name = "{0}={1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            side    | middle            | 'middle' is none of the choices
            tension | ``                | is empty
            tension | -5                | '-5' is no number
            tension | 1e2               | '1e2' is no number
            tension | NaN               | 'NaN' is no number
            tension | 120 N             | '120 N' is no number
            tension | 0                 | '0' cannot be true of a real one
            tension | 4000              | 0.01 to 2000 N
            told    | kg                | 'kg' is none of the choices
            torque  | ``                | is empty
            torque  | 4..1              | '4..1' is no number
            torque  | 1000              | 0.01 to 100 N·m
            torqueAs | mA               | 'mA' is none of the choices
            outcome | ``                | none of the choices
            by      | ``                | is empty
            by      | a, b              | without brackets or commas
            by      | x (y)             | without brackets or commas
            when    | ``                | is empty
            when    | 20.11.2026        | '20.11.2026' is no day
            when    | 2026-02-30        | '2026-02-30' is no day
            when    | 9999-01-01        | is still to come
            """)
    void whatCannotBeTrueIsSaidBesideItsFieldAndNothingIsKept(String field, String value, String says)
            throws Exception {
        var before = workshop.store().contentHash();
        var answer = post(KIT + "/tension/jump", with(JUMP, field, value));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(error(answer.body(), "jump-" + field)).contains(says);
        for (var other : JUMP.keySet()) {
            if (!other.equals(field)) {
                assertThat(error(answer.body(), "jump-" + other)).as(other).isEmpty();
            }
        }
        assertThat(answer.body()).contains("value=\"" + (field.equals("by") ? "2026-11-20" : "Ann O.") + "\"");
        assertThat(workshop.store().contentHash()).isEqualTo(before);
    }

    @ParameterizedTest(name = "{0}={1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            belt  | belt-300-15 | none of the choices
            span  | 5           | 10 to 1000 mm
            pull  | ``          | is empty
            pullAs | lb         | none of the choices
            sound | 6000        | 10 to 5000 Hz
            """)
    void norOfAHungWeight(String field, String value, String says) throws Exception {
        var before = workshop.store().contentHash();
        var answer = post("market-hill-single/tension/hung", with(HUNG, field, value));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(error(answer.body(), "hung-" + field)).contains(says);
        assertThat(workshop.store().contentHash()).isEqualTo(before);
    }

    @Test
    void everyMistakeIsSaidAtOnce() throws Exception {
        var answer = post(KIT + "/tension/jump", Map.of());
        assertThat(answer.statusCode()).isEqualTo(422);
        JUMP.keySet()
                .forEach(
                        f -> assertThat(error(answer.body(), "jump-" + f)).as(f).isNotEmpty());
        assertThat(answer.body()).containsOnlyOnce(" autofocus");
    }

    @Test
    void aTestThatContradictsTheOthersOrIsThereAlreadyIsRefused() throws Exception {
        var load = "quarry-road-load";
        var first = kept(load, Side.LEFT);
        var falling = post(load + "/tension/jump", with(JUMP, "tension", "400", "torque", "0.5"));
        assertThat(falling.statusCode()).isEqualTo(422);
        assertThat(error(falling.body(), "jump-torque")).contains("torque does not rise with tension");
        assertThat(kept(load, Side.LEFT)).isEqualTo(first);

        assertThat(post(load + "/tension/jump", JUMP).statusCode()).isEqualTo(303);
        var twice = post(load + "/tension/jump", JUMP);
        assertThat(twice.statusCode()).isEqualTo(422);
        assertThat(error(twice.body(), "jump-torque")).contains("is recorded already");
        assertThat(kept(load, Side.RIGHT)).isEqualTo(first + ", 120 N 4.1 Nm (Ann O. 2026-11-20)");
    }

    @Test
    void onlyItsOwnPageMayRecordAndOnlyOfWhatIsKept() throws Exception {
        var before = workshop.store().contentHash();
        for (var origin : new String[] {"", "http://example.org"}) {
            assertThat(post(KIT + "/tension/jump", JUMP, origin).statusCode()).isEqualTo(403);
            assertThat(post(KIT + "/tension/hung", HUNG, origin).statusCode()).isEqualTo(403);
        }
        var draft = "?set=" + KIT + ".placements.left.tensionN%3D150";
        assertThat(page(KIT + "/tension" + draft))
                .contains("keep the draft, or take it back")
                .doesNotContain("Keep this jump test");
        var drafted = post(KIT + "/tension/jump" + draft, JUMP);
        assertThat(drafted.statusCode()).isEqualTo(400);
        assertThat(drafted.body()).contains("nobody can have tested what is not kept");
        assertThat(post("no-such-kit/tension/jump", JUMP).statusCode()).isEqualTo(400);
        assertThat(workshop.store().contentHash()).isEqualTo(before);
    }

    /// Two benches of one workshop, or two tabs, lose no test of each other's.
    @Test
    void testsRecordedAtTheSameTimeAreAllKept() {
        IntStream.range(0, 12).parallel().forEach(i -> {
            try {
                assertThat(post(KIT + "/tension/jump", with(JUMP, "tension", "" + (100 + i), "torque", "" + (3 + i)))
                                .statusCode())
                        .isEqualTo(303);
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        });
        assertThat(JumpTests.parse(kept(KIT, Side.LEFT)).tests()).hasSize(12);
    }

    @Test
    void theFormProposesTodayAndTheSpanHungBefore() throws Exception {
        var span = HungWeights.parse(((Belt) workshop.shelf().part(BELT)).hungWeights());
        assertThat(span.spanMm()).isEqualTo(75);
        assertThat(page(KIT + "/tension"))
                .contains("name=\"when\" value=\"" + LocalDate.now() + "\"", "name=\"span\" value=\"75\"");
    }
}
