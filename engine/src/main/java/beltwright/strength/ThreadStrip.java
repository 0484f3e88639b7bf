package beltwright.strength;

import beltwright.part.Thread;

/// How much a tapped hole holds before its threads shear out.
///
///     An/Le = π·d/p·(p/2 + 0.57735·(d − d2))        F = An·τ
///     As/Le = π·D1/p·(p/2 + 0.57735·(d2 − D1))
///     Le = 2·At/(π·D1·(1/2 + 0.57735·(d2 − D1)/p))·max(1, J)        J = As·σ_screw/(An·σ_part)
///
/// At Le the screw breaks before either thread strips. The handbook puts in the limits of the thread's tolerance: the
/// largest minor and pitch diameters of the tapped thread, the smallest major and pitch diameters of the screw's.
///
/// - Source: FED-STD-H28 form as in _Machinery's Handbook_ (fasteners), with basic sizes in place of the limits of
///   the thread's tolerance (from memory, not re-read). A screw maker's advice for 8.8 screws is 1.1 to 1.4 times as
///   much in steel and light metal (BJ-49).
/// - Valid: internal thread weaker than the screw (light metal and plastic under a steel screw).
/// - Neglects: thread tolerances, bell-mouthing, the incomplete first turn.
public final class ThreadStrip {
    private ThreadStrip() {}

    /// {@return sheared area of the internal thread for each millimetre of engagement (mm²/mm)}
    public static double areaPerMm(Thread thread) {
        return internalAreaPerMm(thread.pitchMm(), thread.majorMm(), thread.pitchDiameterMm());
    }

    /// {@return sheared area of an internal thread for each millimetre of engagement (mm²/mm)}
    ///
    /// @param majorMm least major diameter of the screw (mm)
    /// @param pitchDiameterMm greatest pitch diameter of the tapped thread (mm)
    public static double internalAreaPerMm(double pitchMm, double majorMm, double pitchDiameterMm) {
        return Math.PI * majorMm / pitchMm * (pitchMm / 2 + 0.57735 * (majorMm - pitchDiameterMm));
    }

    /// {@return sheared area of the screw's thread for each millimetre of engagement (mm²/mm)}
    ///
    /// @param minorMm greatest minor diameter of the tapped thread (mm)
    /// @param pitchDiameterMm least pitch diameter of the screw (mm)
    public static double externalAreaPerMm(double pitchMm, double minorMm, double pitchDiameterMm) {
        return Math.PI * minorMm / pitchMm * (pitchMm / 2 + 0.57735 * (pitchDiameterMm - minorMm));
    }

    /// {@return engagement (mm) at which the screw's own thread shears out as it breaks, both of one steel}
    ///
    /// Its formula takes the shear strength as half of the tensile strength.
    public static double equalMm(double stressAreaMm2, double externalAreaPerMm) {
        return 2 * stressAreaMm2 / externalAreaPerMm;
    }

    /// {@return J, how much weaker the tapped thread is than the screw's (1); no more counts below 1}
    public static double weakness(
            double externalAreaPerMm, double screwTensileMpa, double internalAreaPerMm, double partTensileMpa) {
        return externalAreaPerMm * screwTensileMpa / (internalAreaPerMm * partTensileMpa);
    }

    /// {@return engagement (mm) at which the screw breaks before it strips a part of this strength, basic sizes}
    public static double fullStrengthMm(Thread thread, double screwTensileMpa, double partTensileMpa) {
        double external = externalAreaPerMm(thread.pitchMm(), thread.minorDiameterMm(), thread.pitchDiameterMm());
        double weakness = weakness(external, screwTensileMpa, areaPerMm(thread), partTensileMpa);
        return equalMm(thread.stressAreaMm2(), external) * Math.max(1, weakness);
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
