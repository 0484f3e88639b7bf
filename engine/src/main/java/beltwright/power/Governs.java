package beltwright.power;

/// What decides, at a moment, how hard the motors push or brake.
public enum Governs {
    WISH("the rider's wish"),
    PHASE_CURRENT("phase current, driving"),
    BATTERY_CURRENT("battery current"),
    PACK_CURRENT("what the pack may give"),
    LOW_VOLTAGE("low voltage"),
    SPEED_VOLTAGE("voltage against back-EMF"),
    ELECTRICAL_SPEED("electrical speed"),
    HEAT("winding temperature"),
    GRIP("grip"),
    BRAKE_CURRENT("phase current, braking"),
    CHARGE_CURRENT("charge current"),
    PACK_FULL("what the pack takes at this charge"),
    OVER_RUN("over-run: back-EMF above the pack"),
    NONE("no motor pushes or brakes");

    private final String words;

    Governs(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
