package beltwright.part;

import beltwright.quantity.Refusal;

/// The groove of a pulley for 5 mm belts of type H, as its maker cuts or prints it.
///
/// - Source: ISO 13050:2014 table 14, public transcription (the standard itself was not read).
/// - Valid: 12 teeth and more. Which radius is which follows from a second table of the same
///   groove.
///
/// @param depthMm outside diameter to the floor of the groove (mm)
/// @param floorRadiusMm radius of the floor (mm)
/// @param tipRadiusMm radius of the edges (mm)
public record GrooveForm(double depthMm, double floorRadiusMm, double tipRadiusMm) {
    /// Width of the groove at the outside diameter (mm), as a public table of the cutter's form prints it.
    public static final double OPENING_MM = 3.25;

    /// {@return the form for a pulley of so many teeth}
    public static GrooveForm of(int teeth) {
        if (teeth < 12) {
            throw new Refusal(
                    "number of grooves",
                    teeth + " is too few for a groove of type H, 5 mm",
                    "12 and more",
                    "use a larger pulley");
        }
        if (teeth <= 16) {
            return new GrooveForm(1.989, 1.265, 0.432);
        }
        if (teeth <= 25) {
            return new GrooveForm(2.009, 1.270, 0.508);
        }
        return teeth <= 80 ? new GrooveForm(2.052, 1.438, 0.488) : new GrooveForm(2.056, 1.552, 0.569);
    }

    /// {@return width of a tooth at the outside diameter (mm), where it is narrowest; rounding of its edges not taken
    /// off}
    public static double toothMm(double outsideDiameterMm, int teeth) {
        return Math.PI * outsideDiameterMm / teeth - OPENING_MM;
    }

    /// {@return what is left between groove and bore (mm)}
    public double wallMm(double outsideDiameterMm, double boreMm) {
        return (outsideDiameterMm - boreMm) / 2 - depthMm;
    }
}
