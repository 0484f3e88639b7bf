package beltwright.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.workshop.document.Codec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/// The files of the demo: each comes back equal, and together they are a workshop.
class DemoFilesTest {
    private static final Path DEMO =
            Path.of(System.getProperty("beltwright.root", "..")).resolve("demo");

    @TempDir
    static Path folder;

    @TestFactory
    Stream<DynamicTest> everyFileComesBackEqual() throws IOException {
        return files().stream()
                .map(file -> DynamicTest.dynamicTest(DEMO.relativize(file).toString(), () -> {
                    var reading = Codec.read(file.toString(), Files.readAllBytes(file));
                    assertThat(reading.mistakes()).isEmpty();
                    for (var document : reading.sound()) {
                        var text = Codec.write(document);
                        assertThat(Codec.readOne("again", text)).isEqualTo(document);
                        assertThat(Codec.write(Codec.readOne("again", text))).isEqualTo(text);
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> everyKitResolvesAfterImportExportAndImport() throws IOException {
        var copy = folder.resolve("demo");
        for (var file : files()) {
            var place = copy.resolve(DEMO.relativize(file).toString());
            Files.createDirectories(place.getParent());
            Files.copy(file, place);
        }
        if (files().isEmpty()) {
            return Stream.empty();
        }
        var workshop = Workshop.open(folder.resolve("a.db"));
        assertThat(workshop.importFolder(copy).mistakes()).isEmpty();
        workshop.exportFolder(folder.resolve("out"));
        var fresh = Workshop.open(folder.resolve("b.db"));
        assertThat(fresh.importFolder(folder.resolve("out")).mistakes()).isEmpty();
        assertThat(fresh.store().contentHash()).isEqualTo(workshop.store().contentHash());
        var shelf = fresh.shelf();
        return shelf.drafts().keySet().stream()
                .map(id -> DynamicTest.dynamicTest(
                        id, () -> assertThat(shelf.kit(id).id()).isEqualTo(id)));
    }

    private static List<Path> files() throws IOException {
        if (!Files.isDirectory(DEMO)) {
            return List.of();
        }
        try (var all = Files.walk(DEMO)) {
            return all.filter(p -> p.toString().endsWith(".yaml"))
                    .filter(p -> !p.startsWith(DEMO.resolve("broken")))
                    .sorted()
                    .toList();
        }
    }
}
