package beltwright.part;

import beltwright.quantity.Dimension;

/// A motor mount: a plate with slots for the motor, clamped around the hanger. The clamp stands on the inner side of
/// the plate.
public record Mount(
        Label label,
        @Field(value = "plate thickness", min = 2, max = 25) Dimension plateThicknessMm,

        @Field(value = "shortest centre distance that the slots allow", min = 20, max = 300)
        Dimension slotMinMm,

        @Field(value = "longest centre distance that the slots allow", min = 20, max = 300)
        Dimension slotMaxMm,

        @Field(value = "width of a slot", min = 2, max = 15) Dimension slotWidthMm,

        @Field(value = "pitch circle that the slots follow", min = 10, max = 100)
        Dimension boltCircleMm,

        @Field(value = "number of slots", min = 2, max = 8) int slots,

        @Field(value = "opening for the boss and the shaft", min = 5, max = 80)
        Dimension openingMm,

        @Field(value = "plate outline around the motor axis, radius", min = 10, max = 100)
        Dimension plateRadiusMm,

        Hanger.Section clampSection,

        @Field(value = "clamp opening, height", min = 8, max = 60)
        Dimension clampHeightMm,

        @Field(value = "clamp opening, depth", min = 8, max = 60)
        Dimension clampDepthMm,

        @Field(value = "clamp length along the hanger, behind the plate", min = 3, max = 80)
        Dimension clampLengthMm,

        @Field(value = "number of clamp screws", max = 8) int clampScrews,
        Thread clampThread,

        @Field(value = "clamp thickness that the screw passes through plain", min = 1, max = 60)
        Dimension clampGripMm,

        @Field(value = "depth of the clamp thread", min = 2, max = 60)
        Dimension clampThreadDepthMm,

        String material)
        implements Part {}
