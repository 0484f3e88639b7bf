package beltwright.part;

import beltwright.quantity.Refusal;
import java.util.List;

/// A cell as a pack needs it: its open-circuit curve and how its resistance falls with warmth. Values come from the
/// workshop's reference file, with the source.
///
/// @param curve open-circuit voltage by charge, from empty to full, both rising
/// @param activationK how steeply resistance falls with temperature: R ∝ exp(activationK/T); NaN where unknown
/// @param source where the curve was read
/// @param warmthSource where the fall of resistance was read
public record Cell(String id, String name, List<Point> curve, double activationK, String source, String warmthSource) {
    /// Open-circuit voltage (V) at a share of full charge (0 to 1).
    public record Point(double charge, double voltageV) {}

    public Cell {
        curve = List.copyOf(curve);
        if (curve.size() < 2
                || curve.getFirst().charge() != 0
                || curve.getLast().charge() != 1) {
            throw new Refusal(id + ".curve", "does not run from empty to full", "charge from 0 to 1", "add the ends");
        }
        for (int i = 1; i < curve.size(); i++) {
            if (!(curve.get(i).charge() > curve.get(i - 1).charge()
                    && curve.get(i).voltageV() > curve.get(i - 1).voltageV())) {
                throw new Refusal(
                        id + ".curve",
                        "point " + (i + 1) + " does not rise above the point before",
                        "charge and voltage that rise from point to point",
                        "put the points in order");
            }
        }
    }
}
