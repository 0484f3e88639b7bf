package beltwright.app;

import beltwright.quantity.Refusal;
import beltwright.ride.Route;
import beltwright.workshop.Shelf;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import java.io.IOException;
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
            return read(typed, file);
        }
        var ids = String.join(", ", shelf.routes().keySet());
        throw new Refusal(
                "--route",
                "'" + typed + "' is neither a route of this workshop nor a file",
                ids.isEmpty() ? "a file: this workshop has no route yet" : "a file, or one of " + ids,
                "name one of these");
    }

    private static Route read(String name, Path file) {
        try {
            var documents = Codec.read(name, Files.readAllBytes(file)).orRefuse();
            if (documents.size() == 1 && documents.getFirst() instanceof Document.OfRoute(var route)) {
                return route;
            }
            throw new Refusal(name, "holds no route alone", "a file with one route", "name another file");
        } catch (IOException e) {
            throw new Refusal(
                    name,
                    "cannot be read: " + Said.oneLine(e.toString()),
                    "a file you may read",
                    "look at its name and rights");
        }
    }
}
