package beltwright.press.guide;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.assembly.Box;
import beltwright.assembly.Step;
import beltwright.assembly.Tally;
import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.press.drawing.DemoKits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The printed pages, read back: each list on them equals the list of the dossier, nothing more, nothing twice.
class GuideReadBackTest {
    private static final String ODD = "M4 <\"hill\" & 'dale'> </style><script>";

    @ParameterizedTest
    @ValueSource(strings = {"market-hill-single", "quarry-road-load", "steep-street", "steep-street-light"})
    void eachStepHoldsItsOwnListsAndNoOther(String kit) {
        var dossier = DemoKits.dossier(kit);
        var html = guide(dossier);
        for (var step : dossier.steps()) {
            var at = between(html, "<section class=\"step\" id=\"step-" + step.number() + "\">", "</section>");
            assertThat(all(at, "<h3>(.*?)</h3>")).containsExactly(step.number() + " " + step.title());
            assertThat(all(between(at, "<ul class=\"takes\"", "</ul>"), "<li>(.*?)</li>"))
                    .isEqualTo(
                            step.takes().stream().map(GuideReadBackTest::taken).toList());
            assertThat(all(at, "<dt>Tools</dt><dd>(.*?)</dd>"))
                    .isEqualTo(step.tools().isEmpty() ? List.of() : List.of(String.join("; ", step.tools())));
            var torque = step.torque();
            assertThat(all(at, "<dt>Torque</dt><dd>(.*?)</dd>"))
                    .isEqualTo(
                            torque == null
                                    ? List.of()
                                    : List.of(String.format(Locale.ROOT, "%.1f N·m ", torque.torqueNm())
                                            + torque.basis()));
            assertThat(all(at, "<dt>Threadlocker</dt><dd>(.*?)</dd>"))
                    .isEqualTo(step.threadlocker().isEmpty() ? List.of() : List.of(step.threadlocker()));
            assertThat(all(at, "<p class=\"caution\">(.*?)</p>"))
                    .isEqualTo(
                            step.cautions().stream().map(c -> "Caution. " + c).toList());
            assertThat(all(between(at, "<ol>", "</ol>"), "<li>(.*?)</li>")).isEqualTo(step.does());
        }
        assertThat(all(html, "(<section class=\"step\")")).hasSameSizeAs(dossier.steps());
    }

    @ParameterizedTest
    @ValueSource(strings = {"market-hill-single", "quarry-road-load", "steep-street"})
    void everyReasonLeadsToTheEarlierStepItNames(String kit) {
        var dossier = DemoKits.dossier(kit);
        var html = guide(dossier);
        for (var step : dossier.steps()) {
            var at = between(html, "<section class=\"step\" id=\"step-" + step.number() + "\">", "</section>");
            var told = new ArrayList<String>();
            Pattern.compile("<a href=\"#step-(\\d+)\">step \\1</a>, (.*?)(?= · <a|</p>)")
                    .matcher(at)
                    .results()
                    .forEach(m -> {
                        int number = Integer.parseInt(m.group(1));
                        assertThat(number).isLessThan(step.number());
                        told.add(words(m.group(2)));
                        assertThat(told.getLast())
                                .startsWith(dossier.steps().get(number - 1).joint() + ": ");
                    });
            assertThat(told).containsExactlyInAnyOrderElementsOf(step.after());
        }
        assertThat(dossier.steps()).anyMatch(s -> s.after().size() > 1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"market-hill-single", "quarry-road-load", "steep-street", "steep-street-light"})
    void bothPagesListTheSameBox(String kit) {
        var dossier = DemoKits.dossier(kit);
        for (var html : List.of(guide(dossier), box(dossier))) {
            var rows = all(between(html, "<table class=\"items\">", "</table>"), "<tr>(.*?)</tr>");
            assertThat(rows.subList(1, rows.size() - 1))
                    .isEqualTo(dossier.box().items().stream()
                            .map(i -> i.count() + " × " + i.name() + " " + i.part() + " " + i.revision() + " "
                                    + String.join(", ", i.seats()) + " " + GuidePage.mass(i))
                            .toList());
            assertThat(rows.getLast()).startsWith(dossier.box().pieces() + " pieces in all");
            dossier.kit().seats().values().stream()
                    .filter(s -> s.fromRider())
                    .forEach(s -> assertThat(all(html, "<li>(.*?)</li>"))
                            .contains(s.name() + ": " + s.part().name()));
        }
    }

    @Test
    void aCountThatDiffersIsMarkedInItsRowAndInTheSum() {
        var dossier = DemoKits.dossier("steep-street");
        var tallies = dossier.tallies().stream()
                .map(t -> t.part().equals("washer-m4") ? new Tally(t.part(), t.name(), t.inBox(), t.inSteps() + 1) : t)
                .toList();
        var html = guide(with(dossier, dossier.kit(), dossier.findings(), dossier.box(), dossier.steps(), tallies));
        assertThat(all(html, "<tr class=\"differs\">(.*?)</tr>")).containsExactly("Washer M4 washer-m4 8 ≠ 9");
        assertThat(all(between(html, "<table class=\"tally\">", "</table>"), "<tfoot>(.*?)</tfoot>"))
                .containsExactly("In all 58 ≠ 59");
    }

    @Test
    void whatCannotBeToldStopsTheAssemblyAsWell() {
        var dossier = DemoKits.dossier("steep-street");
        var first = dossier.findings().getFirst();
        var asked = new Finding(
                first.key(),
                first.check(),
                Verdict.CANNOT_TELL,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                first.unit(),
                null,
                null,
                null,
                first.subjects(),
                List.of("mount.clampGripMm"),
                List.of(),
                "needs mount.clampGripMm",
                "measure it and enter it",
                first.source(),
                List.of());
        var html =
                guide(with(dossier, dossier.kit(), List.of(asked), dossier.box(), dossier.steps(), dossier.tallies()));
        var stop = between(html, "<section class=\"stop\"", "</section>");
        assertThat(words(stop))
                .contains("Do not assemble this kit as it is")
                .contains("(cannot tell): needs mount.clampGripMm. What mends it: measure it and enter it.");
        assertThat(stop).contains("class=\"dotted\"");
        assertThat(html.indexOf("<section class=\"stop\"")).isLessThan(html.indexOf("<h2>Tools</h2>"));
    }

    @Test
    void oddNamesAreWordsAndNeverMarkup() {
        var plain = DemoKits.dossier("market-hill-single");
        var draft = plain.kit().draft();
        var kit = plain.kit();
        var named = new Kit(
                new KitDraft(
                        draft.id(),
                        ODD,
                        true,
                        draft.note(),
                        draft.seats(),
                        draft.joints(),
                        draft.placements(),
                        draft.task()),
                kit.seats(),
                kit.joints(),
                kit.hanger(),
                kit.pack(),
                kit.controller(),
                kit.deck(),
                kit.riser(),
                kit.deckScrew(),
                kit.deckNut(),
                kit.ends(),
                kit.drives(),
                kit.task(),
                kit.reference(),
                kit.chance());
        var item = new Box.Item("odd", ODD, "screw", ODD, 1, Double.NaN, List.of(ODD));
        var step = new Step(
                1,
                ODD,
                "",
                List.of(new Step.Take("odd", ODD, 1, "hanger", false)),
                List.of(ODD),
                new Step.Torque(2.1, ODD),
                ODD,
                List.of(ODD),
                List.of(ODD),
                List.of("hanger"),
                List.of());
        var odd = with(
                plain,
                named,
                plain.findings(),
                new Box(List.of(item)),
                List.of(step),
                List.of(new Tally("odd", ODD, 1, 1)));
        for (var html : List.of(guide(odd), box(odd))) {
            assertThat(html.toLowerCase(Locale.ROOT)).doesNotContain("<script").doesNotContain("m4 <\"hill");
            assertThat(all(html, "(</style>)")).hasSize(1);
            assertThat(all(html, "<h1>(.*?)</h1>")).containsExactly(ODD);
            assertThat(all(html, "<title>(.*?)</title>").getFirst()).endsWith(": " + ODD);
            assertThat(words(html)).contains("unknown");
        }
        assertThat(all(guide(odd), "<h3>(.*?)</h3>")).contains("1 " + ODD);
    }

    @ParameterizedTest
    @ValueSource(strings = {"market-hill-single", "steep-street-light"})
    void thePagesAreSoundForAScreenReader(String kit) {
        var dossier = DemoKits.dossier(kit);
        for (var html : List.of(guide(dossier), box(dossier))) {
            assertThat(html).contains("<html lang=\"en\">");
            assertThat(all(html, "<h1>(.*?)</h1>")).hasSize(1);
            var levels = Pattern.compile("<h([1-6])[ >]")
                    .matcher(html)
                    .results()
                    .map(m -> Integer.valueOf(m.group(1)))
                    .toList();
            IntStream.range(1, levels.size())
                    .forEach(i -> assertThat(levels.get(i)).isLessThanOrEqualTo(levels.get(i - 1) + 1));
            assertThat(html).doesNotContainPattern("<th(?! scope=\"(?:col|row)\")[ >]");
            assertThat(html).doesNotContainPattern("<th [^>]*></th>");
            assertThat(html).doesNotContainPattern("<input(?![^>]*aria-label=\"[^\"]+\")");
            var ids = Pattern.compile(" id=\"([^\"]*)\"")
                    .matcher(html)
                    .results()
                    .map(m -> m.group(1))
                    .toList();
            assertThat(ids).doesNotHaveDuplicates();
            Pattern.compile("href=\"#([^\"]*)\"|aria-labelledby=\"([^ \"]*) ([^ \"]*)\"|url\\(#([^)]*)\\)")
                    .matcher(html)
                    .results()
                    .flatMap(m -> IntStream.rangeClosed(1, 4).mapToObj(m::group).filter(g -> g != null))
                    .forEach(id -> assertThat(ids).contains(id));
        }
    }

    private static String guide(Dossier dossier) {
        return GuidePage.html(dossier, DemoKits.REFERENCE, "draft");
    }

    private static String box(Dossier dossier) {
        return GuidePage.box(dossier, DemoKits.REFERENCE, "draft");
    }

    private static Dossier with(
            Dossier d, Kit kit, List<Finding> findings, Box box, List<Step> steps, List<Tally> tallies) {
        return new Dossier(kit, d.layout(), findings, d.numbers(), d.dimensions(), box, steps, tallies);
    }

    private static String taken(Step.Take t) {
        return t.count() + " × " + t.name() + " " + t.seat() + (t.fromRider() ? ", the rider's own" : "");
    }

    /// {@return what stands between the first `from` and the next `to`; empty where there is no `from`}
    private static String between(String html, String from, String to) {
        int start = html.indexOf(from);
        return start < 0 ? "" : html.substring(start, html.indexOf(to, start));
    }

    private static List<String> all(String html, String pattern) {
        return Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(html)
                .results()
                .map(m -> words(m.group(1)))
                .toList();
    }

    private static String words(String html) {
        return html.replaceAll("(?s)<style>.*?</style>|<svg.*?</svg>", " ")
                .replaceAll("</?(b|strong|small|span)[^>]*>", "")
                .replaceAll("<(?=[/a-z!])[^>]*>", " ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&#34;", "\"")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
