package beltwright.power;

/// One motor as an equivalent direct-current machine, with what it loses.
///
///     E = Kt·ω        U = E + I·R(t)        M = Kt·I − M_l(ω)        M_l(ω) = Kt·(I_h + I_e·|ω|)·sign ω
///
/// Current I is the direct current of equal torque, R the resistance between two leads. The current without load is
/// split into a share that is the same at any speed (friction, hysteresis) and one that grows with it (eddy currents,
/// air).
///
/// - Source: direct-current machine, as in Fitzgerald, _Electric Machinery_, ch. 7; loss split as in any text on iron
///   loss: hysteresis torque constant, eddy torque proportional to speed.
/// - Valid: below saturation, no field weakening.
/// - Neglects: ripple, the time constant of the winding, loss that the load adds to the iron.
///
/// @param torqueConstantNmA Kt, torque per ampere (N·m/A) and back-EMF per speed (V·s)
/// @param leadOhm resistance between two leads (Ω) at `leadAtC`
/// @param leadAtC temperature of that resistance (°C)
/// @param steadyLossA I_h (A)
/// @param growingLossAs I_e (A·s)
public record Outrunner(
        double torqueConstantNmA, double leadOhm, double leadAtC, double steadyLossA, double growingLossAs) {
    /// Copper at 20 °C, change of resistance per kelvin (IEC 60028; from memory).
    public static final double COPPER_PER_K = 0.00393;

    private static final double STATED_AT_C = 20;

    /// @param noLoadA current without load (A) read at `noLoadRadPerS` (rad/s)
    /// @param growingShare share of it that grows with speed (1)
    public static Outrunner of(
            double kvRpmPerV,
            double leadOhm,
            double leadAtC,
            double noLoadA,
            double noLoadRadPerS,
            double growingShare) {
        return new Outrunner(
                MotorModel.torqueConstantNmA(kvRpmPerV),
                leadOhm,
                leadAtC,
                noLoadA * (1 - growingShare),
                noLoadA * growingShare / noLoadRadPerS);
    }

    /// {@return resistance between two leads (Ω) at this winding temperature}
    public double resistanceOhm(double windingC) {
        return MotorModel.resistanceOhm(leadOhm, leadAtC, COPPER_PER_K, STATED_AT_C, windingC);
    }

    /// {@return back-EMF (V)}
    public double backEmfV(double radPerS) {
        return torqueConstantNmA * radPerS;
    }

    /// {@return torque lost in iron, bearings and air (N·m), against the motion}
    public double lossNm(double radPerS) {
        return radPerS == 0 ? 0 : torqueConstantNmA * (Math.copySign(steadyLossA, radPerS) + growingLossAs * radPerS);
    }

    /// {@return torque at the shaft (N·m)}
    public double shaftNm(double currentA, double radPerS) {
        return torqueConstantNmA * currentA - lossNm(radPerS);
    }

    /// {@return the current (A) that gives this torque at the shaft}
    public double currentA(double shaftNm, double radPerS) {
        return (shaftNm + lossNm(radPerS)) / torqueConstantNmA;
    }
}
