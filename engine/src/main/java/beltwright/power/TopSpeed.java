package beltwright.power;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/// Top speed on level ground, without load and against rolling and air.
///
///     v0 = U·s·Kv/i·π·D/60         U·s = ω/Kv′ + I·R,   U = U0 − n·s·I·Rp,   I = M/Kt + I0
///
/// s is the largest share of pack voltage that reaches the motor, i the ratio, Kv′ = Kv·2π/60.
///
/// - Source: direct-current machine equations; power balance as in Fitzgerald, _Electric Machinery_, ch. 7.
/// - Valid: no field weakening, pack at the working voltage given.
/// - Neglects: current limits of the controller (at top speed they rarely decide) and wind.
///
/// @param packV working voltage of the pack (V)
/// @param packOhm resistance of the pack (Ω)
/// @param dutyShare s (1)
/// @param leadOhm motor resistance between leads (Ω)
/// @param noLoadA motor current without load (A)
/// @param efficiency share of motor power that reaches the wheel (1)
public record TopSpeed(
        double packV,
        double packOhm,
        double dutyShare,
        double kvRpmPerV,
        double leadOhm,
        double noLoadA,
        double ratio,
        double wheelDiameterMm,
        int drives,
        double massKg,
        double rollingPercent,
        double airDensityKgM3,
        double dragAreaM2,
        double efficiency) {

    /// {@return speed at which back-EMF alone equals the voltage (m/s)}
    public double withoutLoadMps() {
        return packV * dutyShare * kvRpmPerV / ratio * Math.PI * wheelDiameterMm / 60_000;
    }

    /// {@return motor current (A) that holds this speed}
    public double currentA(double speedMps) {
        double force =
                RoadLoad.climbN(massKg, 0, rollingPercent) + RoadLoad.dragN(airDensityKgM3, dragAreaM2, speedMps);
        double torque = force * wheelDiameterMm / 2000 / (drives * ratio * efficiency);
        return torque / MotorModel.torqueConstantNmA(kvRpmPerV) + noLoadA;
    }

    /// {@return voltage left over (V) at this speed; zero at top speed}
    public double voltageLeftV(double speedMps) {
        double current = currentA(speedMps);
        double pack = packV - drives * dutyShare * current * packOhm;
        double motorRpm = speedMps * 60_000 / (Math.PI * wheelDiameterMm) * ratio;
        return dutyShare * pack - motorRpm / kvRpmPerV - current * leadOhm;
    }

    /// {@return loaded top speed (m/s); 0 where the motor cannot move the board, NaN where a number is unknown}
    public double loadedMps() {
        double most = withoutLoadMps();
        if (Double.isNaN(voltageLeftV(0))) {
            return Double.NaN;
        }
        if (voltageLeftV(0) <= 0) {
            return 0;
        }
        return new BracketingNthOrderBrentSolver(1e-9, 5).solve(200, this::voltageLeftV, 0, most);
    }
}
