package beltwright.app.bench;

import beltwright.part.Kinds;
import beltwright.part.Part;
import beltwright.press.caliper.CaliperFigure;
import beltwright.press.svg.SvgWriter;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Refusal;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.Mistake;
import beltwright.workshop.document.PartField;
import beltwright.workshop.document.PartRow;
import beltwright.workshop.table.Columns;
import beltwright.workshop.table.Preview;
import beltwright.workshop.table.Table;
import beltwright.workshop.table.Tables;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/// The shelf in a browser: what lies there, one part typed in with the caliper in hand, or a whole table pasted.
public final class PartsPages {
    private static final String UNIT = "unit";
    private static final List<String> FIRST = List.of("id", "name", "revision", "source");

    private final Bench bench;

    PartsPages(Bench bench) {
        this.bench = bench;
    }

    /// One field of the form.
    ///
    /// @param letter where it stands on the figure, or empty
    /// @param when another field that must be so for this one to be asked, or empty
    public record Asked(PartField field, String letter, String label, String typed, String error, String when) {
        public String unit() {
            return field.unit().symbol();
        }

        /// {@return what is measured, where the label does not say it already}
        public String hint() {
            return switch (field.path()) {
                case "id" -> "short name without spaces; made of the name where you leave it empty";
                case "name" -> "what people call it";
                case "revision", "note" -> "";
                default -> field.meaning().equalsIgnoreCase(label) ? "" : field.meaning();
            };
        }
    }

    /// The form for one part.
    ///
    /// @param kept id of the part that is edited, empty for a new one
    /// @param measured fields with a letter on the figure, then all others
    public record Form(
            Kinds kind,
            String kept,
            String figure,
            List<Asked> head,
            List<Asked> measured,
            List<Asked> others,
            List<String> errors,
            boolean inches,
            List<String> materials) {
        public boolean fresh() {
            return kept.isEmpty();
        }

        /// {@return the name as typed, else the id}
        public String name() {
            return head.stream()
                    .filter(a -> a.field().path().equals("name") && !a.typed().isBlank())
                    .map(Asked::typed)
                    .findFirst()
                    .orElse(kept);
        }
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
        bench.render(ctx, "bench/parts.jte", Map.of("places", Places.of(shelf, "parts"), "shelved", byKind));
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

    void fresh(Context ctx) {
        var kind = kind(Objects.requireNonNullElse(ctx.queryParam("kind"), ""));
        show(ctx, form(kind, "", Map.of("revision", "A"), List.of(), false));
    }

    void open(Context ctx) {
        var part = kept(ctx.pathParam("part"));
        show(ctx, form(Kinds.of(part.getClass()), part.id(), PartRow.write(part), List.of(), false));
    }

    /// {@return the part as it was entered, no measurement laid over it}
    private Part kept(String id) {
        return bench.workshop().store().documents().get(id) instanceof Document.OfPart(var part)
                ? part
                : bench.shelf().part(id);
    }

    /// Takes what was typed: saved whole, or shown again with what is wrong beside each field.
    void save(Context ctx) {
        var kind = kind(Objects.requireNonNullElse(ctx.formParam("kind"), ""));
        var kept = Objects.requireNonNullElse(ctx.formParam("kept"), "");
        boolean inches = "in".equals(ctx.formParam(UNIT));
        var cells = new LinkedHashMap<String, String>();
        for (var field : PartRow.fields(kind)) {
            var typed = ctx.formParam(field.path());
            if (typed != null && !typed.isBlank()) {
                cells.put(field.path(), typed);
            }
        }
        var read = new LinkedHashMap<>(cells);
        if (inches) {
            PartRow.fields(kind).stream()
                    .filter(PartField::length)
                    .forEach(f -> read.computeIfPresent(f.path(), (path, typed) -> inInches(typed)));
        }
        if (!kept.isEmpty()) {
            read.put("id", kept);
        }
        if (!read.containsKey("id") && read.containsKey("name")) {
            read.put("id", id(Objects.requireNonNull(read.get("name"))));
        }
        var result = bench.workshop().importPart(kind, read, !kept.isEmpty());
        if (result.isEmpty()) {
            ctx.redirect("/parts/" + read.get("id"), HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(422);
        show(ctx, form(kind, kept, cells, result, inches));
    }

    private static String inInches(String typed) {
        boolean plain = !DimensionText.namesUnit(typed) && !typed.strip().equals("unknown");
        return plain ? typed.strip() + " in" : typed;
    }

    /// {@return an id made of a name: `Wheel 90 × 50` becomes `wheel-90-50`}
    static String id(String name) {
        return name.toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
    }

    private void show(Context ctx, Form form) {
        bench.render(ctx, "bench/part.jte", Map.of("places", Places.of(bench.shelf(), "parts"), "form", form));
    }

    private Form form(Kinds kind, String kept, Map<String, String> typed, List<Mistake> mistakes, boolean inches) {
        var letters = CaliperFigure.letters(kind);
        var wrong = new HashMap<String, String>();
        var elsewhere = new ArrayList<String>();
        var paths = PartRow.fields(kind).stream().map(PartField::path).collect(Collectors.toSet());
        for (var mistake : mistakes) {
            var path = mistake.field().substring(mistake.field().indexOf('.') + 1);
            var says = mistake.wrong() + "; " + mistake.allowed() + "; " + mistake.mend();
            if (paths.contains(path)) {
                wrong.merge(path, says, (a, b) -> a + " · " + b);
            } else {
                elsewhere.add(mistake.field() + ": " + says);
            }
        }
        var head = new ArrayList<Asked>();
        var measured = new ArrayList<Asked>();
        var others = new ArrayList<Asked>();
        boolean caliper = true; // a choice or a count stands beside the dimension before it
        for (var field : PartRow.fields(kind)) {
            var path = field.path();
            var asked = new Asked(
                    field,
                    letters.getOrDefault(path, ""),
                    path.equals("massKg") ? "mass" : Sheet.label(path),
                    typed.getOrDefault(path, ""),
                    wrong.getOrDefault(path, ""),
                    field.when());
            if (FIRST.contains(path)) {
                head.add(asked);
            } else {
                caliper = field.dimension() ? letters.containsKey(path) : caliper && !path.equals("note");
                (caliper ? measured : others).add(asked);
            }
        }
        head.sort(java.util.Comparator.comparingInt(a ->
                List.of("name", "id", "revision", "source").indexOf(a.field().path())));
        return new Form(
                kind,
                kept,
                SvgWriter.inline(CaliperFigure.of(kind), "figure"),
                head,
                measured,
                others,
                elsewhere,
                inches,
                new java.util.TreeMap<>(bench.workshop().reference().materials())
                        .keySet().stream().toList());
    }

    private static Kinds kind(String words) {
        return Kinds.named(words)
                .orElseThrow(() -> new Refusal(
                        "kind", "'" + words + "' is not a kind of part", Kinds.allowed(), "choose one of these"));
    }

    // ---- a table pasted from a spreadsheet ----

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

        public int wrong() {
            return preview == null ? 0 : preview.mistakes().size();
        }
    }

    void paste(Context ctx) {
        var kind = kind(Objects.requireNonNullElse(ctx.queryParam("kind"), Kinds.WHEEL.words()));
        showPasted(ctx, new Pasted(kind, "", "", false, null, "", PartRow.fields(kind), 0));
    }

    /// Previews the table with the columns as chosen; with `save` it is kept, whole or not at all.
    void pasted(Context ctx) {
        var kind = kind(Objects.requireNonNullElse(ctx.formParam("kind"), ""));
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
                    ctx.redirect("/parts#" + Bench.coded(kind.words()), HttpStatus.SEE_OTHER);
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
                    "in".equals(ctx.formParam("unit" + i))));
        }
        return new Columns(kind, chosen, "");
    }

    private void showPasted(Context ctx, Pasted pasted) {
        bench.render(ctx, "bench/paste.jte", Map.of("places", Places.of(bench.shelf(), "parts"), "pasted", pasted));
    }

    /// {@return every kind, for a choice}
    public static List<String> kinds() {
        return Arrays.stream(Kinds.values()).map(Kinds::words).toList();
    }
}
