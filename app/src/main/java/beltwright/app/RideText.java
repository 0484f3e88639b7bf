package beltwright.app;

import static beltwright.app.Typesetting.hanging;

import beltwright.press.table.Ridden;
import beltwright.press.table.RideTables;
import beltwright.press.table.Table;
import beltwright.quantity.Numbers;
import beltwright.ride.Caution;
import beltwright.ride.Channel;
import beltwright.ride.Ride;
import java.util.ArrayList;
import java.util.List;

/// A ride, or two side by side, as a terminal shows them.
final class RideText {
    private static final int MOST_EVENTS = 60;

    private final List<Ridden> all;
    private final int columns;

    RideText(List<Ridden> all, int columns) {
        this.all = List.copyOf(all);
        this.columns = columns;
    }

    List<String> lines() {
        var tables = new RideTables(all);
        var parts = new ArrayList<List<String>>();
        parts.add(title());
        parts.add(TableText.of(tables.summary()).lines(columns));
        all.forEach(one -> parts.add(events(one)));
        parts.add(titled(tables.governed()));
        parts.add(titled(tables.energy()));
        parts.add(cautions());
        all.forEach(one -> parts.add(rests(one)));
        return PowerText.joined(parts);
    }

    /// A table that has no room for columns has none for its headings; the first is its title.
    private List<String> titled(Table table) {
        var title = table.heads().getFirst();
        var lines = new ArrayList<>(TableText.of(table).lines(columns));
        if (!lines.isEmpty() && !lines.getFirst().startsWith(title)) {
            lines.addAll(0, hanging("", title, columns));
        }
        return lines;
    }

    private List<String> title() {
        var route = all.getFirst().ride().route();
        var lines = new ArrayList<String>();
        lines.addAll(hanging(
                "",
                "Route: " + route.name() + " (" + route.id() + ")" + (route.invented() ? ", invented" : "") + "; "
                        + route.source(),
                columns));
        if (!route.note().isEmpty()) {
            lines.addAll(hanging("  ", route.note(), columns));
        }
        if (route.points().stream().noneMatch(p -> Double.isNaN(p.speedKmh()))) {
            lines.addAll(
                    hanging("  ", "it names its own speed at every point: the cruise speed plays no part", columns));
        }
        for (var one : all) {
            lines.addAll(
                    hanging("", PowerText.named(one.kit()) + ": " + one.ride().ending(), columns));
        }
        return lines;
    }

    private List<String> events(Ridden one) {
        var what = "what happens" + (all.size() == 1 ? "" : ": " + one.kit().id());
        return TableText.of(RideTables.events(what, one.ride(), MOST_EVENTS)).lines(columns);
    }

    private List<String> cautions() {
        var lines = new ArrayList<String>();
        for (var words : List.of(Caution.BRAKE, Caution.HEAT, Caution.LAW)) {
            lines.addAll(hanging("! ", words.toString(), columns));
        }
        return lines;
    }

    private List<String> rests(Ridden one) {
        var lines = PowerText.rests(one.board().notes(), one.board().estimates(), columns);
        if (all.size() > 1 && !lines.isEmpty()) {
            lines.addFirst(one.kit().id());
        }
        return lines;
    }

    /// {@return how many rows the channels of a ride have, and how far apart they are}
    static String rows(Ride ride) {
        var time = ride.of(Channel.TIME);
        return ride.rows() + " rows" + (time.length < 2 ? "" : ", one every " + Numbers.significant(time[1], 3) + " s");
    }
}
