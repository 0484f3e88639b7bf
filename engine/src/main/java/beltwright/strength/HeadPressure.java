package beltwright.strength;

/// Pressure of a screw's head, or of its washer, on the part under it.
///
///     hole:  A = π/4·(D² − d²)
///     slot:  A = circle of D less what of it lies over the slot, exactly, by where the screw stands in the slot
///     p = F/A          washer:  D_eff = D + 1.6·h, at most the washer's own diameter
///
/// - Source: plane geometry; the spreading of a washer from VDI 2230-1, from memory.
/// - Valid: flat faces. Hold p against the weaker of head and part; the part's compressive yield strength is a safe
///   limit (VDI 2230-1 prints higher ones).
/// - Neglects: the chamfer of a hole, the fillet under a head, a washer that dishes into a slot.
public final class HeadPressure {
    private HeadPressure() {}

    /// {@return area (mm²) that a head presses on around a round hole}
    public static double overHoleMm2(double headMm, double holeMm) {
        return Math.PI / 4 * (headMm * headMm - holeMm * holeMm);
    }

    /// {@return area (mm²) that a head presses on over a slot with round ends}
    ///
    /// @param slotMm width of the slot, less than the head (mm)
    /// @param oneWayMm from the screw to the centre of the slot's round end, one way (mm)
    /// @param otherWayMm and the other way (mm)
    public static double overSlotMm2(double headMm, double slotMm, double oneWayMm, double otherWayMm) {
        double r = headMm / 2;
        double a = slotMm / 2;
        return Math.PI * r * r - lostMm2(r, a, oneWayMm) - lostMm2(r, a, otherWayMm);
    }

    /// {@return area (mm²) over a slot that is longer than the head both ways: the least it can be}
    public static double overLongSlotMm2(double headMm, double slotMm) {
        return overSlotMm2(headMm, slotMm, headMm, headMm);
    }

    /// {@return pressure (MPa)}
    public static double pressureMpa(double forceN, double areaMm2) {
        return forceN / areaMm2;
    }

    /// {@return diameter (mm) on which a washer passes the head's force on}
    public static double spreadMm(double headMm, double washerMm, double washerThickMm) {
        return Math.min(washerMm, headMm + 1.6 * washerThickMm);
    }

    /// Half a disc of radius r over the half of the slot that runs `l` to the centre of its round end.
    private static double lostMm2(double r, double a, double l) {
        double leaves = Math.sqrt(r * r - a * a); // where the slot's straight edge leaves the disc
        if (leaves <= l) {
            return 2 * (a * leaves + under(r, leaves, r));
        }
        if (l + a <= r) {
            return 2 * a * l + Math.PI * a * a / 2;
        }
        double meet = (r * r - a * a + l * l) / (2 * l); // where the round end meets the disc's edge
        return 2 * (a * l + under(a, 0, meet - l) + under(r, meet, r));
    }

    /// Area under a circle's upper edge between two abscissae.
    private static double under(double radius, double from, double to) {
        return primitive(radius, to) - primitive(radius, from);
    }

    private static double primitive(double radius, double x) {
        return (x * Math.sqrt(Math.max(0, radius * radius - x * x))
                        + radius * radius * Math.asin(Math.clamp(x / radius, -1, 1)))
                / 2;
    }
}
