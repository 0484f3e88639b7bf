package beltwright.part;

import beltwright.quantity.Dimension;

/// A riser between deck and baseplate. A wedge is measured in the middle of its holes.
public record Riser(
        Label label,

        @Field(value = "thickness in the middle of its holes", min = 0.5, max = 60)
        Dimension thicknessMm,

        @Field(value = "wedge: added to the steering axis; negative takes away", min = -25, max = 25)
        Dimension wedgeDeg,

        @Field(value = "baseplate holes, along the board", min = 20, max = 120)
        Dimension holesLengthMm,

        @Field(value = "baseplate holes, across the board", min = 20, max = 120)
        Dimension holesWidthMm,

        @Field(value = "width of a hole", min = 3, max = 15) Dimension holeMm)
        implements Part {}
