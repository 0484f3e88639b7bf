package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.part.ScrewHead;
import beltwright.part.Thread;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// Holes for screws held against those that FreeCAD, a general-purpose modelling program, cuts: BJ-14, asked again on
/// every run.
@Tag("published")
class HoleTableTest {
    private static final Path FREECAD = Path.of("/usr/bin/freecadcmd");
    private static final Map<String, Cut> CUTS = new HashMap<>();

    /// What is cut for one thread (mm).
    private record Cut(
            double clearanceHole, double tapDrill, double counterbore, double counterboreDepth, double countersink) {}

    @BeforeAll
    static void ask(@TempDir Path folder) throws Exception {
        if (!Files.isExecutable(FREECAD)) {
            return;
        }
        var script = Outside.copy("hole-table.py", folder).toString();
        Outside.run(folder, List.of(FREECAD.toString(), script))
                .lines()
                .map(line -> line.split(" "))
                .filter(words -> words[0].equals("hole"))
                .forEach(words -> {
                    var mm = Arrays.stream(words)
                            .skip(2)
                            .mapToDouble(Double::parseDouble)
                            .toArray();
                    CUTS.put(words[1], new Cut(mm[0], mm[1], mm[2], mm[3], mm[4]));
                });
    }

    @BeforeEach // not before all: a test that cannot run says so by its own name
    void need() {
        Assumptions.assumeTrue(Files.isExecutable(FREECAD), "needs the package freecad");
    }

    @ParameterizedTest
    @EnumSource(Thread.class)
    void clearanceHoleAndTapDrillAreTheSame(Thread thread) {
        assertThat(cut(thread).clearanceHole()).isEqualTo(thread.clearanceHoleMm());
        assertThat(cut(thread).tapDrill()).isEqualTo(thread.tapDrillMm());
    }

    @ParameterizedTest // an upper bound only: its M5 countersink is a millimetre wider than the rule of the others
    @EnumSource(Thread.class)
    void headsGoIntoTheCutsMadeForThem(Thread thread) {
        assertThat(cut(thread).counterbore())
                .isBetween(ScrewHead.CAP.diameterMm(thread) + 0.4, ScrewHead.CAP.diameterMm(thread) + 2.1);
        assertThat(cut(thread).counterboreDepth())
                .isBetween(ScrewHead.CAP.heightMm(thread) + 0.3, ScrewHead.CAP.heightMm(thread) + 0.7);
        assertThat(ScrewHead.COUNTERSUNK.diameterMm(thread))
                .isLessThan(cut(thread).countersink())
                .isGreaterThan(cut(thread).clearanceHole());
    }

    private static Cut cut(Thread thread) {
        assertThat(CUTS).containsKey(thread.name());
        return CUTS.get(thread.name());
    }
}
