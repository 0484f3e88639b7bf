package beltwright.workshop.table;

import beltwright.part.Kinds;
import beltwright.part.Part;
import beltwright.quantity.Refusal;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.PartRow;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// Parts of one kind as CSV: a column for each field by its path, every value as typed, the source
/// of each part last.
///
/// A dimension that was read elsewhere than most of its part keeps that in a column of its own,
/// `massKg.source`; such columns stand at the end, and only where a part needs them. Reading the
/// text back gives equal parts.
public final class Tables {
    private Tables() {}

    /// {@return the parts of this kind as CSV, in the order given, under one row of headings}
    ///
    /// @throws Refusal if a part holds a control character
    public static String csv(Kinds kind, Collection<? extends Part> parts) {
        var rows = parts.stream()
                .filter(kind.type()::isInstance)
                .map(PartRow::write)
                .toList();
        var texts = PartRow.fields(kind).stream()
                .filter(f -> f.text())
                .map(f -> f.path())
                .collect(Collectors.toSet());
        var headings = headings(kind, rows);
        var out = new StringWriter();
        try (var csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out)) {
            csv.writeRecord(headings);
            for (var row : rows) {
                csv.writeRecord(headings.stream()
                        .map(path -> cell(row, path, texts.contains(path)))
                        .toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static List<String> headings(Kinds kind, List<? extends Map<String, String>> rows) {
        var paths = PartRow.fields(kind).stream().map(f -> f.path()).toList();
        var own = paths.stream()
                .map(path -> path + PartRow.OWN_SOURCE)
                .filter(path -> rows.stream().anyMatch(row -> row.containsKey(path)));
        return Stream.concat(paths.stream(), own).toList();
    }

    private static String cell(Map<String, String> row, String path, boolean text) {
        var value = row.getOrDefault(path, "");
        if (!Codec.printable(value)) {
            throw new Refusal(
                    row.get(PartRow.ID) + "." + path,
                    "holds a control character",
                    "printable text",
                    "take the character out");
        }
        return text ? Formula.guarded(value) : value;
    }
}
