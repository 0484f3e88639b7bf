package beltwright.workshop.table;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/// The unit of a column of lengths, for cells that name none.
public enum LengthUnit {
    MM("mm"),
    CM("cm"),
    INCH("in");

    private final String symbol;

    LengthUnit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }

    public static Optional<LengthUnit> named(String symbol) {
        return Arrays.stream(values()).filter(u -> u.symbol.equals(symbol)).findFirst();
    }

    static String allowed() {
        return Arrays.stream(values()).map(LengthUnit::symbol).collect(Collectors.joining(", "));
    }

    /// {@return a length without a unit as one with this unit, in millimetres as it is}
    String with(String bare) {
        return this == MM ? bare : bare + " " + symbol;
    }
}
