package beltwright.workshop;

import beltwright.part.Kinds;
import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.quantity.Refusal;
import beltwright.workshop.document.Agreement;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.Measurement;
import beltwright.workshop.document.Mistake;
import beltwright.workshop.document.PartRow;
import beltwright.workshop.document.Reading;
import beltwright.workshop.document.ReferenceFile;
import beltwright.workshop.table.Preview;
import beltwright.workshop.table.Table;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// A workshop's store together with its reference file: import and export.
public record Workshop(Store store, Reference reference) {

    private static final String FORM = "form";

    /// What an import did: it saved these documents, or it found these mistakes and saved nothing.
    public record Import(List<Document> saved, List<Mistake> mistakes) {
        public Import {
            saved = List.copyOf(saved);
            mistakes = List.copyOf(mistakes);
        }
    }

    /// {@return the workshop in this file, made where there is none, with the reference file of the program}
    ///
    /// @throws Refusal if the file cannot be made or is no store
    public static Workshop open(Path file) {
        return new Workshop(Store.open(file), ReferenceFile.bundled());
    }

    /// {@return everything kept here, ready to use}
    ///
    /// @throws Refusal if a row was damaged
    public Shelf shelf() {
        return Shelf.of(store.documents().values(), reference);
    }

    /// Reads every `*.yaml` below a folder and saves all documents, or none and says everything that is wrong.
    ///
    /// @throws Refusal if there is nothing to read
    public Import importFolder(Path folder) {
        return importFolders(List.of(folder));
    }

    /// As above, for several folders whose documents may name each other.
    public Import importFolders(List<Path> folders) {
        var reading = read(folders);
        var mistakes = new ArrayList<Mistake>();
        var saved = store.change(stored -> {
            var together = agreed(reading, stored, reference);
            mistakes.addAll(together.mistakes());
            return mistakes.isEmpty() ? together.sound() : List.of();
        });
        return new Import(saved, mistakes);
    }

    /// {@return the preview with what comes to light by holding its parts against what is kept
    /// here}
    ///
    /// @param replace whether parts of the same kind that are kept already give way
    public Preview against(Preview preview, boolean replace) {
        return preview.against(store.documents(), reference, replace);
    }

    /// Saves every part of a table, or none and says everything that is wrong.
    public Import importTable(Preview preview, boolean replace) {
        var mistakes = new ArrayList<Mistake>();
        var saved = store.change(stored -> {
            var held = preview.against(stored, reference, replace);
            mistakes.addAll(held.mistakes());
            return mistakes.isEmpty()
                    ? held.parts().stream().<Document>map(Document.OfPart::new).toList()
                    : List.of();
        });
        return new Import(saved, mistakes);
    }

    /// Saves one part given as cells by the paths of its fields, or nothing.
    ///
    /// @param replace whether a part of the same kind that is kept already gives way
    /// @return everything that is wrong, each with the path of its field after the id; empty where it was saved
    public List<Mistake> importPart(Kinds kind, Map<String, String> cells, boolean replace) {
        var mistakes = new ArrayList<Mistake>();
        store.change(stored -> {
            var read = agreed(PartRow.read(FORM, 1, kind, cells), stored, reference);
            mistakes.addAll(read.mistakes());
            var id = cells.getOrDefault(PartRow.ID, "");
            if (!replace && stored.containsKey(id)) {
                mistakes.add(new Mistake(
                        FORM, 1, id + ".id", "'" + id + "' is kept already", "an id of its own", "choose another id"));
            }
            return mistakes.isEmpty() ? read.sound() : List.of();
        });
        return mistakes;
    }

    /// Saves new documents together, or nothing. One that is kept already, and equal, stays.
    ///
    /// @throws Refusal naming the first thing that is wrong with them
    public void add(List<Document> documents) {
        var text = documents.stream().map(Codec::write).collect(Collectors.joining("---\n"));
        var reading = Codec.read(FORM, text);
        store.change(stored -> {
            for (var document : documents) {
                var kept = stored.get(document.id());
                if (kept != null && !kept.equals(document)) {
                    throw new Refusal(
                            document.id(),
                            "is the id of something else that is kept",
                            "an id of its own",
                            "choose another id");
                }
            }
            return agreed(reading, stored, reference).orRefuse();
        });
    }

    /// {@return the shelf that importing these folders into an empty store would give}
    ///
    /// @throws Refusal naming the first mistake, if there is any
    public static Shelf shelfOf(List<Path> folders, Reference reference) {
        return Shelf.of(agreed(read(folders), Map.of(), reference).orRefuse(), reference);
    }

    private static Reading read(List<Path> folders) {
        return Reading.together(folders.stream().map(Folder::read).toList());
    }

    private static Reading agreed(Reading reading, Map<String, Document> stored, Reference reference) {
        return reading.and(Agreement.mistakes(reading, stored, reference));
    }

    /// Writes every document as a file of its own into a new or an empty folder.
    ///
    /// @throws Refusal if the folder is not empty or cannot be written
    public void exportFolder(Path folder) {
        Folder.write(folder, store.documents().values());
    }

    /// {@return the table of parts in this CSV file}
    ///
    /// @throws Refusal if there is no such file, or it holds no table
    public static Table table(Path file) {
        return TableFiles.read(file);
    }

    /// Writes the parts, without all other documents, as one CSV file for each kind into a new
    /// or an empty folder.
    ///
    /// @return the files
    /// @throws Refusal if the folder is not empty or cannot be written
    public List<Path> exportTables(Path folder) {
        return TableFiles.write(folder, parts());
    }

    private List<Part> parts() {
        return store.documents().values().stream()
                .flatMap(d -> d instanceof Document.OfPart(var part) ? Stream.of(part) : Stream.empty())
                .toList();
    }

    /// Saves what these edits make of the documents kept here, or nothing.
    ///
    /// @return the documents that changed
    /// @throws Refusal if an edit cannot be made, or changes what a measurement
    ///     says: the next reading would lay the measured value over it again
    public List<Document> keep(List<Edit> edits) {
        return keep(kept -> edits);
    }

    /// As above, with edits that follow from what is kept at that moment: nobody else's are lost between.
    ///
    /// @param of given parts and kits as they were typed, without what was measured
    public List<Document> keep(Function<Shelf, List<Edit>> of) {
        return store.change(stored -> {
            var typed = stored.values().stream()
                    .filter(d -> d instanceof Document.OfPart || d instanceof Document.OfKit)
                    .toList();
            var kept = Shelf.of(typed, reference);
            var edits = of.apply(kept);
            for (var document : stored.values()) {
                if (document instanceof Document.OfMeasurement(var measurement)) {
                    refuseMeasured(measurement, edits);
                }
            }
            var shelf = kept.with(edits);
            shelf.drafts().keySet().forEach(shelf::kit);
            var changed = new ArrayList<Document>();
            shelf.parts().values().forEach(p -> changed.add(new Document.OfPart(p)));
            shelf.drafts().values().forEach(k -> changed.add(new Document.OfKit(k)));
            changed.removeAll(typed);
            return changed;
        });
    }

    private static void refuseMeasured(Measurement measurement, List<Edit> edits) {
        for (var edit : edits) {
            if (edit.document().equals(measurement.of()) && measurement.values().containsKey(edit.path())) {
                throw new Refusal(
                        edit.document() + "." + edit.path(),
                        "was measured ('" + measurement.id() + "'), and that value would be laid over the edit again",
                        "a field that no measurement gives",
                        "enter a newer measurement instead");
            }
        }
    }
}
