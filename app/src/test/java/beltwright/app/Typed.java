package beltwright.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/// Commands typed in one folder, and what came back.
final class Typed {
    static final Path ROOT = Path.of(System.getProperty("beltwright.root", ".."));
    static final Path SMALL = Path.of("src/test/resources/beltwright/app/small").toAbsolutePath();

    private final Path folder;
    private final Path home;
    private final Map<String, String> environment = new TreeMap<>();
    private String breaking = "";

    Typed(Path folder) {
        this(folder, ROOT);
    }

    private Typed(Path folder, Path home) {
        this.folder = folder;
        this.home = home;
    }

    /// {@return a program whose own files are in `home`}
    static Typed at(Path folder, Path home) {
        return new Typed(folder, home);
    }

    /// {@return a folder with a workshop that holds the small kit}
    static Typed withSmallWorkshop(Path folder) {
        var typed = new Typed(folder);
        var answer = typed.run("import", SMALL.toString());
        if (answer.code != 0) {
            throw new IllegalStateException(answer.err);
        }
        return typed;
    }

    Typed with(String variable, String value) {
        environment.put(variable, value);
        return this;
    }

    /// From now on looking at this variable is a fault inside the program.
    Typed breaking(String variable) {
        breaking = variable;
        return this;
    }

    /// Copies the small workshop's file into `name`, with one text replaced.
    void writeSmall(String name, String was, String is) throws IOException {
        var text = Files.readString(SMALL.resolve("small.yaml"));
        if (!text.contains(was)) {
            throw new IllegalArgumentException(was);
        }
        Files.createDirectories(folder.resolve(name));
        Files.writeString(folder.resolve(name).resolve("small.yaml"), text.replace(was, is));
    }

    Answer run(String... args) {
        var out = new StringWriter();
        var err = new StringWriter();
        var desk = new Desk(folder, home, variables(), new PrintWriter(out), new PrintWriter(err));
        int code = Main.run(desk, args);
        return new Answer(code, out.toString(), err.toString());
    }

    private Map<String, String> variables() {
        return new TreeMap<>(environment) {
            @Override
            public @Nullable String get(Object name) {
                if (name.equals(breaking)) {
                    throw new IllegalStateException("planted");
                }
                return super.get(name);
            }
        };
    }

    /// Exit code, standard output, standard error.
    record Answer(int code, String out, String err) {
        JsonNode json() throws IOException {
            return JsonMapper.builder().build().readTree(out);
        }
    }
}
