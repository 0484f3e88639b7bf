package beltwright.app;

import beltwright.check.Finding;
import beltwright.pairs.Pair;
import beltwright.pairs.Pairs;
import beltwright.pairs.Thing;
import beltwright.pairs.Things;
import beltwright.press.json.PairJson;
import beltwright.quantity.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@CommandLine.Command(
        name = "pairs",
        description = {
            "Hold every part of one sort against every kit, or against every part of another sort.",
            "Each cell tells the check that decides and what is left there; '--why' tells the rest of one pair."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright pairs                             what the shelf has to say, in order of use",
            "  ./beltwright pairs wheels kits",
            "  ./beltwright pairs belts pulleys               belts over both pulleys together",
            "  ./beltwright pairs 'wheel pulleys' wheels --why wheel-pulley-36,wheel-97",
            "  ./beltwright pairs motors kits --json"
        })
final class PairsCommand extends WorkshopCommand {
    private static final int MANY = 500;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "ROWS",
            description = "a seat's name without its side, such as wheel, belt, motor, 'drive pulley', 'core spacer'")
    @Nullable
    String rows;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "COLUMNS",
            description = "the same, or 'kits', or 'pulleys' for drive and wheel pulley together")
    @Nullable
    String columns;

    @Option(names = "--why", paramLabel = "ROW,COLUMN", description = "everything the checks say of this one pair")
    @Nullable
    String why;

    @Option(names = "--no-estimates", description = "treat every estimated number as unknown")
    boolean noEstimates;

    PairsCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var kept = readWorkshop().shelf();
        var shelf = noEstimates ? kept.withoutEstimates() : kept;
        var pairs = new Pairs(shelf::part, shelf.reference());
        var parts = shelf.parts().values();
        var drafts = shelf.drafts().values();
        if (rows == null) {
            if (why != null || json) {
                throw new Refusal(
                        "pairs",
                        "no rows and columns are named",
                        "ROWS COLUMNS",
                        "write for example 'pairs wheels kits'");
            }
            for (var matrix : Things.usual(parts, drafts)) {
                say(text(pairs, matrix.get(0), matrix.get(1)));
                say("");
            }
            return Exit.NOTHING_FAILS;
        }
        var across = Things.named(Objects.requireNonNullElse(columns, Things.KITS), parts, drafts);
        var down = Things.named(rows, parts, drafts);
        Things.meet(down, across);
        if (down.all().isEmpty() || across.all().isEmpty()) {
            var empty = down.all().isEmpty() ? down.words() : across.words();
            throw new Refusal("pairs", "this workshop has no " + empty, "at least one", "import or enter one first");
        }
        if (why != null) {
            say(reasons(pairs, down, across));
        } else if (json) {
            stream(pairs, down, across);
        } else {
            say(text(pairs, down, across));
        }
        return Exit.NOTHING_FAILS;
    }

    private void stream(Pairs pairs, Things down, Things across) {
        try {
            PairJson.write(desk.out(), down, across, counted(pairs, down, across));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /// {@return the pairs as they are worked out, with word of the progress where there are many}
    private java.util.stream.Stream<Pair> counted(Pairs pairs, Things down, Things across) {
        long all = (long) down.all().size() * across.all().size();
        long[] done = {0};
        return pairs.stream(down.all(), across.all()).peek(pair -> {
            if (++done[0] % MANY == 0) {
                desk.err().println(done[0] + " of " + all + " pairs");
            }
        });
    }

    private List<String> text(Pairs pairs, Things down, Things across) {
        return new MatrixText(down, across, counted(pairs, down, across).toList(), desk.columns()).lines();
    }

    private List<String> reasons(Pairs pairs, Things down, Things across) {
        var asked = Objects.requireNonNull(why);
        int comma = asked.indexOf(',');
        if (comma <= 0) {
            throw new Refusal("--why", "'" + asked + "' is no pair", "ROW,COLUMN", "two ids with a comma between");
        }
        var row = found(down, asked.substring(0, comma).strip());
        var column = found(across, asked.substring(comma + 1).strip());
        var findings = pairs.findings(row, column);
        boolean loose = !(row instanceof Thing.OfKit) && !(column instanceof Thing.OfKit); // no left, no right
        var lines = new ArrayList<String>();
        lines.add(row.name() + " (" + row.id() + ") against " + column.name() + " (" + column.id() + ")");
        if (findings.isEmpty()) {
            lines.add("These two do not meet: no check reads both.");
        }
        for (Finding f : findings) {
            lines.addAll(Typesetting.hanging(
                    Mark.of(f.verdict()) + " " + Typesetting.padded(f.verdict().toString(), 11) + "  ",
                    f.check() + (loose || f.side().equals("kit") ? "" : ", " + f.side()) + ": " + f.says()
                            + (f.remedy().isEmpty() ? "" : " → " + f.remedy()),
                    desk.columns()));
        }
        return lines;
    }

    private static Thing found(Things things, String id) {
        return things.all().stream()
                .filter(t -> t.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        "--why",
                        "'" + id + "' is none of the " + things.words(),
                        String.join(", ", things.all().stream().map(Thing::id).toList()),
                        "use one of these"));
    }
}
