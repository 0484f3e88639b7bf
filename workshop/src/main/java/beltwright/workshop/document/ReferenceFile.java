package beltwright.workshop.document;

import beltwright.part.Material;
import beltwright.part.Material.Hatch;
import beltwright.part.Reference;
import beltwright.quantity.Dimension;
import beltwright.quantity.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/// The reference file: materials, each value with its source. One comes with the program; a workshop may keep its own.
public final class ReferenceFile {
    private static final String BUNDLED = "/beltwright/workshop/reference.yaml";
    private static final List<String> HATCHES =
            Stream.of(Hatch.values()).map(ReferenceFile::words).toList();

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
        for (var node : YamlReader.documents(at, text)) {
            var typed = at.fields(node, "schema, reference, materials");
            if (typed != null) {
                read(at, typed, materials);
            }
        }
        if (!at.mistakes().isEmpty()) {
            throw at.mistakes().getFirst().refusal().within(file);
        }
        return new Reference(materials, Fingerprint.of(text));
    }

    private static void read(Scope at, Node.Fields typed, TreeMap<String, Material> materials) {
        at.refuseOthers(typed, List.of("schema", "reference", "materials"));
        Documents.schema(at, typed);
        at.required(typed, "reference", "the word 'materials'");
        var node = at.required(typed, "materials", "materials by id");
        var inside = at.in("materials");
        var fields = node == null ? null : inside.fields(node, "materials by id");
        if (fields != null) {
            fields.fields().forEach((name, one) -> {
                var id = Documents.id(inside.in(name), new Node.Text(name, one.line()));
                var material = id == null ? null : material(inside.in(name), id, one);
                if (material != null) {
                    materials.put(name, material);
                }
            });
        }
    }

    private static @Nullable Material material(Scope at, String id, Node node) {
        var typed = at.fields(node, "name, shearMpa, hatch");
        if (typed == null) {
            return null;
        }
        at.refuseOthers(typed, List.of("name", "shearMpa", "hatch"));
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
        var shear = at.required(typed, "shearMpa", "{value: <MPa>, source: <where it was read>}");
        var inside = at.in("shearMpa");
        var strength = shear == null ? null : inside.fields(shear, "{value: <MPa>, source: <where it was read>}");
        if (name == null || hatch == null || !HATCHES.contains(hatch) || strength == null) {
            return null;
        }
        inside.refuseOthers(strength, List.of("value", "source"));
        var source = text(inside, strength, "source", "where the value was read, or 'from memory'");
        var value = text(inside, strength, "value", "the shear strength (MPa), or 'unknown'");
        if (source == null || value == null) {
            return null;
        }
        var form = new FieldForm("shearMpa", Dimension.class, "shear strength", 1, 2000);
        var read = form.dimension(inside, value, strength.line(), Documents.NO_SOURCE);
        return read == null
                ? null
                : new Material(id, name, read.nominal(), Hatch.values()[HATCHES.indexOf(hatch)], source);
    }

    private static @Nullable String text(Scope at, Node.Fields typed, String name, String meaning) {
        var node = at.required(typed, name, meaning);
        return node == null ? null : at.in(name).text(node, meaning);
    }

    private static String words(Hatch hatch) {
        return hatch.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
