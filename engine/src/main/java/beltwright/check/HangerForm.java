package beltwright.check;

import beltwright.part.DowelPin;
import beltwright.part.Material.Property;
import beltwright.quantity.Dimension;
import beltwright.strength.FlangeGrip;

/// What dowel pins or a stop hold of a mount that would turn on its hanger.
///
///     pins: T = n·min(τ·π/4·d², p·d·l)·r          stop: T = p·b·h·r
///     a pin that stands on the bottom of its hole in the hanger: l = min(b_hanger, b_mount, l_whole − b_hanger)
///
/// - Source: statics. What a torque that goes to and fro leaves of it, a half: textbooks let pins bear about half as
///   much under a load that reverses as under one that stands (from memory).
/// - Valid: pins fitted without play in both parts; a stop that bears in both ways of turning.
/// - Neglects: friction, which lets go before a pin or a stop bears, so the two are not added; the pin that fits
///   best bears first; bending of a pin across a gap.
final class HangerForm {
    private static final double REVERSING = 0.5;

    private HangerForm() {}

    static boolean pinned(Subject s) {
        return s.drive().mount().dowels() > 0;
    }

    static boolean stopped(Subject s) {
        return s.drive().mount().stopArmMm().known();
    }

    /// {@return whether anything but screws keeps the mount from turning}
    static boolean given(Subject s) {
        return pinned(s) || stopped(s);
    }

    /// {@return pressure that the softer of mount and hanger bears (MPa)}
    static double softerMpa(Subject s) {
        return Math.min(
                PlateStrength.of(s, Property.HEAD), Made.of(s, s.kit().hanger().material(), Property.HEAD));
    }

    static void writeSofter(Subject s, Working w) {
        if (!w.has("p_c")) {
            var hanger = s.kit().hanger();
            PlateStrength.quote(w, "p_mount", s, Property.HEAD);
            Made.given(w, "p_hanger", s, hanger.id() + ".material", hanger.material(), Property.HEAD);
            w.line("p_c", "min(p_mount, p_hanger)", softerMpa(s), "MPa", "the softer bears");
        }
    }

    /// {@return the pins of the kit; a blank where none fill the seat, and the mount says what it is held by}
    static DowelPin pin(Subject s) {
        return s.drive().dowelPin();
    }

    private static Dimension diameterMm(Subject s) {
        return pin(s).blank() ? s.drive().mount().dowelMm() : pin(s).diameterMm();
    }

    private static String material(Subject s) {
        return pin(s).blank() ? s.drive().mount().dowelMaterial() : pin(s).material();
    }

    /// {@return length of pin in the part that holds less of it (mm)}
    static double depthMm(Subject s, At at) {
        var mount = s.drive().mount();
        var hole = s.kit().hanger().dowelHoleDepthMm();
        return pin(s).blank()
                ? at.least(mount.dowelDepthMm())
                : FlangeGrip.pinDepthMm(
                        at.least(hole),
                        at.least(mount.dowelHoleDepthMm()),
                        at.least(pin(s).lengthMm()) - at.most(hole));
    }

    /// Writes the lines up to l_pin.
    static void writeDepth(Subject s, Working w) {
        var mount = s.drive().mount();
        if (pin(s).blank()) {
            w.given("l_pin", mount.dowelDepthMm());
            return;
        }
        w.given("L_pin", pin(s).lengthMm());
        w.given("b_hanger", s.kit().hanger().dowelHoleDepthMm());
        w.given("b_mount", mount.dowelHoleDepthMm());
        w.line(
                "l_pin",
                "max(0, min(min(b_hanger, b_mount), L_pin − b_hanger))",
                depthMm(s, At.NOMINAL),
                "mm",
                "in the part that holds less of it; it stands on the bottom of its hole in the hanger");
    }

    private static double shearNm(Subject s, At at) {
        var mount = s.drive().mount();
        return FlangeGrip.shearNm(
                mount.dowels(),
                at.least(diameterMm(s)),
                Made.of(s, material(s), Property.SHEAR),
                2 * at.least(mount.dowelArmMm()));
    }

    private static double bearingNm(Subject s, At at) {
        var mount = s.drive().mount();
        return FlangeGrip.bearingNm(
                mount.dowels(),
                at.least(diameterMm(s)),
                depthMm(s, at),
                softerMpa(s),
                2 * at.least(mount.dowelArmMm()));
    }

    private static double stopNm(Subject s, At at) {
        var mount = s.drive().mount();
        return FlangeGrip.stopNm(
                at.least(mount.stopWidthMm()) * at.least(mount.stopHeightMm()),
                softerMpa(s),
                at.least(mount.stopArmMm()));
    }

    /// {@return torque (N·m) that pins or stop hold as it goes to and fro; 0 where there is neither}
    static double holdsNm(Subject s, At at) {
        return REVERSING * givesNm(s, at);
    }

    /// {@return torque (N·m) at which pins or stop give, once}
    static double givesNm(Subject s, At at) {
        double pins = pinned(s) ? Math.min(shearNm(s, at), bearingNm(s, at)) : 0;
        return stopped(s) ? Math.max(pins, stopNm(s, at)) : pins;
    }

    /// {@return the furthest from the axle axis (mm) that pins or stop stand; 0 where there is neither}
    static double armMm(Subject s, At at) {
        var mount = s.drive().mount();
        double pins = pinned(s) ? at.most(mount.dowelArmMm()) : 0;
        return stopped(s) ? Math.max(pins, at.most(mount.stopArmMm())) : pins;
    }

    /// Writes the lines up to what pins and stop hold, and what then holds the joint.
    ///
    /// @param other symbol of what holds it without them
    /// @param symbol of what holds it with them
    /// @param holds with them (N·m)
    /// @param once whether it is asked for one blow and not for torque that reverses
    static void write(Subject s, Working w, String other, String symbol, double holds, boolean once) {
        writeSofter(s, w);
        var share = once ? "" : "k_rev·";
        if (!once) {
            w.given("k_rev", "share that is left when torque reverses", REVERSING, "", "textbooks, from memory");
        }
        var all = new StringBuilder(other);
        double factor = once ? 1 : REVERSING;
        if (pinned(s)) {
            writePins(s, w);
            double pins = factor * Math.min(shearNm(s, At.NOMINAL), bearingNm(s, At.NOMINAL));
            w.line("T_pin", share + "min(T_shear, T_bear)", pins, "N·m", "pins hold, whichever is less");
            all.append(", T_pin");
        }
        if (stopped(s)) {
            var mount = s.drive().mount();
            w.given("b_stop", mount.stopWidthMm());
            w.given("h_stop", mount.stopHeightMm());
            w.given("r_stop", mount.stopArmMm());
            w.line(
                    "T_stop",
                    share + "p_c·b_stop·h_stop·r_stop/1000",
                    factor * stopNm(s, At.NOMINAL),
                    "N·m",
                    "the stop bears");
            all.append(", T_stop");
        }
        w.line(
                symbol,
                "max(" + all + ")",
                holds,
                "N·m",
                "not added to each other: friction lets go before pins or a stop bear");
    }

    private static void writePins(Subject s, Working w) {
        var mount = s.drive().mount();
        w.given("n_pin", mount.id() + ".dowels", mount.dowels(), "", "count");
        w.given("d_pin", diameterMm(s));
        writeDepth(s, w);
        w.given("r_pin", mount.dowelArmMm());
        var field = pin(s).blank() ? mount.id() + ".dowelMaterial" : pin(s).id() + ".material";
        Made.given(w, "τ_pin", s, field, material(s), Property.SHEAR);
        w.line(
                "T_shear",
                "n_pin·τ_pin·π/4·d_pin^2·r_pin/1000",
                shearNm(s, At.NOMINAL),
                "N·m",
                "pins shear off between mount and hanger");
        w.line("T_bear", "n_pin·p_c·d_pin·l_pin·r_pin/1000", bearingNm(s, At.NOMINAL), "N·m", "pins widen their holes");
    }
}
