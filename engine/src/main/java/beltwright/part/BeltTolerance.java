package beltwright.part;

import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Source;
import beltwright.quantity.Tolerance;

/// How far a new belt may differ from what is printed on it.
///
/// - Source: a belt maker's technical manual for rubber timing belt drives, table 37.
/// - Valid: lengths to 1500 mm; widths of 3 to 38.1 mm on belts to 838.2 mm.
public final class BeltTolerance {
    private static final double[] LENGTH_MM = {250, 500, 750, 1000, 1250, 1500};
    private static final double[] CENTRE_MM = {0.20, 0.23, 0.27, 0.30, 0.33, 0.36};

    private BeltTolerance() {}

    /// {@return by how much (±mm) the length lets the centre distance of two equal pulleys differ}
    public static double centreDistanceMm(double lengthMm) {
        for (int i = 0; i < LENGTH_MM.length; i++) {
            if (lengthMm > 0 && lengthMm <= LENGTH_MM[i]) {
                return CENTRE_MM[i];
            }
        }
        throw refused("belt length", lengthMm, "above 0 to 1500 mm");
    }

    /// {@return by how much (±mm) the pitch length may differ: twice the centre distance}
    public static double lengthMm(double lengthMm) {
        return 2 * centreDistanceMm(lengthMm);
    }

    /// {@return lower and upper deviation of the width (mm)}
    public static Tolerance widthMm(double widthMm, double lengthMm) {
        if (!(lengthMm > 0 && lengthMm <= 838.2)) {
            throw refused("belt length", lengthMm, "above 0 to 838.2 mm");
        }
        if (!(widthMm >= 3 && widthMm <= 38.1)) {
            throw refused("belt width", widthMm, "3 to 38.1 mm");
        }
        return new Tolerance(-0.8, widthMm <= 11 ? 0.4 : 0.8);
    }

    /// {@return this belt with the tolerance of a new one where its length deviation is unknown, marked as an estimate;
    /// the belt as it is where it is known, or longer than the table}
    public static Belt standingIn(Belt belt) {
        double length = belt.teeth() * belt.profile().pitchMm();
        if (belt.lengthDeviationMm().known() || length > LENGTH_MM[LENGTH_MM.length - 1]) {
            return belt;
        }
        double half = lengthMm(length);
        var deviation = new Dimension(
                belt.lengthDeviationMm().of(),
                "0 ±" + Numbers.plain(half),
                0,
                -half,
                half,
                new Provenance(Source.ESTIMATE, "a new belt by a belt maker's manual"));
        return new Belt(
                belt.label(),
                belt.profile(),
                belt.teeth(),
                belt.widthMm(),
                deviation,
                belt.massGPerM(),
                belt.grade(),
                belt.stiffnessN(),
                belt.hungWeights());
    }

    private static Refusal refused(String what, double value, String allowed) {
        return new Refusal(
                what,
                Numbers.plain(value) + " mm is not in the table of belt tolerances",
                allowed,
                "ask the belt's maker, or measure the belt");
    }
}
