package beltwright.part;

import beltwright.quantity.Dimension;

/// An outrunner motor. Axial dimensions count from its mounting face: the shaft away from the can, the can the other
/// way.
public record Motor(
        Label label,

        @Field(value = "diameter of the turning can", min = 20, max = 150)
        Dimension canDiameterMm,

        @Field(value = "mounting face to the far end, rear screws and cap included", min = 15, max = 200)
        Dimension canLengthMm,

        ShaftForm shaftForm,
        @Field(value = "shaft diameter", min = 3, max = 20) Dimension shaftDiameterMm,

        @Field(value = "across the flat: flat to the opposite side", min = 2, max = 20, when = "shaftForm=D|two flats")
        Dimension shaftFlatMm,

        @Field(value = "angle between the two flats", min = 30, max = 180, when = "shaftForm=two flats")
        Dimension flatsApartDeg,

        @Field(value = "width of the key", min = 1, max = 8, when = "shaftForm=keyed")
        Dimension keyWidthMm,

        @Field(value = "top of the key to the opposite side of the shaft", min = 3, max = 28, when = "shaftForm=keyed")
        Dimension overKeyMm,

        @Field(value = "mounting face to shaft end", min = 5, max = 100)
        Dimension shaftLengthMm,

        @Field(value = "pitch circle of the mounting holes", min = 10, max = 100)
        Dimension boltCircleMm,

        @Field(value = "number of mounting holes", min = 2, max = 8)
        int boltHoles,

        Thread thread,

        @Field(value = "depth from the mounting face to where a screw would meet the windings", min = 1, max = 40)
        Dimension threadDepthMm,

        @Field(value = "material that is tapped", optional = true)
        String threadMaterial,

        @Field(value = "pilot boss on the mounting face, diameter", max = 60)
        Dimension bossDiameterMm,

        @Field(value = "speed constant", min = 10, max = 2000, group = Field.Group.RIDE)
        Dimension kvRpmPerV,

        @Field(value = "winding resistance", min = 0.001, max = 2, group = Field.Group.RIDE)
        Dimension resistanceOhm,

        @Field(
                value = "between which points the resistance was measured",
                when = "resistanceOhm>0",
                group = Field.Group.RIDE)
        Winding resistanceIs,

        @Field(value = "current that turns the motor without load", max = 20, group = Field.Group.RIDE)
        Dimension noLoadCurrentA,

        @Field(
                value = "winding temperature at which the resistance was measured",
                min = -20,
                max = 150,
                group = Field.Group.RIDE)
        Dimension resistanceAtC,

        @Field(
                value = "motor speed at which the current without load was read",
                min = 100,
                max = 50000,
                group = Field.Group.RIDE)
        Dimension noLoadAtRpm,

        @Field(
                value = "share of the loss torque at that speed that grows with speed, the rest being the same at any",
                max = 100,
                group = Field.Group.RIDE)
        Dimension noLoadGrowthPercent,

        @Field(value = "heat that the wound stator takes", min = 10, max = 5000, group = Field.Group.RIDE)
        Dimension windingJPerK,

        @Field(value = "heat that can, magnets and end plate take", min = 10, max = 10000, group = Field.Group.RIDE)
        Dimension caseJPerK,

        @Field(value = "winding to can: kelvin for each watt", min = 0.01, max = 20, group = Field.Group.RIDE)
        Dimension windingToCaseKPerW,

        @Field(value = "can to still air: kelvin for each watt", min = 0.05, max = 50, group = Field.Group.RIDE)
        Dimension caseToAirKPerW,

        @Field(value = "share of the road's air speed that reaches the can", max = 100, group = Field.Group.RIDE)
        Dimension airflowPercent,

        @Field(value = "hottest that winding and magnets may get", min = 60, max = 220, group = Field.Group.RIDE)
        Dimension mostWindingC,

        @Field(value = "inertia of the turning can about its axis", max = 0.1, group = Field.Group.RIDE)
        Dimension rotorKgM2,

        @Field(
                value = "mounting face inward to the middle of the shaft's front bearing",
                min = 1,
                max = 100,
                group = Field.Group.STRENGTH)
        Dimension frontBearingMm,

        @Field(
                value = "between the middles of the shaft's two bearings",
                min = 5,
                max = 200,
                group = Field.Group.STRENGTH)
        Dimension bearingSpanMm,

        @Field(
                value = "dynamic load rating C of the front bearing, radial",
                min = 100,
                max = 100000,
                group = Field.Group.STRENGTH)
        Dimension bearingRatedN,

        @Field(
                value = "static load rating C0 of the front bearing, radial",
                min = 50,
                max = 100000,
                group = Field.Group.STRENGTH)
        Dimension bearingStaticN,

        @Field(value = "material of the shaft", optional = true, group = Field.Group.STRENGTH)
        String shaftMaterial,

        @Field(value = "magnets on the can, half of their number", min = 1, max = 40, group = Field.Group.RIDE)
        Dimension polePairs,

        @Field(value = "bundle of phase and sensor wires, diameter", min = 2, max = 30, group = Field.Group.WIRES)
        Dimension wireDiameterMm,

        @Field(value = "where the wires leave the motor", when = "wireDiameterMm>0", group = Field.Group.WIRES)
        WireExit wireExit,

        @Field(value = "tightest bend of the bundle, radius to its middle", max = 80, group = Field.Group.WIRES)
        Dimension wireBendMm,

        @Field(value = "plug of a phase wire, diameter", min = 2, max = 12, group = Field.Group.WIRES)
        Dimension phasePlugMm,

        @Field(value = "pins of the sensor connector, 0 without sensors", max = 12, group = Field.Group.WIRES)
        Dimension sensorPins,

        @Field(value = "pin to pin in the sensor connector", min = 0.5, max = 5, group = Field.Group.WIRES)
        Dimension sensorPitchMm)
        implements Part {
    /// Where the wires leave the motor: at the far end of the can, or at its side beside the mounting face.
    public enum WireExit {
        END("far end"),
        SIDE("side");

        private final String words;

        WireExit(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// Between which points the resistance was measured: two leads, or one lead and the star point.
    public enum Winding {
        LINE_TO_LINE("line to line"),
        PHASE("phase");

        private final String words;

        Winding(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
