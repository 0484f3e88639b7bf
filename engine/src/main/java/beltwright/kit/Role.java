package beltwright.kit;

import beltwright.part.BatteryPack;
import beltwright.part.Bearing;
import beltwright.part.Belt;
import beltwright.part.Consumable;
import beltwright.part.Controller;
import beltwright.part.Cover;
import beltwright.part.Deck;
import beltwright.part.DowelPin;
import beltwright.part.DrivePulley;
import beltwright.part.Hanger;
import beltwright.part.Idler;
import beltwright.part.Motor;
import beltwright.part.Mount;
import beltwright.part.Nut;
import beltwright.part.Part;
import beltwright.part.Riser;
import beltwright.part.Screw;
import beltwright.part.Sleeve;
import beltwright.part.Washer;
import beltwright.part.Wheel;
import beltwright.part.WheelPulley;
import java.util.Arrays;
import java.util.Optional;

/// What a seat is for, which kind of part can fill it, and whether there is one per side or one per kit.
public enum Role {
    HANGER("hanger", Hanger.class, Extent.KIT),
    BATTERY_PACK("battery pack", BatteryPack.class, Extent.KIT),
    CONTROLLER("controller", Controller.class, Extent.KIT),
    THREADLOCKER("threadlocker", Consumable.class, Extent.KIT),
    DECK("deck", Deck.class, Extent.KIT),
    RISER("riser", Riser.class, Extent.KIT),
    DECK_SCREWS("deck screws", Screw.class, Extent.KIT),
    DECK_NUTS("deck nuts", Nut.class, Extent.KIT),
    MOUNT("mount", Mount.class, Extent.DRIVE),
    CLAMP_SCREWS("clamp screws", Screw.class, Extent.FASTENER),
    FLANGE_SCREWS("flange screws", Screw.class, Extent.FASTENER),
    DOWEL_PINS("dowel pins", DowelPin.class, Extent.FASTENER),
    MOTOR("motor", Motor.class, Extent.DRIVE),
    MOTOR_SCREWS("motor screws", Screw.class, Extent.FASTENER),
    MOTOR_WASHERS("motor washers", Washer.class, Extent.FASTENER),
    DRIVE_PULLEY("drive pulley", DrivePulley.class, Extent.DRIVE),
    SET_SCREWS("set screws", Screw.class, Extent.FASTENER),
    HUB_SCREWS("hub screws", Screw.class, Extent.FASTENER),
    BELT("belt", Belt.class, Extent.DRIVE),
    WHEEL_PULLEY("wheel pulley", WheelPulley.class, Extent.DRIVE),
    PULLEY_SCREWS("pulley screws", Screw.class, Extent.FASTENER),
    IDLER("idler", Idler.class, Extent.DRIVE),
    IDLER_SCREW("idler screw", Screw.class, Extent.FASTENER),
    COVER("cover", Cover.class, Extent.DRIVE),
    COVER_SCREWS("cover screws", Screw.class, Extent.FASTENER),
    WHEEL("wheel", Wheel.class, Extent.WHEEL),
    INNER_BEARING("inner bearing", Bearing.class, Extent.WHEEL),
    OUTER_BEARING("outer bearing", Bearing.class, Extent.WHEEL),
    CORE_SPACER("core spacer", Sleeve.class, Extent.WHEEL),
    INNER_RING("inner speed ring", Sleeve.class, Extent.WHEEL),
    OUTER_RING("outer speed ring", Sleeve.class, Extent.WHEEL),
    AXLE_SPACER("axle spacer", Sleeve.class, Extent.WHEEL),
    AXLE_WASHER("axle washer", Washer.class, Extent.FASTENER),
    AXLE_NUT("axle nut", Nut.class, Extent.FASTENER);

    /// How often a role occurs: once in the kit, once per driven side, once per wheel, or as hardware of a joint.
    public enum Extent {
        KIT,
        DRIVE,
        WHEEL,
        FASTENER
    }

    private final String words;
    private final Class<? extends Part> type;
    private final Extent extent;

    Role(String words, Class<? extends Part> type, Extent extent) {
        this.words = words;
        this.type = type;
        this.extent = extent;
    }

    public Class<? extends Part> type() {
        return type;
    }

    public Extent extent() {
        return extent;
    }

    /// {@return whether it holds other parts together}
    public boolean fastener() {
        return extent == Extent.FASTENER || this == DECK_SCREWS || this == DECK_NUTS;
    }

    /// {@return whether a kit is whole without it}
    public boolean optional() {
        return switch (this) {
            case DECK, RISER, DECK_SCREWS, DECK_NUTS, DOWEL_PINS, IDLER, COVER, AXLE_SPACER, AXLE_WASHER -> true;
            default -> false;
        };
    }

    public static Optional<Role> named(String words) {
        return Arrays.stream(values()).filter(r -> r.words.equals(words)).findFirst();
    }

    public static String allowed() {
        return "'left' or 'right' and one of " + words(false) + "; or, without a side, one of " + words(true);
    }

    private static String words(boolean kit) {
        return String.join(
                ", ",
                Arrays.stream(values())
                        .filter(r -> (r.extent == Extent.KIT) == kit)
                        .map(Role::toString)
                        .toList());
    }

    @Override
    public String toString() {
        return words;
    }
}
