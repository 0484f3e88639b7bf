package beltwright.app;

import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.part.Reference;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.ReferenceFile;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/// The invented demo workshop, read from its files.
public final class DemoKits {
    public static final Path ROOT = Path.of(System.getProperty("beltwright.root", ".."));
    public static final Reference REFERENCE = ReferenceFile.bundled();
    public static final Shelf SHELF = Workshop.shelfOf(
            Stream.of("parts", "kits", "measurements", "routes", "logs")
                    .map(f -> ROOT.resolve("demo").resolve(f))
                    .toList(),
            REFERENCE);

    private DemoKits() {}

    public static Stream<String> ids() {
        return SHELF.drafts().keySet().stream();
    }

    public static Dossier dossier(String kit, Edit... edits) {
        return Dossiers.of(SHELF.with(List.of(edits)).kit(kit));
    }
}
