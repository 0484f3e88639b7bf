package beltwright.workshop;

import beltwright.quantity.Refusal;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.Mistake;
import beltwright.workshop.document.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/// Documents as plain files below a folder.
final class Folder {
    private Folder() {}

    /// Reads every `*.yaml` below the folder, in the order of the paths. Symbolic links are not followed.
    ///
    /// @throws Refusal if there is no such folder or no such file in it
    static Reading read(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new Refusal(folder.toString(), "is not a folder", "a folder with *.yaml files", "give another path");
        }
        var readings = new ArrayList<Reading>();
        for (var file : files(folder)) {
            readings.add(readFile(file));
        }
        if (readings.isEmpty()) {
            throw new Refusal(
                    folder.toString(), "holds no *.yaml file", "a folder with *.yaml files", "give another path");
        }
        return Reading.together(readings);
    }

    private static List<Path> files(Path folder) {
        try (var all = Files.walk(folder)) {
            return all.filter(p -> p.getFileName().toString().endsWith(".yaml"))
                    .filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            throw new Refusal(
                    folder.toString(),
                    "cannot be read: " + e.getMessage(),
                    "a folder you may read",
                    "check its rights");
        }
    }

    private static Reading readFile(Path file) {
        try (var in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return Codec.read(file.toString(), in.readNBytes(Codec.LARGEST_BYTES + 1));
        } catch (IOException e) {
            var mistake = new Mistake(
                    file.toString(),
                    1,
                    "file",
                    "cannot be read: " + e.getMessage(),
                    "a file you may read",
                    "check its rights");
            return new Reading(List.of(), Set.of(), List.of(), List.of(mistake));
        }
    }

    /// Writes `parts/ID.yaml`, `kits/ID.yaml`, and so on for every type of document.
    ///
    /// @throws Refusal if the folder is there and not empty, or cannot be written
    static void write(Path folder, Collection<Document> documents) {
        try {
            makeEmpty(folder);
            for (var document : documents) {
                var place =
                        Files.createDirectories(folder.resolve(document.type().folder()));
                Files.writeString(place.resolve(document.id() + ".yaml"), Codec.write(document));
            }
        } catch (IOException e) {
            throw unwritable(folder, e);
        }
    }

    /// @throws Refusal if the folder is there and not empty
    static void makeEmpty(Path folder) throws IOException {
        Files.createDirectories(folder);
        try (var inside = Files.list(folder)) {
            if (inside.findAny().isPresent()) {
                throw new Refusal(
                        folder.toString(),
                        "is not empty",
                        "a new or an empty folder",
                        "give another path, or empty it");
            }
        }
    }

    static Refusal unwritable(Path folder, IOException e) {
        return new Refusal(
                folder.toString(),
                "cannot be written: " + e.getMessage(),
                "a new or an empty folder",
                "give another path");
    }
}
