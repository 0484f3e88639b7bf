package beltwright.part;

import beltwright.quantity.Dimension;

/// A plain washer.
public record Washer(
        Label label,

        @Field(value = "hole", min = 2, max = 20, within = "outsideMm")
        Dimension holeMm,

        @Field(value = "outside diameter", min = 3, max = 40)
        Dimension outsideMm,

        @Field(value = "thickness", min = 0.1, max = 5) Dimension thicknessMm)
        implements Part {}
