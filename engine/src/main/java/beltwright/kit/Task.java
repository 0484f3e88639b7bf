package beltwright.kit;

import beltwright.part.Field;
import beltwright.quantity.Dimension;

/// What the kit is asked to do: load, hill, braking, the ground it crosses and the road's coefficients.
public record Task(
        @Field(value = "board, rider and load", min = 10, max = 400)
        Dimension allUpMassKg,

        @Field(value = "hill to climb, rise over run", max = 60)
        Dimension gradePercent,

        @Field(value = "deceleration asked of the drive on level ground", max = 9)
        Dimension brakingMps2,

        @Field(value = "front axle to rear axle", min = 200, max = 2000)
        Dimension wheelbaseMm,

        @Field(value = "height of a kerb edge that it rolls over", max = 150)
        Dimension kerbMm,

        @Field(value = "change of slope at a ramp crest", max = 60)
        Dimension crestDeg,

        @Field(value = "rolling resistance, percent of weight", max = 20)
        Dimension rollingPercent,

        @Field(value = "drag coefficient times frontal area", max = 3)
        Dimension dragAreaM2,

        @Field(value = "air density", min = 0.5, max = 1.6) Dimension airDensityKgM3,

        @Field(value = "share of motor power that reaches the wheel through the belt", min = 50, max = 100)
        Dimension beltEfficiencyPercent) {}
