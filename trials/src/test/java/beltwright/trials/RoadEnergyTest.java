package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.ride.Road;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The load of the road held against a general-purpose traffic simulator (Debian package sumo): what a vehicle of
/// the same mass and drag takes from its battery in every second at steady speed.
///
/// On a slope it rolls on the whole weight, here only the part that presses on the road does: a difference of
/// m·g·c·(1 − cos β).
@Tag("published")
class RoadEnergyTest {
    private static final Path NET = Path.of("/usr/bin/netconvert");
    private static final Path SIMULATOR = Path.of("/usr/bin/sumo");
    private static final double EFFICIENCY = 0.8;
    private static final double PRINTED_WH = 0.6e-6; // six decimals
    private static final Road ROAD = new Road(95, 0, 0.015, 0.5, 1.2041, 0, 0, 0.6, 0.5, 0.55, 1, 0.7);
    private static final Pattern SECOND =
            Pattern.compile("energyConsumed=\"([^\"]+)\".* acceleration=\"([^\"]+)\".* lane=\"(\\w+)_0\"");

    /// What a steady second takes (Wh), by the stretch of road.
    private static final Map<String, Double> STEADY = new HashMap<>();

    @BeforeAll
    static void ask(@TempDir Path folder) throws Exception {
        if (!Files.isExecutable(SIMULATOR)) {
            return;
        }
        for (var file : List.of("road.nod.xml", "road.edg.xml", "road.rou.xml")) {
            Outside.copy(file, folder);
        }
        Outside.run(
                folder,
                List.of(
                        NET.toString(),
                        "-n",
                        "road.nod.xml",
                        "-e",
                        "road.edg.xml",
                        "-o",
                        "road.net.xml",
                        "--no-internal-links",
                        "--precision",
                        "12"));
        Outside.run(
                folder,
                List.of(
                        SIMULATOR.toString(),
                        "-n",
                        "road.net.xml",
                        "-r",
                        "road.rou.xml",
                        "--step-length",
                        "1",
                        "--battery-output",
                        "said.xml",
                        "--battery-output.precision",
                        "6",
                        "--no-step-log"));
        for (var line : Files.readAllLines(folder.resolve("said.xml"))) {
            var found = SECOND.matcher(line);
            if (found.find() && Double.parseDouble(found.group(2)) == 0) {
                STEADY.put(found.group(3), Double.parseDouble(found.group(1)));
            }
        }
    }

    @BeforeEach
    void need() {
        Assumptions.assumeTrue(Files.isExecutable(SIMULATOR), "needs the package sumo");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"level, 10, 0", "slow, 5.555555555555556, 0", "up, 10, 5", "down, 10, -3"})
    void aSecondTakesTheSameEnergy(String stretch, double speedMps, double gradePercent) {
        double sine = Road.sine(gradePercent);
        double wholeWeight = ROAD.rollingN(0) - ROAD.rollingN(sine);
        double ours = (ROAD.loadN(speedMps, sine) + wholeWeight) * speedMps / EFFICIENCY / 3600;
        assertThat(STEADY).containsKey(stretch);
        assertThat(ours).isCloseTo(STEADY.get(stretch), within(PRINTED_WH));
    }
}
