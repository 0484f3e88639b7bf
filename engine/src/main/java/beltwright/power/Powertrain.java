package beltwright.power;

/// Motors, belts, controller and pack of one board: what comes of a wish to push or brake, and what decides.
///
///     motor speed      ω = i·v/r
///     push             F = n·i/r·M·η driving,  n·i/r·M/η braking        (M torque at the shaft)
///     conversion       n·(E·I + I²·R) = U·I_p                            the controller as a converter without loss
///     pack             U = U_0 − R_p·I_p
///
/// Upper bounds on the current of one motor, all in closed form because U itself depends on it:
///
///     phase current    I ≤ I_max·warmShare(T_w)
///     duty             I ≤ (s·U_0 − E)/(R + n·s²·R_p)
///     electrical speed I falls to none over the last 2 % below the limit
///     battery current  I ≤ (−E + √(E² + 4·R·P/n))/(2·R),   P = U·I_p at the least of the limits of controller, pack,
///                      low voltage and half the short-circuit current
///
/// and lower bounds: the brake's phase current; and, because braking charges the pack, the same formula with the power
/// that pack and controller take, where E²/(4·R) is more than that. A brake never passes through the band in which it
/// would have to charge harder.
///
/// - Source: conservation of power; direct-current machine; Ohm.
/// - Valid: motors alike and sharing alike; no slip of the tread (the grip bound is the caller's).
/// - Neglects: loss in the controller (a few percent near full power), its own supply.
///
/// @param motors n
/// @param ratio i, wheel teeth over motor teeth
/// @param wheelRadiusM r (m)
/// @param beltShare η, share of shaft power that a belt passes on (1)
public record Powertrain(
        int motors,
        double ratio,
        double wheelRadiusM,
        double beltShare,
        Outrunner motor,
        MotorHeat heat,
        PackModel pack,
        DriveLimits limits) {
    private static final double LAST_SHARE = 0.02;

    /// {@return motor speed (rad/s) at a board speed}
    public double radPerS(double speedMps) {
        return speedMps / wheelRadiusM * ratio;
    }

    /// {@return push at the treads (N) from this torque at each shaft}
    public double pushN(double shaftNm) {
        double through = motors * ratio / wheelRadiusM * shaftNm;
        return shaftNm > 0 ? through * beltShare : through / beltShare;
    }

    /// {@return torque at each shaft (N·m) that gives this push}
    public double shaftNm(double pushN) {
        double one = pushN * wheelRadiusM / (motors * ratio);
        return pushN > 0 ? one / beltShare : one * beltShare;
    }

    /// Works out one moment.
    ///
    /// @param wantedN push at the treads that is asked for (N); infinite for as much as there is
    /// @param gripN push that the treads hold in this direction (N, not negative)
    /// @param charge share of full charge (0 to 1)
    public void at(double speedMps, double wantedN, double gripN, double charge, double windingC, Operating out) {
        double omega = radPerS(speedMps);
        double e = motor.backEmfV(omega);
        double r = motor.resistanceOhm(windingC);
        double open = pack.openV(charge);
        var governs = Governs.WISH;
        double held = Math.clamp(wantedN, -gripN, gripN);
        if (held != wantedN) {
            governs = Governs.GRIP;
        }
        double wish = motor.currentA(shaftNm(held), omega);
        double current = wish;

        double upper = limits.driveA() * limits.warmShare(windingC);
        var upperIs = upper < limits.driveA() ? Governs.HEAT : Governs.PHASE_CURRENT;
        double duty = limits.dutyShare();
        double byDuty = (duty * open - e) / (r + motors * duty * duty * pack.ohm());
        if (byDuty < upper) {
            upper = byDuty;
            upperIs = Governs.SPEED_VOLTAGE;
        }
        double slower = (limits.mostRadPerS() - omega) / (LAST_SHARE * limits.mostRadPerS());
        if (slower < 1 && upper > 0) {
            upper *= Math.max(0, slower);
            upperIs = Governs.ELECTRICAL_SPEED;
        }
        if (upper < 0) {
            // Back-EMF above what the controller puts out: it cannot drive; above the pack itself it cannot even let
            // go.
            upper = Math.min(0, -(e - open) / (r + motors * pack.ohm()));
            upperIs = upper < 0 ? Governs.OVER_RUN : upperIs;
        }
        if (current > upper) {
            current = upper;
            governs = upperIs;
        }
        if (current > 0) {
            double byController = motors * limits.batteryA();
            double most = byController;
            var mostIs = Governs.BATTERY_CURRENT;
            if (pack.dischargeA() < most) {
                most = pack.dischargeA();
                mostIs = Governs.PACK_CURRENT;
            }
            double from = limits.cutBackFromV();
            double to = limits.cutBackToV();
            double byVoltage = Math.max(0, byController * (open - to) / (from - to + pack.ohm() * byController));
            if (byVoltage < most) {
                most = byVoltage;
                mostIs = Governs.LOW_VOLTAGE;
            }
            double half = open / (2 * pack.ohm());
            if (half < most) {
                most = half;
                mostIs = Governs.PACK_CURRENT;
            }
            double power = (open - pack.ohm() * most) * most;
            double byPower = power <= 0 ? 0 : 2 * power / motors / (e + Math.sqrt(e * e + 4 * r * power / motors));
            if (current > byPower) {
                current = byPower;
                governs = mostIs;
            }
        } else if (current < 0 && governs != Governs.OVER_RUN) {
            double lower = -limits.brakeA() * limits.warmShare(windingC);
            var lowerIs = -lower < limits.brakeA() ? Governs.HEAT : Governs.BRAKE_CURRENT;
            double takes = motors * limits.chargeA();
            var takesIs = Governs.CHARGE_CURRENT;
            double accepts = pack.acceptsA(charge);
            if (accepts < takes) {
                takes = accepts;
                takesIs = Governs.PACK_FULL;
            }
            double power = (open + pack.ohm() * takes) * takes;
            double root = e * e - 4 * r * power / motors;
            if (root >= 0 && e > 0) {
                double byCharge = -2 * power / motors / (e + Math.sqrt(root));
                if (byCharge > lower) {
                    lower = byCharge;
                    lowerIs = takesIs;
                }
            }
            if (lower > upper) {
                lower = upper;
                lowerIs = upperIs;
            }
            if (current < lower) {
                current = lower;
                governs = lowerIs;
            }
        }
        out.beyondA = governs == Governs.WISH || governs == Governs.GRIP ? 0 : Math.abs(wish - current);
        out.governs = governs;
        fill(out, omega, e, r, open, current);
    }

    private void fill(Operating out, double omega, double e, double r, double open, double current) {
        double shaft = motor.shaftNm(current, omega);
        double electric = motors * (e * current + current * current * r);
        out.radPerS = omega;
        out.currentA = current;
        out.shaftNm = shaft;
        out.pushN = pushN(shaft);
        out.openV = open;
        out.packA = pack.currentAt(open, electric);
        out.packV = open - out.packA * pack.ohm();
        out.copperW = current * current * r;
        out.ironW = motor.lossNm(omega) * omega;
        out.beltW = motors * shaft * omega - out.pushN * omega * wheelRadiusM / ratio;
    }
}
