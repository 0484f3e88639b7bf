package beltwright.app;

import beltwright.press.json.RideJson;
import beltwright.press.table.Ridden;
import beltwright.quantity.Refusal;
import beltwright.ride.Board;
import beltwright.ride.Ride;
import beltwright.ride.RideSolver;
import beltwright.ride.Rider;
import beltwright.ride.Route;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "ride",
        description = {
            "Ride a kit over a route, worked out, and say whether it arrives and why.",
            "How long and how hot, what governed when, how hard the belt is pulled, and where the energy went.",
            "Ends with 0 where it arrives, 1 where it does not, 2 on bad input, 3 where a number is missing."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright ride steep-street --route mill-hill",
            "  ./beltwright ride steep-street --route mill-hill --cruise 18 --csv ride.csv",
            "  ./beltwright ride market-hill-single --route river-flat --with steep-street --json"
        })
final class RideCommand extends KitCommand {
    private static final RideSolver.Options USUAL = RideSolver.Options.USUAL;

    /// Where the engine says `rider`, the person typed an option.
    private static final Map<String, String> OPTIONS =
            Map.of("smooth", "--smooth", "rider", "--braking", "every", "--every");

    @Option(
            names = "--route",
            paramLabel = "FILE|ID",
            required = true,
            description = "a route of the workshop by its id, or a file with a route")
    String route = "";

    @Option(
            names = "--smooth",
            paramLabel = "METRES",
            description = "stretch of road over which heights are averaged, 0 to take them as they are (default: 30)")
    double smoothM = USUAL.smoothM();

    @Option(
            names = "--cruise",
            paramLabel = "KMH",
            description = "speed where the route leaves it to the rider (default: the kit's task.cruiseKmh)")
    String cruiseKmh = "";

    @Option(
            names = "--braking",
            paramLabel = "MPS2",
            description = "how hard the rider likes to brake ahead of a slower stretch (default: 1.2)")
    double brakingMps2 = USUAL.rider().brakingMps2();

    @Option(names = "--every", paramLabel = "S", description = "time between two rows of the channels (default: 1)")
    double everyS = USUAL.everyS();

    @Option(names = "--csv", paramLabel = "FILE", description = "write the channels to this file; it must not be there")
    @Nullable
    Path csv;

    @Option(
            names = "--with",
            paramLabel = "OTHERKIT",
            description = "ride another kit as well and show both side by side; the exit code is the first kit's")
    String with = "";

    RideCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        refuseBadFile();
        var shelf = cruising(edited(shelf()));
        var asked = RouteAsked.of(shelf, desk, route);
        var boards = new LinkedHashMap<String, Board>();
        kits().forEach(id -> boards.put(id, Board.of(shelf.kit(id))));
        if (boards.values().stream().anyMatch(b -> !b.known())) {
            missing(shelf, asked, boards);
            return Exit.CANNOT_TELL;
        }
        var ridden = new ArrayList<Ridden>();
        boards.forEach((id, board) -> ridden.add(new Ridden(shelf.kit(id), board, ride(id, board, asked))));
        write(ridden.getFirst().ride());
        if (json) {
            say(AnswerJson.rides(ridden));
        } else {
            say(new RideText(ridden, desk.columns()).lines());
            told(ridden.getFirst().ride());
        }
        return ridden.getFirst().ride().arrived() ? Exit.NOTHING_FAILS : Exit.SOMETHING_FAILS;
    }

    private List<String> kits() {
        if (with.isEmpty()) {
            return List.of(kit);
        }
        if (with.equals(kit)) {
            throw new Refusal(
                    "--with", "'" + with + "' is the kit itself", "another kit", "name another, or leave it out");
        }
        return List.of(kit, with);
    }

    private void refuseBadFile() {
        if (csv == null) {
            return;
        }
        if (!with.isEmpty()) {
            throw new Refusal("--csv", "two rides in '" + csv + "'", "one ride in a file", "leave --with out");
        }
        if (Files.exists(desk.at(csv))) {
            throw new Refusal(
                    "--csv", "'" + csv + "' is there already", "a file that is not there yet", "name another");
        }
    }

    private Shelf cruising(Shelf shelf) {
        if (cruiseKmh.isEmpty()) {
            return shelf;
        }
        var edited = shelf;
        for (var id : kits()) {
            edited.kit(id); // an unknown kit is no fault of the speed
            try {
                edited = edited.with(List.of(new Edit(id, "task.cruiseKmh", cruiseKmh)));
            } catch (Refusal r) {
                throw new Refusal("--cruise", r.wrong(), r.allowed(), r.mend());
            }
        }
        return edited;
    }

    private Ride ride(String id, Board board, Route asked) {
        try {
            var calm = USUAL.rider();
            var rider = new Rider(calm.speedingMps2(), brakingMps2, calm.settleS());
            return RideSolver.ride(id, board, asked, new RideSolver.Options(rider, smoothM, USUAL.tolerance(), everyS));
        } catch (Refusal r) {
            throw new Refusal(OPTIONS.getOrDefault(r.where(), r.where()), r.wrong(), r.allowed(), r.mend());
        }
    }

    private void missing(Shelf shelf, Route asked, Map<String, Board> boards) {
        if (json) {
            say(AnswerJson.noRide(asked, boards));
            return;
        }
        var parts = new ArrayList<List<String>>();
        boards.forEach((id, board) -> {
            if (!board.known()) {
                parts.add(Typesetting.hanging("", "Ride: " + PowerText.named(shelf.kit(id)), desk.columns()));
                parts.add(PowerText.needs(board.needs(), desk.columns()));
            }
        });
        say(PowerText.joined(parts));
    }

    private void write(Ride ride) {
        if (csv == null) {
            return;
        }
        try {
            Files.writeString(desk.at(csv), RideJson.csv(ride), StandardOpenOption.CREATE_NEW);
        } catch (IOException e) {
            throw new Refusal(
                    "--csv",
                    "'" + csv + "' cannot be written: " + Said.oneLine(e.toString()),
                    "a file in a folder that you may write to",
                    "name another");
        }
    }

    private void told(Ride ride) {
        if (csv != null) {
            say("");
            say(Typesetting.hanging("", "Channels written to " + csv + ": " + RideText.rows(ride), desk.columns()));
        }
    }
}
