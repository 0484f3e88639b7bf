package beltwright.power;

/// Heat that air takes from a cylinder blown at from the side, and from one that turns.
///
///     Nu = 0.3 + 0.62·Re^½·Pr^⅓/(1 + (0.4/Pr)^⅔)^¼·(1 + (Re/282000)^⅝)^⅘        h = Nu·k/D        Re = v·D/ν
///
/// - Source: Churchill and Bernstein, _J. Heat Transfer_ 99 (1977) 300, as given in Incropera, _Fundamentals of Heat
///   and Mass Transfer_, ch. 7; held against printed examples (TH-12 to TH-17).
/// - Valid: Re·Pr above 0.2; the authors state about 20 %.
/// - Neglects: that a can turns, and that mount and wheel stand before it.
public final class CylinderInAir {
    // Air at 300 K and 1 atm, as Incropera takes it in ex. 7.4, p. 428 (read in a public companion of the textbook).
    private static final double VISCOSITY_M2S = 15.89e-6;
    private static final double CONDUCTIVITY_WMK = 0.0263;
    private static final double PRANDTL = 0.707;

    private CylinderInAir() {}

    /// {@return heat transfer coefficient (W/(m²·K)) in air near 300 K; 0 in still air}
    public static double coefficientWm2K(double speedMps, double diameterM) {
        return speedMps <= 0
                ? 0
                : nusselt(speedMps * diameterM / VISCOSITY_M2S, PRANDTL) * CONDUCTIVITY_WMK / diameterM;
    }

    /// {@return heat transfer coefficient (W/(m²·K)) of a cylinder that turns in air near 300 K}
    public static double turningWm2K(double radPerS, double diameterM) {
        double reynolds = Math.abs(radPerS) * diameterM * diameterM / (2 * VISCOSITY_M2S);
        return turningNusselt(reynolds, PRANDTL) * CONDUCTIVITY_WMK / diameterM;
    }

    /// {@return Nusselt number of a turning cylinder (1)}
    public static double turningNusselt(double reynolds, double prandtl) {
        double root = Math.cbrt(reynolds);
        return 0.133 * root * root * Math.cbrt(prandtl);
    }

    /// {@return Nusselt number of a cylinder blown at (1)}
    public static double nusselt(double reynolds, double prandtl) {
        double blunt = Math.sqrt(Math.sqrt(1 + Math.pow(0.4 / prandtl, 2.0 / 3)));
        return 0.3
                + 0.62
                        * Math.sqrt(reynolds)
                        * Math.cbrt(prandtl)
                        / blunt
                        * Math.pow(1 + Math.pow(reynolds / 282_000, 0.625), 0.8);
    }
}
