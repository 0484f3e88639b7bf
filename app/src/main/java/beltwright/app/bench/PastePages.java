package beltwright.app.bench;

import beltwright.part.Kinds;
import beltwright.quantity.Refusal;
import beltwright.workshop.document.PartField;
import beltwright.workshop.document.PartRow;
import beltwright.workshop.table.Columns;
import beltwright.workshop.table.LengthUnit;
import beltwright.workshop.table.Preview;
import beltwright.workshop.table.Table;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/// A table of parts pasted from a spreadsheet: looked at first, then kept whole or not at all.
public final class PastePages {
    private final Bench bench;

    PastePages(Bench bench) {
        this.bench = bench;
    }

    /// A pasted table on its way in.
    public record Pasted(
            Kinds kind,
            String text,
            String source,
            boolean replace,
            @Nullable Preview preview,
            String refused,
            List<PartField> fields,
            int saved) {
        /// {@return what is wrong in a cell, or empty}
        public String flaw(Preview.Row row, int column) {
            return row.flaws().stream()
                    .filter(f -> f.column().isPresent() && f.column().getAsInt() == column)
                    .map(f -> f.mistake().wrong() + "; " + f.mistake().allowed() + "; "
                            + f.mistake().mend())
                    .collect(Collectors.joining(" · "));
        }

        /// {@return what is wrong in a row and in no single cell of it}
        public String elsewhere(Preview.Row row) {
            return row.flaws().stream()
                    .filter(f -> f.column().isEmpty())
                    .map(f -> f.mistake().field() + ": " + f.mistake().wrong() + "; "
                            + f.mistake().mend())
                    .collect(Collectors.joining(" · "));
        }

        /// {@return whether the field of a column is a length, and so has a unit to choose}
        public boolean length(String path) {
            return fields.stream().anyMatch(f -> f.path().equals(path) && f.length());
        }

        public List<LengthUnit> units() {
            return List.of(LengthUnit.values());
        }

        public int wrong() {
            return preview == null ? 0 : preview.mistakes().size();
        }
    }

    void paste(Context ctx) {
        var kind = PartsPages.kind(Objects.requireNonNullElse(ctx.queryParam("kind"), Kinds.WHEEL.words()));
        showPasted(ctx, new Pasted(kind, "", "", false, null, "", PartRow.fields(kind), 0));
    }

    /// Previews the table with the columns as chosen; with `save` it is kept, whole or not at all.
    void pasted(Context ctx) {
        var kind = PartsPages.kind(Objects.requireNonNullElse(ctx.formParam("kind"), ""));
        var text = Objects.requireNonNullElse(ctx.formParam("text"), "");
        var source = Objects.requireNonNullElse(ctx.formParam("source"), "");
        boolean replace = ctx.formParam("replace") != null;
        Preview preview = null;
        var refused = "";
        int saved = 0;
        try {
            var table = Table.parse(text);
            preview = bench.workshop()
                    .against(
                            Preview.of(
                                    Table.PASTED,
                                    table,
                                    columns(ctx, kind, table).withSource(source)),
                            replace);
            if (ctx.formParam("save") != null && preview.mistakes().isEmpty()) {
                var done = bench.workshop().importTable(preview, replace);
                saved = done.saved().size();
                if (done.mistakes().isEmpty()) {
                    ctx.redirect("/parts?kept=" + saved + "#" + Bench.coded(kind.words()), HttpStatus.SEE_OTHER);
                    return;
                }
            }
        } catch (Refusal r) {
            refused = (r.where().isEmpty() ? "" : r.where() + ": ") + r.wrong() + "; allowed: " + r.allowed() + "; "
                    + r.mend();
        }
        if (!refused.isEmpty() || (preview != null && !preview.mistakes().isEmpty())) {
            ctx.status(422);
        }
        showPasted(ctx, new Pasted(kind, text, source, replace, preview, refused, PartRow.fields(kind), saved));
    }

    /// The columns as guessed from the headings, each overruled by what was chosen for it.
    private static Columns columns(Context ctx, Kinds kind, Table table) {
        var guessed = Columns.suggested(kind, table.headings());
        if (!Objects.requireNonNullElse(ctx.formParam("columnsOf"), "").equals(kind.words() + "|" + table.headings())) {
            return guessed;
        }
        var chosen = new ArrayList<Columns.Column>();
        for (int i = 0; i < table.headings().size(); i++) {
            var was = guessed.columns().get(i);
            chosen.add(new Columns.Column(
                    was.heading(),
                    Objects.requireNonNullElse(ctx.formParam("column" + i), was.path()),
                    LengthUnit.named(Objects.requireNonNullElse(ctx.formParam("unit" + i), ""))
                            .orElse(was.unit())));
        }
        return new Columns(kind, chosen, "");
    }

    private void showPasted(Context ctx, Pasted pasted) {
        bench.render(ctx, "bench/paste.jte", Map.of("places", Places.of(bench.shelf(), "parts"), "pasted", pasted));
    }

    /// {@return a field as the form calls it, with its unit}
    public static String words(PartField field) {
        var unit = field.unit().symbol();
        return (field.path().equals("massKg") ? "mass" : Sheet.label(field.path()))
                + (unit.isEmpty() ? "" : ", " + unit);
    }

    /// {@return every kind, for a choice}
    public static List<String> kinds() {
        return Arrays.stream(Kinds.values()).map(Kinds::words).toList();
    }
}
