package beltwright.part;

/// One thing with dimensions, a revision and a source for every number.
public sealed interface Part
        permits Motor,
                DrivePulley,
                WheelPulley,
                Belt,
                Wheel,
                Hanger,
                Mount,
                Bearing,
                Sleeve,
                Screw,
                Nut,
                Washer,
                DowelPin,
                BatteryPack,
                Controller,
                Consumable,
                Cover,
                Deck,
                Riser,
                Idler {
    Label label();

    default String id() {
        return label().id();
    }

    default String name() {
        return label().name();
    }

    /// {@return whether this only stands for a seat that nothing fills}
    default boolean blank() {
        return id().isEmpty();
    }

    /// {@return the kind of this part in trade words}
    default String kind() {
        return Kinds.of(getClass()).words();
    }
}
