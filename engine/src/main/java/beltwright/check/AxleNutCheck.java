package beltwright.check;

import beltwright.kit.Role;
import beltwright.part.Material.Property;
import beltwright.power.RoadLoad;
import beltwright.strength.ThreadStrip;

/// Nut and thread stand their own tightening and the side force that pulls the wheel off.
final class AxleNutCheck extends StrengthCheck {
    /// The ring of a locking nut that locks carries nothing.
    private static final double LOCKING_SHARE = 2.0 / 3;

    AxleNutCheck() {
        super(
                "axle-nut-holds",
                "Axle nut and thread hold the wheel",
                "N",
                Scope.END,
                "stress area ISO 898-1; stripping FED-STD-H28 form; torque, scatter and side force: common practice, "
                        + "no source",
                Role.HANGER,
                Role.AXLE_NUT);
    }

    private static double bearsMm(Subject s, At at) {
        double height = at.least(s.end().nut().heightMm());
        return s.end().nut().locking() ? LOCKING_SHARE * height : height;
    }

    private static double stripMm2(Subject s) {
        var thread = s.kit().hanger().axleThread();
        return ThreadStrip.externalAreaPerMm(thread.pitchMm(), thread.minorDiameterMm(), thread.pitchDiameterMm());
    }

    @Override
    double demand(Subject s, At at, double motorNm) {
        return AxleLoad.nutN(s, at) + AxleLoad.sideN(s, at);
    }

    @Override
    double capacity(Subject s, At at, double motorNm) {
        var material = Made.axle(s.kit().hanger());
        return Math.min(
                s.kit().hanger().axleThread().stressAreaMm2() * Made.of(s, material, Property.YIELD),
                stripMm2(s) * bearsMm(s, at) * Made.of(s, material, Property.SHEAR));
    }

    @Override
    void write(Subject s, Working w) {
        var hanger = s.kit().hanger();
        var material = Made.axle(hanger);
        var nut = s.end().nut();
        AxleLoad.writeNut(s, w);
        w.given("m", s.kit().task().allUpMassKg());
        w.given("q", Assumed.axleShare(s.kit()));
        w.given("g", "standard gravity", RoadLoad.G, "m/s²", "ISO 80000-3");
        w.given("k_side", Assumed.cornering(s.kit()));
        w.line("F_s", "k_side·m·g·q/100/2", AxleLoad.sideN(s, At.NOMINAL), "N", "side force at the tread");
        w.line("F_nut", "F_n + F_s", demand(s, At.NOMINAL, 0), "N", "pulls at the nut");
        Made.given(w, "R_p", s, hanger.id() + ".axleMaterial", material, Property.YIELD);
        Made.given(w, "τ", s, hanger.id() + ".axleMaterial", material, Property.SHEAR);
        w.line("A_t", "π/4·(d_s − 0.938194·p_s)^2", hanger.axleThread().stressAreaMm2(), "mm²", "stress area");
        w.given("h_nut", nut.heightMm());
        w.given(
                "k_nut",
                nut.locking() ? "share of a locking nut that carries" : "share of a plain nut that carries",
                nut.locking() ? LOCKING_SHARE : 1,
                "",
                nut.locking() ? "ISO 7040, from memory" : "all of it");
        w.line(
                "A_1",
                "π·(d_s − 1.082532·p_s)/p_s·(p_s/2 + 0.57735·(1.082532 − 0.649519)·p_s)",
                stripMm2(s),
                "mm²/mm",
                "thread of the axle that shears, for each millimetre");
        w.line(
                "F_holds",
                "min(A_t·R_p, A_1·k_nut·h_nut·τ)",
                capacity(s, At.NOMINAL, 0),
                "N",
                "the axle yields, or its thread strips; a nut no weaker than the axle");
    }

    @Override
    public String remedy(Subject s, Reading r) {
        return "a stronger axle steel or a higher nut; tighten no further than the guide says: an over-tightened "
                + "thread strips and the wheel comes off";
    }
}
