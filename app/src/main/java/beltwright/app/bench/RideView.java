package beltwright.app.bench;

import beltwright.press.table.Ridden;
import beltwright.press.table.RideTables;
import beltwright.press.table.Table;
import beltwright.quantity.Numbers;
import beltwright.ride.Channel;
import beltwright.ride.Ride;
import beltwright.ride.Route;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/// A ride, or two over the same route, as the page shows them.
///
/// @param rides empty where there is no route yet, or a number is missing
/// @param refused why what was uploaded is no route; empty where nothing was
public record RideView(
        RoadSheet road,
        @Nullable Route route,
        String smooth,
        String with,
        List<Ridden> rides,
        List<String> needs,
        String refused) {
    private static final int MOST_EVENTS = 200;

    /// Lines that share a field and its scale.
    ///
    /// @param key which chart this is
    public record Chart(String key, String title, List<Line> lines) {}

    /// One channel as a line, or as a value alone.
    ///
    /// @param style `solid`, `dashed`, `right` for dashed with a scale of its own to the right, `value` for no line
    public record Line(Channel channel, String style) {}

    private static final List<Chart> CHARTS = List.of(
            new Chart("road", "Road", List.of(solid(Channel.ELEVATION), value(Channel.GRADE))),
            new Chart("speed", "Speed", List.of(solid(Channel.SPEED), dashed(Channel.WISH))),
            new Chart("current", "Currents", List.of(solid(Channel.PHASE_CURRENT), dashed(Channel.BATTERY_CURRENT))),
            new Chart("pack", "Pack", List.of(solid(Channel.VOLTAGE), new Line(Channel.CHARGE, "right"))),
            new Chart("heat", "Temperatures", List.of(solid(Channel.WINDING), dashed(Channel.CASE))),
            new Chart("belt", "Belt", List.of(solid(Channel.TIGHT_SIDE), dashed(Channel.SLACK_SIDE))));

    private static Line solid(Channel channel) {
        return new Line(channel, "solid");
    }

    private static Line dashed(Channel channel) {
        return new Line(channel, "dashed");
    }

    private static Line value(Channel channel) {
        return new Line(channel, "value");
    }

    public List<Chart> charts() {
        return CHARTS;
    }

    /// {@return a symbol, and what stands below it or nothing}
    public static String[] symbol(Channel channel) {
        var parts = channel.symbol().split("_", 2);
        return parts.length == 2 ? parts : new String[] {parts[0], ""};
    }

    public List<Channel> channels() {
        return List.of(Channel.values());
    }

    public Ride first() {
        return rides.getFirst().ride();
    }

    public Collection<Route> routes() {
        return road.shelf().routes().values();
    }

    /// {@return the other kits, each by id and name}
    public List<String[]> others() {
        return road.shelf().drafts().values().stream()
                .filter(d -> !d.id().equals(road.kit().id()))
                .map(d -> new String[] {d.id(), d.name()})
                .toList();
    }

    public RideTables tables() {
        return new RideTables(rides);
    }

    public Table events(Ridden one) {
        return RideTables.events("what happens", one.ride(), MOST_EVENTS);
    }

    /// {@return where the channels of one of the rides come from}
    public String file(Ridden one, String page) {
        var address = one.kit().id().equals(road.kit().id())
                ? road
                : new RoadSheet(road.shelf(), new Draft(one.kit().id(), road.edits()), one.kit(), road.here());
        return address.address("/ride/" + page, "route", first().route().id(), "smooth", smooth);
    }

    public Set<String> estimates() {
        var all = new LinkedHashSet<String>();
        rides.forEach(r -> all.addAll(r.board().estimates()));
        return all;
    }

    public List<String> notes() {
        return rides.stream()
                .flatMap(r -> r.board().notes().stream())
                .distinct()
                .toList();
    }

    public static String span(Ride.Span span) {
        return Numbers.clock(span.fromS()) + " to " + Numbers.clock(span.toS()) + " min, "
                + Numbers.fixed(span.fromM(), 0) + " to " + Numbers.fixed(span.toM(), 0) + " m";
    }
}
