package beltwright.pairs;

import beltwright.kit.Kit;
import beltwright.kit.Placement;
import beltwright.kit.Side;
import beltwright.pairs.Mending.Change;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/// The ways in which what a kit has can be set otherwise, in steps: no part is exchanged.
record Moves(Kit kit) {
    private static final double[] STEPS_MM = {0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10};
    private static final double[] STEPS_DEG = {2, 5, 10, 15, 20, 30};

    /// The mount further in or out, the pulley nearer or further, the motor higher or lower; alike on both sides.
    List<Change> all() {
        var changes = new ArrayList<Change>();
        for (double step : STEPS_MM) {
            for (double by : new double[] {step, -step}) {
                move(
                        "plateInsetMm",
                        "the mount " + mm(step) + (by > 0 ? " further in" : " further out"),
                        by,
                        step / 20,
                        changes);
                move(
                        "pulleyStandoffMm",
                        "the drive pulley " + mm(step) + (by > 0 ? " further from the plate" : " nearer the plate"),
                        by,
                        step / 25,
                        changes);
                move("idlerAsideMm", "the idler " + mm(step) + (by > 0 ? " up" : " down"), by, step / 25, changes);
                move(
                        "idlerAlongMm",
                        "the idler " + mm(step) + (by > 0 ? " towards the motor" : " towards the axle"),
                        by,
                        step / 25,
                        changes);
            }
        }
        for (double step : STEPS_DEG) {
            for (double by : new double[] {step, -step}) {
                move(
                        "aboveAxleDeg",
                        "the motor " + Numbers.plain(step) + "° " + (by > 0 ? "higher" : "lower"),
                        by,
                        0.2 + step / 50,
                        changes);
            }
        }
        return changes;
    }

    private static String mm(double value) {
        return Numbers.plain(value) + " mm";
    }

    private void move(String field, String says, double by, double size, List<Change> changes) {
        var moved = new TreeMap<Side, Placement>();
        var fields = new TreeMap<String, String>();
        kit.draft().placements().forEach((side, place) -> {
            var from = of(place, field);
            if (from.known() && from.nominal() + by >= least(field)) {
                var to = shifted(from, by);
                moved.put(side, with(place, field, to));
                fields.put("placements." + side + "." + field, to.text());
            }
        });
        if (!moved.isEmpty()) {
            changes.add(new Change(says, true, Map.of(), moved, fields, size));
        }
    }

    private static double least(String field) {
        return field.equals("plateInsetMm") || field.equals("pulleyStandoffMm") ? 0 : -150;
    }

    private static Dimension of(Placement p, String field) {
        return switch (field) {
            case "plateInsetMm" -> p.plateInsetMm();
            case "pulleyStandoffMm" -> p.pulleyStandoffMm();
            case "idlerAsideMm" -> p.idlerAsideMm();
            case "idlerAlongMm" -> p.idlerAlongMm();
            default -> p.aboveAxleDeg();
        };
    }

    private static Placement with(Placement p, String field, Dimension to) {
        return new Placement(
                p.motor(),
                field.equals("aboveAxleDeg") ? to : p.aboveAxleDeg(),
                field.equals("plateInsetMm") ? to : p.plateInsetMm(),
                field.equals("pulleyStandoffMm") ? to : p.pulleyStandoffMm(),
                field.equals("idlerAlongMm") ? to : p.idlerAlongMm(),
                field.equals("idlerAsideMm") ? to : p.idlerAsideMm(),
                p.tensionN(),
                p.jumpTests());
    }

    private static Dimension shifted(Dimension d, double by) {
        double nominal = Math.round((d.nominal() + by) * 1000) / 1000.0;
        double below = d.nominal() - d.lower();
        double above = d.upper() - d.nominal();
        var text = Numbers.plain(nominal).replace('−', '-')
                + (d.toleranced() ? " +" + Numbers.significant(above, 6) + "/-" + Numbers.significant(below, 6) : "");
        return new Dimension(d.of(), text, nominal, nominal - below, nominal + above, d.provenance());
    }
}
