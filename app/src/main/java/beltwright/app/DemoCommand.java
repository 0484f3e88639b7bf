package beltwright.app;

import beltwright.dossier.Dossier;
import beltwright.quantity.Refusal;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.Document;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "demo",
        description = {
            "Make an invented workshop, write what it hands out, and serve the bench.",
            "The workshop is made once; its kits are checked, their drawings, guides and packing lists written."
                    + " One of its kits fails on purpose; that is no failure of the demo, which ends with 0."
        },
        footer = {"", "Examples:", "  ./beltwright demo", "  ./beltwright demo --no-serve --out demo-out"})
final class DemoCommand extends Command {
    @Option(names = "--no-serve", description = "stop before serving the bench")
    boolean noServe;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            defaultValue = "demo-out",
            description = "where to (default: ${DEFAULT-VALUE})")
    Path to = Path.of("demo-out");

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = Serving.PORT,
            description = "of the bench; 0 takes any free one (default: ${DEFAULT-VALUE})")
    int port;

    DemoCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        Serving.checkPort(port);
        var file = to.resolve("demo.db");
        var workshop = made(file);
        var dossiers = KitsCommand.dossiers(workshop.shelf());
        var files = new ArrayList<String>();
        for (var dossier : dossiers) {
            if (!json) {
                say(new LadderText(dossier, desk.columns()).top());
                say("");
            }
            files.addAll(written(dossier));
        }
        if (json) {
            say(AnswerJson.demo(file.toString(), dossiers, files));
        } else {
            say("The whole ladder of a kit: './beltwright check KIT'");
            say("");
            say("Written:");
            files.stream()
                    .map(Path::of)
                    .collect(Collectors.groupingBy(
                            Path::getParent,
                            TreeMap::new,
                            Collectors.mapping(f -> f.getFileName().toString(), Collectors.joining(", "))))
                    .forEach((folder, names) -> say(Typesetting.hanging("  " + folder + ": ", names, desk.columns())));
            say("");
        }
        return noServe
                ? Exit.NOTHING_FAILS
                : Serving.serve(workshop, port, address -> {
                    (json ? desk.err() : desk.out()).println("The bench is at " + address + " (Ctrl-C stops it)");
                    Serving.openBrowser(desk, address);
                });
    }

    /// {@return the workshop of an earlier demo, or a new one made from the files that come with the program}
    private Workshop made(Path file) {
        var folders = Stream.of(Document.Type.values())
                .map(type -> desk.home().resolve("demo").resolve(type.folder()))
                .filter(Files::isDirectory)
                .toList();
        if (folders.isEmpty()) {
            throw new Refusal(
                    "demo",
                    "'" + desk.home().resolve("demo") + "' holds no parts and kits",
                    "the folder demo/ that comes with the program",
                    "run ./beltwright from the folder of its sources");
        }
        try {
            Files.createDirectories(desk.at(to));
        } catch (IOException e) {
            throw Papers.cannotWrite(to, e);
        }
        var workshop = Workshop.open(desk.at(file));
        if (workshop.store().documents().isEmpty()) {
            var mistakes = workshop.importFolders(folders).mistakes();
            if (!mistakes.isEmpty()) {
                mistakes.forEach(mistake -> desk.err().println(Said.of(mistake)));
                throw mistakes.getFirst().refusal();
            }
        }
        return workshop;
    }

    private List<String> written(Dossier dossier) {
        var papers = new Papers(desk, to.resolve(dossier.kit().id()));
        papers.drawings(dossier);
        papers.guide(dossier);
        return papers.written();
    }
}
