package beltwright.ride;

/// A number that a measured ride can tell, and where it is kept.
public enum Coefficient {
    ROLLING("rolling", "rolling resistance", "%", "task.rollingPercent", false),
    DRAG_AREA("drag", "drag area", "m²", "task.dragAreaM2", false),
    MASS("mass", "mass", "kg", "task.allUpMassKg", false),
    WINDING_TO_CASE("winding", "thermal resistance, winding to can", "K/W", "windingToCaseKPerW", true),
    CASE_TO_AIR("air", "thermal resistance, can to still air", "K/W", "caseToAirKPerW", true);

    private final String key;
    private final String words;
    private final String unit;
    private final String path;
    private final boolean heat;

    Coefficient(String key, String words, String unit, String path, boolean heat) {
        this.key = key;
        this.words = words;
        this.unit = unit;
        this.path = path;
        this.heat = heat;
    }

    /// {@return the word by which it is asked for}
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

    @Override
    public String toString() {
        return words;
    }
}
