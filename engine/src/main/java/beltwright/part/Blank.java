package beltwright.part;

import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import beltwright.quantity.Source;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Optional;

/// What stands where nothing is known: a part without an id for a seat that nothing fills, a placement nobody measured.
/// Every dimension is unknown, every count at its least.
public final class Blank {
    private static final Provenance NOWHERE = new Provenance(Source.ESTIMATE, "nothing in this seat");
    private static final ClassValue<Object> MADE = new ClassValue<>() {
        @Override
        protected Object computeValue(Class<?> type) {
            return make(type);
        }
    };

    private Blank() {}

    public static <T extends Record> T of(Class<T> type) {
        return type.cast(MADE.get(type));
    }

    private static Object make(Class<?> type) {
        var components = type.getRecordComponents();
        try {
            var constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            return constructor.newInstance(
                    Arrays.stream(components).map(Blank::value).toArray());
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object value(RecordComponent component) {
        var type = component.getType();
        if (type == Dimension.class) {
            return Dimension.unknown(component.getName(), NOWHERE);
        }
        if (type == int.class) {
            return Optional.ofNullable(component.getAnnotation(Field.class))
                    .map(f -> (int) Math.max(0, f.min()))
                    .orElse(0);
        }
        if (type == boolean.class) {
            return false;
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        return type == String.class ? "" : make(type);
    }
}
