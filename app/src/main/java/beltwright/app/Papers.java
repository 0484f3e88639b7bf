package beltwright.app;

import beltwright.dossier.Dossier;
import beltwright.press.drawing.DrawingOffice;
import beltwright.press.guide.GuidePage;
import beltwright.press.svg.SvgWriter;
import beltwright.quantity.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/// What is handed out about one kit, as files in one folder.
final class Papers {
    private static final String REVISION = "draft";

    private final Desk desk;
    private final Path folder;
    private final List<String> written = new ArrayList<>();

    Papers(Desk desk, Path folder) {
        this.desk = desk;
        this.folder = folder;
    }

    void drawings(Dossier dossier) {
        for (var drawing : new DrawingOffice(dossier, dossier.kit().reference(), REVISION).all()) {
            write(drawing.id() + ".svg", SvgWriter.standalone(drawing));
        }
    }

    /// The assembly guide and the packing list, as pages to print.
    void guide(Dossier dossier) {
        var reference = dossier.kit().reference();
        write("guide.html", GuidePage.html(dossier, reference, REVISION));
        write("packing-list.html", GuidePage.box(dossier, reference, REVISION));
    }

    /// {@return the files written so far, as typed paths}
    List<String> written() {
        return List.copyOf(written);
    }

    private void write(String name, String text) {
        var file = folder.resolve(name);
        try {
            Files.createDirectories(desk.at(folder));
            Files.writeString(desk.at(file), text);
        } catch (IOException e) {
            throw cannotWrite(file, e);
        }
        written.add(file.toString());
    }

    static Refusal cannotWrite(Path file, IOException e) {
        return new Refusal(
                "--out",
                "'" + file + "' cannot be written: " + Said.oneLine(e.toString()),
                "a folder you may write to",
                "name another folder");
    }
}
