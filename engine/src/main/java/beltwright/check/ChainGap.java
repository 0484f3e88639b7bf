package beltwright.check;

import beltwright.kit.Role;
import beltwright.quantity.Range;
import java.util.List;

/// A gap that is a chain of dimensions, held against a required clearance; worst case over all limits.
abstract class ChainGap extends Check {
    private final double wanted;
    private final String habit;

    /// @param wanted required clearance (mm)
    /// @param habit where the required clearance comes from
    ChainGap(String slug, String name, Scope scope, double wanted, String habit, Role... about) {
        super(slug, name, "mm", scope, "worst case over the chain; wanted: " + habit, about);
        this.wanted = wanted;
        this.habit = habit;
    }

    /// {@return the chain, outermost member first}
    abstract List<Term> terms(Subject s);

    double wanted(Subject s) {
        return wanted;
    }

    /// {@return the required clearance with its limits, where it has some}
    Range demand(Subject s) {
        return Range.exact(wanted(s));
    }

    Range gap(Subject s) {
        return Term.sum(terms(s));
    }

    @Override
    public final void measure(Subject s, Reading out) {
        out.set(demand(s), gap(s));
    }

    @Override
    public final void explain(Subject s, Working w, Reading out) {
        before(s, w);
        var gap = w.chain("g", "mm", "chain of dimensions", terms(s));
        out.set(w.given("g_wanted", "required clearance", demand(s), habit), gap);
    }

    /// Writes the lines that lead up to the chain.
    void before(Subject s, Working w) {}
}
