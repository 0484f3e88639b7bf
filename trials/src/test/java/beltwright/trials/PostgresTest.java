package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.workshop.Store;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.ReferenceFile;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The same statements keep the same workshop on PostgreSQL.
class PostgresTest {
    @TempDir
    Path folder;

    @Test
    void theDemoIsKeptAlikeOnBothDatabases() throws Exception {
        var demo = Stream.of("parts", "kits", "measurements")
                .map(f -> Tried.ROOT.resolve("demo").resolve(f))
                .toList();
        var sqlite = Workshop.open(folder.resolve("w.db"));
        assertThat(sqlite.importFolders(demo).mistakes()).isEmpty();
        try (var postgres = EmbeddedPostgres.builder().start()) {
            var other = new Workshop(Store.on("PostgreSQL", postgres.getPostgresDatabase()), ReferenceFile.bundled());
            assertThat(other.importFolders(demo).mistakes()).isEmpty();
            assertThat(other.store().contentHash()).isEqualTo(sqlite.store().contentHash());
            assertThat(other.store().documents()).isEqualTo(sqlite.store().documents());
            assertThat(other.store().verify())
                    .isEqualTo(sqlite.store().documents().size());
            var again = Store.on("PostgreSQL", postgres.getPostgresDatabase());
            assertThat(again.contentHash()).isEqualTo(sqlite.store().contentHash());
        }
    }
}
