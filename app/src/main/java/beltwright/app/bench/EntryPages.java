package beltwright.app.bench;

import beltwright.part.Field;
import beltwright.part.Kinds;
import beltwright.part.Material;
import beltwright.part.Part;
import beltwright.press.caliper.CaliperFigure;
import beltwright.press.svg.SvgWriter;
import beltwright.quantity.DimensionText;
import beltwright.workshop.document.Document;
import beltwright.workshop.document.Mistake;
import beltwright.workshop.document.PartField;
import beltwright.workshop.document.PartRow;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/// One part typed in with the caliper in hand, beside the figure of where to measure.
public final class EntryPages {
    private static final String UNIT = "unit";
    private static final List<String> FIRST = List.of("id", "name", "revision", "source");
    private static final List<String> LAST = List.of("massKg", "note");

    private final Bench bench;

    EntryPages(Bench bench) {
        this.bench = bench;
    }

    /// One field of the form.
    ///
    /// @param letter where it stands on the figure, or empty
    /// @param own source of a kept dimension that is not the form's, or empty
    /// @param ownTyped another one typed for it, or empty
    /// @param when another field that must be so for this one to be asked, or empty
    public record Asked(
            PartField field,
            String letter,
            String label,
            String typed,
            String own,
            String ownTyped,
            String error,
            String when) {
        public String unit() {
            return field.unit().symbol();
        }

        /// {@return what is measured, where the label does not say it already}
        public String hint() {
            return switch (field.path()) {
                case "id" -> "short name without spaces; made of the name where you leave it empty";
                case "name" -> "what people call it";
                case "revision", "note" -> "";
                default -> said() ? "" : field.meaning();
            };
        }

        /// {@return whether the label ends in what the meaning says}
        private boolean said() {
            var meaning = field.meaning().toLowerCase(Locale.ROOT);
            return label.equals(meaning) || label.endsWith(" " + meaning);
        }

        /// {@return whether it names a material of the reference file}
        public boolean material() {
            return Sheet.material(field.path());
        }
    }

    /// The fields that some questions read and those of fit do not, folded together under one heading.
    public record Fold(Field.Group group, List<Asked> asked) {
        public long filled() {
            return asked.stream()
                    .filter(a -> !a.typed().isBlank() && !a.typed().equals("unknown"))
                    .count();
        }

        /// {@return whether something is wrong in it, and must be seen}
        public boolean open() {
            return asked.stream().anyMatch(a -> !a.error().isEmpty());
        }
    }

    /// The form for one part.
    ///
    /// @param kept id of the part that is edited, empty for a new one
    /// @param stacked the figure with its views one under the other, for a page that is narrow
    /// @param everywhere whether the source is also of the numbers that are left as they are
    /// @param measured fields of fit with a letter on the figure
    /// @param others the rest of these
    /// @param folds all other fields
    /// @param materials what a part may be made of, by name
    /// @param saved whether it was kept just now
    public record Form(
            Kinds kind,
            String kept,
            String figure,
            String stacked,
            List<Asked> head,
            List<Asked> measured,
            List<Asked> others,
            List<Fold> folds,
            List<String> errors,
            boolean inches,
            boolean everywhere,
            Collection<Material> materials,
            boolean saved) {
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

    void fresh(Context ctx) {
        var kind = PartsPages.kind(Objects.requireNonNullElse(ctx.queryParam("kind"), ""));
        show(ctx, new Typed(kind, null, Map.of("revision", "A"), false, false), List.of());
    }

    void open(Context ctx) {
        var part = kept(ctx.pathParam("part"));
        show(ctx, new Typed(Kinds.of(part.getClass()), part, Map.of(), false, false), List.of());
    }

    /// {@return what is wrong and how to mend it here, where a field is a box and not a line of a file}
    private static String says(Mistake mistake, Optional<PartField> field) {
        if (!mistake.wrong().equals("missing") || field.isEmpty()) {
            return mistake.wrong() + "; " + mistake.allowed() + "; " + mistake.mend();
        }
        boolean chosen =
                !field.get().choices().isEmpty() || Sheet.material(field.get().path());
        return (chosen ? "nothing is chosen yet; " : "empty; ")
                + (field.get().choices().isEmpty() && chosen ? "any of the list" : mistake.allowed()) + "; "
                + (chosen ? "choose one of the list" : "type it here");
    }

    /// {@return the part as it was entered, no measurement laid over it}
    private Part kept(String id) {
        return bench.workshop().store().documents().get(id) instanceof Document.OfPart(var part)
                ? part
                : bench.shelf().part(id);
    }

    /// What a form held when it was sent.
    ///
    /// @param kept the part that is edited, null for a new one
    /// @param cells by path, as typed
    private record Typed(
            Kinds kind, @Nullable Part kept, Map<String, String> cells, boolean inches, boolean everywhere) {
        static Typed of(Context ctx, Kinds kind, @Nullable Part kept) {
            var cells = new LinkedHashMap<String, String>();
            for (var field : PartRow.fields(kind)) {
                for (var path : List.of(field.path(), field.path() + PartRow.OWN_SOURCE)) {
                    var typed = ctx.formParam(path);
                    if (typed != null) {
                        cells.put(path, typed);
                    }
                }
            }
            return new Typed(kind, kept, cells, "in".equals(ctx.formParam(UNIT)), ctx.formParam("everywhere") != null);
        }

        /// {@return the cells as a table would give them}
        Map<String, String> read() {
            var read = new LinkedHashMap<>(cells);
            if (inches) {
                PartRow.fields(kind).stream()
                        .filter(PartField::length)
                        .forEach(f -> read.computeIfPresent(f.path(), (path, typed) -> inInches(typed)));
            }
            var whole = kept == null ? read : PartRow.over(kept, read, everywhere);
            whole.values().removeIf(String::isBlank);
            return PartRow.named(whole);
        }

        /// {@return whether another source was typed, and no number takes it}
        boolean idleSource(Map<String, String> read) {
            var source = cells.getOrDefault(PartRow.SOURCE, "").strip();
            return kept != null
                    && !source.isEmpty()
                    && !source.equals(PartRow.write(kept).get(PartRow.SOURCE))
                    && PartRow.fields(kind).stream()
                            .filter(PartField::dimension)
                            .allMatch(f -> read.containsKey(f.path() + PartRow.OWN_SOURCE));
        }
    }

    /// Takes what was typed: saved whole, or shown again with what is wrong beside each field.
    void save(Context ctx) {
        var kind = PartsPages.kind(Objects.requireNonNullElse(ctx.formParam("kind"), ""));
        var id = Objects.requireNonNullElse(ctx.formParam("kept"), "");
        var typed = Typed.of(ctx, kind, id.isEmpty() ? null : kept(id));
        var read = typed.read();
        var result = typed.idleSource(read)
                ? List.of(new Mistake(
                        "form",
                        1,
                        id + ".source",
                        "no number takes this source, for none was changed",
                        "a source of the numbers that change",
                        "change a number, or say that the source is of all numbers"))
                : bench.workshop().importPart(kind, read, !id.isEmpty());
        if (result.isEmpty()) {
            ctx.redirect("/parts/" + read.get("id") + "?kept=now", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(422);
        show(ctx, typed, result);
    }

    private static String inInches(String typed) {
        boolean plain = !typed.isBlank()
                && !DimensionText.namesUnit(typed)
                && !typed.strip().equals("unknown");
        return plain ? typed.strip() + " in" : typed;
    }

    private void show(Context ctx, Typed typed, List<Mistake> mistakes) {
        bench.render(
                ctx,
                "bench/part.jte",
                Map.of(
                        "places",
                        Places.of(bench.shelf(), "parts"),
                        "form",
                        form(typed, mistakes, mistakes.isEmpty() && ctx.queryParam("kept") != null)));
    }

    private Form form(Typed typed, List<Mistake> mistakes, boolean saved) {
        var kind = typed.kind();
        Map<String, String> was = typed.kept() == null ? Map.of() : PartRow.write(typed.kept());
        var letters = CaliperFigure.letters(kind);
        var wrong = new HashMap<String, String>();
        var elsewhere = new ArrayList<String>();
        var paths = PartRow.fields(kind).stream().collect(Collectors.toMap(PartField::path, f -> f));
        for (var mistake : mistakes) {
            var path = mistake.field().substring(mistake.field().indexOf('.') + 1);
            if (path.equals("part")) { // as a file names the id
                path = PartRow.ID;
            }
            if (!paths.containsKey(path) && path.endsWith(PartRow.OWN_SOURCE)) {
                path = path.substring(0, path.length() - PartRow.OWN_SOURCE.length());
            }
            var says = says(mistake, Optional.ofNullable(paths.get(path)));
            if (paths.containsKey(path)) {
                wrong.merge(path, says, (a, b) -> a + " · " + b);
            } else {
                elsewhere.add(mistake.field() + ": " + says);
            }
        }
        var head = new ArrayList<Asked>();
        var measured = new ArrayList<Asked>();
        var others = new ArrayList<Asked>();
        var last = new ArrayList<Asked>();
        var folds = new EnumMap<Field.Group, List<Asked>>(Field.Group.class);
        boolean caliper = true; // a choice or a count stands beside the dimension before it
        for (var field : PartRow.fields(kind)) {
            var path = field.path();
            var asked = new Asked(
                    field,
                    letters.getOrDefault(path, ""),
                    path.equals("massKg") ? "mass" : Sheet.label(path),
                    typed.cells().getOrDefault(path, was.getOrDefault(path, "")),
                    was.getOrDefault(path + PartRow.OWN_SOURCE, ""),
                    typed.cells().getOrDefault(path + PartRow.OWN_SOURCE, ""),
                    wrong.getOrDefault(path, ""),
                    field.when());
            if (FIRST.contains(path)) {
                head.add(asked);
            } else if (field.group() != Field.Group.FIT) {
                folds.computeIfAbsent(field.group(), g -> new ArrayList<>()).add(asked);
            } else if (LAST.contains(path)) {
                last.add(asked);
            } else {
                caliper = field.dimension() ? letters.containsKey(path) : caliper;
                (caliper ? measured : others).add(asked);
            }
        }
        others.addAll(last);
        head.sort(Comparator.comparingInt(a ->
                List.of("name", "id", "revision", "source").indexOf(a.field().path())));
        return new Form(
                kind,
                typed.kept() == null ? "" : typed.kept().id(),
                SvgWriter.inline(CaliperFigure.of(kind), "figure"),
                SvgWriter.inline(CaliperFigure.stacked(kind), "stacked"),
                head,
                measured,
                others,
                folds.entrySet().stream()
                        .map(e -> new Fold(e.getKey(), e.getValue()))
                        .toList(),
                elsewhere,
                typed.inches(),
                typed.everywhere(),
                Sheet.materials(bench.workshop().reference()),
                saved);
    }
}
