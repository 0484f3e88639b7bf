package beltwright.workshop.document;

import beltwright.part.Label;
import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/// A record as it is typed: one field for each component, by the component's own name and in the record's order.
///
/// Everything that files, store, edits and forms need of a part or a task follows from the record itself, so a new
/// kind of part needs no line here. The label of a part has no name of its own: its fields stand beside the others.
final class RecordForm {
    private static final Map<Class<?>, RecordForm> KNOWN = new ConcurrentHashMap<>();

    private final Constructor<?> constructor;
    private final List<RecordComponent> components;
    private final List<FieldForm> fields;

    private RecordForm(Class<?> type) {
        components = List.of(type.getRecordComponents());
        fields = components.stream().map(FieldForm::of).toList();
        try {
            constructor = type.getDeclaredConstructor(
                    components.stream().map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    static RecordForm of(Class<?> type) {
        return KNOWN.computeIfAbsent(type, RecordForm::new);
    }

    /// {@return the names that are typed at this level}
    List<String> names() {
        return fields.stream().map(FieldForm::name).filter(n -> !given(n)).toList();
    }

    private static boolean given(String name) {
        return name.equals("label") || name.equals("id");
    }

    /// Reads the fields typed here; dimensions left out are unknown.
    ///
    /// @param usual the source of every dimension that names no other
    /// @param given values of components that are not typed here
    /// @return the record, or null when anything was refused; the scope then holds every mistake
    @Nullable
    Object read(Scope at, Node.Fields typed, Provenance usual, Map<String, ?> given) {
        at.refuseOthers(typed, names());
        var values = new ArrayList<@Nullable Object>();
        var known = new HashMap<String, @Nullable Object>();
        for (var field : fields) {
            Object value;
            if (given.containsKey(field.name())) {
                value = given.get(field.name());
            } else if (!typed.fields().containsKey(field.name())
                    && !field.when().met(known)) {
                value = field.nothing(at.in(field.name()).field(), usual);
            } else {
                value = value(at, typed, field, usual);
            }
            values.add(value);
            known.put(field.name(), value);
        }
        return values.contains(null) ? null : make(values);
    }

    private static @Nullable Object value(Scope at, Node.Fields typed, FieldForm field, Provenance usual) {
        var inside = at.in(field.name());
        if (!typed.fields().containsKey(field.name())) {
            if (field.dimension()) {
                return Dimension.unknown(inside.field(), usual);
            }
            if (field.optional()) {
                return field.nothing("", usual);
            }
        }
        var node = at.required(typed, field.name(), field.allowed());
        return node == null ? null : field.read(inside, node, usual);
    }

    /// {@return the fields of a record as they are typed, without an empty note}
    SequencedMap<String, Node> write(Object made, Provenance usual) {
        var typed = new LinkedHashMap<String, Node>();
        var known = new HashMap<String, Object>();
        for (int i = 0; i < fields.size(); i++) {
            var field = fields.get(i);
            var value = get(made, i);
            known.put(field.name(), value);
            boolean says = field.when().met(known) || !idle(field, value, usual);
            if (says && !given(field.name()) && !(field.optional() && value.equals(field.nothing("", usual)))) {
                typed.put(field.name(), field.write(value, usual));
            }
        }
        return typed;
    }

    /// {@return whether a field without anything to measure holds nothing}
    private static boolean idle(FieldForm field, Object value, Provenance usual) {
        return value instanceof Dimension d
                ? !d.known() && d.provenance().equals(usual)
                : value.equals(field.nothing("", usual));
    }

    /// One value of a record, however deep, by its path: `rim.faceWidthMm`.
    record Leaf(String path, FieldForm field, Object value) {}

    List<Leaf> leaves(Object made) {
        var leaves = new ArrayList<Leaf>();
        mapped(made, leaf -> {
            leaves.add(leaf);
            return leaf.value();
        });
        return leaves;
    }

    /// {@return the form of each value by its path, as this type of record has them}
    SequencedMap<String, FieldForm> paths() {
        var paths = new LinkedHashMap<String, FieldForm>();
        for (var field : fields) {
            if (field.nested()) {
                of(field.type()).paths().forEach((path, form) -> paths.put(prefix(field) + path, form));
            } else if (!given(field.name())) {
                paths.put(field.name(), field);
            }
        }
        return paths;
    }

    /// {@return the tree of nodes that is read as this record, without the leaves for which `leaf`
    /// has nothing}
    SequencedMap<String, Node> tree(int line, BiFunction<String, FieldForm, Optional<Node>> leaf) {
        return tree("", line, leaf);
    }

    private SequencedMap<String, Node> tree(String path, int line, BiFunction<String, FieldForm, Optional<Node>> leaf) {
        var typed = new LinkedHashMap<String, Node>();
        for (var field : fields) {
            if (given(field.name())) {
                continue;
            }
            if (field.nested()) {
                var inside = of(field.type()).tree(path + prefix(field), line, leaf);
                typed.put(field.name(), new Node.Fields(inside, line));
            } else {
                leaf.apply(path + field.name(), field).ifPresent(node -> typed.put(field.name(), node));
            }
        }
        return typed;
    }

    /// {@return the record made anew, each of its values passed through `change`}
    Object mapped(Object made, Function<Leaf, Object> change) {
        return mapped(made, "", change);
    }

    private Object mapped(Object made, String path, Function<Leaf, Object> change) {
        var values = new ArrayList<@Nullable Object>();
        for (int i = 0; i < fields.size(); i++) {
            var field = fields.get(i);
            var value = get(made, i);
            if (field.nested()) {
                values.add(of(field.type()).mapped(value, path + prefix(field), change));
            } else if (given(field.name())) {
                values.add(value);
            } else {
                values.add(change.apply(new Leaf(path + field.name(), field, value)));
            }
        }
        return make(values);
    }

    private static String prefix(FieldForm field) {
        return field.type() == Label.class ? "" : field.name() + ".";
    }

    /// {@return the source that most dimensions of this record have; of equals the first by its words}
    Provenance usual(Object made) {
        var counts = new TreeMap<Provenance, Integer>(Comparator.comparing(Provenance::words));
        for (var leaf : leaves(made)) {
            if (leaf.value() instanceof Dimension d) {
                counts.merge(d.provenance(), 1, Integer::sum);
            }
        }
        int most = counts.values().stream().mapToInt(n -> n).max().orElseThrow();
        return counts.entrySet().stream()
                .filter(e -> e.getValue() == most)
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    private Object get(Object made, int i) {
        try {
            return components.get(i).getAccessor().invoke(made);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    Object make(List<@Nullable Object> values) {
        try {
            return constructor.newInstance(values.toArray());
        } catch (InvocationTargetException e) {
            throw e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(
                    Arrays.toString(values.toArray()) + " does not make a " + constructor.getDeclaringClass(), e);
        }
    }
}
