package beltwright.strength;

import beltwright.part.PropertyClass;
import beltwright.part.ScrewHead;
import beltwright.part.Thread;

/// Preload of a screw and the torque that makes it.
///
///     F = share·Rp·At        T = F·(0.159·p + 0.577·μ·d2 + μ·Dk/2)      Dk = (dw + dh)/2
///
/// - Source: torque equation of VDI 2230-1 (from memory; it reproduces the printed torques of a service manual's
///   appendix within 10 %).
/// - Valid: metric coarse threads, μ 0.10 to 0.20, head on plain metal.
/// - Neglects: settling; hand tools scatter the preload by ±35 % (common practice, no source).
public final class Tightening {
    /// Friction of dry to lightly oiled steel threads and heads. Common practice, no source.
    public static final double FRICTION = 0.12;

    /// Share of proof strength that a hand key aims at in light-metal joints. Common practice, no source.
    public static final double PROOF_SHARE = 0.6;

    /// How far a hand-tightened preload can lie above its target. Common practice, no source.
    public static final double SCATTER = 0.35;

    private Tightening() {}

    /// {@return torque (N·m) for an axle nut against a stack with a core spacer; NaN for a thread that no axle has}
    ///
    /// Common practice, no source.
    public static double axleNutNm(Thread thread) {
        return switch (thread) {
            case M8 -> 8;
            case M10 -> 12;
            case M12 -> 16;
            default -> Double.NaN;
        };
    }

    /// {@return mean diameter of friction under a hexagon nut (mm), on a medium clearance hole}
    public static double nutFrictionMm(Thread thread) {
        return (thread.hexagonMm() + thread.clearanceHoleMm()) / 2;
    }

    /// {@return the preload (N) that this torque makes}
    public static double preloadByTorqueN(Thread thread, double torqueNm, double friction, double frictionMm) {
        return torqueNm / torqueNm(thread, 1, friction, frictionMm);
    }

    /// {@return the preload aimed at (N)}
    public static double preloadN(Thread thread, PropertyClass strength) {
        return preloadN(PROOF_SHARE, strength.proofMpa(), thread.stressAreaMm2());
    }

    /// {@return the preload (N) of a screw tightened to this share of its proof strength}
    public static double preloadN(double share, double proofMpa, double stressAreaMm2) {
        return share * proofMpa * stressAreaMm2;
    }

    /// {@return mean diameter of friction under the head (mm), on a medium clearance hole}
    public static double headFrictionMm(Thread thread, ScrewHead head) {
        return (head.diameterMm(thread) + thread.clearanceHoleMm()) / 2;
    }

    /// @param preloadN F (N)
    /// @param frictionMm Dk, mean friction diameter under the head (mm)
    /// @return tightening torque (N·m)
    public static double torqueNm(Thread thread, double preloadN, double friction, double frictionMm) {
        return preloadN
                * (0.159 * thread.pitchMm() + 0.577 * friction * thread.pitchDiameterMm() + friction * frictionMm / 2)
                / 1000;
    }

    /// Tightening torque (N·m) by the short rule T = K·F·d.
    ///
    /// - Source: Shigley, _Mechanical Engineering Design_, ch. 8; worked examples in validation.
    /// - Valid: as a second opinion; the nut factor K hides friction, pitch and head.
    public static double torqueByNutFactorNm(double nutFactor, double preloadN, double majorMm) {
        return nutFactor * preloadN * majorMm / 1000;
    }
}
