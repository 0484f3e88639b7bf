package beltwright.part;

import beltwright.quantity.Dimension;

/// The large pulley, bolted to the wheel core and driven by lugs that enter the core openings. Its seat on the core is
/// the axial datum.
public record WheelPulley(
        Label label,
        ToothedRim rim,

        @Field(value = "seat on the core to the near side of the rim", max = 40)
        Dimension rimStandoffMm,

        @Field(value = "bore that clears the axle and its speed ring", min = 5, max = 60)
        Dimension boreDiameterMm,

        @Field(value = "number of drive lugs", max = 12) int lugs,

        @Field(value = "width of a lug along its circle", min = 1, max = 40)
        Dimension lugWidthMm,

        @Field(value = "circle through the middle of the lugs", min = 10, max = 100)
        Dimension lugCircleMm,

        @Field(value = "how far a lug enters the core", min = 1, max = 60)
        Dimension lugLengthMm,

        @Field(value = "number of screws that hold it to the core", max = 12)
        int screwHoles,

        Thread screwThread,

        @Field(value = "depth of the threaded holes", min = 2, max = 40)
        Dimension threadDepthMm,

        String material)
        implements Part {}
