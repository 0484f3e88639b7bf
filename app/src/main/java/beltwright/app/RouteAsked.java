package beltwright.app;

import beltwright.quantity.Refusal;
import beltwright.ride.Route;
import beltwright.workshop.Shelf;
import beltwright.workshop.route.RouteFiles;
import java.nio.file.Files;
import java.nio.file.Path;

/// The route that `--route` names: one of the workshop by its id, else a file.
final class RouteAsked {
    private RouteAsked() {}

    static Route of(Shelf shelf, Desk desk, String typed) {
        if (shelf.routes().containsKey(typed)) {
            return shelf.route(typed);
        }
        Path file = desk.at(Path.of(typed));
        if (Files.isRegularFile(file)) {
            return RouteFiles.read(file);
        }
        var ids = String.join(", ", shelf.routes().keySet());
        throw new Refusal(
                "--route",
                "'" + typed + "' is neither a route of this workshop nor a file",
                ids.isEmpty() ? "a file: this workshop has no route yet" : "a file, or one of " + ids,
                "name one of these");
    }
}
