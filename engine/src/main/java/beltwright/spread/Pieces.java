package beltwright.spread;

import beltwright.check.Assumed;
import beltwright.kit.Chance;
import beltwright.kit.Hardware;
import beltwright.kit.Kit;
import beltwright.kit.Placement;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.kit.Task;
import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.quantity.Dimension;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What a kit is drawn from: every piece in every seat on its own; placements, task, the rules that stand in for what
/// the task does not give, and reference once a kit; preload once a joint.
///
/// A kit holds one part a seat, so a seat of four screws is looked at four times: kit 0 has the first piece in each
/// seat, kit 1 the second in each that has a second, and so on.
final class Pieces {
    private static final String TASK = "task";

    private final Kit kit;
    private final List<Input> inputs = new ArrayList<>();
    private final Map<SeatName, Drawn> drawn = new HashMap<>();
    private final Map<Side, Drawn> placements = new EnumMap<>(Side.class);
    private final Drawn task;
    private final Drawn reference;
    private final Map<Dimension, Integer> rules = new LinkedHashMap<>();
    private final Map<SeatName, Integer> misses = new LinkedHashMap<>();
    private int most = 1;

    /// A value that can be made anew, and where its numbers start for each piece.
    private record Drawn(Recast recast, int from, int each, int pieces) {
        Object with(double[] values, int piece) {
            return recast.with(values, from + each * (piece % pieces));
        }
    }

    Pieces(Kit kit) {
        this.kit = kit;
        kit.seats().forEach((name, seat) -> {
            int fitted = Math.max(1, Math.min(seat.count(), Hardware.needed(kit, name)));
            var piece = drawn(name.toString(), seat.part(), fitted);
            if (piece.each > 0) {
                drawn.put(name, piece);
                most = Math.max(most, fitted);
            }
        });
        kit.draft().placements().forEach((side, place) -> placements.put(side, drawn(side + " placement", place, 1)));
        task = drawn(TASK, kit.task(), 1);
        reference = drawn("reference", kit.reference(), 1);
        Assumed.standingIn(kit).forEach(rule -> rules.put(rule, added(TASK, rule)));
        Assumed.misses(kit).forEach((seat, miss) -> misses.put(seat, added("preload of " + seat, miss)));
    }

    private Drawn drawn(String where, Object value, int pieces) {
        var dimensions = new ArrayList<Dimension>();
        var recast = Recast.of(value, dimensions);
        int from = inputs.size();
        for (int piece = 0; piece < pieces; piece++) {
            for (var d : dimensions) {
                inputs.add(Input.of(where, piece, d));
            }
        }
        return new Drawn(recast, from, dimensions.size(), pieces);
    }

    /// Named as an edit would name it, so that typing the same limits changes no draw.
    ///
    /// @return its place among the inputs
    private int added(String where, Dimension d) {
        var typed = kit.id() + "." + TASK + d.of().substring(d.of().lastIndexOf('.'));
        inputs.add(
                Input.of(where, 0, new Dimension(typed, d.text(), d.nominal(), d.lower(), d.upper(), d.provenance())));
        return inputs.size() - 1;
    }

    private Chance chance(double[] values) {
        var came = new HashMap<String, Dimension>();
        rules.forEach((rule, at) -> came.put(rule.of(), rule.drawn(values[at])));
        var percent = new HashMap<SeatName, Double>();
        misses.forEach((seat, at) -> percent.put(seat, values[at]));
        return new Chance(came, percent);
    }

    List<Input> inputs() {
        return inputs;
    }

    /// {@return how many pieces of its seat are drawn as this one is}
    int pieces(Input input) {
        return (int) inputs.stream()
                .filter(i -> i.where().equals(input.where())
                        && i.dimension().of().equals(input.dimension().of()))
                .count();
    }

    /// {@return how many times a kit has to be looked at until every piece was seen}
    int most() {
        return most;
    }

    /// {@return whether some seat of this role holds more than one piece that varies}
    boolean several(Role role) {
        return drawn.entrySet().stream().anyMatch(e -> e.getKey().role() == role && e.getValue().pieces > 1);
    }

    /// {@return the kit with these values, one for each input, and the first piece of each seat}
    Kit kit(double[] values) {
        var placed = new EnumMap<Side, Placement>(Side.class);
        placements.forEach((side, d) -> placed.put(side, (Placement) d.with(values, 0)));
        return kit.drawn(
                seat -> {
                    var d = drawn.get(seat.name());
                    return d == null ? seat.part() : (Part) d.with(values, 0);
                },
                placed,
                (Task) task.with(values, 0),
                (Reference) reference.with(values, 0),
                chance(values));
    }

    /// {@return the same kit with another piece of each seat that has several}
    Kit other(Kit first, double[] values, int piece) {
        return first.drawn(
                seat -> {
                    var d = drawn.get(seat.name());
                    return d == null || d.pieces == 1 ? seat.part() : (Part) d.with(values, piece);
                },
                first.draft().placements(),
                first.task(),
                first.reference(),
                first.chance());
    }
}
