package beltwright.power;

/// A motor as two bodies that take heat: the wound stator, and the can with what turns and holds it.
///
///     C_w·dT_w/dt = P_w − (T_w − T_c)/R_wc
///     C_c·dT_c/dt = (T_w − T_c)/R_wc − G·(T_c − T_a)        G = 1/R_ca + A·√(h(s·v)² + h(ω)²)
///
/// - Source: two-body network, as in any text on lumped heat (Incropera, ch. 5); h from `CylinderInAir`.
/// - Valid: temperatures near those the resistances were found at.
/// - Neglects: heat through shaft and mount, radiation beyond what still air's resistance holds, hot spots in the
///   winding. All motor loss is counted at the winding, which is where most of it arises and errs on the warm side.
///
/// @param windingJPerK C_w (J/K)
/// @param caseJPerK C_c (J/K)
/// @param windingToCaseKPerW R_wc (K/W)
/// @param caseToAirKPerW R_ca, to still air (K/W)
/// @param canDiameterM D (m)
/// @param canAreaM2 A, surface that the air meets (m²)
/// @param airflowShare s, share of the road's air speed that reaches the can (1)
/// @param mostWindingC hottest that winding and magnets may get (°C)
public record MotorHeat(
        double windingJPerK,
        double caseJPerK,
        double windingToCaseKPerW,
        double caseToAirKPerW,
        double canDiameterM,
        double canAreaM2,
        double airflowShare,
        double mostWindingC) {

    /// {@return heat that leaves the can for each kelvin above the air (W/K)}
    public double caseToAirWPerK(double airSpeedMps, double radPerS) {
        double blown = CylinderInAir.coefficientWm2K(airflowShare * Math.abs(airSpeedMps), canDiameterM);
        double turning = CylinderInAir.turningWm2K(radPerS, canDiameterM);
        return 1 / caseToAirKPerW + canAreaM2 * Math.sqrt(blown * blown + turning * turning);
    }

    /// {@return how fast the winding warms (K/s)}
    public double windingKPerS(double lossW, double windingC, double caseC) {
        return (lossW - (windingC - caseC) / windingToCaseKPerW) / windingJPerK;
    }

    /// {@return how fast the can warms (K/s)}
    public double caseKPerS(double windingC, double caseC, double airC, double caseToAirWPerK) {
        return ((windingC - caseC) / windingToCaseKPerW - caseToAirWPerK * (caseC - airC)) / caseJPerK;
    }

    /// What is left of the warmth after a rest without loss: the matrix exponential of both equations, closed.
    ///
    ///     e^(M·t) = ½·(e₁ + e₂)·1 + (e₁ − e₂)/(2·d)·(M − s·1)
    ///     e₁, e₂ = e^((s ± d)·t)      s = tr M/2      d² = s² − det M
    ///
    /// - Source: Cayley and Hamilton, as in any text on linear systems. Both rates are real, as in every network of
    ///   resistances and heat capacities.
    ///
    /// @return temperatures of winding and can (°C)
    public double[] cooledC(double windingC, double caseC, double airC, double caseToAirWPerK, double seconds) {
        double w = 1 / (windingToCaseKPerW * windingJPerK);
        double c = 1 / (windingToCaseKPerW * caseJPerK);
        double away = caseToAirWPerK / caseJPerK;
        double s = -(w + c + away) / 2;
        double d = Math.sqrt(s * s - w * away);
        double slow = Math.exp((s + d) * seconds);
        double fast = Math.exp((s - d) * seconds);
        double even = (slow + fast) / 2;
        double odd = (slow - fast) / (2 * d);
        double winding = windingC - airC;
        double casing = caseC - airC;
        return new double[] {
            airC + even * winding + odd * ((-w - s) * winding + w * casing),
            airC + even * casing + odd * (c * winding + (-c - away - s) * casing)
        };
    }

    /// Where the winding settles at one current and speed, its resistance growing with its warmth.
    ///
    ///     T = T_a + (I²·R(T) + P)·S,   S = R_wc + 1/G,   R linear in T
    ///
    /// @param otherLossW P, loss that does not depend on the winding's warmth (W)
    /// @return winding temperature (°C); infinite where resistance grows faster than heat leaves
    public double settledWindingC(
            Outrunner motor, double currentA, double otherLossW, double airC, double caseToAirWPerK) {
        double path = windingToCaseKPerW + 1 / caseToAirWPerK;
        double atZero = motor.resistanceOhm(0);
        double perK = motor.resistanceOhm(1) - atZero;
        double squared = currentA * currentA;
        double left = 1 - squared * perK * path;
        return left <= 0 ? Double.POSITIVE_INFINITY : (airC + (squared * atZero + otherLossW) * path) / left;
    }
}
