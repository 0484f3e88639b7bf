package beltwright.press.guide;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.press.drawing.DemoKits;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The guide on paper says what the dossier says, in its order, and needs nothing but itself.
class GuidePageTest {
    private static final Pattern TAG = Pattern.compile("<[^>]*>");
    private static final Pattern DRAWN = Pattern.compile("<style>.*?</style>|<svg.*?</svg>", Pattern.DOTALL);
    private static final Pattern SECTION =
            Pattern.compile("<section class=\"step\" id=\"step-(\\d+)\">(.*?)</section>", Pattern.DOTALL);
    private static final Pattern TALLY = Pattern.compile("<tr class=\"meets\">.*?</tr>", Pattern.DOTALL);

    @ParameterizedTest
    @ValueSource(strings = {"market-hill-single", "quarry-road-load", "steep-street", "steep-street-light"})
    void everyStepStandsInItsPlaceWithAllThatIsDoneThere(String kit) {
        var dossier = DemoKits.dossier(kit);
        var sections = new ArrayList<String>();
        SECTION.matcher(guide(dossier)).results().forEach(m -> sections.add(m.group(2)));

        assertThat(sections).hasSameSizeAs(dossier.steps());
        for (int i = 0; i < sections.size(); i++) {
            var step = dossier.steps().get(i);
            var words = words(sections.get(i));
            assertThat(words).contains(step.number() + " " + step.title());
            step.takes().forEach(t -> assertThat(words).contains(t.count() + " × " + t.name() + " " + t.seat()));
            for (var told : List.of(step.tools(), step.does(), step.cautions(), step.after())) {
                told.forEach(sentence -> assertThat(words).contains(sentence));
            }
            assertThat(words).contains(step.threadlocker());
            var torque = step.torque();
            if (torque != null) {
                assertThat(words).contains(GuidePage.torque(torque)).contains(torque.basis());
            }
            assertThat(sections.get(i)).contains("<svg").contains("class=\"tick\"");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"market-hill-single", "quarry-road-load", "steep-street"})
    void theProofHasARowForEveryPartInTheBox(String kit) {
        var dossier = DemoKits.dossier(kit);
        var rows = TALLY.matcher(guide(dossier))
                .results()
                .map(m -> words(m.group()))
                .toList();
        assertThat(rows)
                .isEqualTo(dossier.tallies().stream()
                        .map(t -> t.name() + " " + t.part() + " " + t.inBox() + " = " + t.inSteps())
                        .toList());
        assertThat(rows).hasSameSizeAs(dossier.box().items());
    }

    @Test
    void cautionsComeBeforeAnythingIsTouched() {
        var words = words(guide(DemoKits.dossier("steep-street")));
        assertThat(words.indexOf("take out the battery")).isPositive().isLessThan(words.indexOf("Tools"));
        assertThat(words.indexOf("Local law")).isPositive().isLessThan(words.indexOf("Tools"));
    }

    @Test
    void aKitThatFailsIsNotToBeAssembledAndSaysWhy() {
        var dossier = DemoKits.dossier("steep-street-light");
        var words = words(guide(dossier));
        assertThat(words).contains("Do not assemble this kit as it is");
        dossier.findings().stream()
                .filter(f -> f.verdict() == Verdict.FAILS)
                .forEach(f -> assertThat(words).contains(f.says()).contains(f.remedy()));
        assertThat(guide(DemoKits.dossier("steep-street"))).doesNotContain("Do not assemble");
    }

    @ParameterizedTest
    @ValueSource(strings = {"market-hill-single", "steep-street-light"})
    void bothPagesNeedNothingButThemselvesAndComeOutTheSame(String kit) {
        var dossier = DemoKits.dossier(kit);
        for (var html : List.of(guide(dossier), GuidePage.box(dossier, DemoKits.REFERENCE, "draft"))) {
            assertThat(html)
                    .doesNotContain("<script")
                    .doesNotContain(" src=")
                    .doesNotContain("@import")
                    .doesNotContain("<link rel=\"stylesheet\"")
                    .doesNotContain("NaN");
            assertThat(html.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http");
        }
        assertThat(guide(dossier)).isEqualTo(guide(DemoKits.dossier(kit)));
    }

    private static String guide(Dossier dossier) {
        return GuidePage.html(dossier, DemoKits.REFERENCE, "draft");
    }

    /// {@return what is read on the page, drawings left out}
    private static String words(String html) {
        return TAG.matcher(DRAWN.matcher(html).replaceAll(" "))
                .replaceAll(" ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
