package beltwright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.power.Governs;
import beltwright.power.PackModel;
import beltwright.power.Powertrain;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What a ride says when something happens on the way.
class RideEventsTest {
    private static Route route(double... pairs) {
        var points = new ArrayList<Route.Point>();
        for (int i = 0; i < pairs.length; i += 2) {
            points.add(new Route.Point(pairs[i], pairs[i + 1], Double.NaN, 0));
        }
        return new Route("invented", "invented", true, "", "estimate", points);
    }

    private static Ride ride(Board board, Route route) {
        return RideSolver.ride("kit", board, route, RideSolver.Options.USUAL);
    }

    private static Board with(Board b, double charge, Board.Belting belting) {
        return new Board(
                b.train(),
                b.road(),
                b.airC(),
                b.cruiseMps(),
                charge,
                b.reactionS(),
                belting,
                b.chargingAllowed(),
                b.needs(),
                b.estimates(),
                b.notes());
    }

    private static List<Event.Kind> kinds(Ride ride) {
        return ride.events().stream().map(Event::kind).toList();
    }

    private static boolean met(Ride ride, Governs what) {
        return ride.events().stream().anyMatch(e -> e.kind() == Event.Kind.MET && e.governs() == what);
    }

    @Test
    void aHillTooSteepRollsBackAtOnce() {
        var ride = ride(Boards.usual(), route(0, 0, 300, 120));
        assertThat(ride.events().getLast().kind()).isEqualTo(Event.Kind.ROLLS_BACK);
        assertThat(ride.arrived()).isFalse();
        assertThat(ride.distanceM()).isLessThan(1);
    }

    @Test
    void aLongHillCutsBackByHeatAndStalls() {
        var ride = ride(Boards.of(105, 0.015, 0.45), route(0, 0, 100, 0, 3000, 540));
        assertThat(met(ride, Governs.HEAT)).isTrue();
        assertThat(ride.events().getLast().kind()).isEqualTo(Event.Kind.STALLS);
        assertThat(ride.hottestC()).isBetween(95.0, 115.0);
    }

    @Test // friction holds a board that the wheels do not push on; it once stood there, pushing, for a day
    void aBoardThatTheRoadDoesNotHoldComesToAHalt() {
        var usual = Boards.usual();
        var wet = usual.with(new Road(92, 3.1, 0.015, 0.45, 1.2, 1, 0, 0.2, 0.5, 0.55, 1, 0.7));
        var ride = ride(wet, route(0, 0, 200, 0, 400, 24, 600, 48));
        assertThat(ride.governed()).containsKey(Governs.GRIP);
        assertThat(ride.events().getLast().kind()).isEqualTo(Event.Kind.STALLS);
        assertThat(ride.timeS()).isLessThan(600);
    }

    @Test
    void aFullPackBrakesLittle() {
        var full = with(Boards.usual(), 1, Boards.usual().belting());
        var steep = route(0, 200, 100, 200, 1500, 60);
        var ride = ride(full, steep);
        assertThat(met(ride, Governs.PACK_FULL)).isTrue();
        double fastest = max(ride.of(Channel.SPEED));
        double wish = 3.6 * full.cruiseMps();
        assertThat(fastest).isGreaterThan(wish + 5);
        assertThat(max(ride(Boards.usual(), steep).of(Channel.SPEED))).isLessThan(fastest);
    }

    @Test
    void anEmptyPackEndsTheRide() {
        var level = route(0, 0, 20_000, 0);
        var nearly = ride(with(Boards.usual(), 0.2, Boards.usual().belting()), level);
        assertThat(nearly.events().getLast().kind()).isEqualTo(Event.Kind.EMPTY);
        assertThat(met(nearly, Governs.LOW_VOLTAGE)).isTrue();
        assertThat(nearly.distanceM()).isBetween(1000.0, 20_000.0);
        var empty = ride(with(Boards.usual(), 0.02, Boards.usual().belting()), level);
        assertThat(empty.events().getLast().kind()).isEqualTo(Event.Kind.EMPTY);
        assertThat(empty.distanceM()).isZero();
    }

    @Test
    void aBoardThatOpensEndsTheRide() {
        var b = Boards.usual().belting();
        var weak = new Board.Belting(b.pulleyDiameterM(), b.startN(), b.statedPerDirect(), 12, false, b.motorsKg());
        var ride = ride(with(Boards.usual(), 0.8, weak), route(0, 0, 200, 0, 600, 40));
        assertThat(ride.events().getLast().kind()).isEqualTo(Event.Kind.DISCONNECTED);
        assertThat(max(ride.of(Channel.BATTERY_CURRENT))).isLessThanOrEqualTo(12.001);
    }

    @Test
    void overRunChargesWhetherOneWishesOrNot() {
        var usual = Boards.usual();
        var t = usual.train();
        // A nearly empty pack and a hill so steep that the brake cannot hold: back-EMF passes the pack.
        var p = t.pack();
        var pack =
                new PackModel(p.cells(), p.curve(), p.ohm(), p.capacityAs(), p.dischargeA(), 0, p.fullV(), p.emptyV());
        var noBrake = with(usual, 0.12, usual.belting())
                .with(new Powertrain(
                        t.motors(), t.ratio(), t.wheelRadiusM(), t.beltShare(), t.motor(), t.heat(), pack, t.limits()));
        var steep = route(0, 600, 50, 600, 3000, 0);
        var ride = ride(noBrake, steep);
        assertThat(met(ride, Governs.OVER_RUN)).isTrue();
        var b = usual.belting();
        var opens = new Board.Belting(b.pulleyDiameterM(), b.startN(), b.statedPerDirect(), 120, true, b.motorsKg());
        assertThat(ride(with(noBrake, 0.12, opens), steep).events().getLast().kind())
                .isEqualTo(Event.Kind.DISCONNECTED);
    }

    @Test
    void stopsAndWaitsAndCools() {
        var points = List.of(
                new Route.Point(0, 0, Double.NaN, 0),
                new Route.Point(400, 30, 0, 120),
                new Route.Point(800, 30, 18, 0),
                new Route.Point(1000, 30, 0, 0));
        var ride = ride(Boards.usual(), new Route("r", "r", true, "", "estimate", points));
        assertThat(kinds(ride)).contains(Event.Kind.STOP, Event.Kind.ON).endsWith(Event.Kind.ARRIVED);
        var stop = ride.events().stream()
                .filter(e -> e.kind() == Event.Kind.STOP)
                .findFirst()
                .orElseThrow();
        var on = ride.events().stream()
                .filter(e -> e.kind() == Event.Kind.ON)
                .findFirst()
                .orElseThrow();
        assertThat(on.timeS() - stop.timeS()).isCloseTo(120, within(1e-9));
        assertThat(at(ride, Channel.WINDING, on.timeS() + 1))
                .isLessThan(at(ride, Channel.WINDING, stop.timeS() - 1) - 1);
    }

    private static double at(Ride ride, Channel channel, double timeS) {
        double[] t = ride.of(Channel.TIME);
        int i = 0;
        while (i < t.length - 1 && t[i] < timeS) {
            i++;
        }
        return ride.of(channel)[i];
    }

    private static Route stops(int metres, double waitS) {
        var points = new ArrayList<Route.Point>();
        for (int x = 0; x <= 100 * metres; x += metres) {
            points.add(new Route.Point(x, 0, 0, waitS));
        }
        return new Route("stops", "stops", true, "", "estimate", points);
    }

    @Test // a rider once slowed down to rest before a stop that is too near to reach the wish speed, and stayed there
    void stopsCloseTogetherAreReached() {
        var ride = ride(Boards.usual(), stops(4, 0));
        assertThat(ride.arrived()).isTrue();
        assertThat(kinds(ride).stream().filter(Event.Kind.STOP::equals)).hasSize(99);
    }

    @Test // time once ran backwards after it
    void aWaitOfADayIsTooLong() {
        var ride = ride(Boards.usual(), stops(100, 86_400));
        assertThat(ride.events().getLast().kind()).isEqualTo(Event.Kind.TOO_LONG);
        assertThat(ride.distanceM()).isEqualTo(100);
    }

    @Test // friction of the motors once came and went with the sign of a speed of next to nothing, for 23 million steps
    void betweenHoldingAndStartingNothingChatters() {
        var board = Boards.usual();
        double sine = Road.sine(new Steady(board).steepestStart().percent());
        var options = RideSolver.Options.USUAL.withSmooth(0);
        for (double off : new double[] {-0.02, -0.01, -1e-3, -1e-5, 0, 1e-5, 1e-3, 0.01, 0.02}) {
            var road = route(0, 0, 300, 300 * sine * (1 + off));
            var ride = RideSolver.ride("kit", board, road, options);
            assertThat(ride.steps()).as("%s off", off).isLessThan(5000);
            assertThat(ride.distanceM() == 0).as("%s off", off).isEqualTo(off > 0);
        }
    }

    @Test
    void aLongRideAtAFineBeatIsThinned() {
        var slow = new RideSolver.Options(new Rider(1, 1.2, 1), 30, 1e-6, 0.01);
        var ride = RideSolver.ride("kit", Boards.usual(), stops(20, 20), slow);
        double[] t = ride.of(Channel.TIME);
        assertThat(t).hasSizeLessThan(40_001).hasSizeGreaterThan(10_000);
        for (int i = 1; i < t.length - 1; i++) {
            assertThat(t[i]).isGreaterThan(t[i - 1]);
        }
    }

    @Test
    void aRideCanBeGivenUp() {
        assertThatThrownBy(() -> RideSolver.ride(
                        "kit", Boards.usual(), route(0, 0, 5000, 0), RideSolver.Options.USUAL, () -> true))
                .isInstanceOf(GivenUp.class);
    }

    @Test
    void aMissingNumberIsNamed() {
        var b = Boards.usual();
        var missing = new Board(
                b.train(),
                b.road(),
                b.airC(),
                b.cruiseMps(),
                b.charge(),
                b.reactionS(),
                b.belting(),
                true,
                List.of("pack-12s.capacityAh"),
                List.of(),
                List.of());
        assertThatThrownBy(() -> ride(missing, route(0, 0, 100, 0)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("pack-12s.capacityAh");
    }

    private static double max(double[] values) {
        double most = Double.NEGATIVE_INFINITY;
        for (double v : values) {
            most = Math.max(most, v);
        }
        return most;
    }
}
