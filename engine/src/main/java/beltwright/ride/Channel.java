package beltwright.ride;

/// What a ride records over time: name, symbol, unit; the order here is the order of every table.
public enum Channel {
    TIME("time", "t", "s", 2),
    DISTANCE("distance", "x", "m", 1),
    ELEVATION("elevation", "h", "m", 2),
    GRADE("grade", "s", "%", 2),
    SPEED("speed", "v", "km/h", 2),
    WISH("wish speed", "v_w", "km/h", 2),
    MOTOR_CURRENT("motor current, direct", "I", "A", 2),
    PHASE_CURRENT("phase current, as the controller states it", "I_c", "A", 2),
    BATTERY_CURRENT("battery current", "I_p", "A", 2),
    VOLTAGE("voltage", "U", "V", 2),
    CHARGE("state of charge", "q", "%", 2),
    WINDING("winding temperature", "T_w", "°C", 1),
    CASE("case temperature", "T_c", "°C", 1),
    EFFECTIVE_TENSION("effective tension", "Te", "N", 1),
    TIGHT_SIDE("tight side", "T1", "N", 1),
    SLACK_SIDE("slack side", "T2", "N", 1),
    GOVERNS("what governs", "", "", 0);

    private final String words;
    private final String symbol;
    private final String unit;
    private final int decimals;

    Channel(String words, String symbol, String unit, int decimals) {
        this.words = words;
        this.symbol = symbol;
        this.unit = unit;
        this.decimals = decimals;
    }

    public String symbol() {
        return symbol;
    }

    public String unit() {
        return unit;
    }

    public int decimals() {
        return decimals;
    }

    @Override
    public String toString() {
        return words;
    }
}
