package beltwright.app;

import beltwright.press.json.DossierJson;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "draw",
        description = "Draw a kit to scale, side view and plan view, with its dimensions, as SVG.",
        footer = {
            "",
            "Examples:",
            "  ./beltwright draw steep-street",
            "  ./beltwright draw steep-street --set mount-hill.plateThicknessMm=10 --out try"
        })
final class DrawCommand extends KitCommand {
    @Option(names = "--out", paramLabel = "FOLDER", description = "where to (default: a folder named like the kit)")
    @Nullable
    Path to;

    DrawCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var dossier = dossier();
        var papers = new Papers(desk, to == null ? Path.of(kit) : to);
        papers.drawings(dossier);
        if (json) {
            say(DossierJson.of(dossier));
        } else {
            say(papers.written());
        }
        return Exit.of(dossier.findings());
    }
}
