package beltwright.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/// One printed result or one small printed table, with its pedigree: a file of `src/test/resources/cases`.
///
/// @param confidence `read` in the source, `memory` of the source, or `derived` from what was read
/// @param note what a reader of the deviation should know
record PublishedCase(
        String id, String title, String source, String page, String confidence, String note, List<Value> values) {
    static final Path ROOT = Path.of(System.getProperty("beltwright.root", ".."));
    private static final Path FOLDER = ROOT.resolve("engine/src/test/resources/cases");
    private static final List<String> CONFIDENCE = List.of("read", "memory", "derived");

    /// One printed number.
    ///
    /// @param what which engine function is asked
    /// @param printed the digits as printed
    /// @param tolerance `0.01` in the printed unit or `10 %`; null where the printed digits themselves are the rule
    /// @param differs why ours is meant to differ; null where it must agree
    record Value(
            String what,
            Inputs inputs,
            String printed,
            String unit,
            @Nullable String tolerance,
            @Nullable String differs) {}

    PublishedCase {
        if (!CONFIDENCE.contains(confidence) || source.isBlank() || page.isBlank() || values.isEmpty()) {
            throw new IllegalArgumentException("case " + id + " lacks its pedigree");
        }
    }

    static List<PublishedCase> all() {
        try (var files = Files.list(FOLDER)) {
            return files.sorted(Comparator.comparing(Path::getFileName))
                    .map(PublishedCase::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PublishedCase read(Path file) {
        try {
            var root = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file));
            var of = new Inputs(root);
            var id = of.text("id");
            if (!file.getFileName().toString().equalsIgnoreCase(id + ".yaml")) {
                throw new IllegalArgumentException(file + " holds case " + id);
            }
            return new PublishedCase(
                    id,
                    of.text("title"),
                    of.text("source"),
                    of.text("page"),
                    of.text("confidence"),
                    root.containsKey("note") ? of.text("note") : "",
                    ((List<?>) of.of("values"))
                            .stream().map(v -> value((Map<?, ?>) v)).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RuntimeException e) {
            throw new IllegalArgumentException(file + ": " + e.getMessage(), e);
        }
    }

    private static Value value(Map<?, ?> row) {
        var of = new Inputs(row);
        return new Value(
                of.text("what"),
                new Inputs((Map<?, ?>) of.of("inputs")),
                of.text("printed"),
                row.containsKey("unit") ? of.text("unit") : "",
                row.containsKey("tolerance") ? of.text("tolerance") : null,
                row.containsKey("differs") ? of.text("differs") : null);
    }

    /// Named values of a case file; asking for a name that is not there is a mistake of the file.
    record Inputs(Map<?, ?> values) {
        Object of(String name) {
            var value = values.get(name);
            if (value == null) {
                throw new IllegalArgumentException("'" + name + "' is missing among " + values.keySet());
            }
            return value;
        }

        boolean has(String name) {
            return values.containsKey(name);
        }

        String text(String name) {
            return of(name).toString();
        }

        double number(String name) {
            return ((Number) of(name)).doubleValue();
        }

        double[] numbers(String name) {
            return ((List<?>) of(name))
                    .stream().mapToDouble(v -> ((Number) v).doubleValue()).toArray();
        }

        int count(String name) {
            return ((Number) of(name)).intValue();
        }

        @Override
        public String toString() {
            return String.join(
                    ", ",
                    values.entrySet().stream()
                            .map(e -> e.getKey() + " " + e.getValue())
                            .toList());
        }
    }
}
