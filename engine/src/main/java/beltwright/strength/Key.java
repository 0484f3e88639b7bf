package beltwright.strength;

/// What a key in its keyway carries.
///
///     shear: T = τ·w·l·d/2          side: T = p·t·l·d/2
///
/// - Source: statics, as in any text on machine design (Shigley, ch. 7).
/// - Valid: a key that fits its keyway; t is the depth on the shallower side, half of the key's height in textbooks.
/// - Neglects: the notch that the keyway leaves in the shaft; rocking of a key that is loose in it.
public final class Key {
    private Key() {}

    /// {@return torque (N·m) at which the key shears}
    public static double shearNm(double widthMm, double lengthMm, double shearMpa, double shaftMm) {
        return shearMpa * widthMm * lengthMm * shaftMm / 2000;
    }

    /// {@return torque (N·m) at which the side of the weaker of key, shaft and hub is crushed}
    public static double bearingNm(double depthMm, double lengthMm, double pressureMpa, double shaftMm) {
        return pressureMpa * depthMm * lengthMm * shaftMm / 2000;
    }

    /// {@return length of key (mm) that carries this torque in shear}
    public static double shearLengthMm(double torqueNm, double widthMm, double shearMpa, double shaftMm) {
        return 2000 * torqueNm / (shearMpa * widthMm * shaftMm);
    }

    /// {@return length of key (mm) that carries this torque on its side}
    public static double bearingLengthMm(double torqueNm, double depthMm, double pressureMpa, double shaftMm) {
        return 2000 * torqueNm / (pressureMpa * depthMm * shaftMm);
    }
}
