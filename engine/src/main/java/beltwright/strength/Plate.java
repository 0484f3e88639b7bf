package beltwright.strength;

/// A motor mount's plate with slots: stress, how a hole multiplies it, and how long light metal and plastic stand it.
///
///     flatwise: σ = 6·M/(b_net·t²)     b_net = b − n·w          edgewise: σ = M·b/(2·I)
///     I = t·((b³ − o³)/12 − 2·(w³/12 + w·e²))                          pull: σ = F/(b_net·t)     bearing: σ = F/(d·t)
///     twist: τ = 3·M/(b_net·t²)
///     hole: Kt = 2 + (1 − d/b)³        slot across the load: Kt = 1 + 2·√(a/r)
///     slot along the load: Kt = 2.1 + 0.3·√(w/l), of a round hole 3
///     hole bent flatwise: Kt = 1.79 + 0.25/(0.39 + x) + 0.81/(1 + x²) − 0.26/(1 + x³)     x = d/t
///     S(N) = S_1·(S_2/S_1)^(log(N/N_1)/log(N_2/N_1))
///
/// - Source: elastic beam; Heywood's formula for a hole and Peterson's for one bent flatwise, from memory; the
///   ellipse of Inglis for a slot across; our own fit to finite elements for one along; a straight line between two
///   points in log-log for fatigue, as in Shigley ch. 6.
/// - Valid: Heywood's with the net stress, d/b to 0.6; the others in a wide plate, a slot along from l = w/5 on. Light
///   metal has no endurance limit: makers print 5·10⁸ turns.
/// - Neglects: contact of the screw's shank; scratches. The shares for plastics are common practice, no source.
public final class Plate {
    /// Share of its short strength that a plastic bears for months (1). Common practice, no source.
    public static final double CREEP_SHARE = 0.5;

    /// Share of its strength that a printed part keeps across its layers (1). Common practice, no source.
    public static final double LAYER_SHARE = 0.5;

    private static final double ROOM_C = 23;

    private Plate() {}

    /// {@return width (mm) that is left beside the slots}
    public static double netMm(double widthMm, double slots, double slotMm) {
        return widthMm - slots * slotMm;
    }

    /// {@return stress (MPa) of a plate bent out of its plane}
    public static double flatwiseMpa(double bendingNm, double netMm, double thickMm) {
        return 6000 * bendingNm / (netMm * thickMm * thickMm);
    }

    /// {@return stress (MPa) at the edge of a plate bent in its plane, across a pair of slots}
    ///
    /// @param slotMm width of either slot, 0 where there is none (mm)
    /// @param offMm e, from the middle of the plate to the middle of a slot (mm)
    public static double edgewiseMpa(double bendingNm, double widthMm, double thickMm, double slotMm, double offMm) {
        return edgewiseMpa(bendingNm, widthMm, thickMm, slotMm, offMm, 0);
    }

    /// {@return the same where an opening lies between the slots, in the middle of the plate}
    ///
    /// @param openingMm width of the opening (mm)
    public static double edgewiseMpa(
            double bendingNm, double widthMm, double thickMm, double slotMm, double offMm, double openingMm) {
        double solid = (widthMm * widthMm * widthMm - openingMm * openingMm * openingMm) / 12;
        double lost = 2 * (slotMm * slotMm * slotMm / 12 + slotMm * offMm * offMm);
        return 1000 * bendingNm * widthMm / 2 / (thickMm * (solid - lost));
    }

    /// {@return stress (MPa) of a pull over what the slots leave}
    public static double pullMpa(double forceN, double netMm, double thickMm) {
        return forceN / (netMm * thickMm);
    }

    /// {@return shear (MPa) at the face of a plate that is twisted along its length}
    public static double twistMpa(double twistNm, double netMm, double thickMm) {
        return 3000 * twistNm / (netMm * thickMm * thickMm);
    }

    /// {@return pressure (MPa) of a screw on the wall of its hole or slot}
    public static double bearingMpa(double forceN, double screwMm, double thickMm) {
        return forceN / (screwMm * thickMm);
    }

    /// {@return Kt (1) of a round hole in the middle of a plate under pull, over the net stress}
    public static double holeFactor(double holeMm, double widthMm) {
        return 2 + Math.pow(1 - holeMm / widthMm, 3);
    }

    /// {@return Kt (1) of a slot in a wide plate}
    ///
    /// @param acrossMm length of the slot across the load (mm)
    /// @param radiusMm radius of its ends (mm)
    public static double slotFactor(double acrossMm, double radiusMm) {
        return 1 + 2 * Math.sqrt(acrossMm / 2 / radiusMm);
    }

    /// {@return Kt (1) of a slot in a wide plate pulled along it}
    ///
    /// @param travelMm between the centres of its round ends, 0 for a hole (mm)
    public static double slotAlongFactor(double travelMm, double slotMm) {
        return Math.min(3, 2.1 + 0.3 * Math.sqrt(slotMm / travelMm));
    }

    /// {@return Kt (1) of a round hole in a wide plate bent out of its plane}
    public static double bentHoleFactor(double holeMm, double thickMm) {
        double x = holeMm / thickMm;
        return 1.79 + 0.25 / (0.39 + x) + 0.81 / (1 + x * x) - 0.26 / (1 + x * x * x);
    }

    /// {@return Kt (1) of a slot in a plate that is bent out of its plane along the slot, over the net stress: a
    /// bent hole, milder as far as a slot along a pull is milder than a hole}
    public static double bentSlotFactor(double travelMm, double slotMm, double thickMm) {
        return bentHoleFactor(slotMm, thickMm) * slotAlongFactor(travelMm, slotMm) / 3;
    }

    /// {@return stress (MPa) beside the slots of a plate bent in its plane, at their side away from its middle, before
    /// any notch factor: what the slots take away is in that factor}
    ///
    /// @param offMm e, from the middle of the plate to the middle of a slot (mm)
    /// @param openingMm width of an opening in the middle of the plate (mm)
    public static double besideSlotMpa(
            double bendingNm, double widthMm, double thickMm, double slotMm, double offMm, double openingMm) {
        double whole = edgewiseMpa(bendingNm, widthMm, thickMm, 0, 0, openingMm);
        return whole * (offMm + slotMm / 2) / (widthMm / 2);
    }

    /// {@return amplitude (MPa) that breaks the plate after so many turns, by two known points}
    public static double fatigueMpa(double turns, double oneTurns, double oneMpa, double otherTurns, double otherMpa) {
        return oneMpa * Math.pow(otherMpa / oneMpa, Math.log(turns / oneTurns) / Math.log(otherTurns / oneTurns));
    }

    /// {@return share of its strength (1) that a plastic keeps when warm: all at 23 °C, none where it softens}
    ///
    /// Common practice, no source.
    ///
    /// @param softC where it softens: heat deflection or glass transition (°C)
    public static double heatShare(double plateC, double softC) {
        return Math.clamp((softC - plateC) / (softC - ROOM_C), 0, 1);
    }
}
