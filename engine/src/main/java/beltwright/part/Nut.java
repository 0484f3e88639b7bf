package beltwright.part;

import beltwright.quantity.Dimension;

/// A hexagon nut.
public record Nut(
        Label label,
        Thread thread,
        @Field(value = "height", min = 1, max = 20) Dimension heightMm,
        boolean locking) implements Part {}
