package beltwright.app.bench;

import beltwright.part.Kinds;
import beltwright.part.Part;
import beltwright.quantity.Refusal;
import beltwright.workshop.document.Document;
import beltwright.workshop.table.Tables;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/// The shelf in a browser: what lies there, by kind.
public final class PartsPages {
    private final Bench bench;

    PartsPages(Bench bench) {
        this.bench = bench;
    }

    /// Parts of one kind.
    public record Shelved(Kinds kind, List<Part> parts) {}

    void list(Context ctx) {
        var shelf = bench.shelf();
        var byKind = Arrays.stream(Kinds.values())
                .map(k -> new Shelved(
                        k,
                        shelf.parts().values().stream()
                                .filter(k.type()::isInstance)
                                .toList()))
                .toList();
        bench.render(
                ctx,
                "bench/parts.jte",
                Map.of(
                        "places",
                        Places.of(shelf, "parts"),
                        "shelved",
                        byKind,
                        "kept",
                        counted(Objects.requireNonNullElse(ctx.queryParam("kept"), ""))));
    }

    /// {@return how many parts a table has brought, 0 where it was none or the address says no number}
    private static int counted(String kept) {
        return kept.matches("[0-9]{1,4}") ? Integer.parseInt(kept) : 0;
    }

    /// The parts of one kind as a table for a spreadsheet.
    void csv(Context ctx) {
        var kind = kind(Objects.requireNonNullElse(ctx.queryParam("kind"), ""));
        var parts = bench.workshop().store().documents().values().stream()
                .filter(d -> d instanceof Document.OfPart)
                .map(d -> ((Document.OfPart) d).part())
                .toList();
        ctx.header(
                "Content-Disposition", "attachment; filename=\"" + kind.words().replace(' ', '-') + ".csv\"");
        ctx.contentType("text/csv; charset=utf-8").result(Tables.csv(kind, parts));
    }

    static Kinds kind(String words) {
        return Kinds.named(words)
                .orElseThrow(() -> new Refusal(
                        "kind", "'" + words + "' is not a kind of part", Kinds.allowed(), "choose one of these"));
    }
}
