package beltwright.app;

import beltwright.press.json.DossierJson;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "guide",
        description = {
            "Write the assembly guide of a kit and its packing list, as pages to print.",
            "Every fastener of the guide is reconciled with the box."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright guide steep-street",
            "  ./beltwright guide steep-street --set mount-hill.plateThicknessMm=10 --out try"
        })
final class GuideCommand extends KitCommand {
    @Option(names = "--out", paramLabel = "FOLDER", description = "where to (default: a folder named like the kit)")
    @Nullable
    Path to;

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
