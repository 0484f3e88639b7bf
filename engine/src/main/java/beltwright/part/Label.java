package beltwright.part;

import beltwright.quantity.Dimension;

/// What every part has: its id, what people call it, its revision, what one piece weighs, and a free note.
public record Label(
        String id,
        String name,
        String revision,
        @Field("mass of one piece") Dimension massKg,
        String note) {}
