package beltwright.change;

import beltwright.assembly.Box;
import beltwright.assembly.Step;
import beltwright.check.Finding;
import beltwright.check.FirstNumber;
import beltwright.dossier.Dossier;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/// What differs between two dossiers, in trade words: every finding, number, drawn dimension, box line and guide step
/// that moved. Something that came or went has an empty text on the other side.
public record Change(List<Moved> moved) {
    public Change {
        moved = List.copyOf(moved);
    }

    /// What kind of thing moved.
    public enum What {
        FINDING("finding"),
        NUMBER("number"),
        DIMENSION("drawing dimension"),
        BOX("box"),
        STEP("guide step");

        private final String words;

        What(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// One thing that moved, before and after.
    ///
    /// @param name what a person calls it
    /// @param key what a script calls it
    public record Moved(What what, String key, String name, String before, String after) {}

    public static Change between(Dossier before, Dossier after) {
        var moved = new ArrayList<Moved>();
        compare(
                moved,
                What.FINDING,
                before.findings(),
                after.findings(),
                Finding::key,
                Change::name,
                Change::told,
                Change::same);
        compare(
                moved,
                What.NUMBER,
                before.numbers(),
                after.numbers(),
                FirstNumber::key,
                n -> n.name() + ", " + side(n.key()),
                n -> Numbers.significant(n.value(), 4) + " " + n.unit(),
                (a, b) -> Double.compare(a.value(), b.value()) == 0);
        compare(
                moved,
                What.DIMENSION,
                before.dimensions(),
                after.dimensions(),
                d -> d.name() + "." + d.side(),
                d -> d.name() + ", " + d.side(),
                d -> Numbers.fixed(d.valueMm(), 2) + " mm",
                (a, b) -> Double.compare(a.valueMm(), b.valueMm()) == 0);
        compare(
                moved,
                What.BOX,
                before.box().items(),
                after.box().items(),
                Box.Item::part,
                Box.Item::name,
                i -> i.count() + " × " + i.name() + ", revision " + i.revision(),
                Object::equals);
        compare(
                moved,
                What.STEP,
                before.steps(),
                after.steps(),
                s -> s.joint().isEmpty() ? s.title() : s.joint(),
                Step::title,
                Change::told,
                Object::equals);
        return new Change(moved);
    }

    private static String side(String key) {
        return key.substring(key.lastIndexOf('.') + 1);
    }

    private static String name(Finding f) {
        return f.side().equals("kit") ? f.check() : f.check() + ", " + f.side();
    }

    private static String told(Finding f) {
        return f.verdict() + ": " + f.says() + (f.remedy().isEmpty() ? "" : " → " + f.remedy());
    }

    private static boolean same(Finding a, Finding b) {
        return a.verdict() == b.verdict()
                && Double.compare(a.demand(), b.demand()) == 0
                && Double.compare(a.capacity(), b.capacity()) == 0
                && Double.compare(a.capacityWorst(), b.capacityWorst()) == 0
                && Double.compare(a.demandWorst(), b.demandWorst()) == 0
                && a.says().equals(b.says());
    }

    private static String told(Step s) {
        var takes = String.join(
                ", ", s.takes().stream().map(t -> t.count() + " × " + t.name()).toList());
        var torque = s.torque() == null ? "" : "; " + Numbers.fixed(s.torque().torqueNm(), 1) + " N·m";
        return "step " + s.number() + ": " + s.title() + (takes.isEmpty() ? "" : "; " + takes) + torque + "; "
                + String.join(" ", s.does());
    }

    private static <T> void compare(
            List<Moved> moved,
            What what,
            List<T> before,
            List<T> after,
            Function<T, String> key,
            Function<T, String> name,
            Function<T, String> told,
            BiPredicate<T, T> same) {
        var was = byKey(before, key);
        var is = byKey(after, key);
        var keys = new LinkedHashSet<>(was.keySet());
        keys.addAll(is.keySet());
        for (var k : keys) {
            @Nullable T a = was.get(k);
            @Nullable T b = is.get(k);
            if (a == null || b == null || !same.test(a, b)) {
                moved.add(new Moved(
                        what,
                        k,
                        name.apply(a != null ? a : java.util.Objects.requireNonNull(b)),
                        a == null ? "" : told.apply(a),
                        b == null ? "" : told.apply(b)));
            }
        }
    }

    private static <T> Map<String, T> byKey(List<T> all, Function<T, String> key) {
        var map = new TreeMap<String, T>();
        all.forEach(t -> map.put(key.apply(t), t));
        return map;
    }
}
