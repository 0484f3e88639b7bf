package beltwright.workshop.route;

import beltwright.quantity.Refusal;
import beltwright.workshop.table.LongTable;
import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Length;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;

/// A recorded track, GPX 1.0 or 1.1: the one track of the file with all its segments, or else its one planned route.
final class GpxTrack {
    private GpxTrack() {}

    static void read(String file, byte[] bytes, Trail trail) {
        var points = points(file, gpx(file, bytes));
        int number = 0;
        for (var point : points) {
            number++;
            trail.add(
                    "point " + number,
                    point.getLatitude().doubleValue(),
                    point.getLongitude().doubleValue(),
                    point.getElevation().map(e -> e.to(Length.Unit.METER)).orElse(Double.NaN),
                    point.getTime().orElse(null),
                    Double.NaN,
                    Double.NaN);
        }
    }

    private static GPX gpx(String file, byte[] bytes) {
        try {
            return GPX.Reader.DEFAULT.read(new ByteArrayInputStream(bytes));
        } catch (IOException | RuntimeException e) { // a reader that is given anything can end in anything
            var message = String.valueOf(e.getMessage());
            throw new Refusal(
                    file,
                    message.contains(" DTD")
                            ? "declares a document type or entities"
                            : "is not a GPX file: "
                                    + LongTable.shown(message.replaceAll("\\s+", " ")
                                            .replaceFirst("Invalid GPX: (ParseError at )?", "")
                                            .replaceFirst("\\[row,col\\]:\\[(\\d+),\\d+\\] Message:", "line $1,")),
                    "GPX 1.0 or 1.1 without a document type",
                    "export the track again as GPX");
        }
    }

    private static List<WayPoint> points(String file, GPX gpx) {
        var tracks = gpx.getTracks().stream()
                .map(t -> t.segments().flatMap(s -> s.points()).toList());
        var routes = gpx.getRoutes().stream().map(r -> r.getPoints());
        var recorded = tracks.filter(t -> !t.isEmpty()).toList();
        var lines = recorded.isEmpty() ? routes.filter(r -> !r.isEmpty()).toList() : recorded;
        if (lines.size() != 1) {
            long marks = gpx.getWayPoints().size();
            throw new Refusal(
                    file,
                    lines.isEmpty()
                            ? "holds no track" + (marks > 0 ? ", only " + marks + " single places" : "")
                            : "holds " + lines.size() + (recorded.isEmpty() ? " routes" : " tracks"),
                    "one track or one route",
                    lines.isEmpty() ? "export the track itself" : "export them one by one");
        }
        return lines.getFirst();
    }
}
