package beltwright.check;

import beltwright.kit.Role;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;

/// A hole over a shaft, or any inner over any outer size, whose clearance must stay between two bounds.
///
///     s = D − d        room = min(s − s_least, s_most − s)
///
/// Capacity is the room to the nearer bound; nothing is demanded but that it is not negative, so there is no margin.
abstract class Fit extends Check {
    private final double least;
    private final double most;
    private final String habit;

    /// @param least smallest clearance (mm), negative where it must be firm
    /// @param most largest clearance (mm)
    Fit(String slug, String name, Scope scope, double least, double most, String habit, Role... about) {
        super(slug, name, "mm", scope, "limits and fits, ISO 286; bounds: " + habit, about);
        this.least = least;
        this.most = most;
        this.habit = habit;
    }

    abstract Dimension hole(Subject s);

    abstract Dimension shaft(Subject s);

    Range clearance(Subject s) {
        return Range.of(hole(s)).minus(shaft(s));
    }

    static double room(double clearance, double least, double most) {
        return Math.min(clearance - least, most - clearance);
    }

    private Range room(Range clearance) {
        double low = room(clearance.low(), least, most);
        double high = room(clearance.high(), least, most);
        double nominal = room(clearance.nominal(), least, most);
        double best = clearance.low() <= (least + most) / 2 && clearance.high() >= (least + most) / 2
                ? (most - least) / 2
                : Math.max(low, high);
        return new Range(Math.min(low, high), nominal, best);
    }

    @Override
    public final void measure(Subject s, Reading out) {
        out.set(0, room(clearance(s)));
    }

    @Override
    public final void explain(Subject s, Working w, Reading out) {
        var clearance =
                w.chain("s", "mm", "clearance", java.util.List.of(Term.plus("D", hole(s)), Term.minus("d", shaft(s))));
        w.given("s_least", "smallest clearance allowed", least, "mm", habit);
        w.given("s_most", "largest clearance allowed", most, "mm", habit);
        var room = room(clearance);
        w.line("room", "min(s − s_least, s_most − s)", room.nominal(), "mm", "distance to the nearer bound");
        if (clearance.high() > clearance.low()) {
            w.line(
                    "room_min",
                    "min(min(s_min − s_least, s_most − s_min), min(s_max − s_least, s_most − s_max))",
                    room.low(),
                    "mm",
                    "at the worse limit");
        }
        out.set(0, room);
    }

    @Override
    public String says(Subject s, Reading r) {
        var c = clearance(s);
        return "clearance " + Numbers.significant(c.low(), 3) + " to " + Numbers.significant(c.high(), 3) + " mm; "
                + Numbers.significant(least, 3) + " to " + Numbers.significant(most, 3) + " wanted";
    }

    @Override
    public String remedy(Subject s, Reading r) {
        var c = clearance(s);
        double by = c.low() < least ? least - c.low() : c.high() > most ? most - c.high() : 0;
        double spare = (most - least) - (c.high() - c.low());
        if (spare < 0) {
            return "the limits are " + Numbers.significant(-spare, 2) + " mm wider than the fit allows: tighten "
                    + hole(s).of() + " or " + shaft(s).of();
        }
        int decimals = 1;
        while (Numbers.up(Math.abs(by), decimals) - Math.abs(by) > spare / 2 && decimals < 4) {
            decimals++;
        }
        return hole(s).of() + " " + Numbers.plain(Numbers.up(Math.abs(by), decimals)) + " mm "
                + (by > 0 ? "larger" : "smaller");
    }
}
