package beltwright.spread;

import beltwright.quantity.Dimension;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/// Makes a value anew with drawn numbers in place of its toleranced dimensions, at any depth of records, lists and
/// maps.
/// Whatever has no limits stays the same object. It reads the components of a record, so a new field needs no code
/// here.
interface Recast {
    /// @param drawn values of the dimensions that were found, the first of them at `from`
    Object with(double[] drawn, int from);

    /// @param found takes the toleranced dimensions of `value`, in the order in which [#with] reads their values
    static Recast of(Object value, List<Dimension> found) {
        int before = found.size();
        var recast = switch (value) {
            case Dimension d when d.toleranced() -> dimension(d, found);
            case Dimension d -> same(d);
            case Record r -> record(r, found);
            case Map<?, ?> m -> map(m, found);
            case List<?> l -> list(l, found);
            default -> same(value);
        };
        return found.size() == before ? same(value) : recast;
    }

    private static Recast same(Object value) {
        return (drawn, from) -> value;
    }

    private static Recast dimension(Dimension d, List<Dimension> found) {
        int at = found.size();
        found.add(d);
        return (drawn, from) -> d.drawn(drawn[from + at]);
    }

    private static Recast record(Record record, List<Dimension> found) {
        var declared = record.getClass().getRecordComponents();
        var as = new Object[declared.length];
        var changing = new ArrayList<Integer>();
        var recasts = new ArrayList<Recast>();
        for (int i = 0; i < declared.length; i++) {
            as[i] = value(declared[i], record);
            int before = found.size();
            var recast = of(as[i], found);
            if (found.size() > before) {
                changing.add(i);
                recasts.add(recast);
            }
        }
        if (recasts.isEmpty()) {
            return same(record);
        }
        var make = constructor(record.getClass(), declared);
        int[] at = changing.stream().mapToInt(i -> i).toArray();
        var each = recasts.toArray(Recast[]::new);
        return (drawn, from) -> {
            var components = as.clone();
            for (int i = 0; i < at.length; i++) {
                components[at[i]] = each[i].with(drawn, from);
            }
            return made(make, components);
        };
    }

    private static Recast list(List<?> list, List<Dimension> found) {
        var each = list.stream().map(v -> of(v, found)).toList();
        return (drawn, from) -> each.stream().map(r -> r.with(drawn, from)).toList();
    }

    private static Recast map(Map<?, ?> map, List<Dimension> found) {
        var each = new HashMap<Object, Recast>();
        new TreeMap<>(map).forEach((k, v) -> each.put(k, of(v, found)));
        return (drawn, from) -> {
            var made = new HashMap<Object, Object>();
            each.forEach((k, r) -> made.put(k, r.with(drawn, from)));
            return made;
        };
    }

    private static Record made(MethodHandle make, Object[] components) {
        try {
            return (Record) make.invokeExact(components);
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object value(RecordComponent component, Record of) {
        try {
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static MethodHandle constructor(Class<?> type, RecordComponent[] declared) {
        try {
            var canonical = type.getConstructor(
                    Arrays.stream(declared).map(RecordComponent::getType).toArray(Class<?>[]::new));
            return MethodHandles.publicLookup()
                    .unreflectConstructor(canonical)
                    .asSpreader(Object[].class, declared.length)
                    .asType(MethodType.methodType(Record.class, Object[].class));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
