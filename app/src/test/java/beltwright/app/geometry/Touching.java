package beltwright.app.geometry;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/// Pairs of bodies that touch by design, and by what.
final class Touching {
    private static final Map<Set<String>, String> PAIRS = Map.ofEntries(
            Map.entry(Set.of("hanger", "middle body"), "one piece"),
            Map.entry(Set.of("hanger", "plate"), "the mount holds it"),
            Map.entry(Set.of("shaft", "drive pulley"), "bore"),
            Map.entry(Set.of("shaft", "plate"), "opening"),
            Map.entry(Set.of("shaft", "belt"), "inside the loop"),
            Map.entry(Set.of("belt", "drive pulley"), "teeth"),
            Map.entry(Set.of("belt", "wheel pulley"), "teeth"),
            Map.entry(Set.of("belt", "idler"), "the belt runs around it"),
            Map.entry(Set.of("idler screw", "idler"), "the idler turns on it"),
            Map.entry(Set.of("idler screw", "plate"), "thread"),
            Map.entry(Set.of("idler screw", "belt"), "the belt runs around it"),
            Map.entry(Set.of("belt", "hanger"), "inside the loop"),
            Map.entry(Set.of("belt", "axle"), "inside the loop"),
            Map.entry(Set.of("belt", "axle spacer"), "inside the loop"),
            Map.entry(Set.of("belt", "inner ring"), "inside the loop"),
            Map.entry(Set.of("core", "inner bearing"), "press fit"),
            Map.entry(Set.of("core", "outer bearing"), "press fit"),
            Map.entry(Set.of("nut", "axle"), "thread"));

    private Touching() {}

    /// {@return the pairs of bodies that stand in each other without being meant to, each named once}
    static SortedSet<String> overlaps(List<Solid> bodies) {
        var pairs = new TreeSet<String>();
        for (int i = 0; i < bodies.size(); i++) {
            for (int j = i + 1; j < bodies.size(); j++) {
                var a = bodies.get(i);
                var b = bodies.get(j);
                if (a.along(b) < -Answer.SAMPLED_MM // else the outlines need not be asked
                        && !byDesign(a.name(), b.name())
                        && a.apart(b) < -Answer.SAMPLED_MM) {
                    boolean inOrder = a.name().compareTo(b.name()) > 0;
                    pairs.add(inOrder ? a.name() + " in " + b.name() : b.name() + " in " + a.name());
                }
            }
        }
        return pairs;
    }

    private static boolean byDesign(String one, String other) {
        var a = plain(one);
        var b = plain(other);
        boolean oneSide = one.equals(a) || other.equals(b) || one.charAt(0) == other.charAt(0);
        return oneSide && (a.equals(b) || PAIRS.containsKey(Set.of(a, b)));
    }

    /// {@return the name without its side}
    private static String plain(String name) {
        return name.replaceFirst("^(left|right) ", "");
    }
}
