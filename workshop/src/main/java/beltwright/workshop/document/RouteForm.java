package beltwright.workshop.document;

import beltwright.quantity.Refusal;
import beltwright.ride.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.SequencedMap;
import org.jspecify.annotations.Nullable;

/// A route as a document: what it is called, where it was read, and its points, one to a line.
final class RouteForm {
    private static final List<String> HEAD = List.of("schema", "route", "name", "invented", "note", "source", "points");
    private static final String ROW =
            "distance (m), elevation (m), then if wished speed (km/h, 0 stops, - is free) and wait (s)";
    private static final int LONGEST_WAIT_S = 86_400;
    private static final FieldForm NAME = new FieldForm("name", String.class, "what people call this route", 0, 0);
    private static final FieldForm INVENTED =
            new FieldForm("invented", boolean.class, "whether the route is a made-up example", 0, 0);

    private RouteForm() {}

    static @Nullable Route read(Scope at, Node.Fields typed) {
        at.refuseOthers(typed, HEAD);
        var name = KitForm.head(at, typed, NAME, null);
        var invented = KitForm.head(at, typed, INVENTED, false);
        var note = KitForm.head(at, typed, KitForm.NOTE, "");
        var sourceNode =
                at.required(typed, "source", "where the points were read, for example 'measured, rule and map'");
        var source = sourceNode == null ? null : FieldForm.provenance(at.in("source"), sourceNode);
        var pointsNode = at.required(typed, "points", ROW);
        var inside = at.in("points");
        var rows = pointsNode == null ? null : NumberLines.rows(inside, pointsNode, ROW);
        if (pointsNode == null || rows == null) {
            return null;
        }
        int before = at.mistakes().size();
        var points = new ArrayList<Route.Point>();
        double last = Double.NaN;
        for (var row : rows) {
            var point = point(inside, row, last);
            last = Double.isNaN(point.distanceM()) ? last : point.distanceM();
            points.add(point);
        }
        if (name == null
                || invented == null
                || note == null
                || source == null
                || at.mistakes().size() > before) {
            return null;
        }
        try {
            return new Route(at.document(), (String) name, (Boolean) invented, (String) note, source.words(), points);
        } catch (Refusal r) {
            inside.refused(pointsNode.line(), r);
            return null;
        }
    }

    private static Route.Point point(Scope at, NumberLines.Row row, double last) {
        var cells = row.cells();
        int line = row.line();
        if (cells.size() < 2 || cells.size() > 4) {
            at.mistake(
                    line,
                    "has " + cells.size() + (cells.size() == 1 ? " number" : " numbers"),
                    ROW,
                    "give 2 to 4 numbers");
            return new Route.Point(Double.NaN, 0, Double.NaN, 0);
        }
        double distance = NumberLines.number(at, line, "distance (m)", cells.get(0), 0, Route.LONGEST_M);
        double elevation = NumberLines.number(at, line, "elevation (m)", cells.get(1), Route.LOWEST_M, Route.HIGHEST_M);
        boolean open = cells.size() < 3 || cells.get(2).equals(NumberLines.OPEN);
        double speed =
                open ? Double.NaN : NumberLines.number(at, line, "speed (km/h)", cells.get(2), 0, Route.FASTEST_KMH);
        double wait = cells.size() < 4 ? 0 : NumberLines.number(at, line, "wait (s)", cells.get(3), 0, LONGEST_WAIT_S);
        if (Double.isNaN(last) && distance > 0) {
            at.mistake(line, "the first distance is " + cells.get(0) + " m", "0 m", "begin at 0");
        }
        if (distance <= last) {
            at.mistake(
                    line,
                    "distance " + cells.get(0) + " m is no further than " + NumberLines.text(last) + " m before it",
                    "distances that rise from line to line",
                    "correct it, or take this point out");
        }
        if (wait > 0 && (open || speed > 0)) {
            at.mistake(
                    line,
                    "waits " + cells.get(3) + " s without a stop",
                    "a wait where the speed is 0",
                    "write 0 as the speed here, and the speed wished for on a line of its own a metre further");
        }
        return new Route.Point(distance, elevation, speed, wait);
    }

    static SequencedMap<String, Node> write(Route route) {
        var typed = Documents.head(Document.Type.ROUTE, route.id());
        typed.put("name", new Node.Text(route.name()));
        typed.put("invented", new Node.Text(String.valueOf(route.invented())));
        if (!route.note().isEmpty()) {
            typed.put("note", new Node.Text(route.note()));
        }
        typed.put("source", new Node.Text(route.source()));
        typed.put(
                "points",
                NumberLines.written(route.points().stream().map(RouteForm::row).toList()));
        return typed;
    }

    private static double[] row(Route.Point p) {
        if (p.waitS() != 0) {
            return new double[] {p.distanceM(), p.elevationM(), p.speedKmh(), p.waitS()};
        }
        return Double.isNaN(p.speedKmh())
                ? new double[] {p.distanceM(), p.elevationM()}
                : new double[] {p.distanceM(), p.elevationM(), p.speedKmh()};
    }
}
