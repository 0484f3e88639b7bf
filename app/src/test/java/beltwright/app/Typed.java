package beltwright.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/// Commands typed in one folder, and what came back.
final class Typed {
    static final Path ROOT = Path.of(System.getProperty("beltwright.root", ".."));

    /// A kit of the demo in which nothing fails, and an edit that makes a screw too short for it.
    static final String KIT = "market-hill-single";
    static final String THICK_PLATE = "mount-city.plateThicknessMm=9";

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

    /// {@return a folder with a workshop that holds the demo's parts and one of its kits}
    static Typed withSmallWorkshop(Path folder) {
        var typed = new Typed(folder);
        var answer = typed.run("import", typed.source());
        if (answer.code != 0) {
            throw new IllegalStateException(answer.err);
        }
        return typed;
    }

    /// Writes the demo's parts and one of its kits into a folder.
    ///
    /// @return the folder, as typed
    String source() {
        return source("", "");
    }

    /// As above, with one text of one part replaced.
    String source(String was, String is) {
        var name = was.isEmpty() ? "source" : "edited";
        try {
            Files.createDirectories(folder.resolve(name));
            try (var parts = Files.list(ROOT.resolve("demo").resolve("parts"))) {
                for (var file : parts.toList()) {
                    Files.writeString(
                            folder.resolve(name).resolve(file.getFileName()),
                            Files.readString(file).replace(was, is));
                }
            }
            Files.copy(
                    ROOT.resolve("demo").resolve("kits").resolve(KIT + ".yaml"),
                    folder.resolve(name).resolve("kit.yaml"),
                    StandardCopyOption.REPLACE_EXISTING);
            return name;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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

    /// Starts a command that goes on until it is stopped.
    Running start(String... args) {
        var out = new StringWriter();
        var desk = new Desk(folder, home, variables(), new PrintWriter(out), new PrintWriter(out));
        var code = new CompletableFuture<Integer>();
        var thread = Thread.ofPlatform().daemon().start(() -> {
            try {
                code.complete(Main.run(desk, args));
            } catch (RuntimeException e) {
                code.completeExceptionally(e);
            }
        });
        return new Running(thread, out, code);
    }

    /// A command that has not ended.
    record Running(Thread thread, StringWriter out, CompletableFuture<Integer> code) {
        /// {@return what was said as soon as this text is in it, or the command ended}
        String until(String text) throws InterruptedException {
            while (!out.toString().contains(text) && !code.isDone()) {
                Thread.sleep(20);
            }
            return out.toString();
        }

        int stop() {
            thread.interrupt();
            return code.join();
        }
    }

    /// Exit code, standard output, standard error.
    record Answer(int code, String out, String err) {
        JsonNode json() throws IOException {
            return JsonMapper.builder().build().readTree(out);
        }
    }
}
