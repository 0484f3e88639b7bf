package beltwright.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import java.util.ArrayList;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/// The belt around an idler, against outlines and tangents found in other ways.
@Tag("law")
class BeltLoopTest {
    private static final int AROUND = 4096; // points of a sampled circle
    private static final double CHORDS = 2e-4; // what a perimeter of chords falls short (mm)

    /// Two pulleys, their centre distance, and an idler so deep in one of the two free spans.
    ///
    /// @param share of the span, from the driven pulley
    /// @param diameterMm of the idler
    /// @param below whether it is the lower span
    private record Place(
            PitchLine pulleys, double centreMm, double share, double diameterMm, boolean onBack, boolean below) {
        static Place of(Draw draw, boolean onBack) {
            var pulleys = new PitchLine(draw.between(20, 40), draw.between(40, 80));
            double centre = (pulleys.driveMm() + pulleys.drivenMm()) / 2 + draw.between(90, 200);
            return new Place(
                    pulleys,
                    centre,
                    draw.between(0.35, 0.65),
                    draw.between(10, 18),
                    onBack,
                    draw.random().nextBoolean());
        }

        /// {@return the idler pushed so far across the straight span; negative where it stays off it}
        BeltLoop.Idling idler(double depthMm) {
            double radius = diameterMm / 2;
            double driven = pulleys.drivenMm() / 2;
            double drive = pulleys.driveMm() / 2;
            double across = (driven - drive) / centreMm; // the normal of the upper span
            double up = Math.sqrt(1 - across * across);
            double off = onBack ? radius - depthMm : depthMm - radius;
            double away = driven + share * (drive - driven) + off;
            double side = below ? -1 : 1;
            return new BeltLoop.Idling(share * centreMm + away * across, side * away * up, diameterMm, onBack);
        }

        BeltLoop pushed(double depthMm) {
            return new BeltLoop(pulleys, idler(depthMm));
        }
    }

    static Stream<Draw> draws() {
        return LongStream.rangeClosed(1, 200).mapToObj(seed -> new Draw(seed, new SplittableRandom(seed)));
    }

    static Stream<Place> places() {
        return draws().map(draw -> Place.of(draw, draw.random().nextBoolean()));
    }

    @ParameterizedTest
    @MethodSource("draws")
    void anInsideIdlerStretchesTheBeltAroundTheHullOfThreeCircles(Draw draw) {
        var place = Place.of(draw, false);
        var idler = place.idler(draw.between(0.1, 15));
        var loop = new BeltLoop(place.pulleys(), idler);
        var points = new ArrayList<Coordinate>();
        circle(points, 0, 0, place.pulleys().drivenMm() / 2);
        circle(points, place.centreMm(), 0, place.pulleys().driveMm() / 2);
        circle(points, idler.alongMm(), idler.asideMm(), idler.pitchDiameterMm() / 2);
        double hull = new GeometryFactory()
                .createMultiPointFromCoords(points.toArray(Coordinate[]::new))
                .convexHull()
                .getLength();
        assertThat(loop.lengthMm(place.centreMm())).isCloseTo(hull, within(CHORDS));
    }

    private static void circle(ArrayList<Coordinate> points, double x, double y, double radius) {
        for (int i = 0; i < AROUND; i++) {
            double angle = 2 * Math.PI * i / AROUND;
            points.add(new Coordinate(x + radius * Math.cos(angle), y + radius * Math.sin(angle)));
        }
    }

    /// Crossed tangents meet where they part the line of centres in the ratio of the radii; a right triangle there
    /// gives
    /// the points of contact.
    @ParameterizedTest
    @MethodSource("draws")
    void aBackIdlerIsPassedByCrossedTangents(Draw draw) {
        var place = Place.of(draw, true);
        var idler = place.idler(draw.between(0.1, 10));
        var loop = new BeltLoop(place.pulleys(), idler);
        var driven = new Circle(0, 0, place.pulleys().drivenMm() / 2);
        var drive = new Circle(place.centreMm(), 0, place.pulleys().driveMm() / 2);
        var roller = new Circle(idler.alongMm(), Math.abs(idler.asideMm()), idler.pitchDiameterMm() / 2);
        double under = -Math.acos((driven.radius - drive.radius) / place.centreMm());
        double leaves = drive.towards(roller) - drive.crossing(roller);
        double meets = roller.towards(drive) - drive.crossing(roller);
        double parts = roller.towards(driven) + driven.crossing(roller);
        double arrives = driven.towards(roller) + driven.crossing(roller);
        double length = driven.apart(under, drive, under)
                + drive.radius * turn(under, leaves)
                + drive.apart(leaves, roller, meets)
                + roller.radius * turn(parts, meets)
                + roller.apart(parts, driven, arrives)
                + driven.radius * turn(arrives, under);
        assertThat(loop.lengthMm(place.centreMm())).isCloseTo(length, within(1e-9));
        assertThat(loop.idlerWrapRad(place.centreMm())).isCloseTo(turn(parts, meets), within(1e-9));
    }

    private record Circle(double x, double y, double radius) {
        double towards(Circle o) {
            return Math.atan2(o.y - y, o.x - x);
        }

        /// {@return the angle between the line of centres and the radius to a crossed tangent's contact}
        double crossing(Circle o) {
            double meeting = Math.hypot(o.x - x, o.y - y) * radius / (radius + o.radius);
            return Math.acos(radius / meeting);
        }

        double apart(double angle, Circle o, double otherAngle) {
            return Math.hypot(
                    x + radius * Math.cos(angle) - o.x - o.radius * Math.cos(otherAngle),
                    y + radius * Math.sin(angle) - o.y - o.radius * Math.sin(otherAngle));
        }
    }

    /// {@return the anticlockwise turn between two directions}
    private static double turn(double from, double to) {
        double turn = (to - from) % (2 * Math.PI);
        return turn < 0 ? turn + 2 * Math.PI : turn;
    }

    @ParameterizedTest
    @MethodSource("places")
    void centreDistanceToLengthToCentreDistance(Place place) {
        for (double depth : new double[] {0.05, 1, 5, 9}) {
            var loop = place.pushed(depth);
            double length = loop.lengthMm(place.centreMm());
            assertThat(loop.centreDistanceMm(length)).as("%s mm deep", depth).isCloseTo(place.centreMm(), within(1e-8));
            assertThat(loop.closes(length)).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("places")
    void anIdlerBelowDoesWhatOneAboveDoes(Place place) {
        var loop = place.pushed(4);
        var idler = place.idler(4);
        var image = new BeltLoop(
                place.pulleys(),
                new BeltLoop.Idling(idler.alongMm(), -idler.asideMm(), idler.pitchDiameterMm(), idler.onBack()));
        double c = place.centreMm();
        double length = loop.lengthMm(c);
        assertThat(image.lengthMm(c)).isCloseTo(length, within(1e-9));
        assertThat(image.driveWrapRad(c)).isCloseTo(loop.driveWrapRad(c), within(1e-12));
        assertThat(image.drivenWrapRad(c)).isCloseTo(loop.drivenWrapRad(c), within(1e-12));
        assertThat(image.idlerWrapRad(c)).isCloseTo(loop.idlerWrapRad(c), within(1e-12));
        assertThat(image.toIdlerMm(c)).isCloseTo(loop.toIdlerMm(c), within(1e-9));
        assertThat(image.fromIdlerMm(c)).isCloseTo(loop.fromIdlerMm(c), within(1e-9));
        assertThat(image.centreDistanceMm(length)).isCloseTo(loop.centreDistanceMm(length), within(1e-8));
    }

    @ParameterizedTest
    @MethodSource("places")
    void anIdlerThatOnlyJustTouchesChangesNothing(Place place) {
        double c = place.centreMm();
        var loop = place.pushed(1e-7);
        assertThat(loop.lengthMm(c)).isCloseTo(place.pulleys().lengthMm(c), within(1e-6));
        assertThat(loop.driveWrapRad(c)).isCloseTo(place.pulleys().driveWrapRad(c), within(1e-6));
        assertThat(loop.toIdlerMm(c) + loop.fromIdlerMm(c)).isCloseTo(loop.spanMm(c), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("places")
    void anIdlerOffTheBeltHasNoLength(Place place) {
        double c = place.centreMm();
        for (double off : new double[] {1e-6, 0.01, 1, 4}) {
            var loop = place.pushed(-off);
            assertThat(loop.lengthMm(c)).as("%s mm off", off).isNaN();
            assertThat(loop.idlerWrapRad(c)).as("%s mm off", off).isNaN();
            assertThat(loop.toIdlerMm(c)).as("%s mm off", off).isNaN();
        }
    }

    @ParameterizedTest
    @MethodSource("places")
    void theBeltTurnsOnce(Place place) {
        double c = place.centreMm();
        var loop = place.pushed(6);
        double idler = loop.idlerWrapRad(c);
        assertThat(loop.drivenWrapRad(c) + loop.driveWrapRad(c) + (place.onBack() ? -idler : idler))
                .isCloseTo(2 * Math.PI, within(1e-12));
    }

    /// Wherever the idler is put and however near the pulleys come: a loop that is told turns once, or it is none.
    @ParameterizedTest
    @MethodSource("draws")
    void noLoopTurnsTwice(Draw draw) {
        var pulleys = new PitchLine(draw.between(15, 60), draw.between(15, 140));
        for (int i = 0; i < 50; i++) {
            var idler = new BeltLoop.Idling(
                    draw.between(-100, 300),
                    draw.between(-150, 150),
                    draw.between(5, 80),
                    draw.random().nextBoolean());
            var loop = new BeltLoop(pulleys, idler);
            double c = draw.between(10, 300);
            if (!Double.isNaN(loop.lengthMm(c))) {
                double wrap = loop.idlerWrapRad(c);
                assertThat(loop.drivenWrapRad(c) + loop.driveWrapRad(c) + (idler.onBack() ? -wrap : wrap))
                        .as("%s at %s", loop, c)
                        .isCloseTo(2 * Math.PI, within(1e-9));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("places")
    void pushedFurtherItTakesMoreBeltOrDrawsTheMotorNearer(Place place) {
        double c = place.centreMm();
        double belt = place.pushed(2).lengthMm(c);
        double before = c;
        for (double depth = 2.25; depth < 9; depth += 0.25) {
            assertThat(place.pushed(depth).lengthMm(c))
                    .isGreaterThan(place.pushed(depth - 0.25).lengthMm(c));
            double centre = place.pushed(depth).centreDistanceMm(belt);
            if (Double.isNaN(centre)) {
                break; // so short a distance lifts the belt off the idler
            }
            assertThat(centre).isLessThan(before);
            before = centre;
        }
        assertThat(before).isLessThan(c);
    }

    /// The belt meets the idler somewhere as the motor moves away, or leaves it: a position just on its side of there
    /// is found as well as any other.
    @ParameterizedTest
    @MethodSource("draws")
    void aMotorPositionJustWhereTheIdlerBeginsToTouchIsFound(Draw draw) {
        var place = Place.of(draw, draw.random().nextBoolean());
        var loop = place.pushed(0);
        double touching = place.centreMm();
        for (double by : new double[] {1e-4, 0.02, 0.3, 0.7, 0.99}) {
            boolean further = Double.isNaN(loop.lengthMm(touching - by));
            double c = further ? touching + by : touching - by;
            assertThat(further).isEqualTo(!Double.isNaN(loop.lengthMm(touching + by)));
            assertThat(loop.centreDistanceMm(loop.lengthMm(c)))
                    .as("%s mm on", by)
                    .isCloseTo(c, within(1e-7));
        }
    }

    @Test
    void withoutAnIdlerItIsTheTwoPulleys() {
        var pulleys = new PitchLine(25.465, 57.296);
        var loop = new BeltLoop(pulleys, null);
        assertThat(loop.lengthMm(70)).isEqualTo(pulleys.lengthMm(70));
        assertThat(loop.centreDistanceMm(270)).isEqualTo(pulleys.centreDistanceMm(270));
        assertThat(loop.driveWrapRad(70) + loop.drivenWrapRad(70)).isCloseTo(2 * Math.PI, within(1e-12));
        assertThat(loop.idlerWrapRad(70)).isNaN();
        assertThat(loop.closes(Math.PI * 57)).isFalse();
    }
}
