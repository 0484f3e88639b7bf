package beltwright.app;

import beltwright.press.json.RideJson;
import beltwright.ride.PowerSheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "power",
        description = {
            "Say what a kit does on the road at steady speed, and what to set in its controller.",
            "Speed, hills, heat, range and stops, each with its limits and with what governs; what is left of the brake; limits"
                    + " to set, each with its reason.",
            "Ends with 0, with 2 on bad input, with 3 where a number is missing."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright power steep-street",
            "  ./beltwright power steep-street --brakes",
            "  ./beltwright power steep-street --limits --set steep-street.task.airC=35"
        })
final class PowerCommand extends KitCommand {
    private static final Set<String> ALWAYS = Set.of("schema", "kit", "needs", "estimates", "notes");

    @Option(names = "--limits", description = "the limits to set and the tests on the stand, alone")
    boolean limits;

    @Option(names = "--brakes", description = "the brake alone: force over speed by charge, stops, what is left")
    boolean brakes;

    PowerCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var sheet = PowerSheet.of(edited(shelf()).kit(kit));
        if (json) {
            var all = RideJson.of(sheet);
            say(limits || brakes ? all.retain(asked()) : all);
        } else {
            say(told(new PowerText(sheet, desk.columns())));
        }
        return sheet.needs().isEmpty() ? Exit.NOTHING_FAILS : Exit.CANNOT_TELL;
    }

    private Set<String> asked() {
        var names = new HashSet<>(ALWAYS);
        if (limits) {
            names.addAll(Set.of("limits", "benchTests"));
        }
        if (brakes) {
            names.addAll(Set.of("braking", "stops", "left"));
        }
        return names;
    }

    private List<String> told(PowerText text) {
        var parts = new ArrayList<List<String>>();
        if (brakes) {
            parts.add(text.brakesAlone());
        }
        if (limits) {
            parts.add(text.limitsAlone());
        }
        return parts.isEmpty() ? text.all() : PowerText.joined(parts);
    }
}
