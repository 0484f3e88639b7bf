package beltwright.app;

import static beltwright.app.Typesetting.hanging;

import beltwright.kit.Kit;
import beltwright.power.Governs;
import beltwright.quantity.Numbers;
import beltwright.ride.Board;
import beltwright.ride.Caution;
import beltwright.ride.Channel;
import beltwright.ride.Energy;
import beltwright.ride.Event;
import beltwright.ride.Ride;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/// A ride, or two side by side, as a terminal shows them.
final class RideText {
    private static final int MOST_EVENTS = 60;
    private static final double J_IN_WH = 3600;

    /// One kit on its way.
    record Ridden(Kit kit, Board board, Ride ride) {}

    private final List<Ridden> all;
    private final int columns;

    RideText(List<Ridden> all, int columns) {
        this.all = List.copyOf(all);
        this.columns = columns;
    }

    List<String> lines() {
        var parts = new ArrayList<List<String>>();
        parts.add(title());
        parts.add(summary());
        all.forEach(one -> parts.add(events(one)));
        parts.add(governed());
        parts.add(energy());
        parts.add(cautions());
        all.forEach(one -> parts.add(rests(one)));
        return PowerText.joined(parts);
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
            lines.addAll(hanging("", PowerText.named(one.kit()) + ": " + ending(one.ride()), columns));
        }
        return lines;
    }

    private static String ending(Ride ride) {
        var last = ride.events().getLast();
        var when = " after " + clock(last.timeS()) + " min";
        if (ride.arrived()) {
            return "arrives" + when;
        }
        return "does not arrive: " + last.words() + " at " + Numbers.fixed(last.distanceM(), 0) + " m of "
                + Numbers.fixed(ride.route().lengthM(), 0) + when
                + (last.governs() == Governs.WISH ? "" : "; what governs there: " + last.governs());
    }

    private TableText table(String first) {
        return new TableText(Stream.concat(
                        Stream.of(first),
                        all.stream().map(one -> all.size() == 1 ? "" : one.kit().id()))
                .toArray(String[]::new));
    }

    private void row(TableText table, String name, Function<Ridden, String> cell) {
        table.row(Stream.concat(Stream.of(name), all.stream().map(cell)).toList());
    }

    private List<String> summary() {
        var table = table("");
        row(table, "time (min)", r -> clock(r.ride().timeS()));
        row(table, "distance (km)", r -> Numbers.fixed(r.ride().distanceM() / 1000, 2));
        row(table, "mean speed (km/h)", r -> Numbers.fixed(r.ride().meanKmh(), 1));
        row(table, "energy (Wh)", r -> Numbers.fixed(r.ride().usedWh(), 1));
        row(
                table,
                "energy for each kilometre (Wh/km)",
                r -> Numbers.fixed(r.ride().whPerKm(), 1));
        row(table, "hottest winding (°C)", r -> Numbers.fixed(r.ride().hottestC(), 0));
        row(table, "charge at the start (%)", r -> Numbers.fixed(100 * r.board().charge(), 1));
        row(table, "charge left (%)", r -> Numbers.fixed(100 * r.ride().chargeLeft(), 1));
        return table.lines(columns);
    }

    private List<String> events(Ridden one) {
        var events = one.ride().events();
        var table = new TableText(
                "min",
                "m",
                "what happens" + (all.size() == 1 ? "" : ": " + one.kit().id()));
        int left = Math.max(0, events.size() - MOST_EVENTS);
        events.subList(0, events.size() - left - 1).forEach(e -> row(table, e));
        if (left > 0) {
            table.row("…", "", left + " more; --json has all");
        }
        row(table, events.getLast());
        return table.lines(columns);
    }

    private static void row(TableText table, Event e) {
        table.row(clock(e.timeS()), Numbers.fixed(e.distanceM(), 1), e.words());
    }

    private List<String> governed() {
        var table = table("Seconds that it governed");
        for (var limit : Governs.values()) {
            if (all.stream().anyMatch(r -> r.ride().governed().containsKey(limit))) {
                row(
                        table,
                        limit.toString(),
                        r -> Numbers.fixed(r.ride().governed().getOrDefault(limit, 0.0), 1));
            }
        }
        return table.lines(columns);
    }

    private List<String> energy() {
        var table = table("");
        row(table, "given by the cells, less what came back", wh(Energy::cellsJ));
        row(table, "lost in the pack", wh(Energy::packJ));
        row(table, "lost in the windings", wh(Energy::copperJ));
        row(table, "lost in iron, bearings and air of the motors", wh(Energy::ironJ));
        row(table, "lost in the belts", wh(Energy::beltJ));
        row(table, "lost in the treads", wh(Energy::rollingJ));
        row(table, "spent on the air", wh(Energy::airJ));
        row(table, "lost in the wheel bearings", wh(Energy::bearingJ));
        row(table, "put into height", wh(Energy::heightJ));
        row(table, "left in motion", wh(Energy::motionJ));
        row(table, "taken by the foot in the last step to a stop", wh(Energy::haltJ));
        row(table, "sum of all but the first", wh(Energy::spentJ));
        row(
                table,
                "not accounted for (parts in a million)",
                r -> Numbers.fixed(1e6 * r.ride().energy().openShare(), 2));
        var lines = new ArrayList<String>(hanging("", "Energy (Wh)", columns));
        lines.addAll(table.lines(columns));
        return lines;
    }

    private static Function<Ridden, String> wh(ToDoubleFunction<Energy> joules) {
        return r -> Numbers.fixed(joules.applyAsDouble(r.ride().energy()) / J_IN_WH, 2);
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

    /// {@return minutes and seconds}
    static String clock(double seconds) {
        long tenths = Math.round(10 * seconds);
        long rest = tenths % 600;
        return tenths / 600 + ":" + (rest < 100 ? "0" : "") + rest / 10 + "." + rest % 10;
    }

    /// {@return how many rows the channels of a ride have, and how far apart they are}
    static String rows(Ride ride) {
        var time = ride.of(Channel.TIME);
        return ride.rows() + " rows" + (time.length < 2 ? "" : ", one every " + Numbers.significant(time[1], 3) + " s");
    }
}
