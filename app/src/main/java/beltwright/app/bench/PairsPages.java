package beltwright.app.bench;

import beltwright.check.Verdict;
import beltwright.kit.KitDraft;
import beltwright.kit.SeatName;
import beltwright.pairs.Mending;
import beltwright.pairs.Pair;
import beltwright.pairs.Pairs;
import beltwright.pairs.Thing;
import beltwright.pairs.Things;
import beltwright.press.json.PairJson;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/// Matrices of pairs: which part goes with which kit or part, the reason on opening.
public final class PairsPages {
    /// More cells than this come one by one, while the page already stands.
    static final int AT_ONCE = 1_500;

    private static final int MOST = 40_000;

    private final Bench bench;

    PairsPages(Bench bench) {
        this.bench = bench;
    }

    /// A matrix as the page shows it.
    ///
    /// @param pairs row by row; empty where they come later
    public record Matrix(Things rows, Things columns, List<Pair> pairs, boolean later, Shelf shelf) {
        /// {@return what a pair needs before it can be told}
        public List<Missing> missing(Pair pair) {
            return Missing.of(shelf, pair.needs());
        }

        public List<Thing> down() {
            return rows.all();
        }

        public List<Thing> across() {
            return columns.all();
        }

        public Pair at(int row, int column) {
            return pairs.get(row * columns.all().size() + column);
        }

        public int size() {
            return rows.all().size() * columns.all().size();
        }

        /// {@return the address of this matrix, or of a page under it}
        public String address(String page) {
            return "/pairs" + page + "?rows=" + Bench.coded(rows.words()) + "&columns=" + Bench.coded(columns.words());
        }

        public String why(Thing row, Thing column) {
            return address("/why") + "&row=" + Bench.coded(row.id()) + "&column=" + Bench.coded(column.id());
        }

        public String counts() {
            var told = new ArrayList<String>();
            for (var verdict : Verdict.values()) {
                told.add(pairs.stream().filter(p -> p.verdict() == verdict).count() + " " + verdict);
            }
            return String.join(" · ", told);
        }
    }

    void page(Context ctx) {
        var shelf = bench.shelf();
        var parts = shelf.parts().values();
        var drafts = shelf.drafts().values();
        var usual = Things.usual(parts, drafts);
        var rows = ctx.queryParam("rows");
        if (rows == null && usual.isEmpty()) {
            bench.render(ctx, "bench/pairs.jte", arguments(shelf, usual, null));
            return;
        }
        var matrix = rows == null
                ? usual.getFirst()
                : List.of(
                        Things.named(rows, parts, drafts),
                        Things.named(
                                Objects.requireNonNullElse(ctx.queryParam("columns"), Things.KITS), parts, drafts));
        var down = matrix.get(0);
        var across = matrix.get(1);
        Things.meet(down, across);
        long cells = (long) down.all().size() * across.all().size();
        if (cells > MOST) {
            throw new Refusal(
                    "pairs",
                    cells + " pairs are more than a page can show",
                    "at most " + MOST,
                    "use './beltwright pairs' with --json, or a shelf with fewer " + down.words());
        }
        boolean later = cells > AT_ONCE;
        var pairs = later
                ? List.<Pair>of()
                : pairs(shelf).stream(down.all(), across.all()).toList();
        bench.render(ctx, "bench/pairs.jte", arguments(shelf, usual, new Matrix(down, across, pairs, later, shelf)));
    }

    private Map<String, Object> arguments(Shelf shelf, List<List<Things>> usual, @Nullable Matrix matrix) {
        var arguments = new java.util.HashMap<String, Object>();
        arguments.put("places", Places.of(shelf, "pairs"));
        arguments.put("usual", usual);
        if (matrix != null) {
            arguments.put("matrix", matrix);
        }
        return arguments;
    }

    private static Pairs pairs(Shelf shelf) {
        return new Pairs(shelf::part, shelf.reference());
    }

    /// The cells of a large matrix, one a line, as they are worked out.
    void stream(Context ctx) {
        var shelf = bench.shelf();
        var down = named(ctx, shelf, "rows");
        var across = named(ctx, shelf, "columns");
        Things.meet(down, across);
        ctx.contentType("application/x-ndjson; charset=utf-8");
        try (var out = new OutputStreamWriter(ctx.outputStream(), StandardCharsets.UTF_8)) {
            for (var row : down.all()) {
                for (var column : across.all()) {
                    out.write(PairJson.of(pairs(shelf).of(row, column)).toString());
                    out.write('\n');
                }
                out.flush();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // the reader went away
        }
    }

    private static Things named(Context ctx, Shelf shelf, String parameter) {
        return Things.named(
                Objects.requireNonNullElse(ctx.queryParam(parameter), ""),
                shelf.parts().values(),
                shelf.drafts().values());
    }

    /// Everything the checks say of one pair, and what would mend it.
    void why(Context ctx) {
        var shelf = bench.shelf();
        var row = found(named(ctx, shelf, "rows"), ctx.queryParam("row"));
        var column = found(named(ctx, shelf, "columns"), ctx.queryParam("column"));
        var findings = pairs(shelf).findings(row, column);
        var arguments = new java.util.HashMap<String, Object>();
        arguments.put("places", Places.of(shelf, "pairs"));
        arguments.put("row", row);
        arguments.put("column", column);
        arguments.put("findings", findings);
        arguments.put("shelf", shelf);
        arguments.put("loose", !(row instanceof Thing.OfKit) && !(column instanceof Thing.OfKit));
        arguments.put("back", ctx.queryString() == null ? "/pairs" : "/pairs?" + ctx.queryString());
        if (column instanceof Thing.OfKit kit && row instanceof Thing.InPlace place) {
            arguments.put("open", swapped(kit.draft(), place)); // empty where the kit has no such seat
        }
        bench.render(ctx, "bench/why.jte", arguments);
    }

    /// {@return the address of the kit with this part in its seats, as a draft}
    private static String swapped(KitDraft draft, Thing.InPlace place) {
        var edits = new ArrayList<Edit>();
        for (SeatName seat : draft.seats().keySet()) {
            if (seat.role() == place.role()) {
                var count = Objects.requireNonNull(draft.seats().get(seat)).count();
                edits.add(new Edit(draft.id(), "seats." + seat, (count > 1 ? count + " x " : "") + place.id()));
            }
        }
        return edits.isEmpty() ? "" : new Draft(draft.id(), edits).address("");
    }

    private static Thing found(Things things, @Nullable String id) {
        return things.all().stream()
                .filter(t -> t.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        "pairs",
                        "'" + id + "' is none of the " + things.words(),
                        String.join(", ", things.all().stream().map(Thing::id).toList()),
                        "go back to the matrix"));
    }

    /// The smallest change that mends one failing finding of a kit, with a link that tries it.
    void mend(Context ctx) {
        var draft = Bench.draft(ctx);
        var shelf = draft.over(bench.shelf());
        var key = Objects.requireNonNullElse(ctx.queryParam("of"), "");
        var mend = Mending.of(shelf.kit(draft.kit()), shelf.parts(), shelf.reference())
                .smallest(key);
        var arguments = new java.util.HashMap<String, Object>();
        mend.ifPresent(m -> {
            arguments.put("mend", m);
            var next = draft;
            for (var field : m.fields()) {
                next = next.with(new Edit(draft.kit(), field[0], counted(shelf, draft.kit(), field)));
            }
            arguments.put("address", next.address(""));
        });
        bench.part(ctx, draft, "The smallest change", "bench/mend.jte", arguments);
    }

    /// A seat of four screws stays a seat of four.
    private static String counted(Shelf shelf, String kit, String[] field) {
        if (!field[0].startsWith("seats.")) {
            return field[1];
        }
        var filling = shelf.draft(kit).seats().get(SeatName.parse(field[0].substring("seats.".length())));
        return filling != null && filling.count() > 1 ? filling.count() + " x " + field[1] : field[1];
    }
}
