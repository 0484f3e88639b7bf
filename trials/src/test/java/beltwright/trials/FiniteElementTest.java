package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.kit.Kit;
import beltwright.strength.Plate;
import beltwright.strength.ShoulderFillet;
import beltwright.trials.FiniteElements.Node;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.ReferenceFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Stress of a stepped axle and of slotted plates held against finite elements: ours lies within 10 % of them.
///
/// Every body is a quarter in pure bending or pull, its far end turned or pulled by a displacement, which is exact far
/// from a notch. Both are told as a share of the stress far away, so that neither load nor stiffness matter.
@Tag("published")
class FiniteElementTest {
    private static final double CLOSE = 0.10;
    private static final double NEARLY = 1e-6; // a node lies on a plane (mm)

    @TempDir
    Path folder;

    @BeforeEach
    void need() {
        Assumptions.assumeTrue(Files.isExecutable(FiniteElements.MESHER), "needs the package gmsh");
        Assumptions.assumeTrue(Files.isExecutable(FiniteElements.SOLVER), "needs the package calculix-ccx");
    }

    private static final class Demo {
        static final Kit KIT = Workshop.shelfOf(
                        Stream.of("parts", "kits", "measurements", "routes")
                                .map(Path.of(System.getProperty("beltwright.root", ".."))
                                        .resolve("demo")::resolve)
                                .toList(),
                        ReferenceFile.bundled())
                .kit("steep-street");
    }

    @Test
    void theStepOfADemoAxle() throws Exception {
        var hanger = Demo.KIT.hanger();
        double thick = hanger.sectionHeightMm().nominal();
        double thin = 8;
        double fillet = hanger.axleFilletMm().nominal();
        stepped(thick, thin, fillet, 0.3);
    }

    @ParameterizedTest
    @CsvSource({"12, 8, 0.8", "16, 8, 0.8"})
    void aStep(double thick, double thin, double fillet) throws Exception {
        stepped(thick, thin, fillet, fillet / 5);
    }

    private double stepped(double thick, double thin, double fillet, double size) throws Exception {
        double found = step(thick, thin, fillet, size);
        assertThat(ShoulderFillet.bending(thick, thin, fillet))
                .as("Kt of the step, finite elements %.3f", found)
                .isCloseTo(found, within(CLOSE * found));
        return found;
    }

    /// {@return the largest stress at the fillet over that of the thin side far away}
    private double step(double thick, double thin, double fillet, double size) throws Exception {
        double big = 0.7 * thick;
        double end = big + 2.5 * thin;
        var shape = String.format(Locale.ROOT, """
                SetFactory("OpenCASCADE");
                R = %.6f; r = %.6f; f = %.6f; a = %.6f; b = %.6f; s = %.6f;
                Point(1) = {0, 0, 0}; Point(2) = {0, R, 0}; Point(3) = {0, R, a}; Point(4) = {0, r + f, a};
                Point(5) = {0, r + f, a + f}; Point(6) = {0, r, a + f}; Point(7) = {0, r, b}; Point(8) = {0, 0, b};
                Line(1) = {1, 2}; Line(2) = {2, 3}; Line(3) = {3, 4}; Circle(4) = {4, 5, 6};
                Line(5) = {6, 7}; Line(6) = {7, 8}; Line(7) = {8, 1};
                Curve Loop(1) = {1, 2, 3, 4, 5, 6, 7}; Plane Surface(1) = {1};
                body[] = Extrude {{0, 0, 1}, {0, 0, 0}, Pi/2} { Surface{1}; };
                Physical Volume(1) = {body[1]};
                Field[1] = MathEval;
                Field[1].F = Sprintf("%%g+0.35*Fabs(Sqrt((Sqrt(x*x+y*y)-%%g)^2+(z-%%g)^2)-%%g)+0.2*Fabs(x)", s, r + f, a + f, f);
                Field[2] = MathEval; Field[2].F = Sprintf("%%g", r / 2);
                Field[3] = Min; Field[3].FieldsList = {1, 2};
                Background Field = 3;
                Mesh.CharacteristicLengthExtendFromBoundary = 0;
                Mesh.HighOrderOptimize = 2;
                """, thick / 2, thin / 2, fillet, big, end, size);
        var solved = FiniteElements.solve(folder, shape, false, n -> {
            var held = new ArrayList<String>();
            if (Math.abs(n.x()) < NEARLY) {
                held.add("1, 0"); // the plane in which it bends
            }
            if (Math.abs(n.y()) < NEARLY) {
                held.add("1, 0"); // the plane that neither pulls nor pushes
                held.add("3, 0");
            } else if (Math.abs(n.z()) < NEARLY) {
                held.add("3, 0");
            } else if (Math.abs(n.z() - end) < NEARLY) {
                held.add("3, " + 0.001 * n.y());
            }
            return held.stream().distinct().toList();
        });
        double far = solved.near(0, thin / 2, big + 1.6 * thin);
        return solved.largest(n -> n.z() > big - NEARLY && n.z() < big + 2 * fillet) / far;
    }

    /// A hole in a plate under pull, and slots along and across it (mm).
    @ParameterizedTest
    @CsvSource({"40, 10", "60, 4.5", "60, 23"})
    void aHoleUnderPull(double width, double hole) throws Exception {
        double found = notch(width, 0, 0, hole / 2, hole / 12);
        double ours = Plate.holeFactor(hole, width) * width / (width - hole);
        assertThat(ours).as("finite elements %.3f", found).isCloseTo(found, within(CLOSE * found));
    }

    @Test
    void aSlotAcrossAWidePlate() throws Exception {
        double found = notch(400, 20 - 5.3, 90, 5.3 / 2, 0.35);
        double ours = Plate.slotFactor(20, 5.3 / 2);
        assertThat(ours).as("finite elements %.3f", found).isCloseTo(found, within(CLOSE * found));
    }

    /// A plate takes a slot along the pull for a round hole, which is safe: the slot is the lesser notch.
    @Test
    void aSlotAlongThePullIsNoWorseThanAHole() throws Exception {
        var mount = Demo.KIT.drives().getFirst().mount();
        double width = 2 * mount.plateRadiusMm().nominal();
        double slot = mount.slotWidthMm().nominal();
        double travel = mount.slotMaxMm().nominal() - mount.slotMinMm().nominal();
        double found = notch(width, travel, 0, slot / 2, slot / 12);
        double ours = Plate.holeFactor(slot, width) * width / (width - slot);
        assertThat(ours).isGreaterThan(0.98 * found).isLessThan(1.6 * found);
    }

    /// {@return the largest stress over that of the plate far away}
    ///
    /// @param apart between the centres of the slot's two round ends; 0 for a hole
    /// @param turned angle of the slot to the pull (°)
    private double notch(double width, double apart, double turned, double radius, double size) throws Exception {
        double length = Math.max(2 * width, 60);
        var shape = plate(length / 2, width / 2, slot(0, apart, turned, radius), size, radius);
        var solved = FiniteElements.solve(folder, shape, true, n -> pulled(n, length / 2));
        return solved.largest(n -> true) / solved.near(0.45 * length, width / 4, 0);
    }

    private static List<String> pulled(Node n, double end) {
        var held = new ArrayList<String>();
        if (Math.abs(n.x()) < NEARLY) {
            held.add("1, 0");
        }
        if (Math.abs(n.y()) < NEARLY) {
            held.add("2, 0");
        }
        if (Math.abs(n.x() - end) < NEARLY) {
            held.add("1, 0.01");
        }
        return held;
    }

    /// A plate bent in its plane across two slots and an opening, long enough for a beam between them.
    @Test
    void theEdgeBesideLongSlots() throws Exception {
        var plate = DemoPlate.of();
        double slots = 3 * plate.width();
        var solved = plate.bent(folder, slots);
        double found = solved.near(0, plate.width() / 2, 0) / solved.near(plate.far(slots), plate.width() / 2, 0);
        assertThat(plate.edge()).as("finite elements %.3f", found).isCloseTo(found, within(CLOSE * found));
    }

    /// The slots of a mount are short: the plate's edge feels less of them, their own ends are what counts. There the
    /// check's stress must not lie below what the elements find.
    @Test
    void theSlotsOfADemoPlate() throws Exception {
        var plate = DemoPlate.of();
        var solved = plate.bent(folder, plate.travel());
        double far = plate.far(plate.travel());
        double found = solved.largest(n -> n.x() < far / 2) / solved.near(far, plate.width() / 2, 0);
        double ours = Plate.holeFactor(plate.slot(), plate.width()) * plate.edge();
        assertThat(ours).as("finite elements %.3f", found).isGreaterThan(found);
    }

    /// Width, slots and opening of a demo kit's mount (mm).
    private record DemoPlate(double width, double slot, double aside, double opening, double travel) {
        static DemoPlate of() {
            var mount = Demo.KIT.drives().getFirst().mount();
            return new DemoPlate(
                    2 * mount.plateRadiusMm().nominal(),
                    mount.slotWidthMm().nominal(),
                    mount.boltCircleMm().nominal() / 2 * Math.sqrt(0.5),
                    mount.openingMm().nominal(),
                    mount.slotMaxMm().nominal() - mount.slotMinMm().nominal());
        }

        /// {@return the stress at its edge across the slots over that of the whole plate, as the check takes it}
        double edge() {
            return Plate.edgewiseMpa(1, width, 1, slot, aside, opening) / Plate.edgewiseMpa(1, width, 1, 0, 0, 0);
        }

        private double halfLength(double slotsMm) {
            return slotsMm / 2 + 2 * width;
        }

        /// {@return where the slots are not felt any more, from the middle (mm)}
        double far(double slotsMm) {
            return halfLength(slotsMm) - width / 2;
        }

        FiniteElements.Solved bent(Path folder, double slotsMm) throws Exception {
            var holes = FiniteElementTest.slot(aside, slotsMm, 0, slot / 2)
                    + FiniteElementTest.slot(0, slotsMm, 0, opening / 2);
            double end = halfLength(slotsMm);
            return FiniteElements.solve(
                    folder,
                    plate(end, width / 2, holes, slot / 5, slot / 2),
                    true,
                    n -> FiniteElementTest.bent(n, end));
        }
    }

    private static List<String> bent(Node n, double end) {
        var held = new ArrayList<String>();
        if (Math.abs(n.x()) < NEARLY || Math.abs(n.y()) < NEARLY) {
            held.add("1, 0");
        }
        if (Math.abs(n.x()) < NEARLY && Math.abs(n.y()) < NEARLY) {
            held.add("2, 0");
        }
        if (Math.abs(n.x() - end) < NEARLY && Math.abs(n.y()) > NEARLY) {
            held.add("1, " + 0.0005 * n.y());
        }
        return held;
    }

    private static String slot(double aside, double apart, double turned, double radius) {
        double along = turned == 0 ? apart / 2 : 0;
        double across = turned == 0 ? 0 : apart / 2;
        var text = new StringBuilder();
        for (int end = -1; end <= (apart > 0 ? 1 : -1); end += 2) {
            text.append(String.format(
                    Locale.ROOT,
                    "k = newreg; Disk(k) = {%.6f, %.6f, 0, %.6f}; cut[] += {k};%n",
                    end * along,
                    aside + end * across,
                    radius));
        }
        if (apart > 0) {
            double halfX = turned == 0 ? along : radius;
            double halfY = turned == 0 ? radius : across;
            text.append(String.format(
                    Locale.ROOT,
                    "k = newreg; Rectangle(k) = {%.6f, %.6f, 0, %.6f, %.6f}; cut[] += {k};%n",
                    -halfX,
                    aside - halfY,
                    2 * halfX,
                    2 * halfY));
        }
        return text.toString();
    }

    /// A quarter of a plate less its holes, fine around their edges.
    private static String plate(double halfLength, double halfWidth, String holes, double size, double radius) {
        return String.format(
                Locale.ROOT,
                """
                SetFactory("OpenCASCADE");
                cut[] = {};
                Rectangle(1) = {0, 0, 0, %.6f, %.6f};
                %s
                body[] = BooleanDifference { Surface{1}; Delete; } { Surface{cut[]}; Delete; };
                Physical Surface(1) = {body[]};
                edges[] = Boundary { Surface{body[]}; };
                Field[1] = Distance; Field[1].EdgesList = {edges[]}; Field[1].NNodesByEdge = 200;
                Field[2] = Threshold; Field[2].IField = 1; Field[2].LcMin = %.6f; Field[2].LcMax = %.6f;
                Field[2].DistMin = 0; Field[2].DistMax = %.6f;
                Background Field = 2;
                Mesh.CharacteristicLengthExtendFromBoundary = 0;
                """,
                halfLength,
                halfWidth,
                holes,
                size,
                Math.max(6 * size, halfWidth / 8),
                halfWidth / 2 + radius);
    }

    /// Finer and finer: what the elements say stays within 2 %, so that the coarse mesh can be trusted.
    @Tag("campaign")
    @Tag("finite-elements")
    @Test
    void finerMeshesSettle() throws Exception {
        double finest = stepped(18, 8, 1.5, 0.08);
        for (double size : new double[] {0.3, 0.2, 0.12}) {
            assertThat(stepped(18, 8, 1.5, size))
                    .as("elements of %s mm", size)
                    .isCloseTo(finest, within(0.02 * finest));
        }
        double slot = notch(400, 20 - 5.3, 90, 5.3 / 2, 0.35);
        double fineSlot = notch(400, 20 - 5.3, 90, 5.3 / 2, 0.08);
        assertThat(slot).isCloseTo(fineSlot, within(0.02 * fineSlot));
    }
}
