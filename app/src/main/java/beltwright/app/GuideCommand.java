package beltwright.app;

import beltwright.press.json.DossierJson;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "guide",
        description = "Write the assembly guide of a kit, with its box and the proof that both meet, as a page to print.",
        footer = {"", "Example:", "  ./beltwright guide hill --out for-the-box"})
final class GuideCommand extends KitCommand {
    @Option(names = "--out", paramLabel = "FOLDER", description = "where to (default: a folder named like the kit)")
    @Nullable Path to;

    GuideCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var dossier = dossier();
        var papers = new Papers(desk, to == null ? Path.of(kit) : to);
        papers.guide(dossier);
        if (json) {
            say(DossierJson.of(dossier));
        } else {
            say(papers.written());
        }
        return Exit.of(dossier.findings());
    }
}
