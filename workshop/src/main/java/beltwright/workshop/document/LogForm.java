package beltwright.workshop.document;

import beltwright.kit.KitDraft;
import beltwright.quantity.Refusal;
import beltwright.ride.Log;
import beltwright.ride.Log.Reading;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Objects;
import java.util.SequencedMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/// A log as a document: which kit was ridden, by whom, measured with what, when, and the readings, one row to a line.
final class LogForm {
    private static final List<String> HEAD =
            List.of("schema", "log", "kit", "by", "with", "when", "belts", "columns", "readings");
    private static final FieldForm BELTS = new FieldForm("belts", Log.Belts.class, "whether the belts were on", 0, 0);
    private static final List<String> READINGS =
            Stream.of(Reading.values()).map(Reading::toString).toList();

    private LogForm() {}

    static @Nullable Log read(Scope at, Node.Fields typed) {
        at.refuseOthers(typed, HEAD);
        var kitNode = at.required(typed, "kit", "the id of the kit that was ridden");
        var kit = kitNode == null ? null : Documents.id(at.in("kit"), kitNode);
        if (kitNode != null && kit != null) {
            at.in("kit").uses(kitNode.line(), kit, KitDraft.class);
        }
        var by = MeasurementForm.text(at, typed, "by", "who rode");
        var with = MeasurementForm.text(at, typed, "with", "what it was measured with");
        var whenText = MeasurementForm.text(at, typed, "when", "a day as year-month-day");
        var when = whenText == null
                ? null
                : MeasurementForm.day(at.in("when"), whenText, typed.fields().get("when"));
        var belts = KitForm.head(at, typed, BELTS, null);
        var columns = columns(at, typed);
        var allowed = columns == null
                ? "a number for each column"
                : columns.stream().map(c -> c + " (" + c.unit() + ")").collect(Collectors.joining(", "));
        var node = at.required(typed, "readings", allowed);
        var inside = at.in("readings");
        var rows = node == null ? null : NumberLines.rows(inside, node, allowed);
        int before = at.mistakes().size();
        var readings = columns == null || rows == null ? null : readings(inside, columns, rows, allowed);
        if (kit == null
                || by == null
                || with == null
                || when == null
                || belts == null
                || node == null
                || readings == null
                || at.mistakes().size() > before) {
            return null;
        }
        try {
            return new Log(at.document(), kit, by, with, when, (Log.Belts) belts, readings);
        } catch (Refusal r) {
            inside.refused(node.line(), r);
            return null;
        }
    }

    private static @Nullable List<Reading> columns(Scope at, Node.Fields typed) {
        var inside = at.in("columns");
        var text = MeasurementForm.text(at, typed, "columns", "the names of the columns, 'time, speed'");
        var node = typed.fields().get("columns");
        if (text == null || node == null) {
            return null;
        }
        int before = at.mistakes().size();
        var columns = new ArrayList<Reading>();
        for (var piece : text.split(",", -1)) {
            var words = piece.strip();
            int index = READINGS.indexOf(words);
            if (index < 0) {
                inside.mistake(
                        node.line(),
                        "'" + NumberLines.shown(words) + "' is not a reading",
                        String.join(", ", READINGS),
                        Scope.Nearest.mend(NumberLines.shown(words), READINGS));
            } else if (columns.contains(Reading.values()[index])) {
                inside.mistake(node.line(), "'" + words + "' is named twice", "each once", "take one of the two out");
            } else {
                columns.add(Reading.values()[index]);
            }
        }
        if (!columns.contains(Reading.TIME) && at.mistakes().size() == before) {
            inside.mistake(node.line(), "names no time", "time, and what was read with it", "add the column 'time'");
        }
        return at.mistakes().size() > before ? null : columns;
    }

    private static EnumMap<Reading, List<Double>> readings(
            Scope at, List<Reading> columns, List<NumberLines.Row> rows, String allowed) {
        var readings = new EnumMap<Reading, List<Double>>(Reading.class);
        columns.forEach(c -> readings.put(c, new ArrayList<>()));
        double last = Double.NEGATIVE_INFINITY;
        for (var row : rows) {
            var cells = row.cells();
            if (cells.size() != columns.size()) {
                at.mistake(
                        row.line(),
                        "has " + cells.size() + (cells.size() == 1 ? " number" : " numbers"),
                        columns.size() + ": " + allowed,
                        "give one number for each column");
                continue;
            }
            for (int i = 0; i < columns.size(); i++) {
                var column = columns.get(i);
                var what = column + " (" + column.unit() + ")";
                double value = NumberLines.number(at, row.line(), what, cells.get(i), column.least(), column.most());
                if (column == Reading.TIME) {
                    if (value <= last) {
                        at.mistake(
                                row.line(),
                                "time " + cells.get(i) + " s does not come after " + NumberLines.text(last) + " s",
                                "times that rise from row to row",
                                "take this row out, or sort the rows");
                    }
                    last = Double.isNaN(value) ? last : value;
                }
                Objects.requireNonNull(readings.get(column)).add(value);
            }
        }
        return readings;
    }

    static SequencedMap<String, Node> write(Log log) {
        var typed = Documents.head(Document.Type.LOG, log.id());
        typed.put("kit", new Node.Text(log.kit()));
        typed.put("by", new Node.Text(log.by()));
        typed.put("with", new Node.Text(log.with()));
        typed.put("when", new Node.Text(log.when().toString()));
        typed.put("belts", new Node.Text(log.belts().toString()));
        var columns = List.copyOf(log.readings().values());
        typed.put(
                "columns",
                new Node.Text(
                        log.readings().keySet().stream().map(Reading::toString).collect(Collectors.joining(", "))));
        typed.put(
                "readings",
                NumberLines.written(IntStream.range(0, log.rows())
                        .mapToObj(
                                i -> columns.stream().mapToDouble(c -> c.get(i)).toArray())
                        .toList()));
        return typed;
    }
}
