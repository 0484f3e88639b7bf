package beltwright.strength;

import beltwright.part.Thread;

/// How much a tapped hole holds before its threads shear out.
///
///     An/Le = π·d/p·(p/2 + 0.57735·(d − d2))        F = An·τ
///
/// - Source: FED-STD-H28 form as in _Machinery's Handbook_ (fasteners), with basic sizes in place of the limits of the
///   thread's tolerance (from memory, not re-read).
/// - Valid: internal thread weaker than the screw (light metal and plastic under a steel screw).
/// - Neglects: thread tolerances, bell-mouthing, the incomplete first turn.
public final class ThreadStrip {
    private ThreadStrip() {}

    /// {@return sheared area of the internal thread for each millimetre of engagement (mm²/mm)}
    public static double areaPerMm(Thread thread) {
        double p = thread.pitchMm();
        double d = thread.majorMm();
        return Math.PI * d / p * (p / 2 + 0.57735 * (d - thread.pitchDiameterMm()));
    }

    /// {@return engagement (mm) at which the internal thread just carries this force}
    public static double engagementMm(Thread thread, double forceN, double shearMpa) {
        return forceN / (areaPerMm(thread) * shearMpa);
    }

    /// {@return the force (N) that shears the internal thread out at this engagement (mm)}
    public static double forceN(Thread thread, double engagementMm, double shearMpa) {
        return areaPerMm(thread) * engagementMm * shearMpa;
    }
}
