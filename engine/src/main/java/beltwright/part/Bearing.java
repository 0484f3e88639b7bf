package beltwright.part;

import beltwright.quantity.Dimension;

/// A deep groove ball bearing.
public record Bearing(
        Label label,

        @Field(value = "bore", min = 3, max = 30, within = "outsideMm")
        Dimension boreMm,

        @Field(value = "outside diameter", min = 8, max = 60)
        Dimension outsideMm,

        @Field(value = "width of the rings", min = 2, max = 20)
        Dimension widthMm,

        @Field(value = "dynamic load rating C, radial", min = 100, max = 100000, group = Field.Group.STRENGTH)
        Dimension ratedN,

        @Field(value = "static load rating C0, radial", min = 50, max = 100000, group = Field.Group.STRENGTH)
        Dimension staticN)
        implements Part {}
