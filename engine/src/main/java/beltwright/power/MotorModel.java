package beltwright.power;

import beltwright.part.Controller;
import beltwright.part.Motor;

/// An outrunner as an equivalent direct-current machine.
///
///     Kt = 60/(2·π·Kv)      torque = Kt·I      loss = I²·R      U = ω/(Kv·2π/60) + I·R
///
/// I is the direct current of equal torque and R the resistance between two leads. A controller that states the peak
/// of a sine makes √3/2 of that torque per ampere; a resistance of one phase counts twice. Equal torque then means
/// equal loss in both conventions.
///
/// - Source: definition (SI); conventions as in any text on brushless machines.
/// - Valid: below magnetic saturation, winding at the temperature the resistance was measured at.
/// - Neglects: iron loss that grows with speed, heating of the copper.
public final class MotorModel {
    private MotorModel() {}

    /// {@return torque per ampere of direct current (N·m/A)}
    public static double torqueConstantNmA(double kvRpmPerV) {
        return 60 / (2 * Math.PI * kvRpmPerV);
    }

    /// {@return the direct current (A) that makes the torque of this controller current}
    public static double directCurrentA(double currentA, Controller.CurrentIs convention) {
        return convention == Controller.CurrentIs.DIRECT ? currentA : currentA * Math.sqrt(3) / 2;
    }

    /// {@return resistance between two leads (Ω)}
    public static double leadResistanceOhm(double resistanceOhm, Motor.Winding convention) {
        return convention == Motor.Winding.LINE_TO_LINE ? resistanceOhm : 2 * resistanceOhm;
    }

    /// {@return copper loss (W) at this direct current}
    public static double copperLossW(double directCurrentA, double leadResistanceOhm) {
        return directCurrentA * directCurrentA * leadResistanceOhm;
    }

    /// {@return what a motor turning without load loses in bearings, air and iron (W)}
    public static double noLoadLossW(double voltageV, double currentA, double resistanceOhm) {
        return currentA * (voltageV - currentA * resistanceOhm);
    }

    /// Resistance of a winding at another temperature: R·(1 + α·(t − t_α))/(1 + α·(t_R − t_α)).
    ///
    /// - Source: linear law of a metal, as in Bird, electrical circuit theory, ch. 3.
    /// - Valid: temperatures that a winding stands.
    ///
    /// @param resistanceOhm R, measured at `measuredAtC` (°C)
    /// @param perKelvin α of the material (1/K), stated for `statedAtC` (°C)
    public static double resistanceOhm(
            double resistanceOhm, double measuredAtC, double perKelvin, double statedAtC, double temperatureC) {
        return resistanceOhm
                * (1 + perKelvin * (temperatureC - statedAtC))
                / (1 + perKelvin * (measuredAtC - statedAtC));
    }
}
