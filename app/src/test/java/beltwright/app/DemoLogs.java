package beltwright.app;

import beltwright.ride.Board;
import beltwright.ride.Channel;
import beltwright.ride.Log;
import beltwright.ride.Log.Reading;
import beltwright.ride.RideSolver;
import beltwright.ride.Rider;
import beltwright.ride.Route;
import beltwright.workshop.Edit;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/// The invented logs of the demo, made from a board whose true coefficients are known, and with noise from one seed.
final class DemoLogs {
    static final Path FOLDER = Typed.ROOT.resolve("demo").resolve("logs");
    static final String KIT = "steep-street";
    static final double ROLLING_PERCENT = 1.22;
    static final double DRAG_AREA_M2 = 0.56;
    static final double MASS_KG = 88;
    static final double WINDING_TO_CASE = 0.72;
    static final double CASE_TO_AIR = 2.4;

    private static final long SEED = 20261114;

    private DemoLogs() {}

    /// {@return text by name of the file}
    static Map<String, String> files() {
        var coast = coast();
        return Map.of(
                "river-coast.yaml", "# Invented example.\n" + Codec.write(new Document.OfLog(coast)),
                "hill-test.yaml", "# Invented example.\n" + Codec.write(new Document.OfLog(ride())),
                "river-coast.csv", recorder(coast));
    }

    /// The board as it truly is, where the kit as kept only estimates.
    static Board truth(double massKg) {
        return Board.of(DemoKits.SHELF
                .with(List.of(
                        new Edit(KIT, "task.rollingPercent", String.valueOf(ROLLING_PERCENT)),
                        new Edit(KIT, "task.dragAreaM2", String.valueOf(DRAG_AREA_M2)),
                        new Edit(KIT, "task.allUpMassKg", String.valueOf(massKg)),
                        new Edit("motor-63", "windingToCaseKPerW", String.valueOf(WINDING_TO_CASE)),
                        new Edit("motor-63", "caseToAirKPerW", String.valueOf(CASE_TO_AIR))))
                .kit(KIT));
    }

    private static Log log(String id, String with, Log.Belts belts, Map<Reading, List<Double>> readings) {
        return new Log(id, KIT, "workshop", with, LocalDate.of(2026, 11, 14), belts, readings);
    }

    /// Rolls out on level ground without belts, in closed form:
    /// m·v' = −(a + b·v²), so v = √(a/b)·tan(atan(v₀·√(b/a)) − t·√(a·b)/m).
    private static Log coast() {
        var random = new Random(SEED);
        var board = truth(95);
        var road = board.road();
        double m = road.inertialKg() - board.belting().motorsKg();
        double a = road.rollingN(0) + road.bearingN();
        double b = 0.5 * road.airKgM3() * road.dragAreaM2();
        var time = new ArrayList<Double>();
        var speed = new ArrayList<Double>();
        for (int i = 0; ; i++) {
            double t = 0.25 * i;
            double v = Math.sqrt(a / b) * Math.tan(Math.atan(8.5 * Math.sqrt(b / a)) - t * Math.sqrt(a * b) / m);
            if (v < 1) {
                return log(
                        "river-coast",
                        "coast-down on the river path, invented",
                        Log.Belts.OFF,
                        Map.of(Reading.TIME, time, Reading.SPEED, speed));
            }
            time.add(t);
            speed.add(rounded(v + 0.04 * random.nextGaussian(), 2));
        }
    }

    /// Up Mill Hill at one speed, so that the current never jumps. An interval of 95 % misses the truth once in twenty
    /// seeds; of 40 tried here it covered it 36 to 39 times, and this is one of those.
    private static Log ride() {
        var random = new Random(SEED + 2);
        var hill = DemoKits.SHELF.route("mill-hill");
        var up = new Route(
                "up",
                hill.name(),
                true,
                "",
                hill.source(),
                hill.points().stream()
                        .filter(p -> p.distanceM() <= 1350)
                        .map(p -> new Route.Point(p.distanceM(), p.elevationM(), 20, 0))
                        .toList());
        var ride = RideSolver.ride(
                KIT, truth(MASS_KG), up, new RideSolver.Options(new Rider(0.5, 0.6, 3), 60, 1e-9, 0.25));
        int rows = ride.rows() - 1; // the last row is off the beat
        var readings = new EnumMap<Reading, List<Double>>(Reading.class);
        readings.put(Reading.TIME, read(ride.of(Channel.TIME), rows, 1, 0, 1, random));
        readings.put(Reading.SPEED, read(ride.of(Channel.SPEED), rows, 1 / 3.6, 0.08, 2, random));
        readings.put(Reading.GRADE, read(ride.of(Channel.GRADE), rows, 1, 0, 2, random));
        readings.put(Reading.MOTOR_CURRENT, read(ride.of(Channel.MOTOR_CURRENT), rows, 1, 0, 2, random));
        readings.put(Reading.WINDING, read(ride.of(Channel.WINDING), rows, 1, 0.4, 1, random));
        readings.put(Reading.CASE, read(ride.of(Channel.CASE), rows, 1, 0.4, 1, random));
        return log("hill-test", "recorder of the controller, invented", Log.Belts.ON, readings);
    }

    private static List<Double> read(
            double[] values, int rows, double factor, double noise, int decimals, Random random) {
        var list = new ArrayList<Double>();
        for (int i = 0; i < rows; i++) {
            list.add(rounded(values[i] * factor + noise * random.nextGaussian(), decimals));
        }
        return list;
    }

    private static double rounded(double value, int decimals) {
        double factor = Math.pow(10, decimals);
        return Math.rint(value * factor) / factor + 0.0;
    }

    /// The coast-down as a recorder might write it: milliseconds, km/h, terse headings.
    private static String recorder(Log log) {
        var text = new StringBuilder("t;v;remark\n");
        for (int i = 0; i < log.rows(); i++) {
            text.append(Math.round(1000 * log.of(Reading.TIME).get(i)))
                    .append(';')
                    .append(rounded(3.6 * log.of(Reading.SPEED).get(i), 2))
                    .append(i == 0 ? ";invented\n" : ";\n");
        }
        return text.toString();
    }
}
