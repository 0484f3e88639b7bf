package beltwright.part;

import beltwright.quantity.Dimension;

/// A third pulley that only guides the belt: toothed inside the loop, or smooth on the back of the belt.
public record Idler(
        Label label,
        Runs runs,

        @Field(value = "profile of its teeth", when = "runs=inside")
        BeltProfile profile,

        @Field(value = "number of grooves", min = 8, max = 60, when = "runs=inside")
        int teeth,

        @Field(value = "diameter that the back of the belt runs on", min = 5, max = 80, when = "runs=back")
        Dimension diameterMm,

        @Field(value = "width between its flanges, or over all", min = 3, max = 60)
        Dimension faceWidthMm,

        @Field(value = "largest diameter, flange included", min = 5, max = 100)
        Dimension reachDiameterMm,

        @Field(value = "thickness of each of its two flanges; 0 without", max = 10)
        Dimension flangeThicknessMm,

        @Field(value = "outer face of the plate to the near end of what turns, its flange included", max = 60)
        Dimension standoffMm,

        Seating seating,

        @Field(value = "thickness that its screw passes through", min = 1, max = 80)
        Dimension screwGripMm,

        Thread screwThread)
        implements Part {
    /// Which side of the belt it touches.
    public enum Runs {
        INSIDE("inside"),
        BACK("back");

        private final String words;

        Runs(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// Whether it stays where it was set, or a spring moves it.
    public enum Seating {
        LOCKED("locked"),
        SPRUNG("sprung");

        private final String words;

        Seating(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// {@return the diameter of the belt's pitch line around it (mm)}
    ///
    /// @param belt the belt that runs around it
    public Dimension pitchDiameterMm(BeltProfile belt) {
        if (runs == Runs.INSIDE) {
            return Dimension.exact(
                    label.id() + ".teeth", teeth * profile.pitchMm() / Math.PI, faceWidthMm.provenance());
        }
        double cord = belt.heightMm() - belt.toothHeightMm() - belt.pitchLineDifferentialMm();
        return new Dimension(
                diameterMm.of(),
                diameterMm.text(),
                diameterMm.nominal() + 2 * cord,
                diameterMm.lower() + 2 * cord,
                diameterMm.upper() + 2 * cord,
                diameterMm.provenance());
    }
}
