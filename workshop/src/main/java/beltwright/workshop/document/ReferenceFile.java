package beltwright.workshop.document;

import beltwright.part.BeltGrade;
import beltwright.part.Cell;
import beltwright.part.Material;
import beltwright.part.Material.Hatch;
import beltwright.part.Material.Property;
import beltwright.part.Reference;
import beltwright.quantity.Dimension;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/// The reference file: materials, cells and belt grades, each value with its source. One comes with the program; a
/// workshop may keep
/// its own.
public final class ReferenceFile {
    private static final String BUNDLED = "/beltwright/workshop/reference.yaml";
    private static final List<String> HATCHES =
            Stream.of(Hatch.values()).map(ReferenceFile::words).toList();

    private static final String WHAT = "materials, cells or belt grades";
    private static final String VALUE = "{value: <number>, source: <where it was read>}";
    private static final List<String> MATERIAL = Stream.concat(
                    Stream.of("name", "hatch"), Stream.of(Property.values()).map(Property::field))
            .toList();

    private ReferenceFile() {}

    /// {@return the reference file that comes with the program}
    public static Reference bundled() {
        try (var in = Objects.requireNonNull(ReferenceFile.class.getResourceAsStream(BUNDLED))) {
            return read("reference.yaml", new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /// @throws Refusal naming the first mistake of the file
    public static Reference read(String file, String text) {
        var at = Scope.file(file);
        var materials = new TreeMap<String, Material>();
        var cells = new TreeMap<String, Cell>();
        var grades = new TreeMap<String, BeltGrade>();
        for (var node : YamlReader.documents(at, text)) {
            var typed = at.fields(node, "schema, reference, " + WHAT);
            if (typed != null) {
                read(at, typed, materials, cells, grades);
            }
        }
        if (!at.mistakes().isEmpty()) {
            throw at.mistakes().getFirst().refusal().within(file);
        }
        return new Reference(materials, cells, grades, true, Fingerprint.of(text));
    }

    private static void read(
            Scope at,
            Node.Fields typed,
            TreeMap<String, Material> materials,
            TreeMap<String, Cell> cells,
            TreeMap<String, BeltGrade> grades) {
        Documents.schema(at, typed);
        var node = at.required(typed, "reference", WHAT);
        var what = node == null ? null : at.in("reference").text(node, WHAT);
        switch (what) {
            case "cells" -> each(at, typed, "cells", cells, CellForm::read);
            case "belt grades" -> each(at, typed, "belt grades", grades, BeltGradeForm::read);
            case null, default -> each(at, typed, "materials", materials, ReferenceFile::material);
        }
    }

    private interface Entry<T> {
        @Nullable
        T read(Scope inside, String id, Node node);
    }

    private static <T> void each(Scope at, Node.Fields typed, String name, TreeMap<String, T> into, Entry<T> entry) {
        at.refuseOthers(typed, List.of("schema", "reference", name));
        var node = at.required(typed, name, name + " by id");
        var inside = at.in(name);
        var fields = node == null ? null : inside.fields(node, name + " by id");
        if (fields != null) {
            fields.fields().forEach((key, one) -> {
                var id = Documents.id(inside.in(key), new Node.Text(key, one.line()));
                var read = id == null ? null : entry.read(inside.in(key), id, one);
                if (read != null) {
                    into.put(id, read);
                }
            });
        }
    }

    private static @Nullable Material material(Scope at, String id, Node node) {
        var typed = at.fields(node, String.join(", ", MATERIAL));
        if (typed == null) {
            return null;
        }
        at.refuseOthers(typed, MATERIAL);
        var name = text(at, typed, "name", "what people call it");
        var hatch = text(at, typed, "hatch", "one of " + String.join(", ", HATCHES));
        if (hatch != null && !HATCHES.contains(hatch)) {
            at.in("hatch")
                    .mistake(
                            typed.line(),
                            "'" + hatch + "' is not a hatch",
                            String.join(", ", HATCHES),
                            Scope.Nearest.mend(hatch, HATCHES));
        }
        at.required(typed, Property.SHEAR.field(), VALUE);
        var values = new EnumMap<Property, Material.Value>(Property.class);
        for (var property : Property.values()) {
            var given = typed.fields().get(property.field());
            var value = given == null ? null : value(at.in(property.field()), given, property);
            if (value != null) {
                values.put(property, value);
            }
        }
        return name == null || hatch == null || !HATCHES.contains(hatch)
                ? null
                : new Material(id, name, Hatch.values()[HATCHES.indexOf(hatch)], values);
    }

    private static Material.@Nullable Value value(Scope at, Node node, Property property) {
        var typed = at.fields(node, VALUE);
        if (typed == null) {
            return null;
        }
        at.refuseOthers(typed, List.of("value", "source"));
        var source = text(at, typed, "source", "where the value was read, or 'from memory'");
        var value = text(at, typed, "value", "the " + property + " (" + property.unit() + "), or 'unknown'");
        if (source == null || value == null) {
            return null;
        }
        var form = new FieldForm(
                property.field(), Dimension.class, property.toString(), property.least(), property.most());
        var read = form.dimension(at, value, typed.line(), Documents.NO_SOURCE);
        return read == null ? null : new Material.Value(read.nominal(), source);
    }

    static @Nullable String text(Scope at, Node.Fields typed, String name, String meaning) {
        var node = at.required(typed, name, meaning);
        return node == null ? null : at.in(name).text(node, meaning);
    }

    private static String words(Hatch hatch) {
        return hatch.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
