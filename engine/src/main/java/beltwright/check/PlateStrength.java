package beltwright.check;

import beltwright.part.Material;
import beltwright.part.Material.Hatch;
import beltwright.part.Material.Property;
import beltwright.strength.Plate;

/// What the plate of a mount stands: its material, and of a plastic what months of load and warmth leave.
///
/// - Neglects: warmth in metal, which light metal begins to feel above 100 °C.
final class PlateStrength {
    private PlateStrength() {}

    static Material material(Subject s) {
        return s.kit().reference().material(s.drive().mount().material());
    }

    static boolean plastic(Material m) {
        return m.hatch() == Hatch.PLASTIC;
    }

    /// {@return share of its strength that is left warm (1); half of it at the temperature that its maker prints}
    static double warmShare(Subject s, At at) {
        var m = material(s);
        if (!plastic(m)) {
            return 1;
        }
        double soft = 2 * m.of(Property.HALF_AT).number() - Plate.ROOM_C;
        double warm = at.most(Assumed.warm(s.kit()));
        return Double.isNaN(soft + warm) ? Double.NaN : Plate.heatShare(warm, soft);
    }

    /// {@return R_y, stress at which it yields under a sudden load (MPa)}
    static double yieldMpa(Subject s, At at) {
        return material(s).of(Property.YIELD).number() * warmShare(s, at);
    }

    /// {@return stress that it stands for months (MPa)}
    static double lastingMpa(Subject s, At at) {
        return plastic(material(s)) ? Plate.CREEP_SHARE * yieldMpa(s, at) : yieldMpa(s, at);
    }

    /// Quotes a property as `symbol`.
    static void quote(Working w, String symbol, Material m, Property property) {
        var value = m.of(property);
        w.given(symbol, property + ", " + m.name(), value.number(), property.unit(), value.source());
        if (Double.isNaN(value.number())) {
            w.needs(property.field() + " of material " + m.id());
        }
    }

    /// Writes the lines up to R_y.
    static void writeYield(Subject s, Working w) {
        quote(w, "R_e", material(s), Property.YIELD);
        writeWarm(s, w);
        if (plastic(material(s))) {
            w.line("R_y", "R_e·k_warm", yieldMpa(s, At.NOMINAL), "MPa", "yields");
        } else {
            w.line("R_y", "R_e", yieldMpa(s, At.NOMINAL), "MPa", "yields");
        }
    }

    /// Writes k_warm of a plastic.
    static void writeWarm(Subject s, Working w) {
        if (plastic(material(s))) {
            quote(w, "t_half", material(s), Property.HALF_AT);
            w.given("t_mount", Assumed.warm(s.kit()));
            w.line(
                    "k_warm",
                    "max(0, min(1, (2·t_half − 23 − t_mount)/(2·t_half − 46)))",
                    warmShare(s, At.NOMINAL),
                    "",
                    "share left warm, falling straight from 23 °C; common practice, no source");
        }
    }
}
