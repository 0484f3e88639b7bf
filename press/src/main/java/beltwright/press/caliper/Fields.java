package beltwright.press.caliper;

import beltwright.part.Field;
import beltwright.part.Kinds;
import beltwright.quantity.Dimension;
import beltwright.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SequencedMap;

/// The lengths and angles of one kind of part, in the order of its record, each with its letter and its words.
final class Fields {
    /// Lengths and angles that no figure shows, and why.
    static final Map<String, String> WITHOUT_PLACE =
            Map.of("belt.lengthDeviationMm", "a difference of two lengths, one of them calculated");

    private static final String ALPHABET = "abcdefghjkmnpqrstuvwxyz"; // i, l and o read as figures or as lines

    private final SequencedMap<String, String> letters = new LinkedHashMap<>();
    private final SequencedMap<String, String> words = new LinkedHashMap<>();
    private final Kinds kind;

    Fields(Kinds kind) {
        this.kind = kind;
        take(kind.type(), "");
    }

    private void take(Class<?> type, String before) {
        for (var component : type.getRecordComponents()) {
            var path = before + component.getName();
            var field = component.getAnnotation(Field.class);
            if (component.getType().isRecord() && component.getType() != Dimension.class) {
                take(component.getType(), path + ".");
            } else if (field != null
                    && component.getType() == Dimension.class
                    && measured(path)
                    && !WITHOUT_PLACE.containsKey(kind.words() + "." + path)) {
                letters.put(path, letter(letters.size()));
                words.put(path, field.value());
            }
        }
    }

    private static boolean measured(String path) {
        return switch (Unit.of(path)) {
            case MM, DEGREE -> true;
            default -> false;
        };
    }

    /// {@return a, b, c and on; then aa, ab and so on}
    private static String letter(int place) {
        var last = String.valueOf(ALPHABET.charAt(place % ALPHABET.length()));
        return place < ALPHABET.length() ? last : letter(place / ALPHABET.length() - 1) + last;
    }

    SequencedMap<String, String> letters() {
        return letters;
    }

    String letter(String path) {
        return known(letters, path);
    }

    String words(String path) {
        return known(words, path);
    }

    private String known(Map<String, String> of, String path) {
        var found = of.get(path);
        if (found == null) {
            throw new IllegalArgumentException("a " + kind.words() + " has no length or angle " + path + ", only "
                    + String.join(", ", of.keySet()));
        }
        return found;
    }

    /// {@return every letter with what it stands for, in sentences}
    String tells() {
        var all = new StringBuilder();
        letters.forEach((path, letter) ->
                all.append(letter).append(": ").append(words.get(path)).append(". "));
        return all.toString().strip();
    }
}
