package beltwright.check;

import beltwright.kit.Role;

/// A question that is answered by comparing or counting: one is wanted, one or none is there.
abstract class YesNo extends Check {
    YesNo(String slug, String name, Scope scope, String source, Role... about) {
        super(slug, name, "", scope, source, about);
    }

    abstract boolean met(Subject s);

    /// {@return what is compared, as the working prints it}
    abstract String asked(Subject s);

    /// Writes the counts that are compared.
    void before(Subject s, Working w) {}

    @Override
    public final void measure(Subject s, Reading out) {
        out.answer(met(s));
    }

    @Override
    public final void explain(Subject s, Working w, Reading out) {
        before(s, w);
        out.answer(w.given("met", asked(s) + " (1 yes, 0 no)", met(s) ? 1 : 0, "", "compared") == 1);
    }
}
