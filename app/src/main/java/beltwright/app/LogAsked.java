package beltwright.app;

import beltwright.part.Controller;
import beltwright.quantity.Refusal;
import beltwright.ride.Log;
import beltwright.workshop.Shelf;
import beltwright.workshop.log.LogFiles;
import beltwright.workshop.log.LogPreview;
import beltwright.workshop.log.Mapping;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/// The log that `--log` names, one of the workshop by its id, else a file; and what a file does not say of itself.
final class LogAsked {
    @Option(
            names = "--log",
            paramLabel = "FILE|ID",
            required = true,
            description = "a log of the workshop by its id, or a CSV file")
    String log = "";

    @Option(
            names = "--columns",
            paramLabel = "MAPPING",
            description = {
                "which column holds what, in which unit: 'time=t:ms,speed=v:km/h';",
                "a heading such as 'speed [km/h]' says it by itself"
            })
    String columns = "";

    @Option(
            names = "--belts",
            paramLabel = "on|off",
            description =
                    "whether the belts were on (default: on where a motor current was logged, else it must be said)")
    String belts = "";

    @Option(
            names = "--motor-current",
            paramLabel = "KIND",
            description =
                    "what the motor current in the table is: 'direct' or 'sine peak' (default: as the kit's controller states it)")
    String motorCurrent = "";

    @Option(names = "--by", paramLabel = "WHO", description = "who measured (default: workshop)")
    String by = "";

    @Option(names = "--with", paramLabel = "WHAT", description = "what it was logged with (default: logged ride)")
    String with = "";

    @Option(
            names = "--when",
            paramLabel = "DAY",
            description = "day of the ride, year-month-day (default: today); of two measurements the later holds")
    String when = "";

    /// A log, how it was read, and what in it looks as if a column were in another unit.
    record Read(Log log, List<String> notes, List<String> doubts) {}

    /// @param id of the log where it comes from a file; empty for the name of the file
    /// @throws Refusal if there is no such log, it is of another kit, or its file cannot be read
    Read read(Shelf shelf, Desk desk, String kit, String id, Controller.CurrentIs stated) {
        var notes = new ArrayList<String>();
        var read = shelf.logs().containsKey(log)
                ? kept(shelf.log(log), kit)
                : fromFile(file(shelf, desk), kit, id, stated, notes);
        return new Read(read, notes, LogFiles.doubts(read));
    }

    private Log kept(Log stored, String kit) {
        if (!stored.kit().equals(kit)) {
            throw new Refusal(
                    "--log",
                    "'" + log + "' is a ride of '" + stored.kit() + "'",
                    "a log of '" + kit + "'",
                    "name another");
        }
        Map.of(
                        "--columns", columns,
                        "--belts", belts,
                        "--motor-current", motorCurrent,
                        "--by", by,
                        "--with", with,
                        "--when", when)
                .forEach((option, typed) -> {
                    if (!typed.isEmpty()) {
                        throw new Refusal(
                                option,
                                "'" + typed + "', but the log '" + log + "' is kept and says so itself",
                                "this option with a file only",
                                "leave it out");
                    }
                });
        return stored;
    }

    private Log fromFile(Path file, String kit, String id, Controller.CurrentIs stated, List<String> notes) {
        var mapping = Mapping.parse(columns);
        var bytes = LogFiles.bytes(file);
        var seen = LogFiles.preview(log, bytes, mapping);
        notes.add(columns(seen));
        return LogFiles.read(
                log,
                bytes,
                mapping,
                new LogFiles.About(
                        id.isEmpty() ? String.valueOf(file.getFileName()) : id,
                        kit,
                        by.isEmpty() ? "workshop" : by,
                        with.isEmpty() ? "logged ride" : with,
                        day(),
                        belts(seen),
                        current(stated)));
    }

    private static String columns(LogPreview seen) {
        var left = seen.columns().stream()
                .filter(c -> c.reading().isEmpty())
                .map(c -> "'" + c.heading().strip() + "'")
                .toList();
        return seen.columns().stream()
                        .filter(c -> c.reading().isPresent())
                        .map(c -> "'" + c.heading().strip() + "' is read as "
                                + c.reading().orElseThrow()
                                + c.unit().map(u -> " in " + u).orElse(""))
                        .collect(Collectors.joining(", "))
                + (left.isEmpty() ? "" : "; left out: " + String.join(", ", left));
    }

    private Path file(Shelf shelf, Desk desk) {
        var file = desk.at(Path.of(log));
        if (!Files.isRegularFile(file)) {
            var ids = String.join(", ", shelf.logs().keySet());
            throw new Refusal(
                    "--log",
                    "'" + log + "' is neither a log of this workshop nor a file",
                    ids.isEmpty() ? "a CSV file: this workshop has no log yet" : "a CSV file, or one of " + ids,
                    "name one of these");
        }
        return file;
    }

    private LocalDate day() {
        try {
            return when.isEmpty() ? LocalDate.now() : LocalDate.parse(when);
        } catch (DateTimeParseException e) {
            throw new Refusal(
                    "--when", "'" + when + "' is not a day", "year-month-day", "write for example 2026-11-20");
        }
    }

    private Log.Belts belts(LogPreview seen) {
        var readings =
                seen.columns().stream().flatMap(c -> c.reading().stream()).toList();
        return switch (belts) {
            case "on" -> Log.Belts.ON;
            case "off" -> Log.Belts.OFF;
            case "" -> {
                // A table without a time, or with nothing else, is refused when it is read.
                if (readings.size() > 1 && !readings.contains(Log.Reading.MOTOR_CURRENT)) {
                    throw new Refusal(
                            "--belts",
                            "nothing says whether the belts were on, and no motor current was logged",
                            "on, off",
                            "say '--belts off' for a coast-down without belts");
                }
                yield Log.Belts.ON;
            }
            default -> throw new Refusal("--belts", "'" + belts + "'", "on, off", "say whether the belts were on");
        };
    }

    private Controller.CurrentIs current(Controller.CurrentIs stated) {
        return motorCurrent.isEmpty()
                ? stated
                : Arrays.stream(Controller.CurrentIs.values())
                        .filter(kind -> kind.toString().equals(motorCurrent))
                        .findFirst()
                        .orElseThrow(() -> new Refusal(
                                "--motor-current", "'" + motorCurrent + "'", "direct, sine peak", "name one of these"));
    }
}
