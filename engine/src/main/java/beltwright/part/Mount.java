package beltwright.part;

import beltwright.quantity.Dimension;

/// A motor mount: a plate with slots for the motor, clamped around the hanger, screwed to its end face by a flange, or
/// made in one piece with it. A clamp stands on the inner side of the plate. Dowel pins or a stop may keep it from
/// turning on the hanger.
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

        Fixing fixing,

        @Field(value = "outline of the clamp opening", when = "fixing=clamp")
        Hanger.Section clampSection,

        @Field(value = "clamp opening, height", min = 8, max = 60, when = "fixing=clamp")
        Dimension clampHeightMm,

        @Field(value = "clamp opening, depth", min = 8, max = 60, when = "clampSection=rectangular")
        Dimension clampDepthMm,

        @Field(value = "clamp length along the hanger, behind the plate", min = 3, max = 80, when = "fixing=clamp")
        Dimension clampLengthMm,

        @Field(value = "number of clamp screws", max = 8, when = "fixing=clamp")
        int clampScrews,

        @Field(value = "thread of the clamp screws", when = "fixing=clamp")
        Thread clampThread,

        @Field(value = "clamp thickness that the screw passes through plain", min = 1, max = 60, when = "fixing=clamp")
        Dimension clampGripMm,

        @Field(value = "depth of the clamp thread", min = 2, max = 60, when = "fixing=clamp")
        Dimension clampThreadDepthMm,

        @Field(value = "number of holes in the flange", min = 1, max = 12, when = "fixing=flange")
        int flangeHoles,

        @Field(value = "circle through the flange holes", min = 10, max = 100, when = "fixing=flange")
        Dimension flangeCircleMm,

        @Field(value = "width of a flange hole", min = 2, max = 15, when = "fixing=flange")
        Dimension flangeHoleMm,

        @Field(value = "flange thickness that the screw passes through", min = 1, max = 40, when = "fixing=flange")
        Dimension flangeGripMm,

        @Field(
                value = "mount angle of the first clocking position",
                min = -180,
                max = 180,
                when = "fixing=flange|one piece")
        Dimension firstPositionDeg,

        @Field(value = "id of the hanger that it is made in one piece with", when = "fixing=one piece")
        String madeWith,

        @Field(
                value = "circle around the motor axis through the threads for a cover; unknown without",
                min = 10,
                max = 200,
                group = Field.Group.COVER)
        Dimension coverCircleMm,

        @Field(value = "number of those threads", max = 12, when = "coverCircleMm>0", group = Field.Group.COVER)
        int coverHoles,

        @Field(value = "thread of those holes", when = "coverHoles>0", group = Field.Group.COVER)
        Thread coverThread,

        @Field(value = "depth of those holes", min = 2, max = 40, when = "coverHoles>0", group = Field.Group.COVER)
        Dimension coverThreadDepthMm,

        @Field(value = "material of the plate", optional = true)
        String material,

        @Field(
                value = "number of dowel pins between mount and hanger, 0 without",
                max = 8,
                when = "fixing=clamp|flange",
                group = Field.Group.STRENGTH,
                optional = true)
        int dowels,

        @Field(
                value = "diameter of a dowel hole; of the pin itself where no pins fill the seat",
                min = 1.5,
                max = 12,
                when = "dowels>0",
                group = Field.Group.STRENGTH)
        Dimension dowelMm,

        @Field(
                value = "axle axis to the middle of a dowel pin",
                min = 3,
                max = 60,
                when = "dowels>0",
                group = Field.Group.STRENGTH)
        Dimension dowelArmMm,

        @Field(
                value = "depth of a dowel hole in the mount",
                min = 1,
                max = 60,
                when = "dowels>0",
                group = Field.Group.STRENGTH)
        Dimension dowelHoleDepthMm,

        @Field(
                value = "length of a dowel pin in the part that holds less of it; where no pins fill the seat",
                min = 1,
                max = 60,
                when = "dowels>0",
                group = Field.Group.STRENGTH)
        Dimension dowelDepthMm,

        @Field(
                value = "material of the dowel pins; where no pins fill the seat",
                when = "dowels>0",
                group = Field.Group.STRENGTH,
                optional = true)
        String dowelMaterial,

        @Field(
                value = "axle axis to the middle of a face that stops the mount from turning; unknown without",
                min = 3,
                max = 100,
                when = "fixing=clamp|flange",
                group = Field.Group.STRENGTH)
        Dimension stopArmMm,

        @Field(
                value = "width of that face along the axle; of two faces, the narrower",
                min = 1,
                max = 80,
                when = "stopArmMm>0",
                group = Field.Group.STRENGTH)
        Dimension stopWidthMm,

        @Field(
                value = "height of that face, away from the axle; of two faces, the lower",
                min = 1,
                max = 60,
                when = "stopArmMm>0",
                group = Field.Group.STRENGTH)
        Dimension stopHeightMm)
        implements Part {
    /// How the mount is held to the hanger.
    public enum Fixing {
        CLAMP("clamp"),
        FLANGE("flange"),
        ONE_PIECE("one piece");

        private final String words;

        Fixing(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
