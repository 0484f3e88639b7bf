package beltwright.app;

import static beltwright.app.Typesetting.hanging;

import beltwright.kit.Kit;
import beltwright.press.json.CalibrationJson;
import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.ride.Board;
import beltwright.ride.Calibration;
import beltwright.ride.Coefficient;
import beltwright.workshop.Shelf;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.Measurement;
import beltwright.workshop.log.Calibrated;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "calibrate",
        description = {
            "Find from a measured ride what rolls, what drags, what it weighs or how it cools.",
            "Each comes with its 95 %% interval. With --keep the result is kept as a measurement, and later answers rest on it.",
            "A coast-down on level ground tells rolling and drag; a ride with the motor current logged tells the mass as well,"
                    + " and with the winding's temperature how the motor cools.",
            "Ends with 0, with 2 on bad input or a log that cannot tell, with 3 where another number is missing."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright calibrate steep-street --log river-coast --find rolling,drag",
            "  ./beltwright calibrate steep-street --log hill-test --find winding,air",
            "  ./beltwright calibrate steep-street --log ride.csv --find mass --keep ride-9"
        })
final class CalibrateCommand extends KitCommand {
    @Mixin
    LogAsked log = new LogAsked();

    @Option(
            names = "--find",
            paramLabel = "NAMES",
            required = true,
            description = {
                "one or more of rolling, drag, mass;",
                "or of winding and air: thermal resistance from winding to can, from can to still air"
            })
    String find = "";

    @Option(
            names = "--keep",
            paramLabel = "ID",
            description = "keep the result as a measurement of this id, and the log of a file as ID-log")
    String keep = "";

    /// What was found, and the measurement that it makes.
    private record Found(Calibration.Result result, Measurement measurement) {}

    CalibrateCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var wanted = wanted();
        var shelf = edited(shelf());
        var asked = shelf.kit(kit);
        var board = Board.of(asked);
        var read = log.read(
                shelf,
                desk,
                kit,
                keep.isEmpty() ? "" : keep + "-log",
                asked.controller().currentIs());
        var needs = Calibration.needs(board, wanted);
        if (!needs.isEmpty()) {
            if (json) {
                say(CalibrationJson.needs(kit, read.log().id(), needs));
            } else {
                say(PowerText.needs(needs, desk.columns()));
            }
            return Exit.CANNOT_TELL;
        }
        var found = found(asked, board, shelf, read, wanted);
        if (!keep.isEmpty()) {
            keep(found);
        }
        if (json) {
            var notes =
                    Stream.concat(read.doubts().stream(), read.notes().stream()).toList();
            say(CalibrationJson.of(kit, found.measurement().of(), found.result(), notes, keep));
        } else {
            say(told(asked, shelf, read, found));
        }
        return Exit.NOTHING_FAILS;
    }

    private Set<Coefficient> wanted() {
        var wanted = EnumSet.noneOf(Coefficient.class);
        for (var name : find.split(",")) {
            wanted.add(Arrays.stream(Coefficient.values())
                    .filter(c -> c.key().equals(name.strip()))
                    .findFirst()
                    .orElseThrow(() -> new Refusal(
                            "--find",
                            "'" + name.strip() + "' is nothing that a log tells",
                            Arrays.stream(Coefficient.values())
                                    .map(Coefficient::key)
                                    .collect(Collectors.joining(", ")),
                            "name one or more of these, with commas")));
        }
        return wanted;
    }

    private Found found(Kit asked, Board board, Shelf shelf, LogAsked.Read read, Set<Coefficient> wanted) {
        try {
            var result = Calibration.of(board, read.log(), wanted);
            return new Found(result, Calibrated.measurement(keep, asked, shelf, result, set));
        } catch (Refusal r) {
            throw new Refusal(
                    r.where().equals("coefficients") ? "--find" : r.where(),
                    r.wrong(),
                    r.allowed(),
                    Stream.concat(Stream.of(r.mend()), read.doubts().stream()).collect(Collectors.joining("; ")));
        }
    }

    private void keep(Found found) {
        try {
            readWorkshop()
                    .add(List.of(
                            new Document.OfLog(found.result().log()), new Document.OfMeasurement(found.measurement())));
        } catch (Refusal r) {
            throw new Refusal("--keep", r.where() + ": " + r.wrong(), r.allowed(), r.mend());
        }
    }

    private List<String> told(Kit asked, Shelf shelf, LogAsked.Read read, Found found) {
        var result = found.result();
        int columns = desk.columns();
        var log = result.log();
        var lines = new ArrayList<String>();
        lines.addAll(hanging("", "Calibrated: " + PowerText.named(asked), columns));
        lines.addAll(
                hanging("  ", "on log '" + log.id() + "', " + result.rows() + " rows, belts " + log.belts(), columns));
        read.doubts().forEach(doubt -> lines.addAll(hanging("? ", doubt, columns)));
        lines.add("");
        for (var f : result.found()) {
            var unit = " " + f.what().unit();
            lines.addAll(hanging(
                    "",
                    f.what() + ": " + Calibrated.text(f) + unit + ", 95 % interval; before: "
                            + (Double.isNaN(f.before()) ? "not known" : Numbers.significant(f.before(), 3) + unit),
                    columns));
        }
        boolean heat = result.found().getFirst().what().heat();
        lines.addAll(hanging(
                "",
                "measured less computed " + (heat ? "temperature: " : "speed: ")
                        + Numbers.significant(result.leftOver(), 2) + (heat ? " K" : " m/s") + " root mean square",
                columns));
        lines.add("");
        lines.addAll(hanging("", kept(log.id(), found.measurement(), shelf, heat), columns));
        lines.add("");
        var all = new ArrayList<>(read.notes());
        all.addAll(result.notes());
        lines.addAll(PowerText.rests(all, result.estimates(), columns));
        return lines;
    }

    private String kept(String logId, Measurement measurement, Shelf shelf, boolean heat) {
        if (keep.isEmpty()) {
            return "Nothing is kept. --keep ID keeps the result as a measurement, and later answers rest on it.";
        }
        var covered = Calibrated.covered(measurement, shelf);
        return "Kept as measurement '" + keep + "' of " + measurement.of() + ", from log '" + logId + "'"
                + (covered.isEmpty()
                        ? "; answers for " + (heat ? "every kit with this motor" : "this kit")
                                + " rest on it from now on."
                        : "; but a later measurement lies over " + String.join(", ", covered) + ".");
    }
}
