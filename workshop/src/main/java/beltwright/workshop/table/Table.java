package beltwright.workshop.table;

import beltwright.quantity.Refusal;
import beltwright.workshop.document.Codec;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/// Headings and rows of cells, as copied from a spreadsheet or read from a CSV file. Rows without
/// any text are left out.
///
/// @param line of the headings, counted from 1
public record Table(List<String> headings, int line, List<Row> rows) {
    /// The name in messages of a table that is in no file.
    public static final String PASTED = "pasted table";

    public static final int MOST_ROWS = 5_000;
    public static final int MOST_COLUMNS = 200;
    public static final int LARGEST = 1024 * 1024;

    /// Tab first: a comma in a table with tabs or semicolons is a decimal point.
    private static final List<Character> SEPARATORS = List.of('\t', ';', ',');

    private static final String END = "end of table"; // a quotation mark that is never closed swallows it

    public Table {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /// One row below the headings.
    ///
    /// @param line on which it begins, counted from 1
    /// @param cells as many as there are headings
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        private List<String> withoutEmptyEnd() {
            int size = cells.size();
            while (size > 0 && cells.get(size - 1).isBlank()) {
                size--;
            }
            return cells.subList(0, size);
        }

        private Row under(String file, List<String> headings) {
            var filled = withoutEmptyEnd();
            if (filled.size() > headings.size()) {
                throw new Refusal(
                        where(file, line, "row"),
                        "has " + filled.size() + " cells, the last '" + filled.getLast() + "'",
                        "at most " + headings.size() + ", one for each heading",
                        "give that column a heading, or put quotation marks around a cell with a comma in it");
            }
            var all = new ArrayList<>(filled);
            all.addAll(Collections.nCopies(headings.size() - filled.size(), ""));
            return new Row(line, all);
        }

        private void refuseUnprintable(String file) {
            for (int column = 0; column < cells.size(); column++) {
                if (!Codec.printable(cells.get(column))) {
                    throw new Refusal(
                            where(file, line, "column " + (column + 1)),
                            "holds a control character",
                            "printable text",
                            "take the character out");
                }
            }
        }
    }

    /// Reads text with tabs, semicolons or commas between the cells; the first row holds the
    /// headings.
    ///
    /// @throws Refusal if the text is no table, too large, or holds a control character
    public static Table parse(String text) {
        return parse(PASTED, text);
    }

    /// As above.
    ///
    /// @param file its name in messages
    public static Table parse(String file, String text) {
        if (text.length() > LARGEST) {
            throw new Refusal(
                    where(file, 1, "table"),
                    "is larger than " + LARGEST + " characters",
                    "up to 1 MB",
                    "split it into several tables");
        }
        var plain = (text.startsWith("\uFEFF") ? text.substring(1) : text).replace("\r\n", "\n");
        var records = records(file, plain, separator(plain));
        if (records.size() < 2) {
            throw new Refusal(
                    where(file, 1, "table"),
                    records.isEmpty() ? "is empty" : "has no row below its headings",
                    "a row of headings, then a row for each part",
                    "copy the headings together with the rows");
        }
        if (records.size() > MOST_ROWS + 1) {
            throw new Refusal(
                    where(file, 1, "table"),
                    "has more than " + MOST_ROWS + " rows",
                    "at most that many",
                    "split it into several tables");
        }
        var headings = records.getFirst().withoutEmptyEnd();
        if (headings.size() > MOST_COLUMNS) {
            throw new Refusal(
                    where(file, 1, "table"),
                    "has " + headings.size() + " columns",
                    "at most " + MOST_COLUMNS + " columns",
                    "copy only the columns that say something of the part");
        }
        var rows =
                records.stream().skip(1).map(row -> row.under(file, headings)).toList();
        return new Table(headings, records.getFirst().line(), rows);
    }

    /// {@return the first separator that cuts headings and rows alike; or else the headings at
    /// least}
    private static char separator(String text) {
        var cuts = SEPARATORS.stream().filter(s -> cutsHeadings(text, s)).toList();
        return cuts.stream()
                .filter(s -> cutsRows(text, s))
                .findFirst()
                .orElse(cuts.isEmpty() ? SEPARATORS.getLast() : cuts.getFirst());
    }

    private static boolean cutsHeadings(String text, char separator) {
        try {
            return filled(text, separator).limit(1).anyMatch(headings -> headings.getFieldCount() > 1);
        } catch (CsvParseException e) {
            return false;
        }
    }

    private static boolean cutsRows(String text, char separator) {
        try {
            var widths = filled(text, separator)
                    .limit(MOST_ROWS)
                    .map(CsvRecord::getFieldCount)
                    .toList();
            var rows = widths.subList(1, widths.size());
            return rows.stream().anyMatch(w -> w > 1) && rows.stream().allMatch(w -> w <= widths.getFirst());
        } catch (CsvParseException e) {
            return false;
        }
    }

    private static List<Row> records(String file, String text, char separator) {
        var rows = new ArrayList<Row>();
        try {
            filled(text + "\n" + END, separator)
                    .limit(MOST_ROWS + 3) // headings, the end, and one to show that there are too many
                    .map(r -> new Row((int) r.getStartingLineNumber(), r.getFields()))
                    .forEach(rows::add);
        } catch (CsvParseException e) {
            var cause = e.getCause() == null ? e : e.getCause();
            throw unreadable(file, rows.isEmpty() ? 1 : rows.getLast().line() + 1, String.valueOf(cause.getMessage()));
        }
        if (rows.size() <= MOST_ROWS + 2) {
            var last = rows.removeLast();
            if (!last.cells().equals(List.of(END))) {
                throw unreadable(file, last.line(), "A quotation mark is never closed");
            }
        }
        rows.forEach(row -> row.refuseUnprintable(file));
        return rows;
    }

    private static Stream<CsvRecord> filled(String text, char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(text)
                .stream()
                .filter(r -> !r.getFields().stream().allMatch(String::isBlank));
    }

    private static Refusal unreadable(String file, int line, String why) {
        return new Refusal(
                where(file, line, "row"),
                "cannot be read: " + why,
                "cells between tabs, semicolons or commas; quotation marks around a whole cell, or inside it",
                "correct the quotation marks in this row or the one above it");
    }

    private static String where(String file, int line, String what) {
        return file + ":" + line + ": " + what;
    }
}
