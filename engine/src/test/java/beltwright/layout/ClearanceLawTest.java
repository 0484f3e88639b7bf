package beltwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/// Closed-form clearances against a general plane-geometry library that measures between outlines.
@Tag("law")
class ClearanceLawTest {
    private static final GeometryFactory PLANE = new GeometryFactory();
    private static final double FAR = 10_000;
    private static final int SEGMENTS = 512; // of a quarter circle; the chord of a 60 mm disc is off by 0.0001 mm
    private static final double CHORD = 0.0005;

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void pointToRectangle(Draw draw) {
        double x = draw.between(-80, 80);
        double z = draw.between(-80, 80);
        double depth = draw.between(5, 50);
        double height = draw.between(5, 50);
        var rectangle = box(-depth, depth, -height, height);
        assertThat(Clearance.toRectangle(x, z, depth, height)).isCloseTo(signed(point(x, z), rectangle), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void twoBodies(Draw draw) {
        var one = new Envelope(0, draw.between(1, 50), 0, draw.between(1, 50));
        double x = draw.between(-120, 120);
        double z = draw.between(-120, 120);
        var other = new Envelope(x, x + draw.between(1, 50), z, z + draw.between(1, 50));
        double a = Math.max(other.getMinX() - one.getMaxX(), one.getMinX() - other.getMaxX());
        double b = Math.max(other.getMinY() - one.getMaxY(), one.getMinY() - other.getMaxY());
        double ours = Clearance.apart(a, b);
        assertThat(Math.max(0, ours)).isCloseTo(PLANE.toGeometry(one).distance(PLANE.toGeometry(other)), within(1e-9));
        assertThat(ours < 0)
                .isEqualTo(PLANE.toGeometry(one)
                                .intersection(PLANE.toGeometry(other))
                                .getArea()
                        > 0);
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void pointToCircle(Draw draw) {
        double x = draw.between(-80, 80);
        double z = draw.between(-80, 80);
        double radius = draw.between(5, 60);
        assertThat(Clearance.toCircle(x, z, radius)).isCloseTo(signed(point(x, z), disc(0, 0, radius)), within(CHORD));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void discToKerb(Draw draw) {
        double wheel = draw.between(40, 90);
        double kerb = draw.between(2, 0.6 * wheel);
        double radius = draw.between(10, 50);
        double x = draw.between(-90, 90);
        double z = draw.between(-40, 90);
        double edge = touching(wheel, kerb);
        var step = box(edge, FAR, -FAR, kerb - wheel);
        assertThat(disc(0, 0, wheel).distance(step)).isCloseTo(0, within(CHORD));
        double ours = Clearance.toKerb(x, z, radius, wheel, kerb);
        assertThat(ours).isCloseTo(signed(point(x, z), step) - radius, within(1e-6));
        assertThat(Math.max(0, ours)).isCloseTo(disc(x, z, radius).distance(step), within(CHORD));
    }

    /// Where a step of this height meets the wheel, found by halving instead of by Pythagoras.
    private static double touching(double wheel, double kerb) {
        double inside = 0;
        double outside = wheel;
        for (int i = 0; i < 60; i++) {
            double middle = (inside + outside) / 2;
            if (Math.hypot(middle, kerb - wheel) < wheel) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return outside;
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void discToTheSlopeUnderARampCrest(Draw draw) {
        double wheel = draw.between(40, 90);
        double radius = draw.between(10, 30);
        double wheelbase = draw.between(400, 1000);
        double crest = draw.between(0.02, 0.4);
        double x = draw.between(-100, 150);
        double z = draw.between(0, 80);
        double tilt = x > 0 ? crest * (1 - x / wheelbase) : 0;
        var slope = PLANE.createLineString(new Coordinate[] {
            under(wheel, tilt, -FAR), under(wheel, tilt, FAR),
        });
        double distance = disc(x, z, radius).distance(slope);
        double ours = Clearance.toCrest(x, z, radius, wheel, crest, wheelbase);
        assertThat(Math.max(0, ours)).isCloseTo(distance, within(CHORD));
    }

    /// A point of the slope that touches the wheel and rises ahead of it.
    private static Coordinate under(double wheel, double tilt, double along) {
        return new Coordinate(
                wheel * Math.sin(tilt) + along * Math.cos(tilt), -wheel * Math.cos(tilt) + along * Math.sin(tilt));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void mirroringChangesNothing(Draw draw) {
        double x = draw.between(-80, 80);
        double z = draw.between(-80, 80);
        double a = draw.between(5, 50);
        double b = draw.between(5, 50);
        double here = Clearance.toRectangle(x, z, a, b);
        assertThat(Clearance.toRectangle(-x, z, a, b)).isEqualTo(here);
        assertThat(Clearance.toRectangle(x, -z, a, b)).isEqualTo(here);
        assertThat(Clearance.toRectangle(z, x, b, a)).isEqualTo(here);
        assertThat(Clearance.toCircle(-x, z, a)).isEqualTo(Clearance.toCircle(x, z, a));
        assertThat(Clearance.apart(x, z)).isEqualTo(Clearance.apart(z, x));
    }

    private static Point point(double x, double z) {
        return PLANE.createPoint(new Coordinate(x, z));
    }

    private static Geometry disc(double x, double z, double radius) {
        return point(x, z).buffer(radius, SEGMENTS);
    }

    private static Geometry box(double left, double right, double low, double high) {
        return PLANE.toGeometry(new Envelope(left, right, low, high));
    }

    /// {@return distance from the point to the outline, negative inside}
    private static double signed(Point point, Geometry body) {
        double distance = body.getBoundary().distance(point);
        return body.contains(point) ? -distance : distance;
    }
}
