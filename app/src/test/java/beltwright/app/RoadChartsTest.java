package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.power.Governs;
import beltwright.press.chart.BrakeChart;
import beltwright.press.chart.PushChart;
import beltwright.press.chart.RideChart;
import beltwright.press.chart.StopBars;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity;
import beltwright.press.drawing.TextBox;
import beltwright.press.table.PowerTables;
import beltwright.press.table.Ridden;
import beltwright.quantity.Numbers;
import beltwright.ride.Board;
import beltwright.ride.PowerSheet;
import beltwright.ride.Ride;
import beltwright.ride.RideSolver;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Charts and tables of the road say what the engine says.
class RoadChartsTest {
    static Stream<String> kits() {
        return DemoKits.SHELF.drafts().keySet().stream();
    }

    private static PowerSheet sheet(String kit) {
        return PowerSheet.of(DemoKits.SHELF.kit(kit));
    }

    private static List<String> words(Drawing drawing) {
        return drawing.views().stream()
                .flatMap(v -> v.entities().stream())
                .flatMap(e -> e instanceof Entity.Text t ? Stream.of(t.words()) : Stream.empty())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void theCurveNamesEveryLimitThatGovernsAlongIt(String kit) {
        var sheet = sheet(kit);
        var all = sheet.curve().stream()
                .limit(sheet.curve().size() - 1) // where the curve ends, nothing is pushed any more
                .map(p -> p.governs().toString())
                .distinct()
                .toList();
        assertThat(words(PushChart.of(sheet))).containsAll(all).anyMatch(w -> w.startsWith("top speed "));
    }

    @ParameterizedTest
    @MethodSource("kits")
    void theBrakeShowsEveryChargeAndEveryThingThatCanBeWrong(String kit) {
        var sheet = sheet(kit);
        var charges = PowerTables.forces(sheet).heads();
        for (var charge : charges.subList(1, charges.size())) {
            assertThat(words(BrakeChart.of(sheet))).anyMatch(w -> w.startsWith(charge));
        }
        for (var row : sheet.left()) {
            assertThat(words(StopBars.of(sheet)))
                    .contains(row.what(), Numbers.fixed(row.stop().wholeM(), 1) + " m");
        }
    }

    @ParameterizedTest
    @MethodSource("kits")
    void noTwoWordsOfAChartRunIntoEachOther(String kit) {
        var sheet = sheet(kit);
        for (var chart : List.of(PushChart.of(sheet), BrakeChart.of(sheet), StopBars.of(sheet))) {
            var texts = chart.texts();
            for (int i = 0; i < texts.size(); i++) {
                for (TextBox other : texts.subList(i + 1, texts.size())) {
                    assertThat(texts.get(i).overlaps(other))
                            .as(chart.id() + ": " + texts.get(i) + " over " + other)
                            .isFalse();
                }
            }
        }
    }

    private static Ride ride(String kit) {
        return RideSolver.ride(
                kit,
                Board.of(DemoKits.SHELF.kit(kit)),
                DemoKits.SHELF.route("mill-hill"),
                RideSolver.Options.USUAL.withTolerance(1e-6));
    }

    @Tag("law") // the stretches are read from the events, the seconds from the integration
    @ParameterizedTest
    @MethodSource("kits")
    void stretchesOfALimitLastAsLongAsItGoverned(String kit) {
        var ride = ride(kit);
        var lasted = new EnumMap<Governs, Double>(Governs.class);
        ride.spans().forEach(s -> lasted.merge(s.governs(), s.toS() - s.fromS(), Double::sum));
        for (Map.Entry<Governs, Double> one : ride.governed().entrySet()) {
            if (one.getKey() != Governs.WISH) {
                assertThat(lasted.getOrDefault(one.getKey(), 0.0))
                        .as(one.getKey().toString())
                        .isCloseTo(one.getValue(), within(1e-3));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kits")
    void aRideThatEndsEarlySaysWhereWhyAndWhatToDo(String kit) {
        var ride = ride(kit);
        assertThat(ride.remedy().isEmpty()).isEqualTo(ride.arrived());
        assertThat(ride.ending()).contains(ride.events().getLast().words());
        double sum = ride.energy().parts().stream().mapToDouble(p -> p.joules()).sum();
        assertThat(sum).isCloseTo(ride.energy().spentJ(), within(1e-6));
        var chart = RideChart.of(List.of(new Ridden(DemoKits.SHELF.kit(kit), Board.of(DemoKits.SHELF.kit(kit)), ride)));
        assertThat(chart.tells()).contains(ride.ending());
    }
}
