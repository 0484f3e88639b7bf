package beltwright.app;

import beltwright.part.Kinds;
import beltwright.quantity.Refusal;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.Document;
import beltwright.workshop.table.Columns;
import beltwright.workshop.table.Preview;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@CommandLine.Command(
        name = "import",
        description = {
            "Take every *.yaml file below a folder into the workshop, or none of them.",
            "With --kind it is the parts of a table, one a row below a row of headings, from a CSV file."
                    + " All mistakes are listed, one a line; the workshop is then as it was.",
            "The workshop is made where there is none: ./workshop.db unless --workshop or $BELTWRIGHT_WORKSHOP names another."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright import my-parts --workshop workshop.db",
            "  ./beltwright import sleeves.csv --kind sleeve --source 'measured, caliper' --columns 'Ø [in]=bore'"
        })
final class ImportCommand extends WorkshopCommand {
    @Parameters(paramLabel = "FOLDER|FILE.csv", description = "a folder of documents, or a table")
    Path from = Path.of("");

    @Option(names = "--kind", paramLabel = "KIND", description = "the kind of the parts in a table, such as motor")
    @Nullable
    String kind;

    @Option(
            names = "--columns",
            paramLabel = "HEADING=FIELD",
            description = {
                "which column gives which field, where the heading does not say: 'Ø [in]=bore,Price=-'",
                "a field is named by its path or in words, '-' leaves the column out"
            })
    List<String> columns = List.of();

    @Option(
            names = "--source",
            paramLabel = "SOURCE",
            description = "where a table without a column 'source' was read: 'measured, caliper'")
    String source = "";

    @Option(names = "--replace", description = "let the parts of a table take the place of those with the same id")
    boolean replace;

    ImportCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        return kind == null ? folder() : table(kind);
    }

    private int folder() {
        if (!columns.isEmpty()
                || !source.isEmpty()
                || replace
                || from.toString().endsWith(".csv")) {
            throw new Refusal(
                    "--kind",
                    "a table does not say of what kind its parts are",
                    Kinds.allowed(),
                    "write for example '--kind motor'");
        }
        return take(workshop -> workshop.importFolder(desk.at(from)), List.of(), List.of());
    }

    private int table(String words) {
        var of = Kinds.named(words)
                .orElseThrow(() -> new Refusal(
                        "--kind", "'" + words + "' is not a kind of part", Kinds.allowed(), "use one of these"));
        var table = Workshop.table(desk.at(from));
        var mapped = Columns.suggested(of, table.headings()).withSource(source);
        for (var typed : columns) {
            mapped = mapped.with(typed);
        }
        var preview = Preview.of(desk.at(from).toString(), table, mapped);
        return take(workshop -> workshop.importTable(preview, replace), mapped.leftOut(), mapped.made());
    }

    private int take(Function<Workshop, Workshop.Import> what, List<String> leftOut, List<String> made) {
        var file = workshopToWrite();
        boolean isNew = !Files.exists(desk.at(file));
        boolean kept = false;
        try {
            var done = what.apply(open(file));
            kept = done.mistakes().isEmpty();
            tell(file, done, leftOut, made, isNew);
            return kept ? Exit.NOTHING_FAILS : Exit.BAD_INPUT;
        } finally {
            if (isNew && !kept) {
                remove(desk.at(file));
            }
        }
    }

    private void tell(Path file, Workshop.Import done, List<String> leftOut, List<String> made, boolean isNew) {
        done.mistakes().forEach(mistake -> desk.err().println(Said.of(mistake)));
        if (json) {
            say(AnswerJson.imported(done, leftOut));
        } else if (done.mistakes().isEmpty()) {
            say("Imported " + counted(done.saved()) + " into " + file);
            if (!leftOut.isEmpty()) {
                say("Columns left out: " + String.join("; ", leftOut));
            }
            if (!made.isEmpty()) {
                say("Not in the table: " + String.join("; ", made));
            }
            if (isNew) {
                say(
                        isUsual(file)
                                ? "This is a new workshop, and commands called here use it from now on; another one is"
                                        + " reached with --workshop FILE, the demo's with --workshop demo-out/demo.db."
                                : "This is a new workshop; commands use it with --workshop " + file
                                        + ", or without once " + VARIABLE + "=" + file + " is set.");
            }
        } else {
            int mistakes = done.mistakes().size();
            desk.err().println("Nothing was imported: " + mistakes + (mistakes == 1 ? " mistake" : " mistakes"));
        }
    }

    /// {@return "1 kit, 12 parts"}
    static String counted(List<Document> documents) {
        return Stream.of(
                        Document.Type.KIT,
                        Document.Type.PART,
                        Document.Type.MEASUREMENT,
                        Document.Type.ROUTE,
                        Document.Type.LOG)
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
