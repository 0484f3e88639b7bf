package beltwright.quantity;

import java.util.Arrays;

/// The unit of a dimension, read off the end of its field name: `plateThicknessMm` is in mm.
public enum Unit {
    M_PER_S2("Mps2", "m/s²"),
    M_PER_S("Mps", "m/s"),
    KM_PER_H("Kmh", "km/h"),
    KELVIN_PER_WATT("KPerW", "K/W"),
    JOULE_PER_KELVIN("JPerK", "J/K"),
    KG_M2("KgM2", "kg·m²"),
    KM("Km", "km"),
    AMPERE_HOUR("Ah", "Ah"),
    SECOND("S", "s"),
    CELSIUS("C", "°C"),
    RPM_PER_V("RpmPerV", "rpm/V"),
    G_PER_M("GPerM", "g/m"),
    RPM("Rpm", "rpm"),
    MM("Mm", "mm"),
    DEGREE("Deg", "°"),
    KG("Kg", "kg"),
    GRAM("G", "g"),
    AMPERE("A", "A"),
    VOLT("V", "V"),
    OHM("Ohm", "Ω"),
    PERCENT("Percent", "%"),
    KG_PER_M3("KgM3", "kg/m³"),
    M2("M2", "m²"),
    MPA("Mpa", "MPa"),
    NM("Nm", "N·m"),
    NEWTON("N", "N"),
    NONE("", "");

    private final String suffix;
    private final String symbol;

    Unit(String suffix, String symbol) {
        this.suffix = suffix;
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }

    /// {@return the unit whose suffix ends the field name}; names without one are plain numbers
    public static Unit of(String fieldName) {
        return Arrays.stream(values())
                .filter(u -> !u.suffix.isEmpty() && fieldName.endsWith(u.suffix))
                .findFirst()
                .orElse(NONE);
    }

    /// {@return the field name without its unit: `plateThickness`}
    public static String without(String fieldName) {
        return fieldName.substring(0, fieldName.length() - of(fieldName).suffix.length());
    }
}
