package beltwright.ride;

/// A number that a measured ride can tell, and where it is kept.
public enum Coefficient {
    ROLLING("rolling", "rolling resistance", "%", "task.rollingPercent", false, 1.5),
    DRAG_AREA("drag", "drag area", "m²", "task.dragAreaM2", false, 0.5),
    MASS("mass", "mass", "kg", "task.allUpMassKg", false, 90),
    WINDING_TO_CASE("winding", "thermal resistance, winding to can", "K/W", "windingToCaseKPerW", true, 0.5),
    CASE_TO_AIR("air", "thermal resistance, can to still air", "K/W", "caseToAirKPerW", true, 3);

    private final String key;
    private final String words;
    private final String unit;
    private final String path;
    private final boolean heat;
    private final double start;

    Coefficient(String key, String words, String unit, String path, boolean heat, double start) {
        this.key = key;
        this.words = words;
        this.unit = unit;
        this.path = path;
        this.heat = heat;
        this.start = start;
    }

    /// {@return one word for it}
    public String key() {
        return key;
    }

    public String unit() {
        return unit;
    }

    /// {@return the field of the kit, or of its motor, that it measures}
    public String path() {
        return path;
    }

    /// {@return whether it is told by temperatures, and kept with the motor; the others are told by speed}
    public boolean heat() {
        return heat;
    }

    /// {@return where the search begins if nobody knows it}
    double start() {
        return start;
    }

    @Override
    public String toString() {
        return words;
    }
}
