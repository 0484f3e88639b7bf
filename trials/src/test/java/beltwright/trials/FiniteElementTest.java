package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.part.Mount;
import beltwright.strength.Plate;
import beltwright.strength.ShoulderFillet;
import beltwright.trials.FiniteElements.Node;
import beltwright.workshop.Shelf;
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
import org.junit.jupiter.params.provider.ValueSource;

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
        static final Shelf SHELF = Workshop.shelfOf(
                Stream.of("parts", "kits", "measurements", "routes")
                        .map(Path.of(System.getProperty("beltwright.root", ".."))
                                .resolve("demo")::resolve)
                        .toList(),
                ReferenceFile.bundled());
    }

    @Test
    void theStepOfADemoAxle() throws Exception {
        var hanger = Demo.SHELF.kit("steep-street").hanger();
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

    /// From a slot that is hardly longer than a hole to one that is long (mm, between its round ends).
    @ParameterizedTest
    @ValueSource(doubles = {0.9, 2.25, 4.5, 9, 27})
    void aSlotAlongThePullOfAWidePlate(double travel) throws Exception {
        double found = notch(200, travel, 0, 4.5 / 2, 0.35);
        double ours = Plate.slotAlongFactor(travel, 4.5);
        assertThat(ours).as("finite elements %.3f", found).isCloseTo(found, within(CLOSE * found));
    }

    /// {@return the largest stress over that of the plate far away}
    ///
    /// @param apart between the centres of the slot's two round ends; 0 for a hole
    /// @param turned angle of the slot to the pull (°)
    private double notch(double width, double apart, double turned, double radius, double size) throws Exception {
        double length = Math.max(2 * width, 60);
        var shape = plate(length / 2, width / 2, slot(0, 0, apart, turned, radius), size, radius);
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
        var plate = DemoPlate.of("mount-hill").longer();
        var solved = plate.bent(folder, false);
        double found =
                solved.near(plate.aside(), plate.width() / 2, 0) / solved.near(plate.far(), plate.width() / 2, 0);
        assertThat(plate.edge()).as("finite elements %.3f", found).isCloseTo(found, within(CLOSE * found));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mount-city", "mount-hill", "mount-load", "mount-flange"})
    void theSlotsOfADemoMountBentInItsPlane(String mount) throws Exception {
        var plate = DemoPlate.of(mount);
        var solved = plate.bent(folder, false);
        double found = solved.largest(plate::atSlots) / solved.near(plate.far(), plate.width() / 2, 0);
        assertThat(plate.edgewise()).as("finite elements %.3f", found).isCloseTo(found, within(CLOSE * found));
    }

    @Test
    void theSlotsOfADemoMountBentOutOfItsPlane() throws Exception {
        flatwise("mount-hill");
    }

    @Tag("campaign")
    @Tag("finite-elements")
    @ParameterizedTest
    @ValueSource(strings = {"mount-city", "mount-load", "mount-flange"})
    void theSlotsOfTheOtherMountsBentOutOfTheirPlane(String mount) throws Exception {
        flatwise(mount);
    }

    private void flatwise(String mount) throws Exception {
        var plate = DemoPlate.of(mount);
        var solved = plate.bent(folder, true);
        double found = solved.largest(plate::atSlots) / solved.near(plate.far(), plate.width() / 4, plate.thick() / 2);
        assertThat(plate.flatwise()).as("finite elements %.3f", found).isCloseTo(found, within(CLOSE * found));
    }

    /// A demo mount's plate (mm): four slots along it, as far before and behind the middle as beside it, and the
    /// opening
    /// that runs along with them. Its stresses are told as shares of those of the whole plate.
    private record DemoPlate(double width, double thick, double slot, double aside, double opening, double travel) {
        static DemoPlate of(String id) {
            var mount = (Mount) Demo.SHELF.part(id);
            return new DemoPlate(
                    2 * mount.plateRadiusMm().nominal(),
                    mount.plateThicknessMm().nominal(),
                    mount.slotWidthMm().nominal(),
                    mount.boltCircleMm().nominal() / 2 * Math.sqrt(0.5),
                    mount.openingMm().nominal(),
                    mount.slotMaxMm().nominal() - mount.slotMinMm().nominal());
        }

        DemoPlate longer() {
            return new DemoPlate(width, thick, slot, aside, opening, 3 * width);
        }

        /// {@return the stress at its edge across the slots}
        double edge() {
            return Plate.edgewiseMpa(1, width, thick, slot, aside, opening) / whole();
        }

        /// {@return the stress at a slot's end as the plate is bent in its plane}
        double edgewise() {
            return Plate.slotAlongFactor(travel, slot)
                    * Plate.besideSlotMpa(1, width, thick, slot, aside, opening)
                    / whole();
        }

        /// {@return the stress at a slot's end as the plate is bent out of its plane}
        double flatwise() {
            double net = Plate.netMm(width, 2, slot) - opening;
            return Plate.bentSlotFactor(travel, slot, thick)
                    * Plate.flatwiseMpa(1, net, thick)
                    / Plate.flatwiseMpa(1, width, thick);
        }

        private double whole() {
            return Plate.edgewiseMpa(1, width, thick, 0, 0, 0);
        }

        private double halfLength() {
            return travel / 2 + aside + 1.5 * width;
        }

        /// {@return where the slots are not felt any more, from the middle (mm)}
        double far() {
            return halfLength() - width / 2;
        }

        boolean atSlots(Node n) {
            return Math.abs(n.y() - aside) < slot / 2 + NEARLY
                    && Math.abs(n.x() - aside) < (travel + slot) / 2 + NEARLY;
        }

        FiniteElements.Solved bent(Path folder, boolean flatwise) throws Exception {
            var holes = FiniteElementTest.slot(aside, aside, travel, 0, slot / 2)
                    + FiniteElementTest.slot(0, 0, travel, 0, opening / 2);
            double end = halfLength();
            if (!flatwise) {
                var shape = plate(end, width / 2, holes, slot / 8, slot / 2);
                return FiniteElements.solve(folder, shape, true, n -> FiniteElementTest.bent(n, end));
            }
            var shape = plate(end, width / 2, holes, slot / 6, slot / 2) + String.format(Locale.ROOT, """
                            thick[] = Extrude {0, 0, %.6f} { Surface{body[]}; Layers{ {2, 2}, {0.6, 1} }; };
                            Delete Physicals; Physical Volume(1) = {thick[1]};
                            """, thick / 2);
            return FiniteElements.solve(folder, shape, false, n -> bentFlat(n, end, width / 2));
        }

        /// Half of its thickness: the middle plane neither stretches nor shears.
        private static List<String> bentFlat(Node n, double end, double edge) {
            var held = new ArrayList<String>();
            if (Math.abs(n.z()) < NEARLY) {
                held.add("1, 0");
                held.add("2, 0");
                if (Math.abs(n.x()) < NEARLY && Math.abs(n.y() - edge) < NEARLY) {
                    held.add("3, 0");
                }
                return held;
            }
            if (Math.abs(n.x()) < NEARLY) {
                held.add("1, 0");
            } else if (Math.abs(n.x() - end) < NEARLY) {
                held.add(String.format(Locale.ROOT, "1, %.6e", 0.001 * n.z()));
            }
            if (Math.abs(n.y()) < NEARLY) {
                held.add("2, 0");
            }
            return held;
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

    private static String slot(double before, double aside, double apart, double turned, double radius) {
        double along = turned == 0 ? apart / 2 : 0;
        double across = turned == 0 ? 0 : apart / 2;
        var text = new StringBuilder();
        for (int end = -1; end <= (apart > 0 ? 1 : -1); end += 2) {
            text.append(String.format(
                    Locale.ROOT,
                    "k = newreg; Disk(k) = {%.6f, %.6f, 0, %.6f}; cut[] += {k};%n",
                    before + end * along,
                    aside + end * across,
                    radius));
        }
        if (apart > 0) {
            double halfX = turned == 0 ? along : radius;
            double halfY = turned == 0 ? radius : across;
            text.append(String.format(
                    Locale.ROOT,
                    "k = newreg; Rectangle(k) = {%.6f, %.6f, 0, %.6f, %.6f}; cut[] += {k};%n",
                    before - halfX,
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
