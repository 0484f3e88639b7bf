package beltwright.app;

import beltwright.quantity.Refusal;
import beltwright.workshop.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/// A command that reads or writes a workshop, and how it finds the file.
abstract class WorkshopCommand extends Command {
    static final String VARIABLE = "BELTWRIGHT_WORKSHOP";
    private static final Path OWN = Path.of("workshop.db");
    private static final Path DEMO = Path.of("demo-out", "demo.db");

    @Option(
            names = "--workshop",
            paramLabel = "FILE",
            description = {
                "the workshop's file",
                "(default: $BELTWRIGHT_WORKSHOP, else ./workshop.db, else demo-out/demo.db)"
            })
    @Nullable
    Path workshop;

    WorkshopCommand(Desk desk) {
        super(desk);
    }

    /// {@return the workshop that is there to read}
    ///
    /// @throws Refusal if there is none
    Workshop readWorkshop() {
        var named = named();
        if (named == null) {
            named = Stream.of(OWN, DEMO)
                    .filter(file -> Files.isRegularFile(desk.at(file)))
                    .findFirst()
                    .orElseThrow(() -> new Refusal(
                            "--workshop",
                            "no workshop here",
                            "$" + VARIABLE + ", ./" + OWN + " or " + DEMO,
                            "run './beltwright demo' to make the invented one, or './beltwright import FOLDER'"));
        } else if (!Files.isRegularFile(desk.at(named))) {
            throw new Refusal(
                    "--workshop",
                    "'" + named + "' is not there",
                    "a file that 'import' or 'demo' made",
                    "name another file, or run './beltwright import FOLDER --workshop " + named + "'");
        }
        return open(named);
    }

    /// {@return the workshop that is there, or the one that is named, made empty where it is not there yet}
    Workshop workshopToServe() {
        var file = named();
        return file == null ? readWorkshop() : open(file);
    }

    /// {@return the file of the workshop to write into, there or not}
    Path workshopToWrite() {
        var named = named();
        return named == null ? OWN : named;
    }

    /// {@return whether commands called here use this file without being told}
    boolean isUsual(Path file) {
        var set = fromEnvironment();
        return file.normalize().equals((set == null ? OWN : set).normalize());
    }

    private @Nullable Path named() {
        return workshop == null ? fromEnvironment() : workshop;
    }

    private @Nullable Path fromEnvironment() {
        var variable = desk.environment().get(VARIABLE);
        return variable == null || variable.isEmpty() ? null : Path.of(variable);
    }

    Workshop open(Path file) {
        return Workshop.open(desk.at(file));
    }
}
