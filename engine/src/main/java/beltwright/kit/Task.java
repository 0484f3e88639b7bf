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
        Dimension beltEfficiencyPercent,

        @Field(value = "drag of the wheel bearings, all wheels together, at the tread", max = 50)
        Dimension bearingDragN,

        @Field(value = "wind against the board; below zero it pushes", min = -25, max = 25)
        Dimension headWindMps,

        @Field(value = "temperature of the air", min = -30, max = 55)
        Dimension airC,

        @Field(value = "temperature of the cells", min = -30, max = 70)
        Dimension cellC,

        @Field(value = "how full the pack is at the start", max = 100)
        Dimension chargePercent,

        @Field(value = "speed that the rider holds on the way", min = 3, max = 80)
        Dimension cruiseKmh,

        @Field(value = "push along the road over push into it before a tread slips", min = 0.05, max = 1.5)
        Dimension gripShare,

        @Field(value = "share of the weight on the driven axle when driving", min = 10, max = 100)
        Dimension drivenPercent,

        @Field(value = "share of the weight on the driven axle when braking, rider leaning back", min = 10, max = 100)
        Dimension drivenBrakingPercent,

        @Field(value = "centre of mass of board and rider above the road", min = 100, max = 1500)
        Dimension massHeightMm,

        @Field(value = "from seeing to braking", max = 5) Dimension reactionS,

        @Field(value = "load on a wheel as it lands, times its share of the weight at rest", min = 1, max = 20)
        Dimension landingFactor,

        @Field(
                value = "load on a wheel on rough road, times its share at rest, as it comes again and again",
                min = 1,
                max = 2)
        Dimension roadFactor,

        @Field(value = "side force in a corner, times the weight", max = 2)
        Dimension corneringFactor,

        @Field(value = "jolt that the motor's own mass feels, times its weight", min = 1, max = 100)
        Dimension motorJoltFactor,

        @Field(value = "force of a kerb against the motor, times the weight of board and rider", max = 10)
        Dimension strikeFactor,

        @Field(value = "service factor of the belt for peaks", min = 1, max = 5)
        Dimension peakFactor,

        @Field(value = "friction of dry joints: plate on motor, clamp on hanger", min = 0.02, max = 1)
        Dimension jointFriction,

        @Field(value = "how far preload lies above and below its target, by the way screws are tightened", max = 60)
        Dimension preloadScatterPercent,

        @Field(
                value = "how screws are tightened: what their preload scatters by where no percent is given",
                optional = true)
        Tightened tightening,

        @Field(value = "distance that bearings and belt are to last", min = 10, max = 100000)
        Dimension lifeKm,

        @Field(value = "warmest that mount and pulleys get", min = -20, max = 150)
        Dimension mountC) {
    /// How screws are brought to their preload.
    public enum Tightened {
        BY_HAND("hex key by hand"),
        TORQUE_WRENCH("torque wrench"),
        ANGLE("angle");

        private final String words;

        Tightened(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
