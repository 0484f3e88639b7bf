package beltwright.ride;

import beltwright.belt.SpanTension;
import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.part.BatteryPack;
import beltwright.part.Controller;
import beltwright.part.Motor;
import beltwright.part.Wheel;
import beltwright.power.DriveLimits;
import beltwright.power.MotorHeat;
import beltwright.power.MotorModel;
import beltwright.power.OpenCircuit;
import beltwright.power.Outrunner;
import beltwright.power.PackModel;
import beltwright.power.Powertrain;
import beltwright.quantity.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/// A kit on the road as plain numbers, with what is missing and what was estimated.
///
/// @param needs numbers that nobody gave and no rule estimates; where there are any, nothing can be told
/// @param estimates numbers that rest on an estimate, with its words
/// @param notes what the reader should know of how the kit was taken
/// @param cruiseMps speed that the rider holds (m/s)
/// @param charge how full the pack is at the start (0 to 1)
/// @param chargingAllowed whether the cells are warm enough to be charged
public record Board(
        Powertrain train,
        Road road,
        double airC,
        double cruiseMps,
        double charge,
        double reactionS,
        Belting belting,
        boolean chargingAllowed,
        List<String> needs,
        List<String> estimates,
        List<String> notes) {
    /// What turns torque into belt pull, and current into the controller's own amperes.
    ///
    /// @param pulleyDiameterM pitch diameter of the drive pulley (m)
    /// @param startN tension of each span at rest (N), the first number of that name
    /// @param statedPerDirect amperes that the controller states for each ampere of direct current (1)
    /// @param disconnectsAboveA current at which the protection board opens (A), NaN where nobody knows
    /// @param mayDisconnect whether the board may open when braking charges the pack too hard
    /// @param motorsKg what the turning motors add to the mass (kg); without belts they do not
    public record Belting(
            double pulleyDiameterM,
            double startN,
            double statedPerDirect,
            double disconnectsAboveA,
            boolean mayDisconnect,
            double motorsKg) {}

    public Board {
        needs = List.copyOf(needs);
        estimates = List.copyOf(estimates);
        notes = List.copyOf(notes);
    }

    /// Which value of a dimension to take; `Dimension::nominal` as a rule.
    @FunctionalInterface
    public interface Pick {
        double of(Dimension d);
    }

    public boolean known() {
        return needs.isEmpty();
    }

    public Board with(Road other) {
        return new Board(
                train, other, airC, cruiseMps, charge, reactionS, belting, chargingAllowed, needs, estimates, notes);
    }

    /// {@return the same board under a rider who leans back when braking, as the task says; only wheels that have a
    ///     motor brake}
    public Board leaningBack() {
        return with(road.onWheels(train.motors()));
    }

    /// {@return the same under a rider who stands stiff and upright}
    public Board upright() {
        return with(road.upright().onWheels(train.motors()));
    }

    public Board with(Powertrain other) {
        return new Board(
                other, road, airC, cruiseMps, charge, reactionS, belting, chargingAllowed, needs, estimates, notes);
    }

    /// {@return the kit on the road, every number at its nominal}
    public static Board of(Kit kit) {
        return of(kit, Dimension::nominal);
    }

    public static Board of(Kit kit, Pick pick) {
        return new Reading(kit, pick).board();
    }

    /// One pass over a kit's numbers.
    private static final class Reading {
        private final Kit kit;
        private final Pick pick;
        private final Rules rules;
        private final Drive drive;
        private final Motor motor;
        private final Set<String> needs = new LinkedHashSet<>();
        private final Set<String> estimates = new LinkedHashSet<>();
        private final List<String> notes = new ArrayList<>();

        Reading(Kit kit, Pick pick) {
            this.kit = kit;
            this.pick = pick;
            this.rules = new Rules(kit.reference().estimating());
            this.drive = kit.drives().getFirst();
            this.motor = drive.motor();
        }

        /// The number of a dimension; notes whether it is missing or estimated.
        private double n(Dimension d) {
            if (!d.known()) {
                needs.add(d.of());
            } else if (d.estimated()) {
                estimates.add(d.of() + ": " + (d.text() + " " + d.unit().symbol()).strip() + ", "
                        + d.provenance().note());
            }
            return pick.of(d);
        }

        private double share(Dimension d) {
            return n(d) / 100;
        }

        Board board() {
            var train = train();
            var road = road(train);
            var task = kit.task();
            double air = n(rules.airC(task));
            differ();
            return new Board(
                    train,
                    road,
                    air,
                    n(task.cruiseKmh()) / 3.6,
                    share(rules.charge(task)),
                    n(rules.reaction(task)),
                    belting(train, road),
                    train.pack().chargeA() > 0,
                    List.copyOf(needs),
                    List.copyOf(estimates),
                    notes);
        }

        private void differ() {
            for (var other : kit.drives()) {
                if (!other.motor().id().equals(motor.id())
                        || other.ratio() != drive.ratio()
                        || !other.end().wheel().id().equals(drive.end().wheel().id())) {
                    notes.add("the sides differ; both are taken as the " + drive.side()
                            + " side, and unlike pushes would pull the board aside");
                }
            }
            if (kit.drives().size() == 1) {
                notes.add("one motor pushes and brakes on one side only: the board pulls aside, most at hard braking");
            }
        }

        private Belting belting(Powertrain train, Road road) {
            double pulley = drive.drivePulley().rim().pitchDiameterMm() / 1000;
            double worst = Math.max(torqueNm(train, road, false), torqueNm(train, road, true));
            var set = drive.placement().tensionN();
            var pack = kit.pack();
            return new Belting(
                    pulley,
                    set.known() ? n(set) : SpanTension.startN(2 * worst / pulley),
                    kit.controller().currentIs() == Controller.CurrentIs.DIRECT ? 1 : 2 / Math.sqrt(3),
                    pick.of(pack.disconnectsAboveA()),
                    pack.protection() == BatteryPack.Protection.DISCONNECTS,
                    motorsKg(train));
        }

        private static double torqueNm(Powertrain train, Road road, boolean braking) {
            var limits = train.limits();
            double current = braking ? limits.brakeA() : limits.driveA();
            double slips = road.gripN(0, braking) / train.motors() * train.wheelRadiusM() / train.ratio();
            return Math.min(train.motor().torqueConstantNmA() * current, slips);
        }

        private double motorsKg(Powertrain train) {
            double gear = train.ratio() / train.wheelRadiusM();
            return train.motors() * n(rules.rotorInertia(motor)) * gear * gear;
        }

        private Powertrain train() {
            double radius = n(drive.end().wheel().diameterMm()) / 2000;
            return new Powertrain(
                    kit.drives().size(),
                    drive.ratio(),
                    radius,
                    share(kit.task().beltEfficiencyPercent()),
                    outrunner(),
                    heat(),
                    pack(),
                    limits());
        }

        private Outrunner outrunner() {
            return Outrunner.of(
                    n(motor.kvRpmPerV()),
                    MotorModel.leadResistanceOhm(n(motor.resistanceOhm()), motor.resistanceIs()),
                    n(rules.resistanceAtC(motor)),
                    n(motor.noLoadCurrentA()),
                    n(rules.noLoadAtRpm(motor, kit.pack())) * Math.PI / 30,
                    share(rules.noLoadGrowth(motor)));
        }

        private MotorHeat heat() {
            double can = n(motor.canDiameterMm()) / 1000;
            double length = n(motor.canLengthMm()) / 1000;
            return new MotorHeat(
                    n(rules.windingHeat(motor)),
                    n(rules.caseHeat(motor)),
                    n(rules.windingToCase(motor)),
                    n(rules.caseToAir(motor)),
                    can,
                    Math.PI * can * (length + can / 4),
                    share(rules.airflow(motor, !drive.cover().blank())),
                    n(rules.mostWinding(motor)));
        }

        private PackModel pack() {
            var pack = kit.pack();
            var task = kit.task();
            double cellC = n(rules.cellC(task));
            boolean warm = !(cellC < n(rules.leastChargeC(pack)));
            var curve = OpenCircuit.UNKNOWN;
            double activation = Double.NaN;
            if (pack.cell().isEmpty()) {
                needs.add(pack.id() + ".cell");
            } else {
                var cell = kit.reference().cell(pack.cell());
                curve = new OpenCircuit(cell);
                activation = cell.activationK();
            }
            double measuredAt = n(rules.packResistanceAtC(pack));
            double ohm = PackModel.ohmAt(n(pack.resistanceOhm()), measuredAt, activation, cellC);
            if (Double.isNaN(activation) && measuredAt != cellC) {
                needs.add(pack.cell() + ".activationK");
            }
            return new PackModel(
                    pack.cellsInSeries(),
                    curve,
                    ohm,
                    n(pack.capacityAh()) * 3600,
                    n(pack.dischargeCurrentA()),
                    warm ? n(pack.chargeCurrentA()) : 0,
                    pack.cellsInSeries() * n(pack.fullCellV()),
                    pack.cellsInSeries() * n(pack.emptyCellV()));
        }

        private DriveLimits limits() {
            Controller c = kit.controller();
            return new DriveLimits(
                    MotorModel.directCurrentA(n(c.driveCurrentA()), c.currentIs()),
                    MotorModel.directCurrentA(n(c.brakeCurrentA()), c.currentIs()),
                    n(c.batteryCurrentA()),
                    n(rules.controllerCharge(c)),
                    share(c.dutyPercent()),
                    n(rules.cutBackFrom(c, kit.pack())),
                    n(rules.cutBackTo(c, kit.pack())),
                    n(rules.windingFrom(c, motor)),
                    n(rules.windingTo(c, motor)),
                    n(c.electricalSpeedRpm()) / n(motor.polePairs()) * Math.PI / 30);
        }

        private Road road(Powertrain train) {
            var task = kit.task();
            double r = train.wheelRadiusM();
            double wheels = 4 * n(rules.wheelInertia(wheel())) / (r * r);
            double motors = motorsKg(train);
            return new Road(
                    n(task.allUpMassKg()),
                    wheels + motors,
                    share(task.rollingPercent()),
                    n(task.dragAreaM2()),
                    n(task.airDensityKgM3()),
                    n(rules.bearingDrag(task)),
                    n(rules.headWind(task)),
                    n(rules.grip(task)),
                    share(rules.driven(task)),
                    share(rules.drivenBraking(task)),
                    n(rules.massHeight(task)) / 1000,
                    n(task.wheelbaseMm()) / 1000);
        }

        private Wheel wheel() {
            return drive.end().wheel();
        }
    }
}
