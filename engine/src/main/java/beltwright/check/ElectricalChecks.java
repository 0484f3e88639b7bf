package beltwright.check;

import static beltwright.check.Term.minus;
import static beltwright.check.Term.plus;

import beltwright.kit.Role;
import beltwright.part.Motor;
import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/// Do pack, controller and motor go together: voltage, current, electrical speed, plugs, and room for the wires?
final class ElectricalChecks {
    private static final String HABIT = "common practice, no source";

    private ElectricalChecks() {}

    static List<Check> all() {
        return List.of(
                new Full(),
                new Empty(),
                new Draw(),
                new ElectricalSpeed(),
                new PhasePlug(),
                new SensorPins(),
                new SensorPitch(),
                new PackPlug(),
                new WireRoom(),
                new WireRouting());
    }

    private static void series(Subject s, Working w) {
        w.given("n_s", s.kit().pack().id() + ".cellsInSeries", s.kit().pack().cellsInSeries(), "", "count");
    }

    /// A full pack stays below what the controller bears.
    static final class Full extends Check {
        Full() {
            super(
                    "pack-full-voltage",
                    "Full pack within the controller's voltage",
                    "V",
                    Scope.KIT,
                    "cells in series times the voltage of a full cell",
                    Role.BATTERY_PACK,
                    Role.CONTROLLER);
        }

        static Range volts(Subject s) {
            return volts(s.kit().pack().fullCellV(), s.kit().pack().cellsInSeries());
        }

        /// Rounded to a microvolt: 12 cells of 4.2 V are 50.4 V.
        static Range volts(Dimension cell, int series) {
            return new Range(
                    rounded(cell.lower() * series), rounded(cell.nominal() * series), rounded(cell.upper() * series));
        }

        private static double rounded(double volts) {
            return Math.rint(volts * 1e6) / 1e6;
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(volts(s), Range.of(s.kit().controller().mostSupplyV()));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            series(s, w);
            w.given("U_full", s.kit().pack().fullCellV());
            w.given("U_most", s.kit().controller().mostSupplyV());
            w.line("U", "n_s·U_full", volts(s).nominal(), "V", "full pack");
            out.set(volts(s), Range.of(s.kit().controller().mostSupplyV()));
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.demandText() + " V full; the controller bears " + r.capacityText() + " V";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a controller for " + r.demandText() + " V, or at most "
                    + Numbers.fixed(
                            Math.floor(r.capacity() / s.kit().pack().fullCellV().upper()), 0)
                    + " cells in series; braking lifts the voltage further";
        }
    }

    /// An empty pack still feeds the controller.
    static final class Empty extends Check {
        Empty() {
            super(
                    "pack-empty-voltage",
                    "Empty pack feeds the controller",
                    "V",
                    Scope.KIT,
                    "cells in series times the voltage of an empty cell",
                    Role.BATTERY_PACK,
                    Role.CONTROLLER);
        }

        private static Range volts(Subject s) {
            return Full.volts(s.kit().pack().emptyCellV(), s.kit().pack().cellsInSeries());
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(Range.of(s.kit().controller().leastSupplyV()), volts(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            series(s, w);
            w.given("U_empty", s.kit().pack().emptyCellV());
            w.given("U_least", s.kit().controller().leastSupplyV());
            w.line("U", "n_s·U_empty", volts(s).nominal(), "V", "empty pack");
            out.set(Range.of(s.kit().controller().leastSupplyV()), volts(s));
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " V empty; the controller wants " + r.demandText() + " V";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "more cells in series, or a controller for a lower voltage";
        }
    }

    /// The controller draws no more than the pack may give.
    static final class Draw extends Check {
        Draw() {
            super(
                    "pack-current",
                    "Pack gives what the controller draws",
                    "A",
                    Scope.KIT,
                    "draw per motor times motors",
                    Role.BATTERY_PACK,
                    Role.CONTROLLER);
        }

        /// How many motors draw is known of a kit only.
        @Override
        public boolean applies(Subject s) {
            return s.kit().whole();
        }

        private static Range draw(Subject s) {
            return Range.of(s.kit().controller().batteryCurrentA())
                    .times(s.kit().drives().size());
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(draw(s), Range.of(s.kit().pack().dischargeCurrentA()));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("I_draw", s.kit().controller().batteryCurrentA());
            w.given("n_motors", "motors", s.kit().drives().size(), "", "count");
            w.given("I_pack", s.kit().pack().dischargeCurrentA());
            w.line("I", "I_draw·n_motors", draw(s).nominal(), "A", "drawn in all");
            out.set(draw(s), Range.of(s.kit().pack().dischargeCurrentA()));
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.demandText() + " A drawn; the pack gives " + r.capacityText() + " A";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "limit the draw to "
                    + Numbers.fixed(r.capacityWorst() / s.kit().drives().size(), 0)
                    + " A per motor, or a pack that gives more";
        }
    }

    /// At full voltage without load the motor turns no faster than the controller can follow.
    static final class ElectricalSpeed extends Check {
        ElectricalSpeed() {
            super(
                    "electrical-speed",
                    "Electrical speed within the controller's",
                    "rpm",
                    Scope.DRIVE,
                    "speed constant times full pack voltage times pole pairs, without load",
                    Role.CONTROLLER,
                    Role.MOTOR,
                    Role.BATTERY_PACK);
        }

        private static Range rpm(Subject s) {
            var kv = s.drive().motor().kvRpmPerV();
            var pairs = s.drive().motor().polePairs();
            var volts = Full.volts(s);
            return new Range(
                    kv.lower() * volts.low() * pairs.lower(),
                    kv.nominal() * volts.nominal() * pairs.nominal(),
                    kv.upper() * volts.high() * pairs.upper());
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(rpm(s), Range.of(s.kit().controller().electricalSpeedRpm()));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            series(s, w);
            w.given("U_full", s.kit().pack().fullCellV());
            w.given("Kv", s.drive().motor().kvRpmPerV());
            w.given("n_p", s.drive().motor().polePairs());
            w.given("n_most", s.kit().controller().electricalSpeedRpm());
            w.line("n_e", "Kv·n_s·U_full·n_p", rpm(s).nominal(), "rpm", "without load, full pack");
            out.set(rpm(s), Range.of(s.kit().controller().electricalSpeedRpm()));
        }

        @Override
        public String says(Subject s, Reading r) {
            return Numbers.significant(r.demand(), 3) + " rpm electrical; the controller follows "
                    + Numbers.significant(r.capacity(), 3);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a motor with a lower speed constant, fewer cells, or a controller that follows faster";
        }
    }

    /// Two plugs that must be of one size.
    abstract static class Plug extends Fit {
        Plug(String slug, String name, Scope scope, Role... about) {
            super(slug, name, scope, -0.1, 0.1, "measured with a caliper, " + HABIT, about);
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "plugs of one size on both sides; do not squeeze or file a contact";
        }
    }

    static final class PhasePlug extends Plug {
        PhasePlug() {
            super("phase-plug", "Phase plugs of one size", Scope.DRIVE, Role.MOTOR, Role.CONTROLLER);
        }

        @Override
        Dimension hole(Subject s) {
            return s.kit().controller().phasePlugMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.drive().motor().phasePlugMm();
        }
    }

    static final class PackPlug extends Plug {
        PackPlug() {
            super("pack-plug", "Pack plug of one size", Scope.KIT, Role.BATTERY_PACK, Role.CONTROLLER);
        }

        @Override
        Dimension hole(Subject s) {
            return s.kit().controller().plugMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.kit().pack().plugMm();
        }
    }

    static final class SensorPitch extends Plug {
        SensorPitch() {
            super("sensor-pitch", "Sensor connector of one pitch", Scope.DRIVE, Role.MOTOR, Role.CONTROLLER);
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().motor().sensorPins().nominal() > 0
                    && s.kit().controller().sensorPins().nominal() > 0;
        }

        @Override
        Dimension hole(Subject s) {
            return s.kit().controller().sensorPitchMm();
        }

        @Override
        Dimension shaft(Subject s) {
            return s.drive().motor().sensorPitchMm();
        }
    }

    /// The sensor connector has as many pins as its socket; without one the motor starts roughly.
    static final class SensorPins extends Check {
        SensorPins() {
            super(
                    "sensor-pins",
                    "Sensor connector pins",
                    "pins",
                    Scope.DRIVE,
                    "compared; a motor without sensors runs without, " + HABIT,
                    Role.MOTOR,
                    Role.CONTROLLER);
        }

        private static Range off(Subject s) {
            return Range.of(s.drive().motor().sensorPins())
                    .minus(s.kit().controller().sensorPins())
                    .absolute();
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(off(s), Range.exact(0));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            w.given("n_motor", s.drive().motor().sensorPins());
            w.given("n_socket", s.kit().controller().sensorPins());
            w.line("n_off", "abs(n_motor − n_socket)", off(s).nominal(), "pins", "compared");
            out.set(off(s), Range.exact(0));
        }

        @Override
        public Verdict verdict(Subject s, Reading r) {
            boolean without = s.drive().motor().sensorPins().nominal() == 0
                    || s.kit().controller().sensorPins().nominal() == 0;
            return r.verdict() == Verdict.FAILS && without ? Verdict.MARGINAL : r.verdict();
        }

        @Override
        public String says(Subject s, Reading r) {
            return Numbers.fixed(s.drive().motor().sensorPins().nominal(), 0) + " pins on the motor, "
                    + Numbers.fixed(s.kit().controller().sensorPins().nominal(), 0) + " on the controller";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a motor or an adapter with the same number of pins, or run without sensors and start by a push";
        }
    }

    /// The bundle leaves the motor without being pinched or bent too tightly.
    static final class WireRoom extends ChainGap {
        WireRoom() {
            super(
                    "wire-room",
                    "Room for the wires behind the motor",
                    Scope.DRIVE,
                    1,
                    "bundle and its tightest bend beyond the motor, half of the room where two motors share it, "
                            + HABIT,
                    Role.MOTOR,
                    Role.MOUNT,
                    Role.HANGER);
            placed();
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().motor().wireExit() == Motor.WireExit.END;
        }

        @Override
        List<Term> terms(Subject s) {
            var motor = s.drive().motor();
            var terms = new ArrayList<Term>();
            boolean two = s.layout().drives().size() == 2;
            for (var drive : s.layout().drives()) {
                String symbol = drive.side() == s.side() ? "y_end" : "y_other";
                terms.add(plus(symbol, "far end of a motor from its end face", drive.motorEndMm()));
            }
            terms.add(plus("B", s.kit().hanger().widthMm()));
            if (two) {
                terms.replaceAll(Term::half);
            }
            terms.add(minus("d_wire", motor.wireDiameterMm()).half());
            terms.add(minus("r_bend", motor.wireBendMm()));
            return terms;
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " mm left beyond the bundle; " + r.demandText() + " wanted";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "a motor " + leastMm(r.demand() - r.capacityWorst())
                    + " shorter or with wires at its side; pinched wires short the pack";
        }
    }

    /// On its way to the deck the bundle passes between motor and hanger.
    static final class WireRouting extends Check {
        private static final double FREE_MM = 1;

        WireRouting() {
            super(
                    "wire-routing",
                    "Wires pass between motor and hanger",
                    "mm",
                    Scope.DRIVE,
                    "the bundle with a millimetre beside it against the gap between can and hanger; " + HABIT,
                    Role.MOTOR,
                    Role.HANGER,
                    Role.BELT,
                    Role.DRIVE_PULLEY,
                    Role.WHEEL_PULLEY);
            placed();
        }

        @Override
        public boolean applies(Subject s) {
            return s.drive().motor().wireExit() == Motor.WireExit.SIDE;
        }

        private static Range wanted(Subject s) {
            return Range.of(s.drive().motor().wireDiameterMm()).plus(FREE_MM);
        }

        @Override
        public void measure(Subject s, Reading out) {
            out.set(wanted(s), MotorChecks.MotorHanger.gap(s));
        }

        @Override
        public void explain(Subject s, Working w, Reading out) {
            var gap = MotorChecks.MotorHanger.write(s, w);
            w.given("d_wire", s.drive().motor().wireDiameterMm());
            w.given("g_free", "free beside the bundle", FREE_MM, "mm", HABIT);
            w.line("g_wanted", "d_wire + g_free", wanted(s).nominal(), "mm", "bundle without being pinched");
            out.set(wanted(s), gap);
        }

        @Override
        public String says(Subject s, Reading r) {
            return r.capacityText() + " mm between can and hanger; " + r.demandText() + " wanted for the bundle";
        }

        @Override
        public String remedy(Subject s, Reading r) {
            return "lead the wires over the far end of the motor, or a thinner bundle; never around a sharp edge";
        }
    }
}
