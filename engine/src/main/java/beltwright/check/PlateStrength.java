package beltwright.check;

import beltwright.part.Material.Property;

/// What the plate of a mount stands by its material, warm as it gets, at once and for months.
final class PlateStrength {
    private PlateStrength() {}

    private static String id(Subject s) {
        return s.drive().mount().material();
    }

    static boolean plastic(Subject s) {
        return Made.plastic(s, id(s));
    }

    /// {@return share of its strength that is left warm (1)}
    static double warmShare(Subject s, At at) {
        return Made.warmShare(s, id(s), at.most(Assumed.warm(s.kit())));
    }

    /// {@return R_y, stress at which it yields under a sudden load (MPa)}
    static double yieldMpa(Subject s, At at) {
        return Made.of(s, id(s), Property.YIELD) * warmShare(s, at);
    }

    /// {@return R_long, stress that it stands for months (MPa)}
    static double lastingMpa(Subject s, At at) {
        return Made.lastingShare(s, id(s)) * yieldMpa(s, at);
    }

    static double of(Subject s, Property property) {
        return Made.of(s, id(s), property);
    }

    static void quote(Working w, String symbol, Subject s, Property property) {
        Made.given(w, symbol, s, s.drive().mount().id() + ".material", id(s), property);
    }

    /// Writes the lines up to R_y.
    static void writeYield(Subject s, Working w) {
        quote(w, "R_e", s, Property.YIELD);
        writeWarm(s, w);
        w.line("R_y", "R_e·k_hot", yieldMpa(s, At.NOMINAL), "MPa", "yields");
    }

    /// Writes the lines up to R_long.
    static void writeLasting(Subject s, Working w) {
        quote(w, "R_e", s, Property.YIELD);
        Made.writeLasting(w, s, s.drive().mount().id() + ".material", id(s), warmC(s));
        w.line("R_long", "R_e·k_hot·k_creep", lastingMpa(s, At.NOMINAL), "MPa", "under a belt that always pulls");
    }

    /// Writes k_hot.
    static void writeWarm(Subject s, Working w) {
        Made.writeWarm(w, s, s.drive().mount().id() + ".material", id(s), warmC(s));
    }

    private static double warmC(Subject s) {
        return Assumed.warm(s.kit()).nominal();
    }
}
