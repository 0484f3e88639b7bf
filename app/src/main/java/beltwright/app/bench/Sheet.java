package beltwright.app.bench;

import beltwright.check.Finding;
import beltwright.check.FirstNumber;
import beltwright.check.Line;
import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.kit.Seat;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.part.Material;
import beltwright.part.Reference;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.DrawingOffice;
import beltwright.press.svg.SvgWriter;
import beltwright.quantity.Numbers;
import beltwright.quantity.Unit;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.document.Editable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/// One kit as the bench shows it. Everything comes from its dossier; nothing is worked out here.
public final class Sheet {
    private final Shelf shelf;
    private final Draft draft;
    private final Dossier dossier;
    private final List<KitLink> kits;
    private final String seat;
    private final @Nullable Refused refused;
    private final Map<String, String> odds;
    private final boolean brief;

    /// A value that was typed and refused: where, what, and why, so that nothing typed is lost.
    public record Refused(String field, String value, String why) {}

    /// A kit to go to, and how it stands.
    public record KitLink(String id, String name, String mark, String stands, boolean here) {}

    /// A seat with the parts that could fill it.
    public record SeatCell(
            String name,
            String part,
            String partName,
            int count,
            boolean fromRider,
            Twin twin,
            boolean open,
            String href,
            String field,
            List<String[]> choices) {}

    /// Where left and right are alike, paper says it once.
    public enum Twin {
        ALONE,
        FIRST,
        SECOND
    }

    /// A field of the part that is open.
    public record FieldRow(
            String field,
            String label,
            String meaning,
            String unit,
            String text,
            String source,
            List<String> choices,
            boolean changed,
            String error,
            String typed) {
        /// {@return whether it names a material of the reference file}
        public boolean material() {
            return Sheet.material(field);
        }
    }

    /// A first number with its value for each side.
    public record NumberRow(String name, String unit, Map<String, FirstNumber> sides) {
        /// {@return one number for each way it is worked out, by the sides that share it}
        public Map<String, FirstNumber> workings() {
            var alike = new LinkedHashMap<List<Line>, List<String>>();
            sides.forEach((side, number) -> alike.computeIfAbsent(sideless(side, number), w -> new ArrayList<>())
                    .add(side));
            var workings = new LinkedHashMap<String, FirstNumber>();
            sides.forEach((side, number) -> workings.putIfAbsent(
                    String.join(" and ", alike.getOrDefault(sideless(side, number), List.of())), number));
            return workings;
        }

        /// Two sides set alike quote the same numbers, each from its own place in the kit.
        private static List<Line> sideless(String side, FirstNumber number) {
            return number.working().stream()
                    .map(l -> new Line(
                            l.symbol(),
                            l.formula().replace("placements." + side + ".", "placements."),
                            l.numbers(),
                            l.value(),
                            l.unit(),
                            l.source()))
                    .toList();
        }
    }

    Sheet(
            Shelf kept,
            Draft draft,
            List<KitLink> kits,
            @Nullable String seat,
            @Nullable Refused refused,
            boolean brief,
            Map<String, String> odds) {
        this.brief = brief;
        this.odds = Map.copyOf(odds);
        this.shelf = draft.over(kept);
        this.draft = draft;
        this.dossier = Dossiers.of(shelf.kit(draft.kit()));
        this.kits = kits;
        this.refused = refused;
        this.seat = seat != null && seats().contains(seat) ? seat : firstSeat();
    }

    private Set<String> seats() {
        var names = new LinkedHashSet<String>();
        dossier.kit().seats().keySet().forEach(s -> names.add(s.toString()));
        return names;
    }

    /// The seat that the weakest rung is about, so that what mends it lies open.
    private String firstSeat() {
        var weakest = dossier.findings().getFirst();
        return weakest.subjects().isEmpty()
                ? dossier.kit().seats().firstKey().toString()
                : weakest.subjects().getFirst();
    }

    public Places places() {
        return Places.of(shelf, "kits");
    }

    /// {@return where the smallest change that mends a finding is fetched from}
    public String mendAddress(String key) {
        return under("/mend", key);
    }

    public Dossier dossier() {
        return dossier;
    }

    public List<KitLink> kits() {
        return kits;
    }

    public String kitName() {
        return dossier.kit().draft().name();
    }

    public String note() {
        return dossier.kit().draft().note();
    }

    public boolean invented() {
        return dossier.kit().draft().invented();
    }

    public String revision() {
        return draft.revision();
    }

    /// {@return the other pages of this kit, with its draft}
    public List<RoadSheet.Way> ways() {
        return RoadSheet.ways(draft, "");
    }

    public List<Edit> edits() {
        return draft.edits();
    }

    /// {@return an edit as people would say it: `left motor screws: 4 × Screw M4×12`}
    public String says(Edit edit) {
        var part = shelf.parts().get(edit.document());
        if (part != null) {
            return label(edit.path()) + " of " + part.name() + ": " + edit.value();
        }
        if (!edit.path().startsWith("seats.")) {
            return label(edit.path()) + ": " + (edit.value().isEmpty() ? "taken out" : edit.value());
        }
        var seat = edit.path().substring("seats.".length());
        var filled = edit.value().isBlank() ? null : dossier.kit().seats().get(SeatName.parse(seat));
        return seat + ": "
                + (filled == null
                        ? "taken out"
                        : (filled.count() == 1 ? "" : filled.count() + " × ")
                                + filled.part().name());
    }

    public String address(String page) {
        return draft.address(page);
    }

    public String keepAddress() {
        return "/kits/" + draft.kit() + "/keep";
    }

    public String editAddress() {
        return "/kits/" + draft.kit() + "/edit";
    }

    public String without(Edit edit) {
        return draft.without(edit).address("");
    }

    public String seat() {
        return seat;
    }

    public @Nullable Refused refused() {
        return refused;
    }

    /// {@return what a finding needs before it can be told}
    public List<Missing> missing(Finding finding) {
        return Missing.of(shelf, finding.needs());
    }

    /// {@return the rung that is chosen when the page opens: the weakest}
    public String chosen() {
        return dossier.findings().getFirst().key();
    }

    /// {@return whether workings are left out, to be fetched when they are opened}
    public boolean brief() {
        return brief;
    }

    /// {@return where the working of a finding or number is fetched from}
    public String workingAddress(String key) {
        return under("/working", key);
    }

    private String under(String page, String key) {
        var address = draft.address(page);
        return address + (address.indexOf('?') < 0 ? '?' : '&') + "of="
                + java.net.URLEncoder.encode(key, java.nio.charset.StandardCharsets.UTF_8);
    }

    public List<Rung> rungs() {
        return dossier.findings().stream()
                .map(f -> new Rung(f, f.key().equals(chosen()), odds.getOrDefault(f.key(), "")))
                .toList();
    }

    public String count(Verdict verdict) {
        return dossier.findings().stream().filter(f -> f.verdict() == verdict).count() + " " + verdict;
    }

    public String counts() {
        return String.join(
                " · ",
                List.of(
                        count(Verdict.FAILS),
                        count(Verdict.CANNOT_TELL),
                        count(Verdict.MARGINAL),
                        count(Verdict.HOLDS)));
    }

    /// {@return how many estimates the ladder rests on, as the command line counts them, and the numbers beyond those}
    public String restsOn() {
        var ladder = new LinkedHashSet<String>();
        dossier.findings().stream().map(Finding::estimates).forEach(ladder::addAll);
        var numbers = new LinkedHashSet<String>();
        dossier.numbers().stream().map(FirstNumber::estimates).forEach(numbers::addAll);
        numbers.removeAll(ladder);
        return ladder.size()
                + (ladder.size() == 1 ? " estimate" : " estimates")
                + (numbers.isEmpty() ? "" : ", the numbers on " + numbers.size() + " more");
    }

    /// A drawing as an element of the page; the second side of a two-motor kit waits folded.
    public record Figure(String title, String svg, boolean folded) {}

    /// {@return the drawings in the order they are looked at: the plan, then the sides}
    public List<Figure> drawings() {
        var office = new DrawingOffice(dossier, dossier.kit().reference(), revision()).pointingAt(chosen());
        var figures = new ArrayList<Figure>();
        figures.add(figure(office.plan(), false));
        for (var drive : dossier.kit().drives()) {
            figures.add(figure(office.side(drive.side()), figures.size() > 1));
        }
        return figures;
    }

    private static Figure figure(Drawing d, boolean folded) {
        return new Figure(d.title(), SvgWriter.inline(d, d.id()), folded);
    }

    public List<NumberRow> numbers() {
        var rows = new LinkedHashMap<String, NumberRow>();
        for (var n : dossier.numbers()) {
            int dot = n.key().lastIndexOf('.');
            rows.computeIfAbsent(
                            n.key().substring(0, dot), k -> new NumberRow(n.name(), n.unit(), new LinkedHashMap<>()))
                    .sides()
                    .put(n.key().substring(dot + 1), n);
        }
        return new ArrayList<>(rows.values());
    }

    public static String value(FirstNumber n) {
        return Numbers.significant(n.value(), 3);
    }

    public static String number(double value) {
        return Numbers.significant(value, 6);
    }

    public List<SeatCell> seatCells() {
        var cells = new ArrayList<SeatCell>();
        for (Map.Entry<SeatName, Seat> e : dossier.kit().seats().entrySet()) {
            var name = e.getKey().toString();
            var filled = e.getValue();
            var choices = shelf.parts().values().stream()
                    .filter(e.getKey().role().type()::isInstance)
                    .map(p -> new String[] {(filled.count() == 1 ? "" : filled.count() + " x ") + p.id(), p.name()})
                    .toList();
            cells.add(new SeatCell(
                    name,
                    filled.part().id(),
                    filled.part().name(),
                    filled.count(),
                    filled.fromRider(),
                    twin(e.getKey(), filled),
                    name.equals(seat),
                    draft.at(name),
                    draft.kit() + ".seats." + name,
                    choices));
        }
        return cells;
    }

    private Twin twin(SeatName name, Seat filled) {
        var other = dossier.kit().seats().entrySet().stream()
                .filter(e -> e.getKey().role() == name.role() && e.getKey().side() != name.side())
                .map(Map.Entry::getValue)
                .findFirst();
        boolean alike = other.filter(o -> o.part().equals(filled.part())
                        && o.count() == filled.count()
                        && o.fromRider() == filled.fromRider())
                .isPresent();
        return !alike ? Twin.ALONE : name.side() == Side.LEFT ? Twin.FIRST : Twin.SECOND;
    }

    /// {@return whether the rungs of both sides say the same, so that paper need not say it twice}
    public Twin twin(Rung rung) {
        var f = rung.finding();
        if (rung.side().isEmpty()) {
            return Twin.ALONE;
        }
        boolean left = rung.side().equals(Side.LEFT.toString());
        var key = f.key().substring(0, f.key().lastIndexOf('.') + 1) + (left ? Side.RIGHT : Side.LEFT);
        boolean alike = dossier.findings().stream()
                .filter(o -> o.key().equals(key))
                .anyMatch(o -> o.verdict() == f.verdict()
                        && o.says().equals(f.says())
                        && o.remedy().equals(f.remedy())
                        && Objects.equals(o.margin(), f.margin())
                        && Objects.equals(o.marginWorst(), f.marginWorst())
                        && Objects.equals(o.marginBest(), f.marginBest())
                        && odds.getOrDefault(o.key(), "").equals(odds.getOrDefault(f.key(), "")));
        return !alike ? Twin.ALONE : left ? Twin.FIRST : Twin.SECOND;
    }

    /// {@return whether both drives answer alike, so that the drawing of one is the mirror image of the other}
    public boolean sidesAlike() {
        return seatCells().stream().noneMatch(c -> c.twin() == Twin.ALONE && sided(c.name()))
                && rungs().stream().noneMatch(r -> !r.side().isEmpty() && twin(r) == Twin.ALONE);
    }

    private static boolean sided(String seat) {
        return SeatName.parse(seat).side() != null;
    }

    /// {@return the open seat's part}
    public String openPart() {
        return dossier.kit().seat(SeatName.parse(seat)).part().id();
    }

    public String openPartName() {
        return dossier.kit().seat(SeatName.parse(seat)).part().name();
    }

    /// {@return the fields of the part in the open seat}
    public List<FieldRow> fields() {
        return rows(openPart(), shelf.editable(openPart()));
    }

    /// {@return where the drives sit and what the kit is asked to do}
    public List<FieldRow> kitFields() {
        return rows(
                draft.kit(),
                shelf.editable(draft.kit()).stream()
                        .filter(f -> f.path().startsWith("task.") || f.path().startsWith("placements."))
                        .toList());
    }

    private List<FieldRow> rows(String document, List<Editable> fields) {
        var rows = new ArrayList<FieldRow>();
        for (var f : fields) {
            var field = document + "." + f.path();
            boolean asked = refused != null && refused.field().equals(field)
                    || draft.edits().stream().anyMatch(e -> (e.document() + "." + e.path()).equals(field));
            if (f.idle() && !asked) {
                continue; // as in the form: what the part does not have is not asked for
            }
            boolean wrong = refused != null && refused.field().equals(field);
            rows.add(new FieldRow(
                    field,
                    label(f.path()),
                    f.meaning().equalsIgnoreCase(label(f.path())) ? "" : f.meaning(),
                    f.unit(),
                    f.text(),
                    f.text().equals("unknown") ? "" : f.source(),
                    f.choices(),
                    draft.edits().stream().anyMatch(e -> (e.document() + "." + e.path()).equals(field)),
                    refused != null && wrong ? refused.why() : "",
                    refused != null && wrong ? refused.value() : f.text()));
        }
        return rows;
    }

    /// {@return whether a field names a material of the reference file}
    static boolean material(String path) {
        return path.toLowerCase(Locale.ROOT).endsWith("material");
    }

    /// {@return the materials of the reference file by name}
    public List<Material> materials() {
        return materials(shelf.reference());
    }

    static List<Material> materials(Reference reference) {
        return reference.materials().values().stream()
                .sorted(Comparator.comparing(Material::name))
                .toList();
    }

    /// {@return a field name as words: `rim.faceWidthMm` becomes "rim face width"}
    static String label(String path) {
        var words = Unit.without(path)
                .replaceFirst("^task\\.|^placements\\.", "")
                .replace('.', ' ')
                .replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT);
        return words.strip();
    }
}
