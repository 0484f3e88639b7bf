package beltwright.workshop.table;

import beltwright.part.Kinds;
import beltwright.quantity.Unit;
import beltwright.workshop.document.PartField;
import beltwright.workshop.document.PartRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/// The fields of one kind of part, found by what people write above a column.
///
/// A field is found by its path, by its path or its name in words with or without the unit, or by
/// its meaning. Words that fit two fields find none.
final class FieldNames {
    private static final Pattern OWN_SOURCE = Pattern.compile("(.*[^\\s._-])[\\s._-]*source", Pattern.CASE_INSENSITIVE);

    private final Map<String, PartField> fields = new LinkedHashMap<>();
    private final List<Map<String, String>> byWords = new ArrayList<>(); // the surest first

    FieldNames(Kinds kind) {
        PartRow.fields(kind).forEach(field -> fields.put(field.path(), field));
        byWords(PartField::path);
        byWords(field -> without(field, field.path()));
        byWords(FieldNames::name);
        byWords(field -> without(field, name(field)));
        byWords(PartField::meaning);
        byWords.add(Map.of("part", PartRow.ID)); // as a part file names it
    }

    private void byWords(Function<PartField, String> name) {
        var found = new HashMap<String, String>();
        var twice = new HashSet<String>();
        for (var field : fields.values()) {
            var words = plain(name.apply(field));
            if (found.put(words, field.path()) != null) {
                twice.add(words);
            }
        }
        found.keySet().removeAll(twice);
        byWords.add(found);
    }

    private static String name(PartField field) {
        return field.path().substring(field.path().lastIndexOf('.') + 1);
    }

    private static String without(PartField field, String name) {
        return field.unit() == Unit.NONE ? name : Unit.without(name);
    }

    /// Case, spaces and marks do not tell fields apart.
    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /// {@return the path of the field that these words mean}
    Optional<String> path(String words) {
        if (isPath(words)) {
            return Optional.of(words);
        }
        var direct = byWords.stream()
                .map(names -> Optional.ofNullable(names.get(plain(words))))
                .flatMap(Optional::stream)
                .findFirst();
        if (direct.isPresent()) {
            return direct;
        }
        var own = OWN_SOURCE.matcher(words.strip());
        return own.matches()
                ? path(own.group(1)).map(path -> path + PartRow.OWN_SOURCE).filter(this::isPath)
                : Optional.empty();
    }

    boolean isPath(String path) {
        return fields.containsKey(path)
                || field(path).filter(PartField::dimension).isPresent();
    }

    /// {@return the field at this path, or the one whose own source it names}
    Optional<PartField> field(String path) {
        var value = path.endsWith(PartRow.OWN_SOURCE)
                ? path.substring(0, path.length() - PartRow.OWN_SOURCE.length())
                : path;
        return Optional.ofNullable(fields.get(value));
    }

    /// {@return what every part of this kind must say}
    List<PartField> required() {
        return fields.values().stream().filter(PartField::required).toList();
    }

    Set<String> paths() {
        return fields.keySet();
    }
}
