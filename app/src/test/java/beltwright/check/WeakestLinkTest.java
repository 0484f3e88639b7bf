package beltwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.app.DemoKits;
import beltwright.dossier.Dossiers;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.press.table.TensionTables;
import beltwright.quantity.Numbers;
import beltwright.ride.Board;
import beltwright.workshop.Edit;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// What must hold of the chain of links, whatever the kit.
@Tag("law")
class WeakestLinkTest {
    private static final String KIT = "market-hill-single";
    private static final String HEAT = "the winding's heat, held for ever at cruise";
    private static final String PACK = "what the pack gives and takes at cruise";

    static Stream<String> kits() {
        return DemoKits.ids();
    }

    private static Kit kit(String id, String... edits) {
        return DemoKits.SHELF.with(Stream.of(edits).map(Edit::parse).toList()).kit(id);
    }

    private static List<WeakestLink.Chain> chains(Kit kit) {
        return WeakestLink.of(kit, LayoutSolver.solve(kit));
    }

    private static WeakestLink.Link link(WeakestLink.Chain chain, String name) {
        return chain.links().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /// At the torque told, each check is just met, with every number at nominal and at its worse limit.
    @ParameterizedTest
    @MethodSource("kits")
    void whereALinkGivesItsDemandIsItsCapacity(String id) {
        var kit = kit(id);
        int met = 0;
        for (var subject : Subject.of(kit, LayoutSolver.solve(kit))) {
            for (var check : Checks.ALL) {
                if (check instanceof StrengthCheck strength && strength.torqued() && strength.concerns(subject)) {
                    for (var at : new At[] {At.NOMINAL, At.WORST}) {
                        double torque = WeakestLink.gives(subject, strength, at);
                        if (torque > 0 && Double.isFinite(torque)) {
                            double capacity = strength.capacity(subject, at, torque);
                            assertThat(strength.demand(subject, at, torque) / capacity)
                                    .as(strength.key(subject))
                                    .isCloseTo(1, within(1e-9));
                            met++;
                        }
                    }
                }
            }
        }
        assertThat(met).isGreaterThan(5);
    }

    @ParameterizedTest
    @MethodSource("kits")
    void linksStandInOrderAndLeadToTheirFinding(String id) {
        var kit = kit(id);
        var keys = Dossiers.of(kit).findings().stream().map(Finding::key).toList();
        for (var chain : chains(kit)) {
            assertThat(chain.links()).extracting(WeakestLink.Link::name).doesNotHaveDuplicates();
            double last = 0;
            for (var link : chain.links()) {
                if (!Double.isNaN(link.driveNm())) {
                    assertThat(link.driveNm()).as(link.name()).isGreaterThanOrEqualTo(last);
                    last = link.driveNm();
                    assertThat(link.driveWorstNm()).as(link.name()).isLessThanOrEqualTo(link.driveNm() + 1e-9);
                    assertThat(link.brakeWorstNm()).as(link.name()).isLessThanOrEqualTo(link.brakeNm() + 1e-9);
                }
                if (!link.key().isEmpty()) {
                    assertThat(keys).contains(link.key());
                }
            }
            var first = chain.firstToGive(false).orElseThrow();
            assertThat(chain.links().stream()
                            .filter(l -> l.kind() != WeakestLink.Kind.LIMITS)
                            .findFirst())
                    .contains(first);
        }
    }

    /// At a tension that is chosen, a stronger controller makes nothing stronger but itself.
    @ParameterizedTest
    @MethodSource("kits")
    void moreCurrentRaisesNoOtherLink(String id) {
        var kit = kit(id);
        var tension = kit.drives().stream()
                .map(d -> id + ".placements." + d.side() + ".tensionN=140")
                .toArray(String[]::new);
        var chosen = kit(id, tension);
        var controller = chosen.controller();
        var more = Stream.concat(
                        Stream.of(tension),
                        Stream.of(
                                controller.id() + ".driveCurrentA="
                                        + 1.5 * controller.driveCurrentA().nominal(),
                                controller.id() + ".brakeCurrentA="
                                        + 1.5 * controller.brakeCurrentA().nominal()))
                .toArray(String[]::new);
        var before = chains(chosen);
        var after = chains(kit(id, more));
        for (int i = 0; i < before.size(); i++) {
            assertThat(after.get(i).links()).hasSameSizeAs(before.get(i).links());
            for (var link : before.get(i).links()) {
                if (!link.name().equals("the controller's limit") && !Double.isNaN(link.driveNm())) {
                    var now = link(after.get(i), link.name());
                    assertThat(now.driveNm()).as(link.name()).isLessThanOrEqualTo(link.driveNm() + 1e-9);
                    assertThat(now.brakeNm()).as(link.name()).isLessThanOrEqualTo(link.brakeNm() + 1e-9);
                }
            }
        }
    }

    /// At the torque told, held for ever at cruise, the winding settles just where the controller cuts back; braking,
    /// twice the motor's loss torque lies between.
    @ParameterizedTest
    @MethodSource("kits")
    void theWindingSettlesAtTheCutBackDrivingAndBraking(String id) {
        var board = Board.of(kit(id));
        var train = board.train();
        double omega = train.radPerS(board.cruiseMps());
        double away =
                train.heat().caseToAirWPerK(board.cruiseMps() + board.road().headWindMps(), omega);
        double loss = train.motor().lossNm(omega);
        for (var chain : chains(kit(id))) {
            var heat = link(chain, HEAT);
            for (double shaft : new double[] {heat.driveNm(), -heat.brakeNm()}) {
                double current = train.motor().currentA(shaft, omega);
                assertThat(train.heat().settledWindingC(train.motor(), current, loss * omega, board.airC(), away))
                        .isCloseTo(train.limits().windingFromC(), within(1e-6));
            }
            assertThat(heat.brakeNm() - heat.driveNm()).isCloseTo(2 * loss, within(1e-8));
        }
    }

    /// Without limits there is no band; one number with limits takes the torque as far down as that number alone does.
    @ParameterizedTest
    @MethodSource("kits")
    void packAndHeatHaveABandWhereNumbersHaveLimits(String id) {
        var none = withoutLimits(id);
        for (var chain : chains(kit(id, none))) {
            for (var name : List.of(PACK, HEAT, "the controller's limit")) {
                assertThat(link(chain, name).nominalOnly()).as(name).isTrue();
            }
            assertThat(TensionTables.links(chain).rows())
                    .filteredOn(row -> row.getFirst().equals(HEAT))
                    .allSatisfy(row -> assertThat(row.getLast()).contains("nominal only"));
        }
        var ohm = kit(id).drives().getFirst().motor().resistanceOhm();
        double more = 0.1 * ohm.nominal();
        var limited = also(none, ohm.of() + "=" + Numbers.plain(ohm.nominal()) + " ±" + Numbers.plain(more));
        var moved = also(none, ohm.of() + "=" + Numbers.plain(ohm.nominal() + more));
        for (int i = 0; i < kit(id).drives().size(); i++) {
            var heat = link(chains(kit(id, limited)).get(i), HEAT);
            assertThat(heat.nominalOnly()).isFalse();
            assertThat(heat.driveWorstNm())
                    .isLessThan(heat.driveNm())
                    .isCloseTo(link(chains(kit(id, moved)).get(i), HEAT).driveNm(), within(1e-6));
        }
    }

    private static String[] also(String[] edits, String one) {
        return Stream.concat(Stream.of(edits), Stream.of(one)).toArray(String[]::new);
    }

    /// {@return edits that leave every number of the board its nominal alone}
    private static String[] withoutLimits(String id) {
        var typed = new TreeMap<String, String>();
        Board.of(kit(id), d -> {
            if (d.toleranced()) {
                typed.put(d.of(), d.of() + "=" + Numbers.plain(d.nominal()));
            }
            return d.nominal();
        });
        return typed.values().toArray(String[]::new);
    }

    @Test
    void weakerMotorScrewsGiveEarlier() {
        var screws = kit(KIT).drives().getFirst().motorScrew().id();
        double last = Double.POSITIVE_INFINITY;
        for (var strength : new String[] {"12.9", "10.9", "8.8"}) {
            var chain = chains(kit(KIT, screws + ".strength=" + strength)).getFirst();
            double slides = link(chain, "the motor slides in its slots").driveNm();
            assertThat(slides).isLessThan(last);
            last = slides;
        }
    }

    @Test
    void aLooseBeltJumpsBeforeTheWorstTorqueAndATightOneDoesNot() {
        for (var tension : new String[] {"40", "160"}) {
            var chain = chains(kit(KIT, KIT + ".placements.left.tensionN=" + tension))
                    .getFirst();
            assertThat(chain.early(link(chain, "a tooth jumps"))).isEqualTo(tension.equals("40"));
        }
    }

    /// The belt is set once, at rest: torque that rises later does not set it anew.
    @Test
    void theBeltIsSetOnceWhateverTheTorque() {
        var kit = kit(KIT);
        var subject = Subject.of(kit, LayoutSolver.solve(kit)).getFirst();
        double rest = Tension.pullN(subject, At.NOMINAL, 0);
        assertThat(rest).isEqualTo(2 * Tension.setN(subject, At.NOMINAL));
        assertThat(Tension.pullN(subject, At.NOMINAL, 1)).isEqualTo(rest);
        assertThat(chains(kit("quarry-road-load")))
                .allSatisfy(c -> assertThat(c.links()).noneMatch(l -> Double.isNaN(l.driveNm())));
    }

    @Test
    void jumpTestsTellTheTorqueOfTheTensionThatIsSet() {
        var tested = KIT + ".placements.left.jumpTests=60 N 1.4 Nm, 90 N 2.4 Nm, 120 N 3.4 Nm";
        var chain =
                chains(kit(KIT, tested, KIT + ".placements.left.tensionN=105")).getFirst();
        assertThat(link(chain, "a tooth jumps").driveNm()).isCloseTo(2.9 / 1.25, within(1e-9));
        var beyond =
                chains(kit(KIT, tested, KIT + ".placements.left.tensionN=130")).getFirst();
        assertThat(link(beyond, "a tooth jumps").driveNm()).isNaN();
        assertThat(beyond.needs()).contains("a jump test at the tension that is set");
    }

    /// Where tests tell of no jump, the link ends where the slack span is no longer taut.
    @Test
    void jumpTestsDoNotLetTheSlackSpanGoSlack() {
        var tested = KIT + ".placements.left.jumpTests=60 N 4.4 Nm, 90 N 5.4 Nm, 120 N 6.4 Nm";
        var set = kit(KIT, tested, KIT + ".placements.left.tensionN=105");
        var jump = link(chains(set).getFirst(), "a tooth jumps");
        var subject = Subject.of(set, LayoutSolver.solve(set)).getFirst();
        assertThat(105 - 1.05 * DrivePull.effectiveN(subject, jump.driveNm()) / 2)
                .isCloseTo(0, within(1e-9));
        assertThat(jump.under()).contains("the slack span goes slack");
    }
}
