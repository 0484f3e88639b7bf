package beltwright.part;

import beltwright.quantity.Dimension;

/// A wheel with a bearing seat on each side of its core. Axially it is measured from the middle of the core spacing.
public record Wheel(
        Label label,

        @Field(value = "diameter when new", min = 50, max = 250)
        Dimension diameterMm,

        @Field(value = "diameter at which it is replaced", min = 40, max = 250)
        Dimension wornDiameterMm,

        @Field(value = "width over the tread", min = 20, max = 120)
        Dimension widthMm,

        @Field(value = "middle of the tread, outward from the middle of the core spacing", min = -40, max = 40)
        Dimension coreOffsetMm,

        @Field(value = "core face that the pulley seats on, inward from the tread edge", min = -10, max = 40)
        Dimension coreFaceInsetMm,

        @Field(value = "bearing seat diameter", min = 10, max = 40)
        Dimension bearingSeatMm,

        @Field(value = "bearing seat depth", min = 3, max = 20)
        Dimension bearingSeatDepthMm,

        @Field(value = "between the shoulders that the two bearings rest on", min = 3, max = 60)
        Dimension coreSpacingMm,

        @Field(value = "number of openings in the core", max = 24)
        int openings,

        @Field(value = "width of an opening along its circle", min = 1, max = 40, when = "openings>0")
        Dimension openingWidthMm,

        @Field(value = "circle through the middle of the openings", min = 10, max = 120, when = "openings>0")
        Dimension openingCircleMm,

        @Field(value = "usable depth of an opening", min = 1, max = 80, when = "openings>0")
        Dimension openingDepthMm,

        @Field(value = "core thickness that the pulley screws pass through", max = 80)
        Dimension screwGripMm,

        @Field(value = "number of holes for those screws", max = 24)
        int screwHoles,

        @Field(value = "circle through those holes", min = 10, max = 120, when = "screwHoles>0")
        Dimension screwCircleMm,

        @Field(value = "width of one of those holes", min = 2, max = 20, when = "screwHoles>0")
        Dimension screwHoleMm,

        @Field(value = "recess that a pulley is pressed into, diameter; unknown without one", min = 10, max = 120)
        Dimension recessDiameterMm,

        @Field(value = "depth of that recess", min = 1, max = 60)
        Dimension recessDepthMm,

        @Field(value = "outside of the core, under the tread", min = 20, max = 200, when = "recessDiameterMm>0")
        Dimension coreDiameterMm,

        @Field(value = "material of the core", optional = true)
        String coreMaterial)
        implements Part {}
