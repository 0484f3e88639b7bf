package beltwright.workshop.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.part.Consumable;
import beltwright.part.Kinds;
import beltwright.part.Label;
import beltwright.part.Part;
import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Source;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.Invented;
import beltwright.workshop.document.PartRow;
import beltwright.workshop.document.ReferenceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// Parts written as a table come back equal.
@Tag("law")
class TablesLawTest {
    private static final Path ROOT = Path.of(System.getProperty("beltwright.root", ".."));

    private static List<Part> readBack(Kinds kind, String csv) {
        var table = Table.parse(csv);
        var columns = Columns.suggested(kind, table.headings());
        assertThat(columns.leftOut()).isEmpty();
        var preview = Preview.of(kind + ".csv", table, columns);
        assertThat(preview.mistakes()).isEmpty();
        return preview.parts();
    }

    @ParameterizedTest
    @EnumSource(Kinds.class)
    void inventedPartsComeBackEqual(Kinds kind) {
        var invented = new Invented(kind.ordinal());
        var parts = new TreeMap<String, Part>();
        for (int i = 0; i < 100; i++) {
            var part = invented.part(kind);
            parts.put(part.id(), part);
        }
        var csv = Tables.csv(kind, parts.values());
        assertThat(readBack(kind, csv)).isEqualTo(new ArrayList<>(parts.values()));
        assertThat(Tables.csv(kind, readBack(kind, csv))).isEqualTo(csv);
    }

    @Test
    void partsOfTheDemoComeBackEqual() {
        var shelf = Workshop.shelfOf(List.of(ROOT.resolve("demo/parts")), ReferenceFile.bundled());
        var back = new TreeMap<String, Part>();
        for (var kind : Kinds.values()) {
            if (shelf.parts().values().stream().anyMatch(kind.type()::isInstance)) {
                readBack(kind, Tables.csv(kind, shelf.parts().values())).forEach(part -> back.put(part.id(), part));
            }
        }
        assertThat(back).isEqualTo(shelf.parts()).hasSizeGreaterThan(20);
    }

    @ParameterizedTest
    @EnumSource(Kinds.class)
    void theColumnsStandInTheOrderOfTheRecord(Kinds kind) {
        var part = new Invented(1).part(kind);
        var headings = Table.parse(Tables.csv(kind, List.of(part))).headings();
        var own = PartRow.write(part).keySet().stream()
                .filter(path -> path.endsWith(".source"))
                .count();
        assertThat(headings).startsWith("id", "name", "revision", "massKg", "note");
        assertThat(headings.indexOf("source")).isEqualTo(headings.size() - 1 - own);
        assertThat(headings.subList(headings.size() - (int) own, headings.size()))
                .allSatisfy(heading -> assertThat(heading)
                        .endsWith(".source")
                        .isIn(PartRow.write(part).keySet()));
    }

    private static Consumable named(String name) {
        var mass = Dimension.unknown("grease-1.massKg", new Provenance(Source.ESTIMATE, ""));
        return new Consumable(new Label("grease-1", name, "A", mass, ""), Consumable.Use.GREASE);
    }

    @Test
    void aFormulaIsDisarmedAndComesBackEqual() {
        for (var name : List.of("=1+1", "+1", "-1", "@a", "'=1+1", "''=1", "'quoted'", "a=b")) {
            var csv = Tables.csv(Kinds.CONSUMABLE, List.of(named(name)));
            assertThat(csv.lines().skip(1)).noneMatch(line -> line.matches("(.*,)?\"?[=+@-].*"));
            assertThat(readBack(Kinds.CONSUMABLE, csv)).containsExactly(named(name));
        }
    }

    @Test
    void aControlCharacterIsRefused() {
        assertThatThrownBy(() -> Tables.csv(Kinds.CONSUMABLE, List.of(named("a\u0007"))))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("grease-1.name: holds a control character");
    }
}
