package beltwright.part;

import beltwright.quantity.Dimension;

/// A screw by thread, head, length and strength class. The length of a countersunk screw includes its head.
public record Screw(
        Label label,
        Thread thread,
        ScrewHead head,
        @Field(value = "length", min = 2, max = 120) Dimension lengthMm,
        PropertyClass strength)
        implements Part {}
