package beltwright.published;

import static java.util.Map.entry;

import beltwright.power.DriveLimits;
import beltwright.power.MotorHeat;
import beltwright.power.Outrunner;
import beltwright.power.Powertrain;
import beltwright.power.RoadLoad;
import beltwright.power.Stopping;
import beltwright.published.PublishedCase.Inputs;
import beltwright.ride.Board;
import beltwright.ride.GreatCircle;
import beltwright.ride.Road;
import beltwright.ride.Steady;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// Road, stops and places on the earth.
final class RideAnswers {
    private static final double NO_LIMIT = 1e9;
    private static final double WHEEL_M = 0.1;

    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry(
                    "weight along a slope",
                    i -> road(i.number("massKg"), 0, 0, 0, 0).slopeN(Road.sine(i.number("gradePercent")))),
            entry("time to speed up", RideAnswers::timeToSpeedUp),
            entry("power of a rider", RideAnswers::riderW),
            entry("speed after coasting", RideAnswers::coastedMps),
            entry("way of a stop", i -> stop(i).wayM()),
            entry("time of a stop", i -> stop(i).timeS()),
            entry("way before the brake bites", i -> stop(i).reactionM()),
            entry("whole way of a stop", i -> stop(i).wholeM()),
            entry("way at a deceleration", i -> Stopping.wayM(i.number("speedMps"), i.number("decelerationMps2"))),
            entry(
                    "distance between two places",
                    i -> GreatCircle.distanceM(
                            i.number("latitude1"),
                            i.number("longitude1"),
                            i.number("latitude2"),
                            i.number("longitude2"))));

    private RideAnswers() {}

    private static Road road(double massKg, double inertiaKg, double rollingShare, double dragAreaM2, double airKgM3) {
        return new Road(massKg, inertiaKg, rollingShare, dragAreaM2, airKgM3, 0, 0, 1, 1, 1, 1, 1);
    }

    /// A brake that only the tread bounds.
    private static Steady.Stop stop(Inputs i) {
        var train = train(1, 1, 2 * WHEEL_M, 1);
        double grip = i.has("grip") ? i.number("grip") : i.number("decelerationMps2") / RoadLoad.G;
        var road = new Road(80, 0, 0, 0, 0, 0, 0, grip, 1, 1, 1, 1);
        double reaction = i.has("reactionS") ? i.number("reactionS") : 0;
        var belting = new Board.Belting(0.03, 100, 1, NO_LIMIT, false, 0);
        var board = new Board(train, road, 20, 5, 0.5, reaction, belting, true, List.of(), List.of(), List.of());
        return new Steady(board).stop(i.number("speedMps"), 0.5);
    }

    private static Powertrain train(int motors, double ratio, double wheelDiameterM, double share) {
        return new Powertrain(
                motors,
                ratio,
                wheelDiameterM / 2,
                share,
                new Outrunner(1, 1e-4, 20, 0, 0),
                new MotorHeat(1, 1, 1, 1, 1, 1, 1, NO_LIMIT),
                HeatAnswers.pack(1, 1e5, 1e-6),
                new DriveLimits(
                        NO_LIMIT, NO_LIMIT, NO_LIMIT, NO_LIMIT, 1, 0, -NO_LIMIT, NO_LIMIT, 2 * NO_LIMIT, NO_LIMIT));
    }

    private static double timeToSpeedUp(Inputs i) {
        double mass = i.number("massKg");
        var road = road(mass, i.number("turningKg"), i.number("rollingN") / mass / RoadLoad.G, 0, 0);
        var train =
                train(i.count("motors"), i.number("ratio"), i.number("wheelDiameterMm") / 1000, i.number("efficiency"));
        double left = train.pushN(i.number("torqueNm")) - road.loadN(0, Road.sine(i.number("gradePercent")));
        return Stopping.timeS(i.number("speedMps"), left / road.inertialKg());
    }

    private static double riderW(Inputs i) {
        var road = new Road(
                i.number("massKg"),
                i.number("turningKg"),
                i.number("rolling"),
                i.number("dragAreaM2"),
                i.number("airKgM3"),
                i.number("bearingN"),
                i.number("headWindMps"),
                1,
                1,
                1,
                1,
                1);
        double mean = i.number("wayM") / i.number("timeS");
        double speedUp = Stopping.energyJ(road.inertialKg(), i.number("toMps"))
                - Stopping.energyJ(road.inertialKg(), i.number("fromMps"));
        double power = road.loadN(mean, Road.sine(i.number("gradePercent"))) * mean + speedUp / i.number("timeS");
        return power / i.number("efficiency");
    }

    private static double coastedMps(Inputs i) {
        var road = road(i.number("massKg"), 0, i.number("rolling"), i.number("dragAreaM2"), i.number("airKgM3"));
        double sine = Math.sin(i.number("slopeRad"));
        return HeatAnswers.after(0, i.number("timeS"), speed -> -road.loadN(speed, -sine) / road.inertialKg());
    }
}
