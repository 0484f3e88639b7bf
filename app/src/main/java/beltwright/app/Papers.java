package beltwright.app;

import beltwright.dossier.Dossier;
import beltwright.quantity.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/// What is handed out about one kit, as files in one folder.
final class Papers {
    private final Desk desk;
    private final Path folder;
    private final List<String> written = new ArrayList<>();

    Papers(Desk desk, Path folder) {
        this.desk = desk;
        this.folder = folder;
    }

    void drawings(Dossier dossier) {}

    void guide(Dossier dossier) {}

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
            throw new Refusal(
                    "--out", "'" + file + "' cannot be written: " + e.getMessage(), "a folder you may write to", "name another folder");
        }
        written.add(file.toString());
    }
}
