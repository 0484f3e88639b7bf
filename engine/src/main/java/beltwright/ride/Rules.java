package beltwright.ride;

import beltwright.kit.Task;
import beltwright.part.BatteryPack;
import beltwright.part.Controller;
import beltwright.part.Motor;
import beltwright.part.Part;
import beltwright.part.Wheel;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Source;

/// The estimating rules: what stands in for a number that nobody gave, each with its reason. `docs/theory.md` lists
/// them; `--no-estimates` turns them off, and whatever needs such a number then cannot be told.
///
/// None has a published source for electric boards; each is habit or a rough rule of size, and marks what rests on it.
///
/// @param allowed whether rules may estimate at all
record Rules(boolean allowed) {
    private static final double STATOR_SHARE = 0.4; // of a motor's mass, copper and iron of the stator
    private static final double STATOR_HEAT = 420; // J/(kg·K), between copper and iron
    private static final double CASE_HEAT = 480; // J/(kg·K), between steel and aluminium
    private static final double GAP = 0.0075; // K·m²/W, stator to can
    private static final double STILL = 10; // W/(m²·K), still air and radiation

    private Dimension or(Dimension typed, double value, String rule) {
        return typed.known() || !allowed || Double.isNaN(value)
                ? typed
                : new Dimension(
                        typed.of(),
                        Numbers.significant(value, 3),
                        value,
                        value,
                        value,
                        new Provenance(Source.ESTIMATE, rule));
    }

    private Dimension of(Part part, String field, double value, String rule) {
        var nowhere = new Provenance(Source.ESTIMATE, rule);
        return or(Dimension.unknown(part.id() + "." + field, nowhere), value, rule);
    }

    Dimension resistanceAtC(Motor m) {
        return or(m.resistanceAtC(), 20, "measured in a room");
    }

    Dimension noLoadAtRpm(Motor m, BatteryPack pack) {
        return or(
                m.noLoadAtRpm(),
                m.kvRpmPerV().nominal()
                        * pack.cellsInSeries()
                        * pack.cellVoltageV().nominal(),
                "read at the working voltage of this pack");
    }

    Dimension noLoadGrowth(Motor m) {
        return or(m.noLoadGrowthPercent(), 50, "half of the loss torque grows with speed");
    }

    Dimension windingHeat(Motor m) {
        return or(
                m.windingJPerK(),
                STATOR_SHARE * m.label().massKg().nominal() * STATOR_HEAT,
                "two fifths of the mass is stator");
    }

    Dimension caseHeat(Motor m) {
        return or(
                m.caseJPerK(),
                (1 - STATOR_SHARE) * m.label().massKg().nominal() * CASE_HEAT,
                "three fifths of the mass is can");
    }

    Dimension windingToCase(Motor m) {
        return or(m.windingToCaseKPerW(), GAP / side(m), "0.0075 K·m²/W over the side of the can");
    }

    Dimension caseToAir(Motor m) {
        double can = m.canDiameterMm().nominal() / 1000;
        return or(
                m.caseToAirKPerW(),
                1 / (2 * STILL * (side(m) + Math.PI * can * can / 4)),
                "10 W/(m²·K) over side and end of the can, and as much again through the mount");
    }

    private static double side(Motor m) {
        return Math.PI * m.canDiameterMm().nominal() * m.canLengthMm().nominal() / 1e6;
    }

    Dimension airflow(Motor m, boolean covered) {
        return or(
                m.airflowPercent(),
                covered ? 15 : 50,
                covered ? "under a cover little of the road's air" : "behind truck and wheel half of the road's air");
    }

    Dimension mostWinding(Motor m) {
        return or(m.mostWindingC(), 120, "common magnets and enamel");
    }

    Dimension rotorInertia(Motor m) {
        double can = m.canDiameterMm().nominal() / 2000;
        return or(
                m.rotorKgM2(),
                0.5 * m.label().massKg().nominal() * 0.8 * can * can,
                "half of the mass at nine tenths of the radius");
    }

    Dimension wheelInertia(Wheel w) {
        double r = w.diameterMm().nominal() / 2000;
        return of(w, "inertiaKgM2", 0.6 * w.label().massKg().nominal() * r * r, "between a disc and a ring");
    }

    Dimension packResistanceAtC(BatteryPack p) {
        return or(p.resistanceAtC(), 20, "measured in a room");
    }

    Dimension leastChargeC(BatteryPack p) {
        return or(p.leastChargeC(), 0, "no charge below freezing unless the cell's data sheet allows it");
    }

    Dimension controllerCharge(Controller c) {
        return or(c.chargeCurrentA(), c.batteryCurrentA().nominal(), "as much in as out");
    }

    Dimension cutBackFrom(Controller c, BatteryPack p) {
        return or(c.cutBackFromV(), p.cellsInSeries() * (p.emptyCellV().nominal() + 0.2), "0.2 V a cell above empty");
    }

    Dimension cutBackTo(Controller c, BatteryPack p) {
        return or(c.cutBackToV(), p.cellsInSeries() * p.emptyCellV().nominal(), "empty cells");
    }

    Dimension windingFrom(Controller c, Motor m) {
        return or(c.windingCutBackFromC(), mostWinding(m).nominal() - 20, "20 K below the motor's limit");
    }

    Dimension windingTo(Controller c, Motor m) {
        return or(c.windingCutBackToC(), mostWinding(m).nominal(), "the motor's limit");
    }

    Dimension bearingDrag(Task t) {
        return or(t.bearingDragN(), 1, "light contact seals, all wheels together");
    }

    Dimension headWind(Task t) {
        return or(t.headWindMps(), 0, "still air");
    }

    Dimension airC(Task t) {
        return or(t.airC(), 20, "a mild day");
    }

    Dimension cellC(Task t) {
        return or(t.cellC(), airC(t).nominal(), "cells as warm as the air");
    }

    Dimension charge(Task t) {
        return or(t.chargePercent(), 95, "charged a little below full");
    }

    Dimension reaction(Task t) {
        return or(t.reactionS(), 1, "common practice, no source");
    }

    Dimension grip(Task t) {
        return or(t.gripShare(), 0.6, "urethane on dry asphalt, from memory");
    }

    Dimension driven(Task t) {
        return or(t.drivenPercent(), 50, "rider in the middle");
    }

    Dimension drivenBraking(Task t) {
        return or(t.drivenBrakingPercent(), 55, "rider leaning back, common practice, no source");
    }

    Dimension massHeight(Task t) {
        return or(t.massHeightMm(), 1000, "a grown rider standing on a board");
    }
}
