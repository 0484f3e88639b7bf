package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.Material.Property;
import beltwright.part.ShaftForm;
import beltwright.strength.Fatigue;
import beltwright.strength.ShaftStress;
import beltwright.strength.StaticBearing;

/// Does the motor's shaft last? It turns under a belt that pulls one way, so its bending reverses with every turn.
///
///     plain at the front bearing: M = P·(x + a)          with flat or keyway from the mounting face on: M = P·x
///     σ_a = √((K_f·σ)² + 3·(K_fs·τ)²) against S_e
///
/// Where a flat or a keyway begins nobody says; it is taken to begin at the mounting face. Driving and braking turn the
/// torque around; it is counted as if it did so with every turn, which is safe.
final class MotorShaftCheck extends StrengthCheck {
    private static final double ROUNDING = 0.02; // r/d for which the source gives its factors

    MotorShaftCheck() {
        super(
                "motor-shaft",
                "Motor's shaft lasts under the overhung pull",
                "MPa",
                Scope.DRIVE,
                "Shigley, Mechanical Engineering Design, ch. 6 and 7; notch factors of its table 7-1 from memory, a flat as "
                        + "a keyway that runs out",
                Role.MOTOR,
                Role.DRIVE_PULLEY,
                Role.MOUNT,
                Role.WHEEL_PULLEY,
                Role.CONTROLLER,
                Role.WHEEL);
        placed();
    }

    @Override
    TensionLimit.Bearer bearer() {
        return TensionLimit.Bearer.MOTOR_SHAFT;
    }

    @Override
    boolean torqued() {
        return true;
    }

    @Override
    String gives() {
        return "the motor's shaft tires";
    }

    private static double form(ShaftForm form) {
        return switch (form) {
            case ROUND -> 1;
            case FLAT, TWO_FLATS -> 1.7;
            case KEYED -> 2.14;
        };
    }

    private static double twistForm(ShaftForm form) {
        return switch (form) {
            case ROUND -> 1;
            case FLAT, TWO_FLATS -> 1.7;
            case KEYED -> 3.0;
        };
    }

    private static double outMm(Subject s, At at) {
        return at.most(s.at().driveRimMiddleMm().minus(s.at().plateInnerMm()));
    }

    private static double tensile(Subject s) {
        return Made.of(s, s.drive().motor().shaftMaterial(), Property.TENSILE);
    }

    private static double radiusMm(Subject s) {
        return ROUNDING * s.drive().motor().shaftDiameterMm().nominal();
    }

    private static double notch(Subject s) {
        return Fatigue.notchFactor(
                form(s.drive().motor().shaftForm()), Fatigue.notchSensitivity(tensile(s), radiusMm(s)));
    }

    private static double twistNotch(Subject s) {
        return Fatigue.notchFactor(
                twistForm(s.drive().motor().shaftForm()), Fatigue.twistNotchSensitivity(tensile(s), radiusMm(s)));
    }

    private static double stressMpa(Subject s, At at, double motorNm, boolean notched) {
        var motor = s.drive().motor();
        double d = at.least(motor.shaftDiameterMm());
        double lever = outMm(s, at) + (notched ? 0 : at.most(motor.frontBearingMm()));
        double bending = StaticBearing.bendingNm(Tension.pullN(s, at, motorNm), lever);
        return ShaftStress.misesMpa(
                (notched ? notch(s) : 1) * ShaftStress.bendingMpa(bending, d),
                (notched ? twistNotch(s) : 1) * ShaftStress.twistMpa(motorNm, d));
    }

    @Override
    double demand(Subject s, At at, double motorNm) {
        return Math.max(stressMpa(s, at, motorNm, false), stressMpa(s, at, motorNm, true));
    }

    @Override
    double capacity(Subject s, At at, double motorNm) {
        return Fatigue.surfaceFactor(tensile(s))
                * size(s)
                * Fatigue.RELIABLE_99
                * Made.of(s, s.drive().motor().shaftMaterial(), Property.FATIGUE);
    }

    private static double size(Subject s) {
        return Math.min(
                1, Fatigue.sizeFactor(s.drive().motor().shaftDiameterMm().nominal()));
    }

    @Override
    void write(Subject s, Working w) {
        var motor = s.drive().motor();
        double torque = motorNm(s, At.NOMINAL);
        boolean notched = stressMpa(s, At.NOMINAL, torque, true) >= stressMpa(s, At.NOMINAL, torque, false);
        Tension.writePull(s, w);
        w.given(
                "x",
                "mounting face to the middle of the belt",
                s.at().driveRimMiddleMm().minus(s.at().plateInnerMm()),
                "layout");
        double pull = Tension.pullN(s, At.NOMINAL, torque);
        if (notched) {
            w.line(
                    "M_x",
                    "P·x/1000",
                    StaticBearing.bendingNm(pull, outMm(s, At.NOMINAL)),
                    "N·m",
                    motor.shaftForm() + " shaft: bending where its notch is taken to begin, the worse section");
        } else {
            w.given("a", motor.frontBearingMm());
            w.line(
                    "M_x",
                    "P·(x + a)/1000",
                    StaticBearing.bendingNm(
                            pull, outMm(s, At.NOMINAL) + motor.frontBearingMm().nominal()),
                    "N·m",
                    "bending at the front bearing, the worse section");
        }
        var field = motor.id() + ".shaftMaterial";
        var material = motor.shaftMaterial();
        Made.given(w, "S_ut", s, field, material, Property.TENSILE);
        w.given("d_shaft", motor.shaftDiameterMm());
        writeNotch(s, w, notched);
        w.line(
                "σ_a",
                "√((K_f·32000·M_x/(π·d_shaft^3))^2 + 3·(K_fs·16000·M/(π·d_shaft^3))^2)",
                stressMpa(s, At.NOMINAL, torque, notched),
                "MPa",
                "amplitude of bending and twist, every turn");
        w.line("k_a", "2.70·(S_ut/6.894757)^(−0.265)", Fatigue.surfaceFactor(tensile(s)), "", "surface, machined");
        w.line("k_size", "min(1, 0.879·(d_shaft/25.4)^(−0.107))", size(s), "", "size, of a shaft that turns");
        w.given("k_e", "99 of 100 last", Fatigue.RELIABLE_99, "", "Shigley, ch. 6");
        Made.given(w, "S_bar", s, field, material, Property.FATIGUE);
        w.line("S_e", "k_a·k_size·k_e·S_bar", capacity(s, At.NOMINAL, torque), "MPa", "endurance limit of the shaft");
    }

    private static void writeNotch(Subject s, Working w, boolean notched) {
        var form = s.drive().motor().shaftForm();
        if (!notched) {
            w.given("K_f", "plain shaft", 1, "", "a press fit frets, which is not counted");
            w.given("K_fs", "plain shaft", 1, "", "likewise");
            return;
        }
        w.given("K_t", "form factor, " + form + " shaft", form(form), "", "Shigley, table 7-1, from memory");
        w.given("K_ts", "the same in twisting", twistForm(form), "", "Shigley, table 7-1, from memory");
        w.given(
                "q_k",
                "how much of it this steel feels",
                Fatigue.notchSensitivity(tensile(s), radiusMm(s)),
                "",
                "Shigley, eq. 6-35a, at r/d 0.02");
        w.given(
                "q_s",
                "the same in twisting",
                Fatigue.twistNotchSensitivity(tensile(s), radiusMm(s)),
                "",
                "Shigley, ch. 6, at r/d 0.02");
        w.line("K_f", "1 + q_k·(K_t − 1)", notch(s), "", "notch factor");
        w.line("K_fs", "1 + q_s·(K_ts − 1)", twistNotch(s), "", "notch factor in twisting");
    }

    @Override
    public String says(Subject s, Reading r) {
        return r.demandText() + " MPa to and fro with every turn; it stands " + r.capacityText();
    }

    @Override
    public String remedy(Subject s, Reading r) {
        return "the belt nearer the motor, a looser belt that still does not jump, a thicker shaft, or lower current limits";
    }
}
