package beltwright.strength;

/// A motor mount's plate with slots: stress, how a hole multiplies it, and how long light metal and plastic stand it.
///
///     flatwise: σ = 6·M/(b_net·t²)     b_net = b − n·w          edgewise: σ = M·b/(2·I)
///     I = t·((b³ − o³)/12 − 2·(w³/12 + w·e²))                          pull: σ = F/(b_net·t)     bearing: σ = F/(d·t)
///     twist: τ = 3·M/(b_net·t²)
///     hole: Kt = 2 + (1 − d/b)³        slot across the load: Kt = 1 + 2·√(a/r)
///     S(N) = S_1·(S_2/S_1)^(log(N/N_1)/log(N_2/N_1))
///
/// - Source: elastic beam; Heywood's formula for a hole, from memory; the ellipse of Inglis for a slot; a straight
///   line between two points in log-log for fatigue, as in Shigley ch. 6.
/// - Valid: net stress with the hole; d/b to 0.6. Light metal has no endurance limit: makers print 5·10⁸ turns.
/// - Neglects: bending out of the plane, where a hole multiplies less; contact of the screw's shank; scratches. The
///   shares for plastics are common practice, no source.
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
