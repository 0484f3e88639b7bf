package beltwright.app;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/// Where a command works: the folder it was called in, its environment, and where its words go.
///
/// @param home the folder that holds `demo/`
public record Desk(Path folder, Path home, Map<String, String> environment, PrintWriter out, PrintWriter err) {
    private static final int NARROWEST = 30;

    /// {@return the desk of this process: output is UTF-8, whatever the machine calls its character set}
    static Desk here() {
        return new Desk(
                Path.of(""),
                Path.of(System.getProperty("beltwright.root", ".")),
                System.getenv(),
                writer(System.out),
                writer(System.err));
    }

    private static PrintWriter writer(OutputStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /// {@return how many columns a line may take; without a terminal a line is never broken}
    int columns() {
        try {
            return Math.max(NARROWEST, Integer.parseInt(environment.getOrDefault("COLUMNS", "")));
        } catch (NumberFormatException e) {
            return Integer.MAX_VALUE;
        }
    }

    Path at(Path typed) {
        return folder.resolve(typed);
    }
}
