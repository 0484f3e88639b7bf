package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.Thread;
import beltwright.quantity.Dimension;
import beltwright.quantity.Range;

/// Two circles of holes that screws pass through: what each screw can move in its hole against how far the circles
/// differ.
abstract class HolesMeet extends Check {
    HolesMeet(String slug, String name, Role... about) {
        super(
                slug,
                name,
                "mm",
                Scope.DRIVE,
                "play of the screw in its hole against the mismatch of the circles",
                about);
    }

    /// {@return the circle of the threaded holes}
    abstract Dimension threaded(Subject s);

    /// {@return the circle of the holes or slots that the screws pass through}
    abstract Dimension open(Subject s);

    /// {@return how wide one of those is}
    abstract Dimension width(Subject s);

    /// {@return the thread that the holes ask for; that the screws have it is a question of its own}
    abstract Thread thread(Subject s);

    static double play(double hole, double screw) {
        return (hole - screw) / 2;
    }

    private Range play(Subject s) {
        double d = thread(s).majorMm();
        var hole = width(s);
        return new Range(play(hole.lower(), d), play(hole.nominal(), d), play(hole.upper(), d));
    }

    private Range mismatch(Subject s) {
        return Range.of(threaded(s)).minus(open(s)).absolute().times(0.5);
    }

    @Override
    public final void measure(Subject s, Reading out) {
        out.set(mismatch(s), play(s));
    }

    @Override
    public final void explain(Subject s, Working w, Reading out) {
        w.given("k1", threaded(s));
        w.given("k2", open(s));
        w.given("b_hole", width(s));
        w.given("d_screw", "thread " + thread(s), thread(s).majorMm(), "mm", "ISO 261");
        var mismatch = mismatch(s);
        w.line("m", "abs(k1 − k2)/2", mismatch.nominal(), "mm", "each hole off its mate");
        var play = play(s);
        w.line("play", "(b_hole − d_screw)/2", play.nominal(), "mm", "each screw in its hole");
        out.set(mismatch, play);
    }

    /// {@return what to change where the circles do not agree}
    abstract String otherCircle(Subject s);

    @Override
    public final String remedy(Subject s, Reading r) {
        return r.demand() < r.demandWorst && r.demand() == 0
                ? "holes " + leastMm(2 * (r.demandWorst - r.capacityWorst)) + " wider, or circles measured more closely"
                : otherCircle(s);
    }

    @Override
    public String says(Subject s, Reading r) {
        return "holes " + r.demandText() + " mm off; the screws allow " + r.capacityText();
    }
}
