package beltwright.power;

import beltwright.part.Cell;

/// Open-circuit voltage of one cell by charge: straight lines between the points of a published curve.
///
/// - Valid: at rest; below empty and above full the end points hold.
public final class OpenCircuit {
    /// The curve of a cell that nobody named: every voltage is unknown.
    public static final OpenCircuit UNKNOWN = new OpenCircuit();

    private final double[] charge;
    private final double[] volts;

    private OpenCircuit() {
        charge = new double[] {0, 1};
        volts = new double[] {Double.NaN, Double.NaN};
    }

    public OpenCircuit(Cell cell) {
        charge = cell.curve().stream().mapToDouble(Cell.Point::charge).toArray();
        volts = cell.curve().stream().mapToDouble(Cell.Point::voltageV).toArray();
    }

    /// {@return voltage (V) at a share of full charge (0 to 1)}
    public double voltageV(double share) {
        if (Double.isNaN(share)) {
            return Double.NaN;
        }
        if (share >= 1) {
            return volts[volts.length - 1];
        }
        int i = 1;
        while (i < charge.length - 1 && share > charge[i]) {
            i++;
        }
        double within = Math.max(0, share - charge[i - 1]) / (charge[i] - charge[i - 1]);
        return volts[i - 1] + within * (volts[i] - volts[i - 1]);
    }
}
