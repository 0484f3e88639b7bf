package beltwright.power;

/// A battery pack: a voltage that follows its charge, behind a resistance that follows its warmth.
///
///     U = U_0(q) − I·R        R = R_m·exp(b·(1/T − 1/T_m))
///     charging: I_c = min(limit, (U_full − U_0)/R), none below the coldest cell that may be charged
///
/// - Source: Ohm; fall of resistance with warmth after Arrhenius.
/// - Valid: steady loads; 0 to 45 °C for the fall of resistance.
/// - Neglects: slow recovery after a load, ageing, differences between cells, warming of the pack by its own current.
///
/// @param cells in series
/// @param ohm resistance of the whole pack (Ω) at its temperature now
/// @param capacityAs charge from empty to full (A·s)
/// @param dischargeA most current out (A)
/// @param chargeA most current in (A), 0 where the cells are too cold for it
/// @param fullV whole pack at the end of charge (V)
/// @param emptyV whole pack, empty (V)
public record PackModel(
        int cells,
        OpenCircuit curve,
        double ohm,
        double capacityAs,
        double dischargeA,
        double chargeA,
        double fullV,
        double emptyV) {

    /// {@return resistance (Ω) at a cell temperature}
    public static double ohmAt(double ohm, double measuredAtC, double activationK, double cellC) {
        return measuredAtC == cellC
                ? ohm
                : ohm * Math.exp(activationK * (1 / (cellC + 273.15) - 1 / (measuredAtC + 273.15)));
    }

    /// {@return voltage at rest (V)}
    public double openV(double share) {
        return cells * curve.voltageV(share);
    }

    /// {@return voltage (V) at this current (A, out of the pack)}
    public double voltageV(double share, double currentA) {
        return openV(share) - currentA * ohm;
    }

    /// Current (A) that gives this power: the smaller root of U_0·I − R·I² = P.
    ///
    /// @return NaN where the pack cannot give that much
    public double currentA(double share, double powerW) {
        return currentAt(openV(share), powerW);
    }

    double currentAt(double openV, double powerW) {
        double root = openV * openV - 4 * ohm * powerW;
        return root < 0 ? Double.NaN : 2 * powerW / (openV + Math.sqrt(root));
    }

    /// {@return most current (A) that the cells take at this charge without passing their full voltage}
    public double acceptsA(double share) {
        return Math.max(0, Math.min(chargeA, (fullV - openV(share)) / ohm));
    }

    /// {@return most power (W) that any load can draw: U_0²/(4·R)}
    public double mostPowerW(double share) {
        double open = openV(share);
        return open * open / (4 * ohm);
    }
}
