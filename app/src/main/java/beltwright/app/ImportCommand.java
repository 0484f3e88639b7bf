package beltwright.app;

import beltwright.workshop.Workshop;
import beltwright.workshop.document.Document;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Parameters;

@CommandLine.Command(
        name = "import",
        description = {
            "Take every *.yaml file below a folder into the workshop, or none.",
            "All mistakes are listed, one a line; the workshop is then as it was.",
            "The workshop is made where there is none: ./workshop.db unless --workshop or $BELTWRIGHT_WORKSHOP names another."
        },
        footer = {"", "Example:", "  ./beltwright import my-parts --workshop workshop.db"})
final class ImportCommand extends WorkshopCommand {
    @Parameters(paramLabel = "FOLDER", description = "a folder of parts, kits and measurements")
    Path from = Path.of("");

    ImportCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var file = workshopToWrite();
        boolean isNew = !Files.exists(desk.at(file));
        boolean kept = false;
        try {
            var done = open(file).importFolder(desk.at(from));
            kept = done.mistakes().isEmpty();
            tell(file, done, isNew);
            return kept ? Exit.NOTHING_FAILS : Exit.BAD_INPUT;
        } finally {
            if (isNew && !kept) {
                remove(desk.at(file));
            }
        }
    }

    private void tell(Path file, Workshop.Import done, boolean isNew) {
        done.mistakes().forEach(mistake -> desk.err().println(Said.of(mistake)));
        if (json) {
            say(AnswerJson.imported(done));
        } else if (done.mistakes().isEmpty()) {
            say("Imported " + counted(done.saved()) + " into " + file);
            if (isNew) {
                say("This is a new workshop, and commands called here use it from now on;"
                        + " another one is reached with --workshop FILE, the demo's with --workshop demo-out/demo.db.");
            }
        } else {
            int mistakes = done.mistakes().size();
            desk.err().println("Nothing was imported: " + mistakes + (mistakes == 1 ? " mistake" : " mistakes"));
        }
    }

    /// {@return "1 kit, 12 parts"}
    static String counted(List<Document> documents) {
        return Stream.of(Document.Type.KIT, Document.Type.PART, Document.Type.MEASUREMENT)
                .map(type -> {
                    long count =
                            documents.stream().filter(d -> d.type() == type).count();
                    return count == 0 ? "" : count + " " + type + (count == 1 ? "" : "s");
                })
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /// A workshop that was made only for an import that failed would stand in the way of the next command.
    private static void remove(Path file) {
        try {
            for (var name : List.of("", "-wal", "-shm")) {
                Files.deleteIfExists(Path.of(file + name));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
