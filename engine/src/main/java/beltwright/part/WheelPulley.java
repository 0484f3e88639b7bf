package beltwright.part;

import beltwright.quantity.Dimension;

/// The large pulley on the wheel: driven by lugs that enter the core openings, screwed to the core, or pressed into it.
/// Its seat on the core is the axial datum.
public record WheelPulley(
        Label label,
        ToothedRim rim,

        @Field(value = "seat on the core to the near side of the rim", max = 40)
        Dimension rimStandoffMm,

        @Field(value = "bore that clears the axle and its speed ring", min = 5, max = 60)
        Dimension boreDiameterMm,

        Holding holding,

        @Field(value = "number of drive lugs", max = 12, when = "holding=lugs")
        int lugs,

        @Field(value = "width of a lug along its circle", min = 1, max = 40, when = "holding=lugs")
        Dimension lugWidthMm,

        @Field(value = "circle through the middle of the lugs", min = 10, max = 100, when = "holding=lugs")
        Dimension lugCircleMm,

        @Field(value = "how far a lug enters the core", min = 1, max = 60, when = "holding=lugs")
        Dimension lugLengthMm,

        @Field(
                value = "spigot that is pressed into the core, diameter",
                min = 10,
                max = 120,
                when = "holding=press fit")
        Dimension spigotDiameterMm,

        @Field(value = "spigot that is pressed into the core, length", min = 1, max = 60, when = "holding=press fit")
        Dimension spigotLengthMm,

        @Field(value = "number of screws that hold it to the core", max = 12)
        int screwHoles,

        @Field(value = "thread of those screws", when = "screwHoles>0")
        Thread screwThread,

        @Field(value = "depth of the threaded holes", min = 2, max = 40, when = "screwHoles>0")
        Dimension threadDepthMm,

        @Field(value = "circle through the threaded holes", min = 10, max = 120, when = "screwHoles>0")
        Dimension screwCircleMm,

        @Field(value = "material of the teeth", optional = true)
        String material)
        implements Part {
    /// How the wheel turns with it.
    public enum Holding {
        LUGS("lugs"),
        SCREWS("screws"),
        PRESS_FIT("press fit");

        private final String words;

        Holding(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
