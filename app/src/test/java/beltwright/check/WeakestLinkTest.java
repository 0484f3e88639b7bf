package beltwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.app.DemoKits;
import beltwright.dossier.Dossiers;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.workshop.Edit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// What must hold of the chain of links, whatever the kit.
@Tag("law")
class WeakestLinkTest {
    private static final String KIT = "market-hill-single";

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

    @Test
    void jumpTestsTellTheTorqueOfTheTensionThatIsSet() {
        var tested = KIT + ".placements.left.jumpTests=60 N 2.4 Nm, 90 N 3.4 Nm, 120 N 4.4 Nm";
        var chain =
                chains(kit(KIT, tested, KIT + ".placements.left.tensionN=105")).getFirst();
        assertThat(link(chain, "a tooth jumps").driveNm()).isCloseTo(3.9 / 1.25, within(1e-9));
        var beyond =
                chains(kit(KIT, tested, KIT + ".placements.left.tensionN=130")).getFirst();
        assertThat(link(beyond, "a tooth jumps").driveNm()).isNaN();
    }
}
