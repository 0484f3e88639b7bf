package beltwright.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.quantity.Refusal;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.ReferenceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoreTest {
    @TempDir
    Path folder;

    @Test
    void whatWasSavedIsThereWhenOpenedAgain() {
        var file = folder.resolve("workshop.db");
        Store.open(file).save(SmallWorkshop.documents());
        var again = Store.open(file);
        assertThat(again.documents().values()).containsExactlyInAnyOrderElementsOf(SmallWorkshop.documents());
        assertThat(again.verify()).isEqualTo(SmallWorkshop.documents().size());
    }

    @Test
    void aChangedDocumentTakesTheOldOnesPlaceAndChangesTheHash() {
        var store = store("a");
        store.save(SmallWorkshop.documents());
        var before = store.contentHash();
        store.save(SmallWorkshop.documents());
        assertThat(store.contentHash()).isEqualTo(before);
        store.save(
                Codec.read("belt", Codec.write(SmallWorkshop.documents().get(2)).replace("Belt 305", "Belt"))
                        .orRefuse());
        assertThat(store.contentHash()).isNotEqualTo(before);
        assertThat(store.documents()).hasSize(SmallWorkshop.documents().size());
    }

    @Test
    void aFailureInTheMiddleSavesNothing() {
        var store = store("a");
        var before = store.contentHash();
        assertThatThrownBy(() -> store.change(stored -> {
                    store.contentHash(); // readers are not shut out
                    throw new IllegalStateException("power cut");
                }))
                .hasMessageContaining("power cut");
        var broken = new ArrayList<Document>(SmallWorkshop.documents());
        broken.add(null);
        assertThatThrownBy(() -> store.save(broken)).isInstanceOf(NullPointerException.class);
        assertThat(store.contentHash()).isEqualTo(before);
    }

    @Test
    void writersWaitForEachOther() throws Exception {
        var store = store("a");
        var all = SmallWorkshop.documents();
        try (var threads = Executors.newFixedThreadPool(4)) {
            var saved = new ArrayList<Future<?>>();
            for (int i = 0; i < 60; i++) {
                var one = all.get(i % all.size());
                saved.add(threads.submit(() -> store.change(before -> List.of(one))));
            }
            for (var future : saved) {
                future.get();
            }
        }
        assertThat(store.documents()).hasSize(all.size());
    }

    @Test
    void storesOpenedAtTheSameMomentAreMadeOnce() throws Exception {
        try (var threads = Executors.newFixedThreadPool(4)) {
            var opened = new ArrayList<Future<Store>>();
            for (int i = 0; i < 8; i++) {
                var file = folder.resolve("shared" + i / 4 + ".db");
                opened.add(threads.submit(() -> Store.open(file)));
            }
            for (var store : opened) {
                assertThat(store.get().documents()).isEmpty();
            }
        }
    }

    @Test
    void aDamagedRowIsRefused() throws SQLException {
        var store = store("a");
        store.save(SmallWorkshop.documents());
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("a.db"));
                var statement = connection.createStatement()) {
            statement.executeUpdate(
                    "update document set canonical_text = replace(canonical_text, '61', '62') where id = 'belt-305-15'");
        }
        assertThatThrownBy(new Workshop(store, ReferenceFile.bundled())::shelf)
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("the text of part 'belt-305-15' is not what was saved");
        assertThatThrownBy(store::verify).isInstanceOf(Refusal.class);
    }

    @Test
    void aFileThatIsNoStoreIsRefusedAndLeftAlone() throws IOException {
        var file = Files.writeString(folder.resolve("notes.txt"), "not a database, only a text ".repeat(100));
        assertThatThrownBy(() -> Store.open(file))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("is another sort of file");
        assertThat(file).hasContent("not a database, only a text ".repeat(100));
        assertThatThrownBy(() -> Store.open(folder.resolve("no/such/folder.db")))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Store.open(folder)).isInstanceOf(Refusal.class);
    }

    @Test
    void importSavesAllOrSaysEverythingThatIsWrong() throws IOException {
        var workshop = new Workshop(store("a"), ReferenceFile.bundled());
        var files = Files.createDirectories(folder.resolve("files/deep"));
        Files.writeString(files.resolve("small.yaml"), SmallWorkshop.TEXT);
        assertThat(workshop.importFolder(folder.resolve("files")).saved()).hasSize(6);
        var before = workshop.store().contentHash();

        Files.writeString(files.resolve("broken.yaml"), SmallWorkshop.TEXT.replace("profile: 5M H", "profile: 9M"));
        Files.writeString(folder.resolve("outside.yaml"), "not: ours");
        Files.createSymbolicLink(files.resolve("link.yaml"), folder.resolve("outside.yaml"));
        var outcome = workshop.importFolder(folder.resolve("files"));
        assertThat(outcome.saved()).isEmpty();
        assertThat(outcome.mistakes())
                .filteredOn(m -> m.wrong().contains("'9M'"))
                .hasSize(3);
        assertThat(outcome.mistakes())
                .filteredOn(m -> m.wrong().contains("used twice"))
                .hasSize(3);
        assertThat(outcome.mistakes()).hasSize(6);
        assertThat(workshop.store().contentHash()).isEqualTo(before);
    }

    @Test
    void exportThenImportIsEqual() throws IOException {
        var workshop = new Workshop(store("a"), ReferenceFile.bundled());
        Files.writeString(Files.createDirectory(folder.resolve("files")).resolve("small.yaml"), SmallWorkshop.TEXT);
        workshop.importFolder(folder.resolve("files"));
        var out = folder.resolve("out");
        workshop.exportFolder(out);
        assertThat(out.resolve("parts/motor-50.yaml")).exists();
        assertThat(out.resolve("measurements/motor-late.yaml")).exists();

        var fresh = new Workshop(store("b"), ReferenceFile.bundled());
        assertThat(fresh.importFolder(out).mistakes()).isEmpty();
        assertThat(fresh.store().contentHash()).isEqualTo(workshop.store().contentHash());
        assertThatThrownBy(() -> workshop.exportFolder(out))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("is not empty");
    }

    @Test
    void severalFoldersAreOneImportAndOneShelf() throws IOException {
        var documents = SmallWorkshop.TEXT.split("---\n");
        Files.writeString(Files.createDirectory(folder.resolve("one")).resolve("part.yaml"), documents[0]);
        Files.writeString(Files.createDirectory(folder.resolve("two")).resolve("measured.yaml"), documents[4]);
        var both = List.of(folder.resolve("two"), folder.resolve("one"));
        var workshop = new Workshop(store("a"), ReferenceFile.bundled());
        assertThat(workshop.importFolders(both).saved()).hasSize(2);
        assertThat(workshop.shelf()).isEqualTo(Workshop.shelfOf(both, ReferenceFile.bundled()));
        assertThatThrownBy(() -> Workshop.shelfOf(both.subList(0, 1), ReferenceFile.bundled()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("measured.yaml:3: motor-early.of: no part or kit has the id 'motor-50'");
    }

    @Test
    void aFolderWithNothingToReadIsRefused() {
        var workshop = new Workshop(store("a"), ReferenceFile.bundled());
        assertThatThrownBy(() -> workshop.importFolder(folder))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("no *.yaml");
        assertThatThrownBy(() -> workshop.importFolder(folder.resolve("x")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("is not a folder");
    }

    private Store store(String name) {
        return Store.open(folder.resolve(name + ".db"));
    }
}
