package beltwright.part;

import java.util.Arrays;
import java.util.Optional;

/// The kinds of part by the words that a part file names them with.
public enum Kinds {
    MOTOR("motor", Motor.class),
    DRIVE_PULLEY("drive pulley", DrivePulley.class),
    WHEEL_PULLEY("wheel pulley", WheelPulley.class),
    BELT("belt", Belt.class),
    WHEEL("wheel", Wheel.class),
    HANGER("hanger", Hanger.class),
    MOUNT("mount", Mount.class),
    BEARING("bearing", Bearing.class),
    SLEEVE("sleeve", Sleeve.class),
    SCREW("screw", Screw.class),
    NUT("nut", Nut.class),
    WASHER("washer", Washer.class),
    DOWEL_PIN("dowel pin", DowelPin.class),
    BATTERY_PACK("battery pack", BatteryPack.class),
    CONTROLLER("controller", Controller.class),
    CONSUMABLE("consumable", Consumable.class),
    COVER("cover", Cover.class),
    DECK("deck", Deck.class),
    RISER("riser", Riser.class),
    IDLER("idler", Idler.class);

    private final String words;
    private final Class<? extends Part> type;

    Kinds(String words, Class<? extends Part> type) {
        this.words = words;
        this.type = type;
    }

    public String words() {
        return words;
    }

    public Class<? extends Part> type() {
        return type;
    }

    public static Kinds of(Class<? extends Part> type) {
        return Arrays.stream(values()).filter(k -> k.type == type).findFirst().orElseThrow();
    }

    public static Optional<Kinds> named(String words) {
        return Arrays.stream(values()).filter(k -> k.words.equals(words)).findFirst();
    }

    public static String allowed() {
        return String.join(", ", Arrays.stream(values()).map(Kinds::words).toList());
    }
}
