package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.part.Part;
import beltwright.part.Sleeve;
import beltwright.workshop.Workshop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Tables of parts in and out, as typed.
class TableCommandsTest {
    private static final String SLEEVES = """
            id;name;revision;Ø [in];outside (mm);length;Price
            ring-a;Ring A;A;3/8;14 h6;10,19 ± 0,015;1,20
            ring-b;Ring B;A;0.5;18;10;1,30
            """;
    private static final String[] IMPORT = {
        "import", "sleeves.csv", "--kind", "sleeve", "--source", "measured, caliper", "--columns", "Ø [in]=bore"
    };

    @TempDir
    Path folder;

    Typed typed;

    @BeforeEach
    void open() {
        typed = new Typed(folder);
    }

    private void write(String table) throws IOException {
        Files.writeString(folder.resolve("sleeves.csv"), table);
    }

    private static String[] and(String[] words, String... more) {
        var all = new ArrayList<>(List.of(words));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    @Test
    void aTableIsTakenAndWhatIsLeftOutIsSaid() throws IOException {
        write(SLEEVES);
        var answer = typed.run(IMPORT);
        assertThat(answer.err()).isEmpty();
        assertThat(answer.code()).isZero();
        assertThat(answer.out()).startsWith("Imported 2 parts into workshop.db").contains("Columns left out: Price");
        var sleeve =
                (Sleeve) Workshop.open(folder.resolve("workshop.db")).shelf().part("ring-a");
        assertThat(sleeve.boreMm().text()).isEqualTo("3/8 in");
        assertThat(sleeve.boreMm().nominal()).isCloseTo(9.525, within(1e-12));
        assertThat(sleeve.lengthMm().text()).isEqualTo("10,19 ± 0,015");
        assertThat(sleeve.lengthMm().provenance().words()).isEqualTo("measured, caliper");
    }

    @Test
    void everyMistakeHasItsLineAndNothingIsKept() throws IOException {
        write(SLEEVES.replace("14 h6", "14 z6").replace("ring-b", "Ring B"));
        var answer = typed.run(IMPORT);
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.out()).isEmpty();
        var lines = answer.err().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0)).matches(".*sleeves\\.csv:2: ring-a\\.outsideMm: .*z6.*; allowed: .+; .+");
        assertThat(lines.get(1)).matches(".*sleeves\\.csv:3: part: 'Ring B' is not an id; allowed: .+; .+");
        assertThat(lines.get(2)).isEqualTo("Nothing was imported: 2 mistakes");
        assertThat(folder.resolve("workshop.db")).doesNotExist();
    }

    @Test
    void whatIsKeptIsReplacedOnlyWhenAsked() throws IOException {
        write(SLEEVES);
        typed.run(IMPORT);
        write(SLEEVES.replace("Ring B", "Ring of brass"));
        var refused = typed.run(IMPORT);
        assertThat(refused.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(refused.err()).contains("sleeves.csv:3: ring-b: a sleeve with this id is kept already; allowed: ");
        assertThat(Workshop.open(folder.resolve("workshop.db"))
                        .shelf()
                        .part("ring-b")
                        .name())
                .isEqualTo("Ring B");
        assertThat(typed.run(and(IMPORT, "--replace")).code()).isZero();
        assertThat(Workshop.open(folder.resolve("workshop.db"))
                        .shelf()
                        .part("ring-b")
                        .name())
                .isEqualTo("Ring of brass");
    }

    @Test
    void whatIsTypedWrongIsSaidInOneLine() throws IOException {
        write(SLEEVES);
        assertThat(typed.run("import", "sleeves.csv").err()).startsWith("--kind: a table does not say of what kind");
        assertThat(typed.run("import", "sleeves.csv", "--kind", "sleave").err())
                .startsWith("--kind: 'sleave' is not a kind of part; allowed: motor, ");
        assertThat(typed.run("import", "none.csv", "--kind", "sleeve").err()).contains("none.csv: cannot be read");
        assertThat(typed.run("import", "sleeves.csv", "--kind", "sleeve", "--columns", "Price")
                        .err())
                .startsWith("columns: 'Price' does not say which field the column gives; allowed: ");
        assertThat(typed.run("import", "sleeves.csv", "--kind", "sleeve", "--columns", "Price=kv")
                        .err())
                .startsWith("columns.Price: 'kv' is not a field of a sleeve; allowed: id, name, ");
        assertThat(typed.run("import", "sleeves.csv", "--kind", "sleeve").err())
                .contains("sleeves.csv:1: source: nothing says where the table was read; allowed: one of measured, ");
        Files.write(folder.resolve("sleeves.csv"), SLEEVES.getBytes(StandardCharsets.ISO_8859_1));
        assertThat(typed.run(IMPORT).err()).contains("is not UTF-8 text; allowed: CSV in UTF-8");
        assertThat(folder.resolve("workshop.db")).doesNotExist();
    }

    @Test
    void tablesOfAllKindsMakeTheSamePartsElsewhere() throws IOException {
        Typed.withSmallWorkshop(folder);
        var exported = typed.run("export", "--csv", "tables");
        assertThat(exported.err()).isEmpty();
        var files = exported.out().lines().toList();
        var parts = Workshop.open(folder.resolve("workshop.db")).shelf().parts();
        assertThat(files)
                .hasSize(
                        (int) parts.values().stream().map(Part::kind).distinct().count())
                .contains("tables/wheel-pulley.csv");
        for (var file : files) {
            var kind =
                    Path.of(file).getFileName().toString().replace(".csv", "").replace('-', ' ');
            var answer = typed.run("import", file, "--kind", kind, "--workshop", "second.db");
            assertThat(answer.err()).isEmpty();
            assertThat(answer.out()).doesNotContain("left out");
        }
        assertThat(Workshop.open(folder.resolve("second.db")).shelf().parts()).isEqualTo(parts);
        assertThat(typed.run("export", "--csv", "tables").err()).contains("not empty");
    }
}
