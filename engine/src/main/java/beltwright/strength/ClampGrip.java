package beltwright.strength;

/// What a split clamp around a hanger holds against turning.
///
///     W = n·F·l_s/l_c            l_s = l_c where screws stand on both sides of the section
///     round, two lines:  T = μ·W·d             round, even pressure:  T = π/2·μ·W·d
///     flat sides:        T_lift = W·b/3        T_crush = p·b²·L/6
///
/// A clamp bored a little large touches the round section along two lines; one that fits it presses all around. The
/// lines hold less, so `roundNm` takes them: the fit of a clamp on a cast hanger is never known. Between flat sides
/// no friction is needed: the section would have to tilt, first out of the clamp's pressure, then into its material.
///
/// - Source: statics. Even pressure is the clamp coupling of textbooks (Khurmi and Gupta, shaft couplings).
/// - Valid: W from the lowest preload; stiff jaws, flat sides that lie on them along all of b and L.
/// - Neglects: the jaws' own bending, which takes a part of the screws' force; fretting.
public final class ClampGrip {
    private ClampGrip() {}

    /// {@return W, force (N) by which the jaws press the section}
    ///
    /// @param screwArmMm l_s, from the hinge of a clamp slit on one side to its screws (mm)
    /// @param sectionArmMm l_c, from that hinge to the middle of the section (mm)
    public static double pressN(double screws, double preloadN, double screwArmMm, double sectionArmMm) {
        return screws * preloadN * screwArmMm / sectionArmMm;
    }

    /// {@return torque (N·m) held on a round section touched along two lines}
    public static double twoLinesNm(double pressN, double friction, double diameterMm) {
        return friction * pressN * diameterMm / 1000;
    }

    /// {@return torque (N·m) held on a round section pressed evenly all around}
    public static double evenNm(double pressN, double friction, double diameterMm) {
        return Math.PI / 2 * twoLinesNm(pressN, friction, diameterMm);
    }

    /// {@return torque (N·m) that a round section is counted on to hold: the lower of both}
    public static double roundNm(double pressN, double friction, double diameterMm) {
        return Math.min(twoLinesNm(pressN, friction, diameterMm), evenNm(pressN, friction, diameterMm));
    }

    /// {@return T_lift (N·m), at which a section with flat sides begins to lift off at an edge}
    ///
    /// @param flatMm b, width of either flat side that a jaw presses (mm)
    public static double liftNm(double pressN, double flatMm) {
        return pressN * flatMm / 3000;
    }

    /// {@return T_crush (N·m), at which the edges press as much as the weaker material bears}
    ///
    /// @param lengthMm L, length of the clamp along the axle (mm)
    /// @param pressureMpa p, what the weaker material bears (MPa)
    public static double crushNm(double flatMm, double lengthMm, double pressureMpa) {
        return pressureMpa * flatMm * flatMm * lengthMm / 6000;
    }
}
