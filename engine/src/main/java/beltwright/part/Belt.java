package beltwright.part;

import beltwright.quantity.Dimension;

/// A toothed belt. Its pitch length is teeth times pitch plus what this belt deviates.
public record Belt(
        Label label,
        BeltProfile profile,

        @Field(value = "number of teeth", min = 20, max = 400)
        int teeth,

        @Field(value = "width", min = 3, max = 60) Dimension widthMm,

        @Field(
                value =
                        "pitch length minus teeth times pitch; of a new belt to 500 mm 0 ±0.46 by a belt maker's manual, which stands in as an estimate where it is unknown",
                min = -5,
                max = 5)
        Dimension lengthDeviationMm,

        @Field(value = "mass per metre of this width", min = 1, max = 500, group = Field.Group.STRENGTH)
        Dimension massGPerM,

        @Field(
                value = "how it is built: standard, reinforced, or a grade of the reference file",
                optional = true,
                group = Field.Group.STRENGTH)
        String grade,

        @Field(
                value = "pull that stretches it to twice its length, as its cords begin (E·A)",
                min = 1000,
                max = 1000000,
                group = Field.Group.STRENGTH)
        Dimension stiffnessN,

        @Field(
                value = "hung weights: pull and frequency of a span, 'span 64.5 mm: 50 N 265 Hz, 100 N 355 Hz'",
                optional = true,
                group = Field.Group.STRENGTH)
        String hungWeights)
        implements Part {
    /// {@return nominal pitch length (mm)}
    public double lengthMm() {
        return teeth * profile.pitchMm() + lengthDeviationMm.nominal();
    }
}
