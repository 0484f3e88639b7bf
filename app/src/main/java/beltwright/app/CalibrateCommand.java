package beltwright.app;

import beltwright.part.Controller;
import beltwright.press.json.CalibrationJson;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.ride.Board;
import beltwright.ride.Calibration;
import beltwright.ride.Coefficient;
import beltwright.ride.Log;
import beltwright.workshop.Shelf;
import beltwright.workshop.log.Calibrated;
import beltwright.workshop.log.LogFiles;
import beltwright.workshop.log.Mapping;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "calibrate",
        description = {
            "Find from a measured ride what rolls, what drags, what it weighs or how it cools, each with its 95 % interval;",
            "kept as a measurement, later answers rest on it.",
            "A coast-down on level ground tells rolling and drag; a logged ride with motor current tells mass and heat as well."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright calibrate steep-street --log coast.csv --belts off --find rolling,drag",
            "  ./beltwright calibrate steep-street --log ride.csv --columns 'time=t:ms,speed=v:km/h,motor current=I:A' --find mass",
            "  ./beltwright calibrate steep-street --log ride.csv --find winding,air --keep november-heat --by workshop --when 2026-11-20"
        })
final class CalibrateCommand extends KitCommand {
    private static final Map<String, Coefficient> NAMES = names();

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
                "columns whose headings say it need no word"
            })
    String columns = "";

    @Option(names = "--belts", paramLabel = "on|off", description = "whether the belts were on (default: on)")
    String belts = "on";

    @Option(
            names = "--motor-current",
            paramLabel = "KIND",
            description =
                    "what the motor current in the table is: 'direct' or 'sine peak' (default: as the controller states it)")
    String motorCurrent = "";

    @Option(
            names = "--find",
            paramLabel = "NAMES",
            required = true,
            description = "rolling, drag, mass; or winding (to can), air (can to still air)")
    String find = "";

    @Option(names = "--keep", paramLabel = "ID", description = "keep the log and a measurement of this id")
    String keep = "";

    @Option(names = "--by", paramLabel = "WHO", description = "who measured (default: workshop)")
    String by = "workshop";

    @Option(names = "--with", paramLabel = "WHAT", description = "what it was logged with (default: logged ride)")
    String with = "logged ride";

    @Option(names = "--when", paramLabel = "DAY", description = "day of the ride, year-month-day (default: today)")
    String when = "";

    @Option(names = "--preview", description = "only show how each column is read")
    boolean preview;

    CalibrateCommand(Desk desk) {
        super(desk);
    }

    private static Map<String, Coefficient> names() {
        var names = new LinkedHashMap<String, Coefficient>();
        for (var coefficient : Coefficient.values()) {
            names.put(coefficient.key(), coefficient);
        }
        return names;
    }

    @Override
    public Integer call() {
        var shelf = edited(shelf());
        var asked = shelf.kit(kit);
        if (preview) {
            say(previewed());
            return Exit.NOTHING_FAILS;
        }
        var board = Board.of(asked);
        if (!board.known()) {
            say(PowerText.needs(board.needs(), desk.columns()));
            return Exit.CANNOT_TELL;
        }
        var wanted = wanted();
        var result = Calibration.of(board, measured(shelf, asked.controller().currentIs()), wanted);
        if (!keep.isEmpty()) {
            readWorkshop().add(Calibrated.documents(keep, asked, result));
        }
        if (json) {
            say(CalibrationJson.of(result));
        } else {
            say(told(result));
        }
        return Exit.NOTHING_FAILS;
    }

    private Set<Coefficient> wanted() {
        var wanted = EnumSet.noneOf(Coefficient.class);
        for (var name : find.split(",")) {
            var found = NAMES.get(name.strip());
            if (found == null) {
                throw new Refusal(
                        "--find",
                        "'" + name.strip() + "' is nothing that a log tells",
                        String.join(", ", NAMES.keySet()),
                        "name one or more of these, with commas");
            }
            wanted.add(found);
        }
        return wanted;
    }

    private Log measured(Shelf shelf, Controller.CurrentIs stated) {
        if (shelf.logs().containsKey(log)) {
            return shelf.log(log);
        }
        var about = new LogFiles.About(
                (keep.isEmpty() ? "log" : keep) + "-log", kit, by, with, day(), belts(), current(stated));
        return LogFiles.read(file(shelf), Mapping.parse(columns), about);
    }

    private Path file(Shelf shelf) {
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

    private Log.Belts belts() {
        return switch (belts) {
            case "on" -> Log.Belts.ON;
            case "off" -> Log.Belts.OFF;
            default -> throw new Refusal("--belts", "'" + belts + "'", "on, off", "say whether the belts were on");
        };
    }

    private Controller.CurrentIs current(Controller.CurrentIs stated) {
        if (motorCurrent.isEmpty()) {
            return stated;
        }
        for (var kind : Controller.CurrentIs.values()) {
            if (kind.toString().equals(motorCurrent)) {
                return kind;
            }
        }
        throw new Refusal("--motor-current", "'" + motorCurrent + "'", "direct, sine peak", "name one of these");
    }

    private List<String> previewed() {
        var file = file(readWorkshop().shelf());
        var seen = LogFiles.preview(file.toString(), LogFiles.bytes(file), Mapping.parse(columns));
        var lines = new ArrayList<String>();
        lines.add(seen.rows() + " rows");
        for (var column : seen.columns()) {
            lines.addAll(Typesetting.hanging(
                    "  ",
                    "'" + column.heading() + "': "
                            + column.reading().map(r -> "read as " + r).orElse("left out")
                            + column.unit().map(u -> " in " + u).orElse("") + "; "
                            + String.join(", ", column.first()),
                    desk.columns()));
        }
        seen.doubts().forEach(doubt -> lines.addAll(Typesetting.hanging("  ", "doubt: " + doubt, desk.columns())));
        return lines;
    }

    private List<String> told(Calibration.Result result) {
        var lines = new ArrayList<String>();
        boolean heat = result.found().getFirst().what().heat();
        lines.add("Calibrated on " + result.rows() + " rows of '" + result.log().id() + "', belts "
                + result.log().belts() + ":");
        for (var found : result.found()) {
            var unit = found.what().unit();
            lines.addAll(Typesetting.hanging(
                    "  ",
                    found.what() + ": " + Calibrated.text(found) + " " + unit + " (95 % interval); before "
                            + Numbers.significant(found.before(), 3) + " " + unit,
                    desk.columns()));
        }
        lines.add("  left over: " + Numbers.significant(result.leftOver(), 2) + (heat ? " K" : " m/s")
                + ", root mean square");
        result.notes().forEach(note -> lines.addAll(Typesetting.hanging("  ", "note: " + note, desk.columns())));
        lines.addAll(Typesetting.hanging(
                "  ",
                keep.isEmpty()
                        ? "nothing kept; --keep ID keeps the log and the measurement, and later answers rest on it"
                        : "kept as measurement '" + keep + "' and log '"
                                + result.log().id() + "'; later answers rest on it",
                desk.columns()));
        return lines;
    }
}
