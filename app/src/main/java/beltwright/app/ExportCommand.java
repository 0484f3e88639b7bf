package beltwright.app;

import beltwright.workshop.Workshop;
import beltwright.workshop.document.Document;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@CommandLine.Command(
        name = "export",
        description = {
            "Write everything in the workshop as plain text files that 'import' reads back.",
            "With --csv it is the parts alone, as one table for each kind, for a spreadsheet."
        },
        footer = {"", "Examples:", "  ./beltwright export backup", "  ./beltwright export --csv tables"})
final class ExportCommand extends WorkshopCommand {
    @Parameters(paramLabel = "FOLDER", description = "a new or an empty folder")
    Path to = Path.of("");

    @Option(
            names = "--csv",
            description = "write the parts as CSV, one file for each kind; all other documents are left out")
    boolean csv;

    ExportCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var workshop = readWorkshop();
        if (csv) {
            return tables(workshop);
        }
        workshop.exportFolder(desk.at(to));
        var documents = List.<Document>copyOf(workshop.store().documents().values());
        if (json) {
            say(AnswerJson.exported(to.toString(), documents));
        } else {
            say("Exported " + ImportCommand.counted(documents) + " into " + to);
        }
        return Exit.NOTHING_FAILS;
    }

    private int tables(Workshop workshop) {
        var files = workshop.exportTables(desk.at(to)).stream()
                .map(file -> to.resolve(file.getFileName()).toString())
                .toList();
        if (json) {
            say(AnswerJson.exportedTables(to.toString(), files));
        } else {
            say(files);
        }
        return Exit.NOTHING_FAILS;
    }
}
