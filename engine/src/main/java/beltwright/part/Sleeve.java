package beltwright.part;

import beltwright.quantity.Dimension;

/// A plain sleeve on the axle: a core spacer between the two bearings of a wheel, or the thin speed ring beside one.
public record Sleeve(
        Label label,

        @Field(value = "bore", min = 3, max = 30, within = "outsideMm")
        Dimension boreMm,

        @Field(value = "outside diameter", min = 4, max = 60)
        Dimension outsideMm,

        @Field(value = "length along the axle", min = 0.1, max = 60)
        Dimension lengthMm)
        implements Part {}
