package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.workshop.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The folder of seeded mistakes: one import lists them all, and the store does not move.
class BrokenFolderTest {
    private static final Path BROKEN = DemoKits.ROOT.resolve("demo/broken");

    @TempDir
    Path folder;

    @Test
    void oneImportListsEveryMistakeAndChangesNothing() throws IOException {
        var typed = Typed.withSmallWorkshop(folder);
        var store = Workshop.open(folder.resolve("workshop.db")).store();
        var before = store.contentHash();

        var answer = typed.run("import", BROKEN.toAbsolutePath().toString());

        assertThat(answer.code()).isEqualTo(2);
        assertThat(store.contentHash()).isEqualTo(before);
        var seeded = seeded();
        assertThat(seeded).hasSize(12);
        var said = new TreeSet<String>();
        for (var line : answer.err().lines().filter(l -> l.contains(".yaml:")).toList()) {
            var parts = line.split(":", 4);
            said.add(Path.of(parts[0]).getFileName() + ":" + parts[1]);
            assertThat(line.split("; ")).as(line).hasSizeGreaterThanOrEqualTo(3);
        }
        assertThat(said).isEqualTo(seeded);
    }

    /// {@return file and line of every comment that announces a mistake}
    private static TreeSet<String> seeded() throws IOException {
        var seeded = new TreeSet<String>();
        try (var files = Files.list(BROKEN)) {
            for (var file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                var lines = new ArrayList<>(Files.readAllLines(file));
                for (int i = 0; i < lines.size(); i++) {
                    if (lines.get(i).contains("# mistake ")) {
                        seeded.add(file.getFileName() + ":" + (i + 1));
                    }
                }
            }
        }
        return seeded;
    }
}
