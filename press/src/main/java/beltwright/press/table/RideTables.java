package beltwright.press.table;

import beltwright.check.CardPull;
import beltwright.power.Governs;
import beltwright.quantity.Numbers;
import beltwright.ride.Energy;
import beltwright.ride.Event;
import beltwright.ride.Ride;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/// The tables of a ride, or of two side by side: a column for each.
public final class RideTables {
    private static final double J_IN_WH = 3600;

    private final List<Ridden> all;

    public RideTables(List<Ridden> all) {
        this.all = List.copyOf(all);
    }

    private Table table(String first, List<List<String>> rows) {
        return new Table(
                Stream.concat(
                                Stream.of(first),
                                all.stream()
                                        .map(one ->
                                                all.size() == 1 ? "" : one.kit().id()))
                        .toList(),
                rows);
    }

    private List<String> row(String name, Function<Ridden, String> cell) {
        return Stream.concat(Stream.of(name), all.stream().map(cell)).toList();
    }

    public Table summary() {
        return table(
                "",
                List.of(
                        row("time (min)", r -> Numbers.clock(r.ride().timeS())),
                        row("distance (km)", r -> Numbers.fixed(r.ride().distanceM() / 1000, 2)),
                        row("mean speed (km/h)", r -> Numbers.fixed(r.ride().meanKmh(), 1)),
                        row("energy (Wh)", r -> Numbers.fixed(r.ride().usedWh(), 1)),
                        row(
                                "energy for each kilometre (Wh/km)",
                                r -> Numbers.fixed(r.ride().whPerKm(), 1)),
                        row(
                                "hardest belt pull driving, of the card's worst at the worse limits (N)",
                                r -> pulled(r, false)),
                        row(
                                "hardest belt pull braking, of the card's worst at the worse limits (N)",
                                r -> pulled(r, true)),
                        row("hottest winding (°C)", r -> Numbers.fixed(r.ride().hottestC(), 0)),
                        row(
                                "charge at the start (%)",
                                r -> Numbers.fixed(100 * r.board().charge(), 1)),
                        row("charge left (%)", r -> Numbers.fixed(100 * r.ride().chargeLeft(), 1))));
    }

    /// {@return the greatest pull of a ride beside the one that the tension card takes, when and where}
    public static String pulled(Ridden one, boolean braking) {
        var pulls = one.ride().pulls();
        var pull = braking ? pulls.braking() : pulls.driving();
        var card = CardPull.of(one.kit());
        return Numbers.fixed(pull.effectiveN(), 0) + " of "
                + Numbers.fixed(braking ? card.brakingN() : card.drivingN(), 0)
                + (Double.isNaN(pull.timeS())
                        ? ""
                        : ", after " + Numbers.clock(pull.timeS()) + " min at " + Numbers.fixed(pull.distanceM(), 0)
                                + " m");
    }

    /// {@return how long each limit governed}
    public Table governed() {
        var rows = new ArrayList<List<String>>();
        for (var limit : Governs.values()) {
            if (all.stream().anyMatch(r -> r.ride().governed().containsKey(limit))) {
                rows.add(row(
                        limit.toString(), r -> Numbers.fixed(r.ride().governed().getOrDefault(limit, 0.0), 1)));
            }
        }
        return table("Seconds that it governed", rows);
    }

    /// {@return where the energy went, and how well the account closes}
    public Table energy() {
        var rows = new ArrayList<List<String>>();
        rows.add(
                row("given by the cells, less what came back", r -> wh(energy(r).cellsJ())));
        var parts = energy(all.getFirst()).parts();
        for (int i = 0; i < parts.size(); i++) {
            int part = i;
            rows.add(row(
                    parts.get(i).words(), r -> wh(energy(r).parts().get(part).joules())));
        }
        rows.add(row("sum of all but the first", r -> wh(energy(r).spentJ())));
        rows.add(row(
                "not accounted for (parts in a million)",
                r -> Numbers.fixed(1e6 * energy(r).openShare(), 2)));
        return table("Energy (Wh)", rows);
    }

    private static Energy energy(Ridden one) {
        return one.ride().energy();
    }

    private static String wh(double joules) {
        return Numbers.fixed(joules / J_IN_WH, 2);
    }

    /// {@return what happened, at most so many rows; the last event is always there}
    public static Table events(String what, Ride ride, int most) {
        var events = ride.events();
        var rows = new ArrayList<List<String>>();
        int left = Math.max(0, events.size() - most);
        events.subList(0, events.size() - left - 1).forEach(e -> rows.add(row(e)));
        if (left > 0) {
            rows.add(List.of("…", "", left + " more; --json has all"));
        }
        rows.add(row(events.getLast()));
        return new Table(List.of("min", "m", what), rows);
    }

    private static List<String> row(Event e) {
        return List.of(Numbers.clock(e.timeS()), Numbers.fixed(e.distanceM(), 1), e.words());
    }
}
