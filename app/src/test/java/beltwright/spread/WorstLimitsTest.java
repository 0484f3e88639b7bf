package beltwright.spread;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.app.DemoKits;
import beltwright.app.Edits;
import beltwright.app.FormKits;
import beltwright.check.Reading;
import beltwright.check.Subject;
import beltwright.kit.Kit;
import beltwright.kit.Placement;
import beltwright.kit.Side;
import beltwright.kit.Task;
import beltwright.layout.LayoutSolver;
import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.quantity.Dimension;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Source;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.document.Editable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// No piece within the limits is worse than a finding's worst limits say. For each question the worst piece is looked
/// for among the corners of the limits: each number goes where it hurts alone, then each is turned over once more.
@Tag("law")
@Tag("slow")
class WorstLimitsTest {
    /// Questions whose worst limits leave something out, and what.
    private static final Map<String, String> EXCUSED = Map.of(
            "cover-pulley",
            "whether the shaft's end or the pulley leads is told at nominal, so where both end alike the other is left out",
            "shaft-joint",
            "a flat deeper than its shaft is thick holds less than nothing, and longer is then worse");

    private static final Provenance ANY = new Provenance(Source.MEASURED, "test");

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void noPieceOfAKitIsWorse(String id) {
        assertThat(beyond(DemoKits.SHELF.kit(id))).isEmpty();
    }

    /// Every number has limits, if nobody gave any then half a percent.
    @ParameterizedTest
    @MethodSource("kits")
    void noPieceIsWorseWhereEveryNumberHasLimits(String id) {
        assertThat(beyond(limited(DemoKits.SHELF, id))).isEmpty();
    }

    /// Kits in which other parts of a formula decide: their numbers are up to a third off.
    @ParameterizedTest
    @MethodSource("kits")
    void noPieceOfASeededKitIsWorse(String id) {
        var random = new Random(20_261_128);
        for (int round = 0; round < 3; round++) {
            var beyond = beyondOfEach(limited(moved(id, random), id));
            beyond.keySet().removeIf(key -> EXCUSED.containsKey(key.substring(0, key.lastIndexOf('.'))));
            assertThat(beyond).as("round " + round).isEmpty();
        }
    }

    @Test
    void noPieceIsWorseOfKitsWithPinsOrAClampedHub() {
        assertThat(beyond(limited(FormKits.pinned(), FormKits.PINNED))).isEmpty();
        assertThat(beyond(limited(FormKits.clamped(2), FormKits.CLAMPED))).isEmpty();
    }

    private static Shelf moved(String id, Random random) {
        var edits = new ArrayList<Edit>();
        for (var edit : Edits.everyDimension(id, (random.nextDouble() - 0.5) * 2 / 3)) {
            if (random.nextInt(5) == 0) {
                edits.add(edit);
            }
        }
        return DemoKits.SHELF.with(edits);
    }

    /// Where one number alone has limits, nothing else can make up for it.
    @ParameterizedTest
    @MethodSource("kits")
    void oneNumberAloneIsNotForgotten(String id) {
        assertThat(beyondOfEach(limited(DemoKits.SHELF, id))).isEmpty();
    }

    private static Map<String, List<String>> beyondOfEach(Kit kit) {
        var names = new TreeSet<String>();
        new Pieces(kit).inputs().forEach(i -> names.add(i.dimension().of()));
        var beyond = new TreeMap<String, List<String>>();
        for (var name : names) {
            var only = Narrowed.to(kit, d -> d.of().equals(name));
            beyondAlone(only)
                    .forEach((key, by) ->
                            beyond.computeIfAbsent(key, k -> new ArrayList<>()).add(name + by));
        }
        return beyond;
    }

    static Kit limited(Shelf shelf, String id) {
        var documents = new TreeSet<>(shelf.kit(id).parts().keySet());
        documents.add(id);
        var edits = new ArrayList<Edit>();
        for (var document : documents) {
            for (var field : shelf.editable(document)) {
                withLimits(shelf, document, field).ifPresent(edits::add);
            }
        }
        return shelf.with(edits).kit(id);
    }

    private static Optional<Edit> withLimits(Shelf shelf, String document, Editable field) {
        if (field.source().isEmpty()) {
            return Optional.empty();
        }
        Dimension d;
        try {
            d = DimensionText.parse(document + "." + field.path(), field.text(), ANY);
        } catch (Refusal notADimension) {
            return Optional.empty();
        }
        if (!d.known() || d.toleranced()) {
            return Optional.empty();
        }
        var nominal = Numbers.significant(d.nominal(), 9).replace('−', '-');
        double half = Math.abs(d.nominal()) * 0.005;
        for (var limits : List.of(
                " ±" + Numbers.significant(Math.max(half, 0.02), 6),
                " ±" + Numbers.significant(half, 6),
                " +0.02/-0",
                " +0/-" + Numbers.significant(half, 6))) {
            try {
                var edit = new Edit(document, field.path(), nominal + limits);
                shelf.with(List.of(edit));
                return Optional.of(edit);
            } catch (Refusal outOfRange) {
                continue;
            }
        }
        return Optional.empty();
    }

    /// What is said to be left of one question at the worst limits, and what rounding moves it by: golden sections of
    /// the deck's end at 0.01 mm.
    private record Said(double left, double rounding) {
        static List<Said> of(Kit kit, List<Asking.Question> questions) {
            var subjects = Subject.of(kit, LayoutSolver.solve(kit));
            var said = new ArrayList<Said>();
            for (var q : questions) {
                var r = new Reading();
                q.check().measure(subjects.get(q.subject()), r);
                double size = Math.max(1, Math.max(Math.abs(r.capacityWorst()), Math.abs(r.demandWorst())));
                said.add(new Said(
                        r.capacityWorst() - r.demandWorst(), q.key().startsWith("deck-") ? 0.01 : 1e-9 * size));
            }
            return said;
        }

        boolean holds(double found) {
            return !(found < left - rounding);
        }
    }

    private static Map<String, String> beyondAlone(Kit kit) {
        var pieces = new Pieces(kit);
        var questions = Asking.questions(kit, pieces);
        var asking = new Asking(kit, pieces, questions);
        var said = Said.of(kit, questions);
        var beyond = new TreeMap<String, String>();
        for (boolean up : new boolean[] {false, true}) {
            asking.ask(pieces.inputs().stream()
                    .mapToDouble(i -> up ? i.dimension().upper() : i.dimension().lower())
                    .toArray());
            for (int q = 0; q < questions.size(); q++) {
                if (!said.get(q).holds(asking.slack(q))) {
                    beyond.put(
                            questions.get(q).key(),
                            " " + asking.slack(q) + " for " + said.get(q).left());
                }
            }
        }
        return beyond;
    }

    private static Map<String, String> beyond(Kit kit) {
        var search = new Search(kit);
        var said = Said.of(kit, search.questions);
        var beyond = new TreeMap<String, String>();
        for (int q = 0; q < search.questions.size(); q++) {
            double least = search.least(q);
            if (!said.get(q).holds(least)) {
                beyond.put(
                        search.questions.get(q).key(),
                        least + " found, " + said.get(q).left() + " said: " + search.decided(q));
            }
        }
        return beyond;
    }

    /// All answers of one kit, and the worst corner of each.
    private static final class Search {
        final List<Asking.Question> questions;
        final double[] base;
        private final List<Input> inputs;
        private final Asking asking;
        private final double[] nominal;
        private final double[][] low;
        private final double[][] high;
        private double[] at = new double[0];

        Search(Kit kit) {
            var pieces = new Pieces(kit);
            inputs = pieces.inputs();
            questions = Asking.questions(kit, pieces);
            asking = new Asking(kit, pieces, questions);
            nominal = inputs.stream().mapToDouble(i -> i.dimension().nominal()).toArray();
            base = answers(nominal);
            low = new double[inputs.size()][];
            high = new double[inputs.size()][];
            for (int i = 0; i < inputs.size(); i++) {
                var values = nominal.clone();
                values[i] = inputs.get(i).dimension().lower();
                low[i] = answers(values);
                values[i] = inputs.get(i).dimension().upper();
                high[i] = answers(values);
            }
        }

        private double[] answers(double[] values) {
            asking.ask(values);
            var answers = new double[questions.size()];
            for (int q = 0; q < answers.length; q++) {
                answers[q] = asking.slack(q);
            }
            return answers;
        }

        private double ask(int q) {
            asking.ask(at);
            return asking.slack(q);
        }

        double least(int q) {
            at = nominal.clone();
            var moving = new ArrayList<Integer>();
            for (int i = 0; i < at.length; i++) {
                if (low[i][q] != base[q] || high[i][q] != base[q]) {
                    moving.add(i);
                    var d = inputs.get(i).dimension();
                    at[i] = low[i][q] <= high[i][q] ? d.lower() : d.upper();
                }
            }
            double least = moving.isEmpty() ? base[q] : Math.min(base[q], ask(q));
            for (int i : moving) {
                double was = at[i];
                var d = inputs.get(i).dimension();
                at[i] = d.lower() + d.upper() - was;
                double turned = ask(q);
                if (turned < least) {
                    least = turned;
                } else {
                    at[i] = was;
                }
            }
            return least;
        }

        /// {@return the numbers that the last worst corner rests on}
        String decided(int q) {
            double least = ask(q);
            var who = new ArrayList<String>();
            for (int i = 0; i < at.length; i++) {
                double was = at[i];
                if (was != nominal[i]) {
                    at[i] = nominal[i];
                    double by = ask(q) - least;
                    if (by != 0) {
                        who.add(inputs.get(i).where() + " "
                                + inputs.get(i).dimension().of() + " " + by);
                    }
                    at[i] = was;
                }
            }
            return String.join(", ", who);
        }
    }

    /// A kit whose numbers have no limits but those that are picked.
    private static final class Narrowed {
        static Kit to(Kit kit, Predicate<Dimension> picked) {
            UnaryOperator<Object> narrow = v -> narrowed(v, picked);
            var placed = new EnumMap<Side, Placement>(Side.class);
            kit.draft().placements().forEach((side, p) -> placed.put(side, (Placement) narrow.apply(p)));
            return kit.drawn(
                    seat -> (Part) narrow.apply(seat.part()),
                    placed,
                    (Task) narrow.apply(kit.task()),
                    (Reference) narrow.apply(kit.reference()),
                    kit.chance());
        }

        private static Object narrowed(Object value, Predicate<Dimension> picked) {
            return switch (value) {
                case Dimension d -> d.toleranced() && !picked.test(d) ? d.drawn(d.nominal()) : d;
                case Record r -> record(r, picked);
                case Map<?, ?> m -> {
                    var made = new HashMap<Object, Object>();
                    m.forEach((k, v) -> made.put(k, narrowed(v, picked)));
                    yield made;
                }
                case List<?> l -> l.stream().map(v -> narrowed(v, picked)).toList();
                default -> value;
            };
        }

        private static Object record(Record r, Predicate<Dimension> picked) {
            try {
                var declared = r.getClass().getRecordComponents();
                var types = new Class<?>[declared.length];
                var values = new Object[declared.length];
                boolean changed = false;
                for (int i = 0; i < declared.length; i++) {
                    types[i] = declared[i].getType();
                    var was = declared[i].getAccessor().invoke(r);
                    values[i] = narrowed(was, picked);
                    changed |= values[i] != was;
                }
                return changed ? r.getClass().getConstructor(types).newInstance(values) : r;
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
