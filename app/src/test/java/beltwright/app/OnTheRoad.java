package beltwright.app;

import beltwright.kit.Kit;
import beltwright.press.json.RideJson;
import beltwright.ride.Board;
import beltwright.ride.PowerSheet;
import beltwright.ride.RideSolver;
import beltwright.ride.Route;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/// What a kit does on the road, as numbers alone: words quote what was typed, so they would hide a field that is quoted
/// and never used.
final class OnTheRoad {
    private static final List<String> WORDS =
            List.of("estimates", "notes", "under", "how", "reason", "note", "benchTests", "stated");

    /// Gentle enough to start on, long and steep enough that every kit of the demo is cut back for heat.
    private static final Route HOT = new Route(
            "hot",
            "Up and up",
            true,
            "",
            "estimate, drawn for a test",
            List.of(
                    new Route.Point(0, 0, Double.NaN, 0),
                    new Route.Point(500, 40, Double.NaN, 0),
                    new Route.Point(6500, 640, Double.NaN, 0),
                    new Route.Point(8500, 940, Double.NaN, 0)));

    private OnTheRoad() {}

    /// {@return every number at steady speed}
    static String numbers(Kit kit) {
        var json = RideJson.of(PowerSheet.of(kit));
        without(json);
        return json.toString();
    }

    /// {@return every number of one ride that gets hot}
    static String ride(Kit kit) {
        var quick = RideSolver.Options.USUAL.withTolerance(1e-5);
        return RideJson.of(RideSolver.ride(kit.id(), Board.of(kit), HOT, quick)).toString();
    }

    private static void without(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.remove(WORDS);
        }
        node.forEach(OnTheRoad::without);
    }
}
