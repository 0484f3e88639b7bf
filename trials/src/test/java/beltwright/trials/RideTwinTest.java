package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.kit.Kit;
import beltwright.part.Label;
import beltwright.power.Governs;
import beltwright.quantity.Dimension;
import beltwright.ride.Board;
import beltwright.ride.Channel;
import beltwright.ride.Ride;
import beltwright.ride.RideSolver;
import beltwright.ride.Rider;
import beltwright.ride.Route;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.ReferenceFile;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Rides held against the same equations written a second time, in another language, from the theory page, and
/// solved by a general-purpose ODE solver (scipy, DOP853). It gets the numbers of a kit as typed, so it judges how
/// they are read, too.
///
/// Limits decide and let go in most of these rides, and both still agree to 1e-6 at a tight tolerance and to 1e-5
/// at the usual one.
///
/// Not the same in both: solver and order, how a leg ends, how limits are found, cooling at a stop (here closed,
/// there a general matrix exponential). The same in both, and so not judged: what the theory page says.
@Tag("law")
class RideTwinTest {
    private static final Path PYTHON = Path.of("/usr/bin/python3");
    private static final Path SCIPY = Path.of("/usr/lib/python3/dist-packages/scipy/integrate");
    private static final double SMOOTH_M = 30;
    private static final double EVERY_S = 0.1; // as the twin takes its top speed
    private static final double CLOSE = 1e-6; // at a tolerance of 1e-10
    private static final double USUAL = 1e-5; // at the usual one
    private static final String KEEP = "twin.rides"; // where the rides as typed are kept, for benchmark/run
    private static final Map<String, JsonNode> TWINS = new HashMap<>();

    /// One ride of a demo kit, changed by edits.
    ///
    /// @param edits as typed, one after the other; `task` is the kit's
    /// @param meets what has to decide on the way, or the case asks nothing
    private record Case(String name, String kit, String edits, Route route, Governs... meets) {
        Kit resolved() {
            var read = edits.isEmpty() ? Stream.<String>empty() : Stream.of(edits.split(" "));
            return Demo.SHELF
                    .with(read.map(e -> Edit.parse(e.startsWith("task.") ? kit + "." + e : e))
                            .toList())
                    .kit(kit);
        }

        Ride ridden(double tolerance) {
            var options = new RideSolver.Options(Rider.CALM, SMOOTH_M, tolerance, EVERY_S);
            return RideSolver.ride(kit, Board.of(resolved()), route, options);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static final class Demo {
        static final Shelf SHELF = shelf();

        private static Shelf shelf() {
            var demo = Path.of(System.getProperty("beltwright.root", "..")).resolve("demo");
            return Workshop.shelfOf(
                    Stream.of("parts", "kits", "measurements", "routes")
                            .map(demo::resolve)
                            .toList(),
                    ReferenceFile.bundled());
        }
    }

    static Stream<Case> cases() {
        var hill = Demo.SHELF.route("mill-hill");
        var flat = Demo.SHELF.route("river-flat");
        return Stream.of(
                new Case("up, a stop, down", "steep-street", "", hill),
                new Case("flat", "market-hill-single", "", flat, Governs.PHASE_CURRENT),
                new Case("head wind", "quarry-road-load", "task.headWindMps=7", flat),
                new Case("long hill, cut back by heat", "harbour-mile", "", drawn(2500, 0.06), Governs.HEAT),
                new Case("cannot hold the hill", "harbour-mile", "", drawn(2500, 0.12), Governs.PHASE_CURRENT),
                new Case(
                        "descent, full pack",
                        "steep-street",
                        "task.chargePercent=100",
                        drawn(1500, -0.09),
                        Governs.PACK_FULL),
                new Case(
                        "descent, brake at its limit",
                        "steep-street",
                        "task.chargePercent=60 controller-two.brakeCurrentA=5",
                        drawn(1200, -0.08),
                        Governs.BRAKE_CURRENT),
                new Case(
                        "over-run",
                        "steep-street",
                        "task.chargePercent=20 task.cellC=-5",
                        drawn(1500, -0.25),
                        Governs.OVER_RUN),
                new Case("cold pack", "steep-street", "task.airC=-5 task.cellC=-5", hill, Governs.PACK_FULL),
                new Case("voltage cut", "market-hill-single", "task.chargePercent=15", flat, Governs.LOW_VOLTAGE),
                new Case(
                        "other conventions, wet road",
                        "steep-street",
                        "motor-63.resistanceIs=phase controller-two.currentIs=direct task.gripShare=0.25",
                        hill,
                        Governs.GRIP),
                new Case("slips to a halt", "steep-street", "task.gripShare=0.18", hill, Governs.GRIP),
                new Case(
                        "electrical speed",
                        "market-hill-single",
                        "task.cruiseKmh=45 controller-one.electricalSpeedRpm=28000",
                        drawn(2000, -0.02),
                        Governs.ELECTRICAL_SPEED));
    }

    /// A road of one slope after 200 m of level.
    private static Route drawn(double lengthM, double slope) {
        var points = Stream.of(0.0, 200.0, lengthM)
                .map(x -> new Route.Point(x, 500 + slope * Math.max(0, x - 200), Double.NaN, 0))
                .toList();
        return new Route("drawn", "drawn", true, "", "estimate", points);
    }

    @BeforeAll
    static void ask(@TempDir Path folder) throws Exception {
        if (!Files.isDirectory(SCIPY)) {
            return;
        }
        var mapper = new ObjectMapper();
        var rides =
                Path.of(System.getProperty(KEEP, folder.resolve("rides.json").toString()));
        mapper.writeValue(rides.toFile(), cases().map(RideTwinTest::typed).toList());
        var script = Outside.copy("ride-twin.py", folder).toString();
        var said = mapper.readTree(Outside.run(folder, List.of(PYTHON.toString(), script, rides.toString())));
        said.forEach(one -> TWINS.put(one.path("name").asText(), one));
    }

    private static Map<String, Object> typed(Case one) {
        var kit = one.resolved();
        var drive = kit.drives().getFirst();
        var cell = kit.reference().cell(kit.pack().cell());
        var numbers = new LinkedHashMap<String, Object>();
        numbers.put("motors", kit.drives().size());
        numbers.put("wheelTeeth", drive.wheelPulley().rim().teeth());
        numbers.put("driveTeeth", drive.drivePulley().rim().teeth());
        numbers.put("covered", !drive.cover().blank());
        numbers.put("motor", plain(drive.motor()));
        numbers.put("wheel", plain(drive.end().wheel()));
        numbers.put("pack", plain(kit.pack()));
        numbers.put("controller", plain(kit.controller()));
        numbers.put("task", plain(kit.task()));
        numbers.put("activationK", cell.activationK());
        numbers.put(
                "curve",
                cell.curve().stream()
                        .map(p -> List.of(p.charge(), p.voltageV()))
                        .toList());
        var ride = new LinkedHashMap<String, Object>();
        ride.put("name", one.name());
        ride.put("kit", numbers);
        ride.put("rider", plain(Rider.CALM));
        ride.put("smoothM", SMOOTH_M);
        ride.put(
                "route",
                one.route().points().stream()
                        .map(p -> Arrays.asList(
                                p.distanceM(),
                                p.elevationM(),
                                Double.isNaN(p.speedKmh()) ? null : p.speedKmh(),
                                p.waitS()))
                        .toList());
        return ride;
    }

    /// The numbers of a record as typed; what nobody gave is null.
    private static Map<String, Object> plain(Record part) {
        var plain = new LinkedHashMap<String, Object>();
        for (var component : part.getClass().getRecordComponents()) {
            try {
                var value = component.getAccessor().invoke(part);
                switch (value) {
                    case Dimension d -> plain.put(component.getName(), d.known() ? d.nominal() : null);
                    case Label l -> plain.put("massKg", l.massKg().nominal());
                    case Number n -> plain.put(component.getName(), n);
                    case Enum<?> e -> plain.put(component.getName(), e.name());
                    case null, default -> {}
                }
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
        return plain;
    }

    @BeforeEach
    void need() {
        Assumptions.assumeTrue(Files.isDirectory(SCIPY), "needs the package python3-scipy");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void bothRideTheSame(Case one) {
        var twin = TWINS.get(one.name());
        var close = one.ridden(1e-10);
        assertThat(close.governed().keySet()).as("what the case is there for").containsAll(List.of(one.meets()));
        agree(close, twin, CLOSE);
        agree(one.ridden(RideSolver.Options.USUAL.tolerance()), twin, USUAL);
    }

    private static void agree(Ride ride, JsonNode twin, double share) {
        assertThat(ride.events().getLast().kind().name())
                .isEqualTo(twin.path("end").asText());
        agree("time", ride.timeS(), twin.path("timeS"), share);
        agree("distance", ride.distanceM(), twin.path("distanceM"), share);
        agree("charge", ride.chargeLeft(), twin.path("charge"), share);
        // Energies as shares of all that passed through the cells: what is left of a descent is a small difference.
        double joules = share * ride.energy().throughJ();
        near("energy used", ride.usedWh() * 3600, twin.path("usedJ"), joules);
        near("lost in copper", ride.energy().copperJ(), twin.path("copperJ"), joules);
        near("spent on the air", ride.energy().airJ(), twin.path("airJ"), joules);
        agree("winding", last(ride, Channel.WINDING), twin.path("windingC"), share);
        agree("case", last(ride, Channel.CASE), twin.path("caseC"), share);
        // Taken at the ends of steps, between which a peak lies a little higher.
        agree("hottest winding", ride.hottestC(), twin.path("hottestC"), Math.max(share, 1e-5));
        // Read between two steps, where a curve laid through a step hides a jump of the force.
        double top = Arrays.stream(ride.of(Channel.SPEED)).max().orElseThrow() / 3.6;
        agree("top speed", top, twin.path("topMps"), Math.max(share, 3e-5));
    }

    private static void agree(String what, double ours, JsonNode theirs, double share) {
        near(what, ours, theirs, share * Math.abs(theirs.asDouble()));
    }

    private static void near(String what, double ours, JsonNode theirs, double most) {
        assertThat(ours).as(what).isCloseTo(theirs.asDouble(), within(most));
    }

    private static double last(Ride ride, Channel channel) {
        var all = ride.of(channel);
        return all[all.length - 1];
    }
}
