package beltwright.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What the pages of pairs, slots, a sheet and its parts say in words and where they lead.
class PairsPagesTest {
    @TempDir
    static Path folder;

    static Visitor visitor;

    @BeforeAll
    static void open() {
        visitor = new Visitor(folder).withDemo();
        var form = Visitor.form(visitor.get("parts/hanger-150").body());
        form.put("axleDiameterMm", "unknown");
        assertThat(visitor.post("parts/save", form).statusCode()).isEqualTo(303);
    }

    @AfterAll
    static void close() {
        visitor.close();
    }

    @Test
    void aCellThatCannotTellNamesWhatIsMissingAndLeadsThere() {
        var link = "<a href=\"/parts/hanger-150#p-axleDiameterMm\">axle diameter of ";
        assertThat(visitor.get("pairs?rows=wheel&columns=hanger").body())
                .contains("needs " + link)
                .contains("cannot tell</span>")
                .doesNotContain(">unknown<");
        assertThat(visitor.get("pairs/why?rows=wheel&columns=hanger&row=wheel-90&column=hanger-150")
                        .body())
                .contains(link);
        assertThat(visitor.get("parts/hanger-150").body()).contains("id=\"p-axleDiameterMm\"");
    }

    @Test
    void twoLoosePartsHaveNoLeft() {
        assertThat(visitor.get("pairs/why?rows=wheel&columns=hanger&row=wheel-90&column=hanger-200")
                        .body())
                .contains("A standard bearing")
                .doesNotContain("class=\"side\"");
        assertThat(visitor.get("pairs/why?rows=wheel&columns=kits&row=wheel-90&column=steep-street")
                        .body())
                .contains("<span class=\"side\">left</span>");
    }

    @Test
    void aSlotNamesItsPartsAndGroupsWhatIsAlike() {
        var page = visitor.get("slots/mount-hill").body();
        assertThat(page)
                .contains("<b>16 with 40 teeth</b>")
                .contains("Drive pulley, 16 teeth, 8 mm D bore")
                .contains("Belt 5M · 300 · 15")
                .doesNotContain("wheel-pulley-40")
                .doesNotContain("belt-300-15");
        assertThat(page.split("<b>16 with 40 teeth</b>", -1)).hasSize(2);
    }

    @Test
    void aMendOpenedAloneIsAWholePage() {
        for (var part : new String[] {"mend?of=motor-screw-reach.left", "working?of=motor-screw-reach.left"}) {
            var answer = visitor.get("kits/steep-street-light/" + part);
            assertThat(answer.headers().firstValue("Content-Type"))
                    .hasValueSatisfying(
                            t -> assertThat(t.replace(" ", "")).isEqualToIgnoringCase("text/html;charset=utf-8"));
            assertThat(answer.body())
                    .startsWith("<!doctype html>")
                    .contains("<meta charset=\"utf-8\">")
                    .contains("<a href=\"/kits/steep-street-light\">Back to the sheet</a>");
        }
    }

    @Test
    void onTheSheetFieldsStepAsideAsInTheForm() {
        var clamped = visitor.get("kits/steep-street?seat=left+mount").body();
        assertThat(clamped)
                .contains("data-field=\"mount-hill.clampHeightMm\"")
                .doesNotContain("data-field=\"mount-hill.flangeCircleMm\"")
                .doesNotContain("data-field=\"mount-hill.dowelMm\"");
        var flanged = visitor.get("kits/harbour-mile?seat=left+mount").body();
        assertThat(flanged)
                .contains("data-field=\"mount-flange.flangeCircleMm\"")
                .doesNotContain("data-field=\"mount-flange.clampHeightMm\"");
    }

    @Test
    void onTheSheetAMaterialIsChosenByItsNameToo() {
        assertThat(visitor.get("kits/steep-street?seat=left+mount").body())
                .contains("<option value=\"aluminium-7075-t6\" selected>Aluminium 7075-T6</option>")
                .contains(">not known</option>");
    }

    @Test
    void whatIsUnknownHasNoSource() {
        var page = visitor.get("kits/steep-street?seat=left+wheel&set=wheel-97.widthMm%3Dunknown")
                .body();
        int at = page.indexOf("id=\"m-wheel-97.widthMm\"");
        assertThat(at).isPositive();
        assertThat(page.substring(at, page.indexOf("</form>", at))).doesNotContain("class=\"src\"");
    }

    @Test
    void aDraftIsSaidInWords() {
        assertThat(visitor.get("kits/steep-street?set=steep-street.seats.left+motor+screws%3D4+x+screw-m4x12")
                        .body())
                .contains(">left motor screws: 4 × ");
    }

    @Test
    void aPastedTableAsksForTheUnitOfLengthsOnly() {
        var page = visitor.post(
                        "parts/paste",
                        java.util.Map.of(
                                "kind",
                                "belt",
                                "source",
                                "measured, caliper",
                                "text",
                                "name\tprofile\tteeth\twidth\nBelt A\t5M H\t60\t15\n",
                                "preview",
                                "yes"))
                .body();
        assertThat(page.split("aria-label=\"Unit of the column", -1)).hasSize(2);
        assertThat(page).contains(">width, mm</option>").doesNotContain(">widthMm</option>");
    }
}
