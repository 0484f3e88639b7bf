package beltwright.workshop.table;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.part.Kinds;
import beltwright.part.Part;
import beltwright.part.Sleeve;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PreviewTest {
    private static final String SOUND = """
            id;Name;Revision;Bore [in];Outside [mm];Length;Note
            ring-a;Ring A;A;3/8;14 h6;10,19 ± 0,015;
            ring-b;Ring B;A;0.5 ±0.01;unknown;2 in;for stock
            """;

    @TempDir
    Path folder;

    Workshop workshop;

    @BeforeEach
    void open() {
        workshop = Workshop.open(folder.resolve("a.db"));
    }

    private static Preview preview(String text) {
        var table = Table.parse(text);
        return Preview.of(
                "sleeves.csv",
                table,
                Columns.suggested(Kinds.SLEEVE, table.headings()).withSource("measured, caliper"));
    }

    @Test
    void aRowGivesThePartThatItsFileWouldGive() {
        var file = """
                schema: 1
                part: ring-a
                kind: sleeve
                name: Ring A
                revision: A
                source: measured, caliper
                dimensions: {boreMm: 3/8 in, outsideMm: 14 h6, lengthMm: "10,19 ± 0,015"}
                """;
        var preview = preview(SOUND);
        assertThat(preview.mistakes()).isEmpty();
        assertThat(preview.parts().getFirst()).isEqualTo(part(file));
        var second = (Sleeve) preview.parts().getLast();
        assertThat(second.boreMm().text()).isEqualTo("0.5 ±0.01 in");
        assertThat(second.boreMm().upper()).isEqualTo(25.4 * 0.51);
        assertThat(second.outsideMm().known()).isFalse();
        assertThat(second.lengthMm().nominal()).isEqualTo(50.8);
        assertThat(second.label().massKg().known()).isFalse();
        assertThat(second.label().note()).isEqualTo("for stock");
    }

    private static Part part(String file) {
        return ((Document.OfPart) Codec.readOne("a file", file)).part();
    }

    @Test
    void everyMistakeNamesItsCell() {
        var preview = preview("""
                id,name,revision,bore [in],outside,length
                Ring A,Ring,A,about 3,14,10
                ,Ring,A,0.3,14,10
                ring-c,,A,30,14 z6,10
                ring-d,Ring,A,0.3,14,10
                ring-d,Ring,A,0.3,14,10
                """);
        assertThat(preview.rows().stream()
                        .flatMap(row -> row.flaws().stream())
                        .map(f -> f.mistake().line() + "/" + f.column().orElse(-1)))
                .containsExactly("2/0", "2/3", "3/0", "4/1", "4/3", "4/4", "6/0");
        assertThat(preview.rows())
                .extracting(row -> row.part().isPresent())
                .containsExactly(false, false, false, true, false);
        assertThat(preview.mistakes())
                .extracting(Object::toString)
                .contains("sleeves.csv:6: ring-d: the id is used twice, first in line 5; each id once in a table;"
                        + " rename one of the two, or take it out")
                .anyMatch(m -> m.startsWith("sleeves.csv:4: ring-c.boreMm: '30 in' cannot be true of a real one; "))
                .anyMatch(m -> m.startsWith("sleeves.csv:2: part: 'Ring A' is not an id; "));
        assertThat(workshop.importTable(preview, true).saved()).isEmpty();
        assertThat(workshop.store().documents()).isEmpty();
    }

    @Test
    void whatIsWrongWithTheColumnsIsSaidOnce() {
        var table = Table.parse("""
                id,bore [ft],Bore,length [mm],mass [g]
                ring-a,8,8,10,5
                ring-b,8,8,10,5
                """);
        var columns = Columns.suggested(Kinds.SLEEVE, table.headings());
        assertThat(columns.columns().get(1).path()).isEqualTo("boreMm");
        columns = new Columns(
                Kinds.SLEEVE,
                columns.columns().stream()
                        .map(c -> c.heading().equals("Bore") ? new Columns.Column("Bore", "boreMm", LengthUnit.MM) : c)
                        .toList(),
                "");
        assertThat(Preview.of("t", table, columns).mistakes())
                .extracting(Object::toString)
                .satisfiesExactlyInAnyOrder(
                        m -> assertThat(m).startsWith("t:1: name: no column gives it; "),
                        m -> assertThat(m)
                                .startsWith(
                                        "t:1: boreMm: the heading 'bore [ft]' names ft, but the column is read in mm; mm, cm, in;"
                                                + " convert the values, and name mm in the heading"),
                        m -> assertThat(m).startsWith("t:1: boreMm: two columns give it, 'bore [ft]' and 'Bore'"),
                        m -> assertThat(m)
                                .startsWith(
                                        "t:1: massKg: the heading 'mass [g]' names g, but the column is read in kg"),
                        m -> assertThat(m).startsWith("t:1: source: nothing says where the table was read; "));
        assertThat(Preview.of("t", table, columns.withSource("a guess")).mistakes())
                .extracting(Object::toString)
                .contains(
                        "t:1: source: 'a guess' names no source; one of measured, data sheet, standard, "
                                + "said by a customer, estimate, then a comma and a note; or what it was measured with; write for example 'measured, caliper'");
    }

    @Test
    void idAndRevisionAreMadeWhereNoColumnGivesThem() {
        var preview = preview("""
                Name,Bore in mm,outside (cm),Length [inch]
                Ring A × 10,8,1.4,3/8
                Ring B,8 ± 0.1,1.4 ± 0.01,10 mm
                """);
        assertThat(preview.mistakes()).isEmpty();
        assertThat(preview.columns().made()).containsExactly("id, made of the name", "revision, A");
        assertThat(preview.parts())
                .extracting(p -> p.id() + " " + p.label().revision())
                .containsExactly("ring-a-10 A", "ring-b A");
        var first = (Sleeve) preview.parts().getFirst();
        assertThat(first.boreMm().text()).isEqualTo("8");
        assertThat(first.outsideMm().nominal()).isEqualTo(14);
        assertThat(first.lengthMm().nominal()).isCloseTo(9.525, org.assertj.core.api.Assertions.within(1e-9));
        var second = (Sleeve) preview.parts().getLast();
        assertThat(second.outsideMm().text()).isEqualTo("1.4 ± 0.01 cm");
        assertThat(second.outsideMm().lower()).isCloseTo(13.9, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(second.lengthMm().nominal()).isEqualTo(10);
        assertThat(workshop.importTable(preview, false).saved()).hasSize(2);

        var again = workshop.against(preview, false);
        assertThat(again.rows())
                .allSatisfy(row -> assertThat(row.flaws())
                        .singleElement()
                        .satisfies(flaw -> assertThat(flaw.column()).hasValue(0)));
        assertThat(workshop.importTable(preview, true).mistakes()).isEmpty();
    }

    @Test
    void namesThatGiveNoIdOrOneTwiceAreSaidInTheirCells() {
        var preview = preview("""
                bore,name
                8,Ring (A)
                8,ring a
                8,кольцо
                8,
                8,Ring B
                """);
        assertThat(preview.mistakes())
                .extracting(Object::toString)
                .satisfiesExactly(
                        m -> assertThat(m)
                                .startsWith("sleeves.csv:3: ring-a: this name gives the id 'ring-a', and so does"
                                        + " that in line 2; names that give an id each, or a column 'id'; "),
                        m -> assertThat(m)
                                .startsWith("sleeves.csv:4: id: no id can be made of the name 'кольцо', which has no"
                                        + " letter a to z and no digit; "),
                        m -> assertThat(m).startsWith("sleeves.csv:5: name: is empty; "));
        assertThat(preview.rows().stream()
                        .flatMap(row -> row.flaws().stream())
                        .map(f -> f.column().orElse(-1)))
                .containsExactly(1, 1, 1);
        assertThat(workshop.importTable(preview, true).saved()).isEmpty();
        assertThat(workshop.store().documents()).isEmpty();
    }

    @Test
    void aNameMayBeLongerThanAnId() {
        var preview = preview("name,bore\n" + "A very long name ".repeat(9) + ",8\n");
        assertThat(preview.mistakes()).isEmpty();
        assertThat(preview.parts().getFirst().id()).hasSizeBetween(50, 60).endsWith("long-name-a-very");
    }

    @Test
    void anInchHeadingReadInMillimetresIsRefused() {
        var table = Table.parse("id\tname\trevision\tbore [in]\nring-a\tRing\tA\t0.5\n");
        var columns = Columns.suggested(Kinds.SLEEVE, table.headings()).withSource("measured");
        assertThat(Preview.of("t", table, columns).mistakes()).isEmpty();
        assertThat(Preview.of("t", table, columns.with("bore [in]", "bore [mm]"))
                        .flaws())
                .singleElement()
                .satisfies(flaw -> assertThat(flaw.column()).hasValue(3))
                .satisfies(flaw -> assertThat(flaw.mistake().mend()).isEqualTo("read the column as in"));
    }

    @Test
    void aSourceInTheRowTakesTheTablesPlace() {
        var parts = preview("""
                id,name,revision,bore,bore source,length,source
                ring-a,Ring,A,8,estimate,10,
                ring-b,Ring,A,8,,10,"data sheet, drawing 4"
                ring-c,Ring,A,8,"guess",10,hearsay
                """);
        assertThat(parts.parts())
                .extracting(p -> ((Sleeve) p).boreMm().provenance().words() + " | "
                        + ((Sleeve) p).lengthMm().provenance().words())
                .containsExactly("estimate | measured, caliper", "data sheet, drawing 4 | data sheet, drawing 4");
        assertThat(parts.rows().getLast().flaws())
                .extracting(f -> f.column().orElse(-1))
                .containsExactlyInAnyOrder(4, 6);
    }

    @Test
    void whatIsKeptGivesWayOnlyWhenAsked() {
        assertThat(workshop.importTable(preview(SOUND), false).saved()).hasSize(2);
        var hash = workshop.store().contentHash();
        var changed = preview(SOUND.replace("Ring B", "Ring of brass").replace("ring-a", "ring-c"));
        var refused = workshop.importTable(changed, false);
        assertThat(refused.saved()).isEmpty();
        assertThat(refused.mistakes())
                .singleElement()
                .asString()
                .startsWith("sleeves.csv:3: ring-b: a sleeve with this id is kept already; ");
        assertThat(workshop.against(changed, false).rows().getLast().flaws())
                .singleElement()
                .satisfies(flaw -> assertThat(flaw.column()).hasValue(0));
        assertThat(workshop.store().contentHash()).isEqualTo(hash);

        assertThat(workshop.importTable(changed, true).saved()).hasSize(2);
        assertThat(workshop.shelf().part("ring-b").name()).isEqualTo("Ring of brass");
        assertThat(workshop.shelf().parts()).containsOnlyKeys("ring-a", "ring-b", "ring-c");
    }

    @Test
    void aPartOfAnotherKindNeverGivesWay() {
        var washer = "id,name,revision,inside,outside,thickness\nring-a,W,A,8,16,1\n";
        var table = Table.parse(washer);
        var columns = Columns.suggested(Kinds.WASHER, table.headings()).withSource("standard");
        assertThat(workshop.importTable(preview(SOUND), false).mistakes()).isEmpty();
        var done = workshop.importTable(Preview.of("w", table, columns), true);
        assertThat(done.saved()).isEmpty();
        assertThat(done.mistakes()).anySatisfy(m -> assertThat(m.wrong()).contains("a sleeve with this id is kept"));
    }

    @Test
    void aMaterialThatNobodyKnowsIsRefusedInItsCell() {
        var motor = Tables.csv(Kinds.MOTOR, List.of(new beltwright.workshop.document.Invented(7).part(Kinds.MOTOR)));
        var table = Table.parse(motor);
        var preview = Preview.of("m", table, Columns.suggested(Kinds.MOTOR, table.headings()));
        assertThat(preview.mistakes()).isEmpty();
        var held = workshop.against(preview, false);
        assertThat(held.parts()).isEmpty();
        assertThat(held.rows().getFirst().flaws())
                .extracting(f -> table.headings().get(f.column().orElseThrow()))
                .containsExactly("threadMaterial", "shaftMaterial");
    }
}
