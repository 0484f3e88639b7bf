package beltwright.app;

import beltwright.check.Verdict;
import beltwright.pairs.Pair;
import beltwright.pairs.Thing;
import beltwright.pairs.Things;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/// A matrix of pairs as a terminal shows it: as many columns side by side as there is room for.
final class MatrixText {
    private final Things rows;
    private final Things columns;
    private final List<Pair> pairs;
    private final int width;
    private final int[] wide; // each column with its gap, taken once: a look at every cell is dear

    MatrixText(Things rows, Things columns, List<Pair> pairs, int width) {
        this.rows = rows;
        this.columns = columns;
        this.pairs = pairs;
        this.width = width;
        this.wide = new int[columns.all().size()];
        for (int c = 0; c < wide.length; c++) {
            int column = c;
            var cells = Stream.concat(
                    Stream.of(columns.all().get(c).id()),
                    IntStream.range(0, rows.all().size()).mapToObj(r -> cell(r, column)));
            wide[c] = Typesetting.widest(cells.toList()) + 3;
        }
    }

    List<String> lines() {
        var lines = new ArrayList<String>();
        lines.add(rows.words() + " against " + columns.words());
        int head = Typesetting.widest(rows.all().stream().map(Thing::id).toList()) + 2;
        int from = 0;
        while (from < columns.all().size()) {
            int to = from;
            int taken = head;
            while (to < columns.all().size() && (to == from || taken + wide[to] <= width)) {
                taken += wide[to++];
            }
            block(from, to, head, lines);
            from = to;
        }
        lines.add(counts());
        return lines;
    }

    private void block(int from, int to, int head, List<String> lines) {
        var top = new StringBuilder(" ".repeat(head));
        for (int c = from; c < to; c++) {
            top.append(Typesetting.padded(columns.all().get(c).id(), wide[c]));
        }
        lines.add(top.toString().stripTrailing());
        for (int r = 0; r < rows.all().size(); r++) {
            var line = new StringBuilder(Typesetting.padded(rows.all().get(r).id(), head));
            for (int c = from; c < to; c++) {
                line.append(Typesetting.padded(cell(r, c), wide[c]));
            }
            lines.add(line.toString().stripTrailing());
        }
    }

    private Pair pair(int row, int column) {
        return pairs.get(row * columns.all().size() + column);
    }

    private String cell(int row, int column) {
        return of(pair(row, column));
    }

    /// {@return mark, deciding check and what is left there: `⊠ lug-circle −1.5 mm`}
    static String of(Pair pair) {
        var verdict = pair.verdict();
        var decides = pair.decides();
        if (verdict == null) {
            return "·";
        }
        if (decides == null) {
            return Mark.of(verdict) + " " + pair.refused();
        }
        var key = decides.key();
        var slack = decides.slackText();
        return Mark.of(verdict) + " " + key.substring(0, key.lastIndexOf('.')) + (slack.isEmpty() ? "" : " " + slack);
    }

    private String counts() {
        var told = new ArrayList<String>();
        for (var verdict : Verdict.values()) {
            long count = pairs.stream().filter(p -> p.verdict() == verdict).count();
            told.add(Mark.of(verdict) + " " + count + " " + verdict);
        }
        long strangers = pairs.stream().filter(p -> p.verdict() == null).count();
        if (strangers > 0) {
            told.add("· " + strangers + " never meet");
        }
        return String.join(" · ", told);
    }
}
