package beltwright.workshop.document;

import beltwright.quantity.Dimension;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// What no real part has although every number of it can be read: a limit that its field does not
/// allow, a bore that is no less than the outside around it.
///
/// Whatever is entered is held against this. What is kept already is not: a workshop must open whatever an earlier
/// version let in.
final class Bounds {
    private static final double SLACK = 1e-9; // of binary fractions

    private Bounds() {}

    /// One thing that is wrong.
    record Wrong(String path, String wrong, String allowed, String mend) {}

    /// {@return everything that is wrong with this record, by the path of its field}
    static List<Wrong> of(Object made) {
        var leaves = RecordForm.of(made.getClass()).leaves(made);
        var known = leaves.stream()
                .filter(leaf -> leaf.value() instanceof Dimension d && d.known())
                .collect(Collectors.toMap(RecordForm.Leaf::path, Function.identity()));
        var found = new ArrayList<Wrong>();
        for (var leaf : leaves) {
            if (leaf.value() instanceof Dimension d && d.known()) {
                limits(leaf.path(), leaf.field(), d).ifPresent(found::add);
                within(leaf, d, known).ifPresent(found::add);
            }
        }
        return found;
    }

    static Optional<Wrong> limits(String path, FieldForm field, Dimension d) {
        return Stream.of(d.lower(), d.upper())
                .filter(limit -> !allowed(field, limit))
                .findFirst()
                .map(limit -> new Wrong(
                        path,
                        "the " + (limit == d.lower() ? "lower" : "upper") + " limit " + Numbers.significant(limit, 6)
                                + " of '" + d.text() + "' cannot be true of a real one",
                        field.allowed(),
                        "narrow the limits, or check the unit and the decimal point"));
    }

    private static boolean allowed(FieldForm field, double limit) {
        double slack = SLACK * Math.max(1, Math.abs(limit));
        return field.canBe(limit) || field.canBe(limit - slack) || field.canBe(limit + slack);
    }

    private static Optional<Wrong> within(RecordForm.Leaf leaf, Dimension inner, Map<String, RecordForm.Leaf> known) {
        var around = leaf.field().within();
        var outer = known.get(leaf.path().substring(0, leaf.path().lastIndexOf('.') + 1) + around);
        if (around.isEmpty() || outer == null || inner.nominal() < ((Dimension) outer.value()).nominal()) {
            return Optional.empty();
        }
        return Optional.of(new Wrong(
                leaf.path(),
                "the " + leaf.field().meaning() + " '" + inner.text() + "' is no less than the "
                        + outer.field().meaning() + " '" + ((Dimension) outer.value()).text() + "' around it",
                "less than " + outer.path(),
                "measure both again, or type 'unknown' for the one in doubt"));
    }
}
