package beltwright.workshop.table;

import beltwright.quantity.Refusal;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// A table of numbers that may be long: headings, then rows that are looked at one after the other and not kept.
///
/// Between the cells stand tabs, semicolons or commas, whichever of them the headings hold first in this order; a comma
/// in a table with tabs or semicolons is a decimal point.
public final class LongTable {
    public static final int LARGEST_BYTES = 64 * 1024 * 1024;
    private static final int MOST_SHOWN = 40;
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]{1,18}(?:[.,][0-9]{0,20})?|[.,][0-9]{1,20})(?:[eE][+-]?[0-9]{1,2})?");

    private final String file;
    private final String text;
    private final char separator;
    private final List<String> headings;

    private LongTable(String file, String text, char separator) {
        this.file = file;
        this.text = text;
        this.separator = separator;
        try (var records = filled()) {
            this.headings = records.findFirst().map(CsvRecord::getFields).orElse(List.of()).stream()
                    .map(LongTable::shown)
                    .toList();
        } catch (CsvParseException e) {
            throw unreadable(1);
        }
    }

    /// @throws Refusal if it is too large, empty or no UTF-8 text
    public static LongTable of(String file, byte[] bytes) {
        if (bytes.length > LARGEST_BYTES) {
            throw new Refusal(file, "is larger than 64 MB", "files up to 64 MB", "cut it into several files");
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new Refusal(file, "is not UTF-8 text", "CSV in UTF-8", "let the spreadsheet save it as 'CSV UTF-8'");
        }
        var plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        var first = plain.lines().filter(l -> !l.isBlank()).findFirst().orElse("");
        if (first.isEmpty()) {
            throw new Refusal(file, "is empty", "a row of headings, then rows of numbers", "give another file");
        }
        char separator = first.indexOf('\t') >= 0 ? '\t' : first.indexOf(';') >= 0 ? ';' : ',';
        return new LongTable(file, plain, separator);
    }

    public String file() {
        return file;
    }

    public List<String> headings() {
        return headings;
    }

    /// What is done with each row.
    public interface EachRow {
        /// @param line counted from 1
        /// @param cells as many as there are headings
        void row(int line, List<String> cells);
    }

    /// Looks at every row below the headings that holds any text.
    ///
    /// @throws Refusal if a row has more cells than there are headings, or cannot be read
    public void forEach(EachRow each) {
        each(Long.MAX_VALUE, each);
    }

    /// As above, for the first rows only.
    public void first(int rows, EachRow each) {
        each(rows, each);
    }

    private void each(long most, EachRow each) {
        int[] line = {1};
        try (var records = filled()) {
            records.skip(1).limit(most).forEach(r -> {
                line[0] = (int) r.getStartingLineNumber();
                each.row(line[0], cells(line[0], r));
            });
        } catch (CsvParseException e) {
            throw unreadable(line[0]);
        }
    }

    private List<String> cells(int line, CsvRecord row) {
        var cells = row.getFields();
        if (cells.size() == headings.size()) {
            return cells;
        }
        if (cells.size() < headings.size()) {
            return Stream.concat(cells.stream(), Stream.generate(() -> "").limit(headings.size() - cells.size()))
                    .toList();
        }
        var over = cells.subList(headings.size(), cells.size());
        if (!over.stream().allMatch(String::isBlank)) {
            throw new Refusal(
                    where(line),
                    "has " + cells.size() + " cells",
                    "at most " + headings.size() + ", one for each heading",
                    separator == ','
                            ? "write decimal points, or put semicolons between the cells"
                            : "give that column a heading");
        }
        return cells.subList(0, headings.size());
    }

    private Stream<CsvRecord> filled() {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(text)
                .stream()
                .filter(r -> !r.getFields().stream().allMatch(String::isBlank));
    }

    /// {@return the number in a cell}
    ///
    /// @param allowed what may stand there, with its unit
    /// @throws Refusal if there is none
    public double number(int line, String heading, String cell, String allowed) {
        var typed = cell.strip().replace('−', '-');
        if (typed.isEmpty()) {
            throw new Refusal(where(line, heading), "the cell is empty", allowed, "fill it in, or take the row out");
        }
        boolean comma = typed.indexOf(',') >= 0;
        if (!NUMBER.matcher(typed).matches() || comma && separator == ',') {
            throw new Refusal(
                    where(line, heading),
                    "'" + shown(typed) + "' is no number",
                    allowed,
                    comma && separator == ','
                            ? "write a decimal point, or put semicolons between the cells"
                            : "type a number without unit, spaces or marks between the thousands");
        }
        return Double.parseDouble(typed.replace(',', '.'));
    }

    /// {@return this place in messages}
    public String where(int line) {
        return file + ":" + line;
    }

    public String where(int line, String heading) {
        return where(line) + ": " + heading.strip();
    }

    private Refusal unreadable(int line) {
        return new Refusal(
                where(line),
                "cannot be read as a table",
                "cells between tabs, semicolons or commas",
                "correct the quotation marks near this row");
    }

    /// {@return text that is safe to print, cut where it is long}
    public static String shown(String typed) {
        var text = typed.strip().replaceAll("[\\p{Cc}\\p{Cs}]", "?");
        return text.length() > MOST_SHOWN ? text.substring(0, MOST_SHOWN) + "…" : text;
    }
}
