package beltwright.part;

import beltwright.quantity.Dimension;

/// The deck around one hanger: its underside, its end, its edge and the holes for the baseplate.
public record Deck(
        Label label,

        @Field(value = "thickness at the baseplate holes", min = 3, max = 60)
        Dimension thicknessMm,

        @Field(value = "width across the wheels", min = 60, max = 400)
        Dimension widthMm,

        @Field(value = "middle of the baseplate holes to the nearer end of the deck", min = 20, max = 300)
        Dimension endMm,

        @Field(value = "depth of the wheel wells in the underside, 0 without", max = 30)
        Dimension wheelWellMm,

        @Field(value = "baseplate holes, along the board", min = 20, max = 120)
        Dimension holesLengthMm,

        @Field(value = "baseplate holes, across the board", min = 20, max = 120)
        Dimension holesWidthMm,

        @Field(value = "width of a hole", min = 3, max = 15) Dimension holeMm)
        implements Part {}
