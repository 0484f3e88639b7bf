package beltwright.check;

import beltwright.part.Hanger;
import beltwright.part.Material.Hatch;
import beltwright.part.Material.Property;
import beltwright.strength.Plate;

/// What a part is made of, as the reference file knows it.
final class Made {
    private static final double ROOM_C = 23;

    private Made() {}

    /// {@return material of the axle: the hanger's own where no other is named}
    static String axle(Hanger hanger) {
        return hanger.axleMaterial().isBlank() ? hanger.material() : hanger.axleMaterial();
    }

    /// {@return this property; NaN where the material is not named, or nobody knows it}
    static double of(Subject s, String material, Property property) {
        return material.isBlank()
                ? Double.NaN
                : s.kit().reference().material(material).of(property).number();
    }

    /// {@return whether it is steel, for which formulas of fatigue are made}
    static boolean steel(Subject s, String material) {
        return !material.isBlank() && s.kit().reference().material(material).hatch() == Hatch.STEEL;
    }

    /// {@return whether it creeps under a load that stays}
    static boolean plastic(Subject s, String material) {
        return !material.isBlank() && s.kit().reference().material(material).hatch() == Hatch.PLASTIC;
    }

    /// {@return share of its strength (1) that is left at this temperature: half of it at the temperature that the
    /// reference file names, in a straight line from 23 °C; all of it where it is steel}
    static double warmShare(Subject s, String material, double warmC) {
        return steel(s, material) ? 1 : Plate.heatShare(warmC, 2 * of(s, material, Property.HALF_AT) - ROOM_C);
    }

    /// {@return share of its strength (1) that a load may use for months}
    static double lastingShare(Subject s, String material) {
        return plastic(s, material) ? Plate.CREEP_SHARE : 1;
    }

    /// Quotes a property, or says that it is needed.
    ///
    /// @param field where the material is named
    static double given(Working w, String symbol, Subject s, String field, String material, Property property) {
        double number = of(s, material, property);
        if (Double.isNaN(number)) {
            w.needs(material.isBlank() ? field : property + " of " + material);
        }
        return w.given(
                symbol,
                material.isBlank() ? property + ", material not known" : property + " of " + material,
                number,
                property.unit(),
                material.isBlank()
                        ? field
                        : s.kit().reference().material(material).of(property).source());
    }

    /// Writes the lines up to the share of strength k_hot·k_creep that a warm part keeps for months.
    static void writeLasting(Working w, Subject s, String field, String material, double warmC) {
        writeWarm(w, s, field, material, warmC);
        w.given(
                "k_creep",
                plastic(s, material) ? "share that a plastic bears for months" : "metal does not creep here",
                lastingShare(s, material),
                "",
                "common practice, no source");
    }

    /// Writes the lines up to the share of strength k_hot that a warm part keeps.
    static void writeWarm(Working w, Subject s, String field, String material, double warmC) {
        if (steel(s, material)) {
            w.given("k_hot", "share of strength that steel keeps when warm", 1, "", "far below its tempering");
        } else {
            given(w, "t_half", s, field, material, Property.HALF_AT);
            w.given("t_warm", Assumed.warm(s.kit()));
            w.line(
                    "k_hot",
                    "max(0, min(1, 1 − (t_warm − 23)/(2·(t_half − 23))))",
                    warmShare(s, material, warmC),
                    "",
                    "share of strength left when warm, in a straight line from 23 °C, habit");
        }
    }
}
