package beltwright.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.quantity.Refusal;
import beltwright.workshop.document.Agreement;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.ReferenceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// What was measured on a kit as a whole, laid over its task. All invented.
class MeasuredKitTest {
    private static final String COAST = """
            schema: 1
            measurement: coast-november
            of: short-street
            by: workshop
            with: coast-down on the river path
            when: 2026-11-20
            values: {task.rollingPercent: 1.43 ±0.05, task.allUpMassKg: 92.5}
            """;
    private static final String LATER = COAST.replace("november", "december")
            .replace("11-20", "12-01")
            .replace("1.43 ±0.05, task.allUpMassKg: 92.5", "1.60");

    @TempDir
    Path folder;

    private static List<Document> with(String... texts) {
        var documents = new ArrayList<>(SmallWorkshop.documents());
        for (var text : texts) {
            documents.add(Codec.readOne("measured", text));
        }
        return documents;
    }

    private static Shelf shelf(String... texts) {
        return Shelf.of(with(texts), ReferenceFile.bundled());
    }

    @Test
    void liesOverTheTaskAndTheLaterWins() {
        var task = shelf(LATER, COAST).draft("short-street").task();
        assertThat(task.rollingPercent().text()).isEqualTo("1.60");
        assertThat(task.allUpMassKg().nominal()).isEqualTo(92.5);
        assertThat(task.allUpMassKg().of()).isEqualTo("short-street.task.allUpMassKg");
        assertThat(task.allUpMassKg().provenance().words())
                .isEqualTo("measured, coast-down on the river path, 2026-11-20");
        assertThat(task.gradePercent().nominal()).isEqualTo(15);
    }

    @Test
    void anEditThatIsTriedOutWins() {
        var edited = shelf(COAST).with(List.of(Edit.parse("short-street.task.rollingPercent=2")));
        assertThat(edited.draft("short-street").task().rollingPercent().nominal())
                .isEqualTo(2);
    }

    @Test
    void anEditOverItIsNotKept() {
        var workshop = Workshop.open(folder.resolve("kept.db"));
        workshop.store().save(with(COAST));
        assertThatThrownBy(() -> workshop.keep(List.of(Edit.parse("short-street.task.rollingPercent=2"))))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("short-street.task.rollingPercent: was measured ('coast-november')");
        assertThat(workshop.shelf()
                        .draft("short-street")
                        .task()
                        .rollingPercent()
                        .nominal())
                .isEqualTo(1.43);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            task.rollingPercent   | task.roling       | is not a number of the task of 'short-street' | task.rollingPercent
            task.rollingPercent   | rollingPercent    | is not a number of the task of 'short-street' | task.rollingPercent
            1.43 ±0.05            | 143               | '143' cannot be true                          | 0 to 20
            of: short-street      | of: long-street   | no part or kit has the id 'long-street'       | short-street
            """)
    void pathsAndRangesAreChecked(String text, String instead, String wrong, String allowed) {
        var stored = new TreeMap<String, Document>();
        SmallWorkshop.documents().forEach(d -> stored.put(d.id(), d));
        var reading = Codec.read("coast.yaml", COAST.replace(text, instead));
        assertThat(Agreement.mistakes(reading, stored, ReferenceFile.bundled()))
                .singleElement()
                .satisfies(m -> assertThat(m.toString()).contains(wrong, allowed));
    }

    @Test
    void routesAndLogsAreOnTheShelf() {
        var log = """
                schema: 1
                log: river-run
                kit: short-street
                by: workshop
                with: stopwatch
                when: 2026-11-20
                belts: off
                columns: time, speed
                readings: |
                  0 5
                  1 4.8
                  2 4.6
                """;
        var route = """
                schema: 1
                route: river
                name: River
                source: estimate
                points: |
                  0 5
                  100 5
                """;
        var shelf = shelf(log, route);
        assertThat(shelf.log("river-run").rows()).isEqualTo(3);
        assertThat(shelf.route("river").lengthM()).isEqualTo(100);
        assertThatThrownBy(() -> shelf.route("hill"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("no route has the id 'hill'; allowed: river");
        assertThatThrownBy(() -> shelf.log("hill"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("no log has the id 'hill'; allowed: river-run");
        assertThatThrownBy(() -> shelf.with(List.of(Edit.parse("river.name=x"))))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("is a route or a log");
        var workshop = Workshop.open(folder.resolve("rides.db"));
        workshop.store().save(with(log, route));
        workshop.exportFolder(folder.resolve("out"));
        assertThat(folder.resolve("out/routes/river.yaml")).exists();
        assertThat(folder.resolve("out/logs/river-run.yaml")).exists();
        assertThat(workshop.shelf().logs()).isEqualTo(shelf.logs());
    }
}
