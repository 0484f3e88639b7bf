package beltwright.trials;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;

/// A body of steel meshed by gmsh and solved by CalculiX, both general-purpose programs that are not ours.
///
/// The mesh is of second order, which gmsh takes from its command line alone. The solver ends without a word where
/// elements are missing, so a file without stresses is an error here.
final class FiniteElements {
    static final Path MESHER = Path.of("/usr/bin/gmsh");
    static final Path SOLVER = Path.of("/usr/bin/ccx");

    private static final int SECONDS = 900; // a coarse body takes one or two, a fine one minutes
    private static final double YOUNG_MPA = 207_000;
    private static final double POISSON = 0.3;

    private FiniteElements() {}

    /// A point of the mesh (mm).
    record Node(int number, double x, double y, double z) {
        double from(double toX, double toY, double toZ) {
            return Math.sqrt((x - toX) * (x - toX) + (y - toY) * (y - toY) + (z - toZ) * (z - toZ));
        }
    }

    /// What the solver found: the largest principal stress (MPa) at every node.
    record Solved(List<Node> nodes, Map<Integer, Double> stress) {
        /// {@return the largest stress (MPa) at any node of this part of the body}
        double largest(Predicate<Node> where) {
            return nodes.stream()
                    .filter(n -> stress.containsKey(n.number()) && where.test(n))
                    .mapToDouble(n -> stress.get(n.number()))
                    .max()
                    .orElseThrow();
        }

        /// {@return the stress (MPa) at the node nearest to a point}
        double near(double x, double y, double z) {
            return stress.get(nodes.stream()
                    .filter(n -> stress.containsKey(n.number()))
                    .min(Comparator.comparingDouble(n -> n.from(x, y, z)))
                    .orElseThrow()
                    .number());
        }
    }

    /// @param shape the body in gmsh's language, its one physical volume or surface marked
    /// @param flat whether it is a plate under stress in its plane, one millimetre thick
    /// @param held which displacements a node is held at, as `direction, value` by CalculiX
    static Solved solve(Path folder, String shape, boolean flat, Function<Node, List<String>> held)
            throws IOException, InterruptedException {
        Files.writeString(folder.resolve("body.geo"), shape);
        Outside.run(
                folder,
                SECONDS,
                List.of(MESHER.toString(), "body.geo", flat ? "-2" : "-3", "-order", "2", "-format", "inp", "-v", "1"));
        var mesh = Files.readAllLines(folder.resolve("body.inp"));
        var nodes = nodes(mesh);
        Files.writeString(folder.resolve("asked.inp"), asked(mesh, nodes, flat, held));
        Outside.run(folder, SECONDS, List.of(SOLVER.toString(), "-i", "asked"));
        var stress = stress(Files.readAllLines(folder.resolve("asked.frd")));
        if (stress.isEmpty()) {
            throw new IllegalStateException("the solver wrote no stress");
        }
        return new Solved(nodes, stress);
    }

    private static List<Node> nodes(List<String> mesh) {
        var nodes = new ArrayList<Node>();
        for (var line : section(mesh, "*NODE")) {
            var words = line.split(",");
            nodes.add(new Node(
                    Integer.parseInt(words[0].strip()),
                    Double.parseDouble(words[1]),
                    Double.parseDouble(words[2]),
                    Double.parseDouble(words[3])));
        }
        return nodes;
    }

    /// The lines after one that begins so, up to the next that begins with a star.
    private static List<String> section(List<String> lines, String head) {
        int from = 0;
        while (!lines.get(from).startsWith(head)) {
            from++;
        }
        int to = from + 1;
        while (to < lines.size() && !lines.get(to).startsWith("*")) {
            to++;
        }
        return lines.subList(from + 1, to);
    }

    private static String asked(List<String> mesh, List<Node> nodes, boolean flat, Function<Node, List<String>> held) {
        var type = flat ? "CPS6" : "C3D10";
        var text = new StringBuilder("*NODE, NSET=ALL\n");
        nodes.forEach(n ->
                text.append(String.format(Locale.ROOT, "%d, %.9g, %.9g, %.9g%n", n.number(), n.x(), n.y(), n.z())));
        text.append("*ELEMENT, TYPE=").append(type).append(", ELSET=BODY\n");
        section(mesh, "*ELEMENT, type=" + type).forEach(l -> text.append(l).append('\n'));
        text.append("*MATERIAL, NAME=STEEL\n*ELASTIC\n")
                .append(YOUNG_MPA)
                .append(", ")
                .append(POISSON)
                .append("\n*SOLID SECTION, ELSET=BODY, MATERIAL=STEEL\n")
                .append(flat ? "1.\n" : "")
                .append("*STEP\n*STATIC\n*BOUNDARY\n");
        for (var node : nodes) {
            for (var one : held.apply(node)) {
                var words = one.split(", ");
                text.append(node.number())
                        .append(", ")
                        .append(words[0])
                        .append(", ")
                        .append(words[0])
                        .append(", ")
                        .append(words[1])
                        .append('\n');
            }
        }
        return text.append(flat ? "*EL FILE, OUTPUT=2D\nS\n" : "*EL FILE\nS\n")
                .append("*END STEP\n")
                .toString();
    }

    /// Columns of the solver's result file: a mark of three, the node of ten, then numbers of twelve.
    private static Map<Integer, Double> stress(List<String> result) {
        var stress = new HashMap<Integer, Double>();
        boolean here = false;
        for (var line : result) {
            if (line.startsWith(" -4  STRESS")) {
                here = true;
            } else if (line.startsWith(" -3")) {
                here = false;
            } else if (here && line.startsWith(" -1")) {
                var s = new double[6];
                for (int i = 0; i < 6; i++) {
                    s[i] = Double.parseDouble(line.substring(13 + 12 * i, 25 + 12 * i));
                }
                stress.put(Integer.parseInt(line.substring(3, 13).strip()), largestPrincipal(s));
            }
        }
        return stress;
    }

    /// The largest root of the cubic of a symmetric tensor xx, yy, zz, xy, yz, zx.
    private static double largestPrincipal(double[] s) {
        double mean = (s[0] + s[1] + s[2]) / 3;
        double off = s[3] * s[3] + s[4] * s[4] + s[5] * s[5];
        double a = s[0] - mean;
        double b = s[1] - mean;
        double c = s[2] - mean;
        double p = Math.sqrt((a * a + b * b + c * c + 2 * off) / 6);
        if (p == 0) {
            return mean;
        }
        double det = a * (b * c - s[4] * s[4]) - s[3] * (s[3] * c - s[4] * s[5]) + s[5] * (s[3] * s[4] - b * s[5]);
        return mean + 2 * p * Math.cos(Math.acos(Math.clamp(det / (2 * p * p * p), -1, 1)) / 3);
    }
}
