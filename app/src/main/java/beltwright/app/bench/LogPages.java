package beltwright.app.bench;

import beltwright.press.chart.LogChart;
import beltwright.press.svg.SvgWriter;
import beltwright.press.table.CalibrationTable;
import beltwright.quantity.Refusal;
import beltwright.ride.Board;
import beltwright.ride.Calibration;
import beltwright.ride.Coefficient;
import beltwright.ride.Log;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/// A measured ride against the computed one of the same kit, and what it tells.
public final class LogPages {
    private static final List<Set<Coefficient>> QUESTIONS = List.of(
            EnumSet.of(Coefficient.ROLLING, Coefficient.DRAG_AREA),
            EnumSet.of(Coefficient.MASS),
            EnumSet.of(Coefficient.WINDING_TO_CASE, Coefficient.CASE_TO_AIR));

    private final Bench bench;

    LogPages(Bench bench) {
        this.bench = bench;
    }

    /// Something that a log can be asked.
    public record Question(String words, String address, boolean here) {}

    void page(Context ctx) {
        var road = RoadSheet.of(bench.shelf(), Bench.draft(ctx), "/log");
        var logs = road.shelf().logs().values().stream()
                .filter(l -> l.kit().equals(road.kit().id()))
                .toList();
        var arguments = new HashMap<String, Object>();
        arguments.put("road", road);
        arguments.put("logs", logs);
        var board = Board.of(road.kit());
        arguments.put("estimates", board.estimates());
        arguments.put("notes", board.notes());
        var first = first(ctx, board, logs);
        var wanted = first == null ? wanted(ctx) : first.wanted();
        var needs = Calibration.needs(board, wanted);
        arguments.put("needs", needs);
        if (!logs.isEmpty() && needs.isEmpty()) {
            var log = first == null ? log(ctx, logs) : first.log();
            arguments.put("log", log);
            arguments.put("questions", questions(road, log, wanted));
            try {
                var result = Calibration.of(board, log, wanted);
                arguments.put("result", result);
                arguments.put("found", CalibrationTable.of(result));
                arguments.put("chart", SvgWriter.inline(LogChart.of(result), "log"));
            } catch (Refusal r) {
                arguments.put("refused", r.wrong() + "; allowed: " + r.allowed() + "; " + r.mend());
            }
        }
        bench.render(ctx, "bench/log.jte", arguments);
    }

    /// A log and what it is asked.
    private record Asked(Log log, Set<Coefficient> wanted) {}

    /// {@return where the page opens when nothing is asked for: the first log that tells something; null where none
    /// does}
    private static @Nullable Asked first(Context ctx, Board board, List<Log> logs) {
        if (ctx.queryParam("log") != null || ctx.queryParam("find") != null) {
            return null;
        }
        for (var wanted : QUESTIONS) {
            if (Calibration.needs(board, wanted).isEmpty()) {
                for (var log : logs) {
                    try {
                        Calibration.of(board, log, wanted);
                        return new Asked(log, wanted);
                    } catch (Refusal r) {
                        continue; // this one cannot tell: the next is tried, and where none can, the page says why
                    }
                }
            }
        }
        return null;
    }

    private static Log log(Context ctx, List<Log> logs) {
        var id = ctx.queryParam("log");
        if (id == null) {
            return logs.getFirst();
        }
        return logs.stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        "log",
                        "'" + id + "' is no log of this kit",
                        String.join(", ", logs.stream().map(Log::id).toList()),
                        "choose one of these"));
    }

    private static Set<Coefficient> wanted(Context ctx) {
        var typed = ctx.queryParam("find");
        if (typed == null) {
            return QUESTIONS.getFirst();
        }
        var wanted = EnumSet.noneOf(Coefficient.class);
        for (var word : typed.split(",")) {
            for (var coefficient : Coefficient.values()) {
                if (coefficient.key().equals(word.strip())) {
                    wanted.add(coefficient);
                }
            }
        }
        return wanted.isEmpty() ? QUESTIONS.getFirst() : wanted;
    }

    private static List<Question> questions(RoadSheet road, Log log, Set<Coefficient> here) {
        var questions = new ArrayList<Question>();
        for (var question : QUESTIONS) {
            var keys = question.stream().map(Coefficient::key).collect(Collectors.joining(","));
            questions.add(new Question(
                    question.stream().map(Coefficient::key).collect(Collectors.joining(" and ")),
                    road.address("/log", "log", log.id(), "find", keys),
                    question.equals(here)));
        }
        return questions;
    }
}
