package beltwright.press.caliper;

import static beltwright.press.caliper.Pane.p;

import beltwright.press.drawing.Fill;

/// Battery pack and controller: only their plugs are measured.
final class ElectricFigures {
    private ElectricFigures() {}

    static void pack(Figure figure) {
        var pane = figure.view().caption("plug of the pack, a round and a flat contact");
        pane.rectangle(-62, -16, -26, 16, Fill.PAPER);
        for (double x : new double[] {-53, -44, -35}) {
            pane.edge(x, -16, x, 16);
        }
        contacts(pane);
    }

    static void controller(Figure figure) {
        var pane = figure.view().caption("plug towards the pack");
        box(pane);
        contacts(pane);
        socket(figure.row().view().caption("socket for a phase plug"));
        sensor(figure.view().caption("sensor socket"));
    }

    private static void box(Pane pane) {
        pane.rectangle(-62, -16, -26, 16, Fill.PAPER);
        for (double y : new double[] {-10, -5, 0, 5, 10}) {
            pane.edge(-58, y, -30, y);
        }
    }

    /// Two wires to a plug, its contacts seen from their side and from the front.
    private static void contacts(Pane pane) {
        for (int side = -1; side <= 1; side += 2) {
            pane.outline(-26, side * 6 + 1.5, -12, side * 6 + 1.5);
            pane.outline(-26, side * 6 - 1.5, -12, side * 6 - 1.5);
            pane.rectangle(2, side * 6 - 2.5, 14, side * 6 + 2.5, Fill.PAPER);
        }
        pane.rectangle(-12, -12, 2, 12, Fill.PAPER);
        pane.upright("plugMm", p(14, 3.5), p(14, 8.5), 21);
        pane.rectangle(34, -12, 46, 12, Fill.PAPER);
        pane.disc(p(40, 6), 5, Fill.PAPER);
        pane.rectangle(37.5, -7.5, 42.5, -4.5, Fill.PAPER);
    }

    private static void socket(Pane pane) {
        pane.turned(Fill.STEEL, "0 5, 0 8, 22 8, 22 5");
        pane.rectangle(22, -4, 34, 4, Fill.PAPER);
        pane.outline(22, -5, 22, 5);
        pane.centre(-4, 0, 38, 0);
        pane.upright("phasePlugMm", p(0, -5), p(0, 5), -8);
    }

    /// A flat connector from the front: a row of pins.
    static void sensor(Pane pane) {
        pane.rectangle(-28, -7, 28, 7, Fill.PAPER);
        pane.rectangle(-25, -4.5, 25, 4.5, Fill.PAPER);
        for (double x = -22.5; x < 25; x += 9) {
            pane.rectangle(x - 1.5, -1.5, x + 1.5, 1.5, Fill.INK);
        }
        pane.centre(4.5, -4, 4.5, 10);
        pane.centre(13.5, -4, 13.5, 10);
        pane.level("sensorPitchMm", p(4.5, 10), p(13.5, 10), 15);
    }
}
