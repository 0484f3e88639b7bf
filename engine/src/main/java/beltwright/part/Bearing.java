package beltwright.part;

import beltwright.quantity.Dimension;

/// A deep groove ball bearing.
public record Bearing(
        Label label,
        @Field(value = "bore", min = 3, max = 30) Dimension boreMm,

        @Field(value = "outside diameter", min = 8, max = 60)
        Dimension outsideMm,

        @Field(value = "width of the rings", min = 2, max = 20)
        Dimension widthMm)
        implements Part {}
