package beltwright.workshop.log;

import beltwright.part.Controller;
import beltwright.power.MotorModel;
import beltwright.quantity.Refusal;
import beltwright.ride.Log;
import beltwright.ride.Log.Reading;
import beltwright.workshop.table.LongTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/// Logs from tables (CSV) that a recorder wrote.
///
/// Times count from the first row. Numbers are kept to four decimals of the unit of their reading.
public final class LogFiles {
    private static final int FIRST = 5;

    private LogFiles() {}

    /// What a table does not say of itself.
    ///
    /// @param kit id of the kit that was ridden
    /// @param by who rode
    /// @param with what measured
    /// @param motorCurrent what the motor current in the table is
    public record About(
            String id,
            String kit,
            String by,
            String with,
            LocalDate when,
            Log.Belts belts,
            Controller.CurrentIs motorCurrent) {}

    /// {@return the bytes of a file, enough of them to see that it is too large}
    ///
    /// @throws Refusal if there is no such file
    public static byte[] bytes(Path file) {
        try (var in = Files.newInputStream(file)) {
            return in.readNBytes(LongTable.LARGEST_BYTES + 1);
        } catch (IOException e) {
            throw new Refusal(
                    file.toString(), "cannot be read: " + e.getMessage(), "a CSV file you may read", "check its name");
        }
    }

    /// {@return what each column would be read as}
    ///
    /// @param name of the file, in messages
    /// @throws Refusal if this is no table, or the mapping names a column that is not in it
    public static LogPreview preview(String name, byte[] bytes, Mapping mapping) {
        var table = LongTable.of(name, bytes);
        var plan = Plan.of(table, mapping);
        var first = new ArrayList<List<String>>();
        table.first(FIRST, (line, cells) -> first.add(cells));
        int[] rows = {0};
        table.forEach((line, cells) -> rows[0]++);
        var columns = IntStream.range(0, table.headings().size())
                .mapToObj(i -> new LogPreview.Column(
                        table.headings().get(i),
                        plan.at(i).map(Plan.Read::reading),
                        plan.at(i).flatMap(Plan.Read::unit),
                        first.stream().map(r -> LongTable.shown(r.get(i))).toList()))
                .toList();
        var doubts = new ArrayList<String>();
        try {
            plan.ready(table);
            doubts.addAll(Doubts.of(new Columns(table, plan).readings()));
        } catch (Refusal r) {
            doubts.add(r.wrong() + "; " + r.mend());
        }
        return new LogPreview(columns, rows[0], doubts);
    }

    /// {@return what in a log looks as if a column were in another unit}
    public static List<String> doubts(Log log) {
        return Doubts.of(log.readings());
    }

    /// {@return the log in this file}
    public static Log read(Path file, Mapping mapping, About about) {
        return read(file.toString(), bytes(file), mapping, about);
    }

    /// {@return the log in these bytes}
    ///
    /// @param name of the file, in messages
    /// @throws Refusal naming the first row or column that is wrong
    public static Log read(String name, byte[] bytes, Mapping mapping, About about) {
        var table = LongTable.of(name, bytes);
        var plan = Plan.of(table, mapping);
        plan.ready(table);
        var readings = new Columns(table, plan).readings();
        readings.computeIfPresent(
                Reading.MOTOR_CURRENT,
                (what, values) -> values.stream()
                        .map(a -> Columns.rounded(MotorModel.directCurrentA(a, about.motorCurrent())))
                        .toList());
        return new Log(about.id(), about.kit(), about.by(), about.with(), about.when(), about.belts(), readings);
    }
}
