package beltwright.part;

import beltwright.quantity.Dimension;

/// A plain dowel pin, hardened and ground: `4 m6` and 12 mm long, say. Its length includes its rounded or chamfered
/// ends.
///
/// - Source: ISO 8734 (hardened, m6) and ISO 2338 (unhardened, m6 or h8), from memory; the limits of m6 are those of
///   ISO 286.
public record DowelPin(
        Label label,

        @Field(value = "diameter", min = 1.5, max = 12) Dimension diameterMm,

        @Field(value = "length, rounded or chamfered ends included", min = 3, max = 120)
        Dimension lengthMm,

        String material)
        implements Part {}
