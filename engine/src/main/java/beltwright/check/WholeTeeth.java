package beltwright.check;

import beltwright.kit.Role;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;

/// A count of teeth with a wanted number, and a least one below which it fails; between them it is marginal.
abstract class WholeTeeth extends Check {
    private final double wanted;
    private final double least;

    WholeTeeth(String slug, String name, double wanted, double least, String source, Role... about) {
        super(slug, name, "teeth", Scope.DRIVE, source, about);
        this.wanted = wanted;
        this.least = least;
    }

    abstract Range teeth(Subject s);

    /// Writes the lines that lead to the count.
    abstract void write(Subject s, Working w);

    @Override
    public final void measure(Subject s, Reading out) {
        out.set(wanted, teeth(s));
    }

    @Override
    public final void explain(Subject s, Working w, Reading out) {
        write(s, w);
        out.set(w.given("z_wanted", "teeth wanted", wanted, "teeth", source()), teeth(s));
    }

    @Override
    public final Verdict verdict(Subject s, Reading r) {
        var strict = r.verdict();
        return strict == Verdict.FAILS && r.capacity() >= least ? Verdict.MARGINAL : strict;
    }

    String ofWanted(Reading r) {
        return Numbers.fixed(r.demand(), 0) + " wanted";
    }
}
