package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.check.Finding;
import beltwright.check.Ladder;
import beltwright.check.Verdict;
import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.LayoutSolver;
import beltwright.pairs.Mend;
import beltwright.pairs.Mending;
import beltwright.part.Belt;
import beltwright.part.Part;
import beltwright.part.Riser;
import beltwright.part.Screw;
import beltwright.part.Sleeve;
import beltwright.part.StandardSizes;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.document.Editable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/// The smallest change that mends a finding really mends it, and nothing else gets worse.
class MendingTest {
    private static final int BROKEN = 60;
    private static final Pattern BOUGHT = Pattern.compile(
            "(?:screws (?<thread>\\S+) × (?<length>\\S+)|a sleeve (?<sleeve>\\S+) mm long|a riser of (?<riser>\\S+) mm"
                    + "(?:, with deck screws (?<deck>\\S+) × (?<long>\\S+))?"
                    + "|a belt of (?<teeth>\\d+) teeth \\(\\S+ mm\\))(?: as (?<seats>.+?))? \\(not on the shelf\\)");

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    /// A kit with one edit that makes something fail.
    private record Broken(String kit, Edit edit, Shelf shelf) {
        List<Finding> findings() {
            return MendingTest.findings(shelf.kit(kit));
        }

        /// {@return whether it fails in something that it did not fail in before, found without words}
        boolean newly(Map<String, Verdict> before) {
            var kit = shelf.kit(this.kit);
            return Ladder.answers(kit, LayoutSolver.solve(kit), check -> true).stream()
                    .anyMatch(a -> a.verdict() == Verdict.FAILS && before.get(a.key()) != Verdict.FAILS);
        }

        List<String> failing() {
            return findings().stream()
                    .filter(f -> f.verdict() == Verdict.FAILS)
                    .map(Finding::key)
                    .toList();
        }

        Mending mending() {
            return Mending.of(shelf.kit(kit), shelf.parts(), shelf.reference());
        }
    }

    /// {@return so many edits after which the kit fails in something that it did not fail in before}
    private static List<Broken> broken(String kit) {
        var before = verdicts(DemoKits.dossier(kit).findings());
        var random = new Random(7);
        var documents = new ArrayList<>(DemoKits.SHELF.kit(kit).parts().keySet());
        documents.add(kit);
        var broken = new ArrayList<Broken>();
        for (int tries = 0; broken.size() < BROKEN && tries < 100 * BROKEN; tries++) {
            var document = documents.get(random.nextInt(documents.size()));
            var fields = DemoKits.SHELF.editable(document);
            Editable field = fields.get(random.nextInt(fields.size()));
            Edits.moved(document, field, 0.02 + 0.4 * random.nextDouble())
                    .map(edit -> new Broken(kit, edit, DemoKits.SHELF.with(List.of(edit))))
                    .filter(b -> b.newly(before))
                    .ifPresent(broken::add);
        }
        return broken;
    }

    private static List<Finding> findings(Kit kit) {
        return Ladder.findings(kit, LayoutSolver.solve(kit));
    }

    private static Map<String, Verdict> verdicts(List<Finding> findings) {
        return findings.stream().collect(Collectors.toMap(Finding::key, Finding::verdict));
    }

    @Tag("law")
    @ParameterizedTest
    @MethodSource("kits")
    void whatMendsReallyMends(String kit) {
        int mended = 0;
        var all = broken(kit);
        assertThat(all).hasSize(BROKEN);
        for (var broken : all) {
            var before = verdicts(broken.findings());
            var mending = broken.mending();
            var failing = broken.failing();
            for (var key : failing) {
                var mends = mending.all(key);
                for (var mend : mends) {
                    var as = broken.edit() + ": " + key + ": " + mend;
                    var after = verdicts(mended(broken, mend));
                    assertThat(after.get(key)).as(as).isEqualTo(mend.becomes());
                    assertThat(mend.becomes()).as(as).isIn(Verdict.HOLDS, Verdict.MARGINAL);
                    assertThat(worse(before, after)).as(as).isEmpty();
                    inItsBand(mend);
                    mended++;
                }
                if (key.equals(failing.getFirst())) { // it searches again: once for each edit is enough
                    smallestIsTheFirstThatHolds(mends, mending.smallest(key).orElse(null));
                }
            }
        }
        assertThat(mended).isGreaterThan(BROKEN);
    }

    private static List<String> worse(Map<String, Verdict> before, Map<String, Verdict> after) {
        return after.entrySet().stream()
                .filter(e -> {
                    var was = before.get(e.getKey());
                    return was == null
                            ? e.getValue() == Verdict.FAILS
                            : e.getValue().compareTo(was) < 0;
                })
                .map(e -> e.getKey() + " " + before.get(e.getKey()) + " -> " + e.getValue())
                .toList();
    }

    /// {@return what the kit is told once the change is made: typed as edits, or the part bought and put in}
    private static List<Finding> mended(Broken broken, Mend mend) {
        if (mend.onShelf()) {
            var edits = mend.fields().stream()
                    .map(f -> Edit.parse(broken.kit() + "." + f[0] + "=" + f[1]))
                    .toList();
            assertThat(edits).as(mend.says()).isNotEmpty();
            return findings(broken.shelf().with(edits).kit(broken.kit()));
        }
        assertThat(mend.fields()).as(mend.says()).isEmpty();
        var words = BOUGHT.matcher(mend.says());
        assertThat(words.matches()).as(mend.says()).isTrue();
        var draft = broken.shelf().draft(broken.kit());
        var seats = new TreeMap<>(draft.seats());
        var parts = new TreeMap<>(broken.shelf().parts());
        for (var seat : seats(words.group("seats"))) {
            var filling = Objects.requireNonNull(seats.get(seat));
            var part = bought(words, broken.shelf().part(filling.part()));
            parts.put(part.id(), part);
            seats.put(seat, new KitDraft.Filling(part.id(), filling.count(), filling.fromRider()));
        }
        if (words.group("deck") != null) {
            var seat = SeatName.of(Role.DECK_SCREWS);
            var filling = Objects.requireNonNull(seats.get(seat));
            var like = (Screw) broken.shelf().part(filling.part());
            assertThat(words.group("deck")).isEqualTo(like.thread().toString());
            var screw = StandardSizes.screw(like, Double.parseDouble(words.group("long")));
            parts.put(screw.id(), screw);
            seats.put(seat, new KitDraft.Filling(screw.id(), filling.count(), filling.fromRider()));
        }
        var changed = new KitDraft(
                draft.id(),
                draft.name(),
                draft.invented(),
                draft.note(),
                seats,
                draft.joints(),
                draft.placements(),
                draft.task());
        var shelf = new Shelf(
                parts,
                broken.shelf().drafts(),
                broken.shelf().measurements(),
                broken.shelf().routes(),
                broken.shelf().logs(),
                broken.shelf().reference());
        return findings(Kit.resolve(changed, shelf::part, shelf.reference()));
    }

    private static Part bought(Matcher words, Part instead) {
        return switch (instead) {
            case Screw screw -> {
                assertThat(words.group("thread")).isEqualTo(screw.thread().toString());
                yield StandardSizes.screw(screw, Double.parseDouble(words.group("length")));
            }
            case Sleeve sleeve -> StandardSizes.sleeve(sleeve, Double.parseDouble(words.group("sleeve")));
            case Riser riser -> StandardSizes.riser(riser, Double.parseDouble(words.group("riser")));
            case Belt belt -> StandardSizes.belt(belt, Integer.parseInt(words.group("teeth")));
            default -> throw new AssertionError(instead.id() + " is in no standard size");
        };
    }

    private static List<SeatName> seats(@Nullable String words) {
        if (words == null) {
            return List.of(SeatName.of(Role.RISER));
        }
        if (words.endsWith(" on both sides")) {
            var role = Role.named(words.substring(0, words.length() - " on both sides".length()))
                    .orElseThrow();
            return Stream.of(Side.values())
                    .map(side -> new SeatName(side, role))
                    .toList();
        }
        return Stream.of(words.split(" and ")).map(SeatName::parse).toList();
    }

    /// Set otherwise before a screw or spacer, that before a belt or riser, that before everything else.
    private static void inItsBand(Mend mend) {
        double from;
        double to;
        if (!mend.placements().isEmpty()) {
            from = 0;
            to = 1;
        } else {
            var words = BOUGHT.matcher(mend.says());
            boolean small;
            boolean middling;
            if (words.matches()) {
                small = words.group("thread") != null || words.group("sleeve") != null;
                middling = !small;
            } else {
                var types = mend.seats().values().stream()
                        .map(id -> DemoKits.SHELF.part(id).kind())
                        .collect(Collectors.toSet());
                if (types.size() > 1) { // a part brings the screws that hold it
                    assertThat(types.remove("screw")).as(mend.says()).isTrue();
                }
                assertThat(types).as(mend.says()).hasSize(1);
                small = types.stream().anyMatch(List.of("screw", "washer", "nut", "sleeve")::contains);
                middling = types.stream().anyMatch(List.of("belt", "riser")::contains);
            }
            from = small ? 1 : middling ? 2 : 3;
            to = small ? 2 : middling ? 3 : 10;
        }
        assertThat(mend.size())
                .as(mend.says())
                .isGreaterThan(from == 0 ? 0 : from - 1e-9)
                .isLessThan(to);
    }

    private static void smallestIsTheFirstThatHolds(List<Mend> mends, @Nullable Mend smallest) {
        var holding = mends.stream().filter(m -> m.becomes() == Verdict.HOLDS).toList();
        var offered = holding.isEmpty() ? mends : holding;
        assertThat(mends).isSortedAccordingTo(Comparator.comparingDouble(Mend::size));
        if (offered.isEmpty()) {
            assertThat(smallest).isNull();
        } else {
            assertThat(smallest).isNotNull().isEqualTo(offered.getFirst());
            double least = offered.stream().mapToDouble(Mend::size).min().orElseThrow();
            assertThat(offered.getFirst().size()).isEqualTo(least);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"motor-screw-reach.left", "motor-screw-reach.right"})
    void theLightMountTakesAShorterScrewOnBothSides(String key) {
        var mend = mending("steep-street-light").smallest(key).orElseThrow();
        assertThat(mend.says()).endsWith("(screw-m4x12) as motor screws on both sides");
        assertThat(mend.becomes()).isEqualTo(Verdict.HOLDS);
        assertThat(mend.onShelf()).isTrue();
        assertThat(mend.fields())
                .containsExactly(
                        new String[] {"seats.left motor screws", "screw-m4x12"},
                        new String[] {"seats.right motor screws", "screw-m4x12"});
        assertThat(mend.placements()).isEmpty();
    }

    /// With no M4 × 12 on the shelf it is bought; the same length from the shelf would have come first.
    /// A deck that was screwed straight on the baseplate gets a riser, and longer screws with it.
    @Test
    void aDeckWithoutARiserIsRaised() {
        var d = DemoKits.SHELF.draft("harbour-mile");
        var seats = new TreeMap<>(d.seats());
        seats.remove(SeatName.of(Role.RISER));
        var joints = new TreeMap<>(d.joints());
        joints.remove("riser under deck");
        var kit = Kit.resolve(
                new KitDraft(d.id(), d.name(), d.invented(), d.note(), seats, joints, d.placements(), d.task()),
                DemoKits.SHELF::part,
                DemoKits.REFERENCE);
        var failing = Ladder.findings(kit, LayoutSolver.solve(kit)).stream()
                .filter(f -> f.verdict() == Verdict.FAILS)
                .map(Finding::key)
                .toList();
        assertThat(failing).contains("deck-wires.left", "deck-wheel.left", "deck-wheel.right");
        var mending = Mending.of(kit, DemoKits.SHELF.parts(), DemoKits.REFERENCE);
        for (var key : failing) {
            var mend = mending.smallest(key).orElseThrow();
            assertThat(mend.says()).startsWith("a riser of ").contains(", with deck screws M5 × ");
            assertThat(mend.becomes()).isEqualTo(Verdict.HOLDS);
            assertThat(mend.onShelf()).isFalse();
            assertThat(mend.fields()).isEmpty();
        }
    }

    /// The bushings give so much that the wheels meet the deck: a higher riser alone has too short screws.
    @Test
    void aRiserBringsItsDeckScrews() {
        var shelf = DemoKits.SHELF.with(List.of(new Edit("hanger-150-flange", "bushingTravelMm", "14")));
        var kit = shelf.kit("harbour-mile");
        var failing = findings(kit).stream()
                .filter(f -> f.verdict() == Verdict.FAILS)
                .map(Finding::key)
                .toList();
        assertThat(failing).isNotEmpty();
        var mending = Mending.of(kit, shelf.parts(), shelf.reference());
        for (var key : failing) {
            assertThat(mending.smallest(key).orElseThrow().fields())
                    .as(key)
                    .containsExactly(
                            new String[] {"seats.deck screws", "screw-m5x65-countersunk"},
                            new String[] {"seats.riser", "riser-32-wedge"});
        }
    }

    /// 10.1 mm would only be marginal: what is offered lies in the middle of the window.
    @Test
    void aCoreSpacerIsTurnedToTheMiddleOfItsWindow() {
        var shelf = DemoKits.SHELF.with(List.of(new Edit("core-spacer-10", "lengthMm", "9.8 ±0.02")));
        var mending = Mending.of(shelf.kit("steep-street"), Map.of(), shelf.reference());
        var mend = mending.smallest("core-spacer.left").orElseThrow();
        assertThat(mend.says()).startsWith("a sleeve 10.19 mm long as core spacer on both sides");
        assertThat(mend.becomes()).isEqualTo(Verdict.HOLDS);
        assertThat(mending.all("core-spacer.left"))
                .anySatisfy(m -> assertThat(m.becomes()).isEqualTo(Verdict.MARGINAL));
    }

    @Test
    void whatIsNotOnTheShelfIsBought() {
        var parts = new TreeMap<>(DemoKits.SHELF.parts());
        parts.remove("screw-m4x12");
        var mending = Mending.of(DemoKits.SHELF.kit("steep-street-light"), parts, DemoKits.REFERENCE);
        var mend = mending.smallest("motor-screw-reach.left").orElseThrow();
        assertThat(mend.says()).isEqualTo("screws M4 × 12 as motor screws on both sides (not on the shelf)");
        assertThat(mend.onShelf()).isFalse();
        assertThat(mend.fields()).isEmpty();
        var shelved =
                mending("steep-street-light").smallest("motor-screw-reach.left").orElseThrow();
        assertThat(shelved.size()).isLessThan(mend.size());
    }

    /// A pack of more cells than the controller stands: there is no standard size of either, and the shelf is bare.
    @Test
    void whatNobodyCanMendHasNone() {
        var shelf = DemoKits.SHELF.with(List.of(new Edit("controller-one", "mostSupplyV", "30")));
        var kit = shelf.kit("market-hill-single");
        var failing = findings(kit).stream()
                .filter(f -> f.verdict() == Verdict.FAILS)
                .map(Finding::key)
                .toList();
        assertThat(failing).isNotEmpty();
        var mending = Mending.of(kit, Map.of(), shelf.reference());
        for (var key : failing) {
            assertThat(mending.smallest(key)).as(key).isEmpty();
            assertThat(mending.all(key)).as(key).isEmpty();
        }
    }

    @Test
    void aFindingThatHoldsIsNotMended() {
        var holding = DemoKits.dossier("steep-street").findings().stream()
                .filter(f -> f.verdict() == Verdict.HOLDS)
                .limit(10)
                .toList();
        assertThat(holding).hasSize(10);
        assertThat(holding)
                .allSatisfy(
                        f -> assertThat(mending("steep-street").all(f.key())).isEmpty());
    }

    @Test
    void anUnknownFindingIsRefused() {
        assertThatThrownBy(() -> mending("steep-street").smallest("take-up.middle"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("'take-up.middle'")
                .hasMessageContaining("take-up.left")
                .hasMessageContaining("name one of these");
    }

    private static Mending mending(String kit) {
        return Mending.of(DemoKits.SHELF.kit(kit), DemoKits.SHELF.parts(), DemoKits.REFERENCE);
    }
}
