package beltwright.strength;

/// How hard screwed parts grip each other by friction, and what is left of the preload for it.
///
///     F_slip = n·μ·i·F          F_low = F·(1 − scatter)          F_lost = δ·k_b·k_m/(k_b + k_m)
///     δ = δ_thread + heads·δ_head + faces·δ_face
///
/// - Source: slip as in Shigley and VDI 2230-1; settled lengths from VDI 2230-1, table 5 (roughness 10 to 40 µm,
///   joint loaded across), both from memory. Scatter of keys and friction between plates are common practice, no
/// source.
/// - Valid: flat dry faces that lie on each other; metal. Plastic creeps and is no case of this.
/// - Neglects: that slip starts at the worst loaded screw; a shank that comes to bear on its hole.
public final class FrictionGrip {
    /// Share by which a hand key misses the preload (1).
    public static final double HAND_KEY = Tightening.SCATTER;

    /// Share by which a torque wrench misses the preload (1): α_A = 1.6 for the highest over the lowest, of VDI 2230-1
    /// from memory, which takes friction as known well; a public digest gives 1.4 to 1.6.
    public static final double TORQUE_KEY = 0.23;

    /// Share by which tightening by angle misses the preload (1): α_A = 1.2, of VDI 2230-1 from memory.
    public static final double ANGLE = 0.10;

    /// Friction between dry machined plates of steel or light metal (1); 0.10 to 0.15 is met.
    public static final double PLATE_FRICTION = 0.12;

    private static final double THREAD_UM = 3;
    private static final double HEAD_UM = 4.5;
    private static final double FACE_UM = 2.5;

    private FrictionGrip() {}

    /// {@return force across the joint (N) at which it slips}
    ///
    /// @param interfaces i, faces that must slip at once: one for a plate on a motor (1)
    public static double slipN(double screws, double preloadN, double friction, double interfaces) {
        return screws * preloadN * friction * interfaces;
    }

    /// {@return preload (N) that each screw needs so that the joint just holds this force across it}
    public static double preloadN(double screws, double slipN, double friction, double interfaces) {
        return slipN / (screws * friction * interfaces);
    }

    /// {@return least preload (N) that this key makes of its aim}
    public static double lowestN(double aimN, double scatter) {
        return aimN * (1 - scatter);
    }

    /// {@return greatest preload (N) that this key makes of its aim}
    public static double highestN(double aimN, double scatter) {
        return aimN * (1 + scatter);
    }

    /// {@return how far thread, heads and faces bed in after tightening (µm)}
    ///
    /// @param heads head and nut faces that turn on a part (1)
    /// @param faces faces between clamped parts (1)
    public static double settledUm(double heads, double faces) {
        return THREAD_UM + heads * HEAD_UM + faces * FACE_UM;
    }

    /// {@return preload (N) that is lost when the joint settles so far}
    ///
    /// @param screwStiffness k_b (N/mm)
    /// @param partsStiffness k_m (N/mm)
    public static double lostN(double settledUm, double screwStiffness, double partsStiffness) {
        return settledUm / 1000 * screwStiffness * partsStiffness / (screwStiffness + partsStiffness);
    }
}
