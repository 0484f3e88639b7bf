package beltwright.check;

import beltwright.kit.Role;
import beltwright.layout.Clearance;
import beltwright.quantity.Range;
import java.util.List;

/// Two bodies that are apart along the axle and across it: `√(a² + b²)` where both are apart, else the larger.
abstract class Apart extends Check {
    private static final String HABIT = "common practice, no source";

    private final double wanted;

    Apart(String slug, String name, Scope scope, double wanted, Role... about) {
        super(slug, name, "mm", scope, "distance between simple outlines, worst limits; wanted: " + HABIT, about);
        this.wanted = wanted;
    }

    abstract List<Term> along(Subject s);

    abstract List<Term> across(Subject s);

    static Range apart(Range a, Range b) {
        return new Range(
                Clearance.apart(a.low(), b.low()),
                Clearance.apart(a.nominal(), b.nominal()),
                Clearance.apart(a.high(), b.high()));
    }

    void before(Subject s, Working w) {}

    @Override
    public final void measure(Subject s, Reading out) {
        out.set(wanted, apart(Term.sum(along(s)), Term.sum(across(s))));
    }

    @Override
    public final void explain(Subject s, Working w, Reading out) {
        before(s, w);
        var a = w.chain("a", "mm", "apart along the axle", along(s));
        var b = w.chain("b", "mm", "apart across it", across(s));
        var gap = apart(a, b);
        w.line("g", written(a.nominal(), b.nominal(), ""), gap.nominal(), "mm", "distance");
        if (w.has("a_min") || w.has("b_min")) {
            String am = w.has("a_min") ? "a_min" : "a";
            String bm = w.has("b_min") ? "b_min" : "b";
            w.line(
                    "g_min",
                    a.low() > 0 && b.low() > 0 ? "√(" + am + "^2 + " + bm + "^2)" : "max(" + am + ", " + bm + ")",
                    gap.low(),
                    "mm",
                    "at worst limits");
        }
        out.set(w.given("g_wanted", "required clearance", wanted, "mm", HABIT), gap);
    }

    private static String written(double a, double b, String end) {
        return a > 0 && b > 0 ? "√(a" + end + "^2 + b" + end + "^2)" : "max(a" + end + ", b" + end + ")";
    }
}
