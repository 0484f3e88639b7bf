package beltwright.ride;

import beltwright.kit.Kit;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/// Limits to set in the controller of a kit, each with its reason and with what it protects. Generic words: every
/// controller names its settings in its own way.
///
/// A value is the least of what each part stands; it never asks for more than the controller's own data sheet states.
///
/// - Source: the formulas named in each row; safety rules of thumb say so.
/// - Valid: for the kit, task and weather that the board was made of.
/// - Neglects: belt, pulley and axle, whose strength is judged by their own checks.
public final class LimitSheet {
    private static final double FOR_SECONDS = 60;
    private static final double FIRST_RIDE_MPS2 = 0.8;
    private static final double FIRST_RIDE_MPS3 = 0.5;
    private static final double LOST_LINK_MPS2 = 0.5;
    private static final double COLD_MARGIN_K = 25;
    private static final double WARM_MARGIN_K = 5;

    private final Kit kit;
    private final Board board;
    private final Steady steady;
    private final List<Row> rows = new ArrayList<>();

    /// One setting.
    ///
    /// @param stated what the controller's data sheet allows, NaN where it says nothing
    /// @param protects the part that this limit spares
    public record Row(
            String key, String name, double value, String unit, double stated, String reason, String protects) {
        public Spares spares() {
            return switch (protects) {
                case "grip", "rider", "brake", "drive and brake" -> Spares.RIDER;
                case "motor winding", "motor winding and magnets" -> Spares.MOTOR;
                case "battery pack" -> Spares.PACK;
                case "controller" -> Spares.CONTROLLER;
                case "speed reading" -> Spares.READING;
                default -> throw new IllegalStateException("a limit that spares the " + protects);
            };
        }
    }

    /// What a limit is for, in the order of what is worst to lose. No limit is there for the belt: what it bears is
    /// judged by its own checks, before anything is set.
    public enum Spares {
        RIDER("grip and rider"),
        MOTOR("motor"),
        PACK("pack"),
        CONTROLLER("controller"),
        READING("reading of speed and distance");

        private final String words;

        Spares(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private LimitSheet(Kit kit, Board board) {
        this.kit = kit;
        this.board = board;
        this.steady = new Steady(board);
    }

    /// {@return the sheet of a kit; empty where a number is missing}
    public static List<Row> of(Kit kit, Board board) {
        return board.known() ? List.copyOf(new LimitSheet(kit, board).work()) : List.of();
    }

    private record Bound(double value, String reason, String protects) {}

    private void least(String key, String name, String unit, double stated, List<Bound> bounds) {
        var least = bounds.getFirst();
        for (var bound : bounds) {
            if (bound.value < least.value) {
                least = bound;
            }
        }
        rows.add(new Row(key, name, Math.floor(least.value + 1e-9), unit, stated, least.reason, least.protects));
    }

    private List<Row> work() {
        var train = board.train();
        var limits = train.limits();
        var pack = train.pack();
        var motor = train.motor();
        int n = train.motors();
        double stated = board.belting().statedPerDirect();
        var controller = kit.controller();
        double gripN = board.leaningBack().road().gripN(0, false);
        double gripBrakeN = board.leaningBack().road().gripN(0, true);
        double upright = -motor.currentA(train.shaftNm(-board.upright().road().gripN(0, true)), 0) * stated;
        double hot = motor.resistanceOhm((board.airC() + limits.windingFromC()) / 2);
        double forAWhile =
                Math.sqrt(train.heat().windingJPerK() * (limits.windingFromC() - board.airC()) / (FOR_SECONDS * hot));

        least(
                "drive-current",
                "Push, as phase current of each motor",
                "A",
                controller.driveCurrentA().nominal(),
                List.of(
                        new Bound(limits.driveA() * stated, "what the controller's data sheet allows", "controller"),
                        new Bound(
                                motor.currentA(train.shaftNm(gripN), 0) * stated,
                                "more would only spin the wheels on level ground",
                                "grip"),
                        new Bound(
                                forAWhile * stated,
                                "warms the winding from the air's temperature to the cut-back in " + (int) FOR_SECONDS
                                        + " s if no heat leaves it",
                                "motor winding")));
        least(
                "brake-current",
                "Brake, as phase current of each motor",
                "A",
                controller.brakeCurrentA().nominal(),
                List.of(
                        new Bound(limits.brakeA() * stated, "what the controller's data sheet allows", "controller"),
                        new Bound(
                                -motor.currentA(train.shaftNm(-gripBrakeN), 0) * stated,
                                "more would lock the wheels on level ground, rider leaning back",
                                "grip"),
                        new Bound(forAWhile * stated, "as for driving", "motor winding")));
        double brakes = rows.getLast().value();
        least(
                "battery-current",
                "Taken from the pack for each motor",
                "A",
                controller.batteryCurrentA().nominal(),
                List.of(
                        new Bound(limits.batteryA(), "what the controller's data sheet allows", "controller"),
                        new Bound(
                                pack.dischargeA() / n, "what the pack may give, shared by the motors", "battery pack"),
                        new Bound(
                                board.belting().disconnectsAboveA() / n,
                                "the protection board disconnects above it, shared by the motors",
                                "drive and brake")));
        least(
                "charge-current",
                "Given back to the pack for each motor",
                "A",
                controller.chargeCurrentA().nominal(),
                List.of(
                        new Bound(limits.chargeA(), "what the controller's data sheet allows", "controller"),
                        new Bound(
                                pack.chargeA() / n,
                                board.chargingAllowed()
                                        ? "what the pack takes, shared by the motors"
                                        : "the cells are too cold to be charged",
                                "battery pack"),
                        new Bound(
                                board.belting().mayDisconnect()
                                        ? board.belting().disconnectsAboveA() / n
                                        : Double.NaN,
                                "the protection board disconnects above it, shared by the motors",
                                "brake")));
        row(
                "cut-back-from",
                "Supply voltage below which the draw fades",
                limits.cutBackFromV(),
                "V",
                controller.cutBackFromV().nominal(),
                "leaves the rider time to get home",
                "battery pack");
        row(
                "cut-back-to",
                "Supply voltage at which it has faded out",
                Math.max(limits.cutBackToV(), pack.emptyV()),
                "V",
                controller.cutBackToV().nominal(),
                "empty cells are spoilt by going on",
                "battery pack");
        row(
                "most-voltage",
                "Supply voltage above which nothing is given back",
                pack.fullV(),
                "V",
                controller.mostSupplyV().nominal(),
                "cells at the end of charge",
                "battery pack");
        double erpm = limits.mostRadPerS()
                * 30
                / Math.PI
                * kit.drives().getFirst().motor().polePairs().nominal();
        row(
                "electrical-speed",
                "Electrical speed, at most",
                Math.floor(erpm),
                "rpm",
                controller.electricalSpeedRpm().nominal(),
                "what the controller's data sheet allows; reached at "
                        + Math.round(limits.mostRadPerS() / train.ratio() * train.wheelRadiusM() * 3.6) + " km/h",
                "controller");
        double most = train.heat().mostWindingC();
        row(
                "winding-from",
                "Winding temperature above which the current fades",
                Math.min(limits.windingFromC(), most - COLD_MARGIN_K),
                "°C",
                controller.windingCutBackFromC().nominal(),
                "the sensor lags behind the hottest turn; " + (int) COLD_MARGIN_K + " K is habit",
                "motor winding and magnets");
        row(
                "winding-to",
                "Winding temperature at which it has faded out",
                Math.min(limits.windingToC(), most - WARM_MARGIN_K),
                "°C",
                controller.windingCutBackToC().nominal(),
                "below what winding and magnets stand",
                "motor winding and magnets");
        double soft = motor.currentA(
                train.shaftNm(board.road().inertialKg() * FIRST_RIDE_MPS2
                        + board.road().loadN(0, 0)),
                0);
        row(
                "first-ride-current",
                "First ride: push, as phase current of each motor",
                Math.floor(Math.min(soft * stated, rows.getFirst().value())),
                "A",
                Double.NaN,
                "speeds up at " + FIRST_RIDE_MPS2 + " m/s² on level ground; common practice, no source",
                "rider");
        row(
                "first-ride-ramp",
                "First ride: time from none to full push",
                Math.ceil(10 * FIRST_RIDE_MPS2 / FIRST_RIDE_MPS3) / 10,
                "s",
                Double.NaN,
                "push grows by " + FIRST_RIDE_MPS3 + " m/s² each second; common practice, no source",
                "rider");
        row(
                "first-ride-brake",
                "First ride: brake, as phase current of each motor",
                Math.floor(Math.min(upright, brakes)),
                "A",
                Double.NaN,
                upright < brakes
                        ? "more would lock the wheels under a rider who stands stiff and upright; who leans back can use "
                                + Math.round(brakes) + " A"
                        : "the whole brake: it locks no wheel even under a rider who stands stiff and upright",
                "rider");
        double gentle = -motor.currentA(
                train.shaftNm(-Math.max(
                        0,
                        board.road().inertialKg() * LOST_LINK_MPS2
                                - board.road().loadN(board.cruiseMps(), 0))),
                train.radPerS(board.cruiseMps()));
        double lost = Math.floor(Math.max(0, gentle) * stated);
        row(
                "lost-link",
                "Radio link lost: brake with, each motor",
                lost,
                "A",
                Double.NaN,
                "slows down at " + LOST_LINK_MPS2 + " m/s² from the cruise speed, so that the rider stays on; common"
                        + " practice, no source; " + holds(kit, board, lost / stated),
                "rider");
        row(
                "wheel-diameter",
                "Wheel, across its tread",
                2000 * train.wheelRadiusM(),
                "mm",
                Double.NaN,
                "as measured; a worn wheel reads too fast",
                "speed reading");
        row(
                "ratio",
                "Wheel teeth over motor teeth",
                train.ratio(),
                "",
                Double.NaN,
                kit.drives().getFirst().wheelPulley().rim().teeth() + " over "
                        + kit.drives().getFirst().drivePulley().rim().teeth(),
                "speed reading");
        row(
                "pole-pairs",
                "Pole pairs of the motor",
                kit.drives().getFirst().motor().polePairs().nominal(),
                "",
                Double.NaN,
                "half of the magnets",
                "speed reading");
        return rows;
    }

    /// {@return what the brake of a lost link does on a slope, in words; the slope rounded down}
    ///
    /// @param directA current of each motor (A)
    public static String holds(Kit kit, Board board, double directA) {
        var train = board.train();
        double brakeN = -train.pushN(-train.motor().torqueConstantNmA() * directA);
        double held = Math.floor(10 * board.road().heldPercent(brakeN)) / 10;
        var asked = kit.task().gradePercent();
        var slope = "on a slope it keeps the board from getting faster up to " + Numbers.fixed(held, 1) + " %";
        if (!(asked.nominal() > 0)) {
            return slope;
        }
        var hill = "the " + Numbers.significant(asked.nominal(), 3) + " % of the task";
        return asked.upper() <= held
                ? slope + ", so on " + hill + " too"
                : slope + ", but not on " + hill + ": there the board runs away";
    }

    private void row(
            String key, String name, double value, String unit, double stated, String reason, String protects) {
        rows.add(new Row(key, name, value, unit, stated, reason, protects));
    }

    /// {@return the tests on the stand and at walking pace that follow from the sheet, in order}
    public static List<String> benchTests(List<Row> sheet) {
        double lost = value(sheet, "lost-link");
        double brake = value(sheet, "brake-current");
        double full = value(sheet, "most-voltage");
        return List.of(
                "Board on a stand, wheels free, fingers, hair and laces away from the belts. Turn slowly up: driven wheels turn the"
                        + " right way, no belt climbs, no noise.",
                "On the stand, turn the remote off at a quarter of the speed: driven wheels must slow down, none may run on. Brake"
                        + " current then: " + Math.round(lost) + " A a motor, no more.",
                "On the stand, brake from half of the speed: current stays below " + Math.round(brake)
                        + " A a motor and no belt jumps.",
                "On the stand with the pack full, brake from full speed: the voltage must not pass "
                        + Math.round(10 * full) / 10.0 + " V. If it does, lower the returned current.",
                "Walking pace, level, dry, closed ground, helmet and pads on, somebody with you: brake softly, then harder. Both"
                        + " sides alike, no pull aside.",
                "Walking pace: turn the remote off. The board must slow down softly enough to stay on it. Down a hill that brake"
                        + " may not be enough: the row of the lost link says how steep it holds.",
                "Stop with the foot from walking pace. Whoever cannot do that does not ride down a hill.",
                "Law on powered boards differs from place to place; find out before riding on a public way.");
    }

    private static double value(List<Row> sheet, String key) {
        return sheet.stream()
                .filter(r -> r.key().equals(key))
                .mapToDouble(Row::value)
                .findFirst()
                .orElse(Double.NaN);
    }
}
