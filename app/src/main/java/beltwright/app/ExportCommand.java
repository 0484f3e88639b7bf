package beltwright.app;

import beltwright.workshop.document.Document;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Parameters;

@CommandLine.Command(
        name = "export",
        description = "Write everything in the workshop as plain text files that 'import' reads back.",
        footer = {"", "Example:", "  ./beltwright export backup"})
final class ExportCommand extends WorkshopCommand {
    @Parameters(paramLabel = "FOLDER", description = "a new or an empty folder")
    Path to = Path.of("");

    ExportCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var workshop = readWorkshop();
        workshop.exportFolder(desk.at(to));
        var documents = List.<Document>copyOf(workshop.store().documents().values());
        if (json) {
            say(AnswerJson.exported(to.toString(), documents));
        } else {
            say("Exported " + ImportCommand.counted(documents) + " into " + to);
        }
        return Exit.NOTHING_FAILS;
    }
}
