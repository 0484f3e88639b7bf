package beltwright.trials;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.TimeUnit;

/// A program that is not ours, run on a file of the test resources.
final class Outside {
    private static final int SECONDS = 60;

    private Outside() {}

    /// {@return the path of a copy of a test resource that another program can read}
    static Path copy(String resource, Path folder) throws IOException {
        var file = folder.resolve(resource);
        try (var text = Outside.class.getResourceAsStream(resource)) {
            if (text == null) {
                throw new IllegalStateException("no test resource " + resource);
            }
            Files.copy(text, file, StandardCopyOption.REPLACE_EXISTING);
        }
        return file;
    }

    /// {@return what the program printed, errors included}
    static String run(Path folder, List<String> command) throws IOException, InterruptedException {
        return run(folder, SECONDS, command);
    }

    /// {@return what the program printed, errors included}
    static String run(Path folder, int seconds, List<String> command) throws IOException, InterruptedException {
        var printed = folder.resolve("printed.txt");
        var builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectInput(Path.of("/dev/null").toFile())
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile());
        builder.environment().put("HOME", folder.toString());
        var process = builder.start();
        if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException(command.getFirst() + " was still running after " + seconds + " s");
        }
        var text = Files.readString(printed);
        if (process.exitValue() != 0) {
            throw new IllegalStateException(command.getFirst() + " ended with " + process.exitValue() + ": " + text);
        }
        return text;
    }
}
