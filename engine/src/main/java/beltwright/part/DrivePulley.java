package beltwright.part;

import beltwright.quantity.Dimension;

/// The small pulley on the motor shaft. Its hub faces the motor or the wheel and carries the set screws, or is split
/// and clamped on the shaft by screws across the slit.
public record DrivePulley(
        Label label,
        ToothedRim rim,
        ShaftForm boreForm,
        @Field(value = "bore diameter", min = 3, max = 30) Dimension boreDiameterMm,

        @Field(value = "across the flat of a D bore", min = 2, max = 30, when = "boreForm=D|two flats")
        Dimension boreFlatMm,

        @Field(value = "width of the keyway", min = 1, max = 8, when = "boreForm=keyed")
        Dimension keywayWidthMm,

        @Field(
                value = "floor of the keyway to the opposite side of the bore",
                min = 3,
                max = 40,
                when = "boreForm=keyed")
        Dimension overKeywayMm,

        @Field(value = "plain hub beside the rim, along the shaft", max = 40)
        Dimension hubLengthMm,

        @Field(value = "diameter of the hub that the set screws pass through", min = 5, max = 60)
        Dimension hubDiameterMm,

        HubSide hubSide,
        @Field(value = "number of set screw holes", max = 4) int setScrews,

        @Field(value = "thread of the set screws", when = "setScrews>0")
        Thread setScrewThread,

        @Field(value = "angle between two set screws", min = 30, max = 180, when = "setScrews>1")
        Dimension setScrewsApartDeg,

        @Field(value = "material of the teeth", optional = true)
        String material,

        @Field(value = "number of screws that clamp a split hub on the shaft, 0 without", max = 4, optional = true)
        int hubScrews,

        @Field(value = "thread of the hub screws", when = "hubScrews>0")
        Thread hubScrewThread,

        @Field(value = "axis of the bore to a hub screw", min = 3, max = 40, when = "hubScrews>0")
        Dimension hubScrewArmMm,

        @Field(
                value = "hub that a hub screw passes through plain, to the far side of the slit",
                min = 1,
                max = 40,
                when = "hubScrews>0")
        Dimension hubScrewGripMm,

        @Field(value = "depth of the thread of a hub screw", min = 2, max = 40, when = "hubScrews>0")
        Dimension hubThreadDepthMm)
        implements Part {
    /// The side of the rim that the hub stands on.
    public enum HubSide {
        MOTOR("motor"),
        WHEEL("wheel");

        private final String words;

        HubSide(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
