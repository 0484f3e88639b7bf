package beltwright.app.bench;

import beltwright.press.chart.RideChart;
import beltwright.press.json.RideJson;
import beltwright.press.json.RouteJson;
import beltwright.press.svg.SvgWriter;
import beltwright.press.table.Ridden;
import beltwright.quantity.Refusal;
import beltwright.ride.Board;
import beltwright.ride.RideSolver;
import beltwright.ride.Route;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.document.Document;
import beltwright.workshop.route.RouteFiles;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/// A kit over a route, alone or beside another kit, and routes that are brought along.
public final class RidePages {
    private static final int LARGEST_UPLOAD = 8 * 1024 * 1024;
    private static final int FORM_AROUND_IT = 64 * 1024;
    static final int LARGEST_FORM = LARGEST_UPLOAD + FORM_AROUND_IT;
    private static final String PAGE = "/ride";
    private static final String SMOOTH = "smooth";
    private static final String WITH = "with";

    private static final int KEPT = 8;

    private final Bench bench;
    private final Map<Asked, Ridden> ridden = new LinkedHashMap<>(KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Ridden> eldest) {
            return size() > KEPT;
        }
    };
    private @Nullable Shelf riddenOn;

    /// What a ride depends on beside the store.
    private record Asked(List<Edit> edits, String kit, String route, RideSolver.Options options) {}

    RidePages(Bench bench) {
        this.bench = bench;
    }

    void page(Context ctx) {
        show(ctx, Bench.draft(ctx), asked(ctx, WITH), null);
    }

    private static String asked(Context ctx, String name) {
        return Objects.requireNonNullElse(ctx.queryParam(name), "").strip();
    }

    private void show(Context ctx, Draft draft, String with, @Nullable Refusal refused) {
        var view = view(ctx, draft, with, refused);
        var arguments = new HashMap<String, Object>();
        arguments.put("view", view);
        if (!view.rides().isEmpty()) {
            arguments.put("paper", SvgWriter.inline(RideChart.of(view.rides()), "ride"));
        }
        bench.render(ctx, "bench/ride.jte", arguments);
    }

    private RideView view(Context ctx, Draft draft, String with, @Nullable Refusal refused) {
        var kept = bench.shelf();
        var road = RoadSheet.of(kept, draft, PAGE);
        var words = refused == null
                ? ""
                : refused.where() + ": " + refused.wrong() + "; allowed: " + refused.allowed() + "; " + refused.mend();
        var route = route(ctx, road);
        var needs = new ArrayList<String>();
        var rides = new ArrayList<Ridden>();
        if (route != null) {
            for (var id : with.isEmpty()
                    ? List.of(road.kit().id())
                    : List.of(road.kit().id(), with)) {
                var kit = road.shelf().kit(id);
                var board = Board.of(kit);
                needs.addAll(board.needs());
                if (board.known()) {
                    rides.add(ridden(
                            kept,
                            new Asked(draft.edits(), id, route.id(), options(ctx)),
                            () -> new Ridden(kit, board, RideSolver.ride(id, board, route, options(ctx)))));
                }
            }
        }
        return new RideView(road, route, asked(ctx, SMOOTH), with, needs.isEmpty() ? rides : List.of(), needs, words);
    }

    /// A page, its charts and its files ask for the same ride one after the other.
    private synchronized Ridden ridden(Shelf kept, Asked asked, Supplier<Ridden> solve) {
        if (riddenOn != kept) {
            ridden.clear();
            riddenOn = kept;
        }
        var known = ridden.get(asked);
        if (known == null) {
            known = solve.get();
            ridden.put(asked, known);
        }
        return known;
    }

    /// {@return the route asked for, else the first that is kept; null where none is}
    private static @Nullable Route route(Context ctx, RoadSheet road) {
        var id = asked(ctx, "route");
        var kept = road.shelf().routes();
        if (id.isEmpty()) {
            return kept.isEmpty() ? null : kept.get(kept.firstKey());
        }
        return road.shelf().route(id);
    }

    private static RideSolver.Options options(Context ctx) {
        var typed = asked(ctx, SMOOTH);
        if (typed.isEmpty()) {
            return RideSolver.Options.USUAL;
        }
        try {
            return RideSolver.Options.USUAL.withSmooth(Double.parseDouble(typed));
        } catch (NumberFormatException e) {
            throw new Refusal(
                    SMOOTH, "'" + typed + "' is no number", "0 to 1000 m, 0 for heights as they are", "give metres");
        }
    }

    private Ridden one(Context ctx) {
        var view = view(ctx, Bench.draft(ctx), "", null);
        if (view.rides().isEmpty()) {
            throw new Refusal(
                    "ride",
                    view.route() == null ? "there is no route yet" : "needs " + String.join(", ", view.needs()),
                    "a route and every number known",
                    view.route() == null ? "add a route" : "enter them");
        }
        return view.rides().getFirst();
    }

    void json(Context ctx) {
        Bench.json(ctx, RideJson.of(one(ctx)));
    }

    void csv(Context ctx) {
        var ride = one(ctx).ride();
        ctx.header(
                "Content-Disposition",
                "attachment; filename=\"" + ride.kit() + "-" + ride.route().id() + ".csv\"");
        ctx.contentType("text/csv; charset=utf-8").result(RideJson.csv(ride));
    }

    void route(Context ctx) {
        Bench.json(ctx, RouteJson.of(bench.shelf().route(ctx.pathParam("route"))));
    }

    /// A route from a file of the reader's machine; what is none is said where it was chosen, and nothing is kept.
    void add(Context ctx) {
        var draft = Bench.draft(ctx);
        try {
            var route = uploaded(ctx);
            bench.workshop().add(List.of(new Document.OfRoute(route)));
            var road = RoadSheet.of(bench.shelf(), draft, PAGE);
            ctx.redirect(road.address(PAGE, "route", route.id()), HttpStatus.SEE_OTHER);
        } catch (Refusal r) {
            refuse(ctx, draft, r);
        }
    }

    private void refuse(Context ctx, Draft draft, Refusal refusal) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, draft, "", refusal);
    }

    private static Refusal tooLarge() {
        return new Refusal(
                "file",
                "is larger than " + LARGEST_UPLOAD / 1024 / 1024 + " MB",
                "a track or table up to " + LARGEST_UPLOAD / 1024 / 1024 + " MB",
                "thin its points out, or import it with the command");
    }

    private static Route uploaded(Context ctx) {
        if (ctx.req().getContentLengthLong() > LARGEST_FORM) {
            Door.readAway(ctx);
            throw tooLarge();
        }
        var file = ctx.uploadedFile("file");
        if (file == null || file.filename().isBlank()) {
            throw new Refusal("file", "none was chosen", "a GPX track or a CSV table", "choose one");
        }
        try (var in = file.content()) {
            var bytes = in.readNBytes(LARGEST_UPLOAD + 1);
            if (bytes.length > LARGEST_UPLOAD) {
                throw tooLarge();
            }
            return RouteFiles.read(file.filename(), bytes, RouteFiles.About.file(file.filename()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
