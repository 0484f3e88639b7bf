package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.quantity.Tolerance;

/// How true a toothed pulley has to be made.
///
/// - Source: a belt maker's technical manual for rubber timing belt drives, p. 93 and 94.
/// - Valid: outside diameters to 100 mm; the diameter's own tolerance to 175 mm.
public final class PulleyTolerance {
    /// Wobble of a side face (mm), to 100 mm outside diameter.
    public static final double AXIAL_RUN_OUT_MM = 0.10;

    /// Run-out of the outside diameter (mm), to 200 mm.
    public static final double RADIAL_RUN_OUT_MM = 0.10;

    /// How much the toothed face may taper, or lean to the bore (mm on each mm of width).
    public static final double TAPER_PER_MM = 0.001;

    private PulleyTolerance() {}

    /// {@return lower and upper deviation of the outside diameter (mm): a pulley is never made too
    /// small}
    public static Tolerance outsideMm(double outsideDiameterMm) {
        within(outsideDiameterMm, 175);
        return new Tolerance(
                0,
                outsideDiameterMm <= 25
                        ? 0.05
                        : outsideDiameterMm <= 50 ? 0.07 : outsideDiameterMm <= 100 ? 0.10 : 0.13);
    }

    /// {@return error from one groove to the next (mm), measured along the outside diameter}
    public static double neighbouringGroovesMm(double outsideDiameterMm) {
        within(outsideDiameterMm, 100);
        return 0.03;
    }

    /// {@return error summed over a quarter turn (mm)}
    public static double quarterTurnMm(double outsideDiameterMm) {
        within(outsideDiameterMm, 100);
        return outsideDiameterMm <= 25 ? 0.06 : outsideDiameterMm <= 50 ? 0.09 : 0.10;
    }

    private static void within(double outsideDiameterMm, double most) {
        if (!(outsideDiameterMm > 0 && outsideDiameterMm <= most)) {
            throw new Refusal(
                    "outside diameter",
                    Numbers.plain(outsideDiameterMm) + " mm is not in the table of pulley tolerances",
                    "above 0 to " + Numbers.plain(most) + " mm",
                    "agree the tolerance with the pulley's maker");
        }
    }
}
