package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.ride.Board;
import beltwright.ride.Calibration;
import beltwright.ride.Coefficient;
import java.io.IOException;
import java.nio.file.Files;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/// The invented logs of the demo: where they come from, and that the truth behind them is found again.
class DemoLogsTest {
    private static final Map<Coefficient, Double> TRUE = Map.of(
            Coefficient.ROLLING, DemoLogs.ROLLING_PERCENT,
            Coefficient.DRAG_AREA, DemoLogs.DRAG_AREA_M2,
            Coefficient.MASS, DemoLogs.MASS_KG,
            Coefficient.WINDING_TO_CASE, DemoLogs.WINDING_TO_CASE,
            Coefficient.CASE_TO_AIR, DemoLogs.CASE_TO_AIR);

    @ParameterizedTest
    @ValueSource(strings = {"river-coast.yaml", "hill-test.yaml", "river-coast.csv"})
    void everyFileIsTheOneThatTheSeedGives(String name) throws IOException {
        var file = DemoLogs.FOLDER.resolve(name);
        var made = DemoLogs.files().getOrDefault(name, "");
        if (Boolean.getBoolean("beltwright.write")) {
            Files.createDirectories(DemoLogs.FOLDER);
            Files.writeString(file, made);
        }
        assertThat(Files.readString(file))
                .as("demo/logs is out of date: run this test with -Dbeltwright.write=true and read the diff")
                .isEqualTo(made);
    }

    @Test
    void noFileIsThereThatIsNotMadeHere() throws IOException {
        try (var files = Files.list(DemoLogs.FOLDER)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(DemoLogs.files().keySet());
        }
    }

    static List<Set<Coefficient>> asked() {
        return List.of(
                EnumSet.of(Coefficient.ROLLING, Coefficient.DRAG_AREA),
                EnumSet.of(Coefficient.ROLLING, Coefficient.DRAG_AREA, Coefficient.MASS),
                EnumSet.of(Coefficient.WINDING_TO_CASE, Coefficient.CASE_TO_AIR));
    }

    @Tag("law")
    @ParameterizedTest
    @MethodSource("asked")
    void theTruthLiesWithinTheIntervalsOfTheKitAsKept(Set<Coefficient> wanted) {
        var log = DemoKits.SHELF.log(
                wanted.size() == 2 && wanted.contains(Coefficient.ROLLING) ? "river-coast" : "hill-test");
        var board = Board.of(DemoKits.SHELF.kit(DemoLogs.KIT));
        assertThat(Calibration.of(board, log, wanted).found())
                .hasSameSizeAs(wanted)
                .allSatisfy(f -> assertThat(TRUE.get(f.what())).as(f.toString()).isBetween(f.low(), f.high()));
    }
}
