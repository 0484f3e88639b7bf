package beltwright.ride;

import beltwright.part.Cell;
import beltwright.power.DriveLimits;
import beltwright.power.MotorHeat;
import beltwright.power.OpenCircuit;
import beltwright.power.Outrunner;
import beltwright.power.PackModel;
import beltwright.power.Powertrain;
import java.util.List;

/// Invented boards for tests, as plain numbers.
final class Boards {
    static final Cell CELL = new Cell(
            "invented",
            "invented",
            List.of(
                    new Cell.Point(0, 2.6),
                    new Cell.Point(0.1, 3.2),
                    new Cell.Point(0.5, 3.65),
                    new Cell.Point(1, 4.18)),
            2500,
            "invented",
            "invented");

    private Boards() {}

    static Board usual() {
        return of(92, 0.015, 0.45);
    }

    /// A hill kit with two motors.
    static Board of(double massKg, double rolling, double dragArea) {
        return new Board(
                new Powertrain(2, 2.5, 0.0485, 0.95, motor(), heat(), pack(), limits()),
                new Road(massKg, 3.1, rolling, dragArea, 1.2, 1, 0, 0.6, 0.5, 0.55, 1, 0.7),
                18,
                22 / 3.6,
                0.85,
                1,
                new Board.Belting(0.0255, 120, 2 / Math.sqrt(3), 120, false, 2),
                true,
                List.of(),
                List.of(),
                List.of());
    }

    static Outrunner motor() {
        return Outrunner.of(170, 0.044, 22, 1.6, 630, 0.5);
    }

    static MotorHeat heat() {
        return heat(0.55, 3);
    }

    static MotorHeat heat(double windingToCase, double caseToAir) {
        return new MotorHeat(110, 190, windingToCase, caseToAir, 0.063, 0.0155, 0.5, 120);
    }

    static PackModel pack() {
        return new PackModel(12, new OpenCircuit(CELL), 0.055, 20 * 3600, 80, 30, 50.4, 36);
    }

    static DriveLimits limits() {
        return new DriveLimits(39, 34, 35, 15, 0.95, 40.8, 37.2, 95, 115, 1500);
    }
}
