package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.part.Bearing;
import beltwright.part.BearingSize;
import beltwright.part.Nut;
import beltwright.part.Part;
import beltwright.part.Screw;
import beltwright.part.ScrewHead;
import beltwright.part.Thread;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.ReferenceFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// Standard sizes, the engine's and the demo's, held against MCAD, a general-purpose parts library that others made.
///
/// What it knows is read with care:
///
/// - To a bearing it does not know it answers with a 608, silently.
/// - Its 688 is the sealed one.
/// - Its nuts are those of the standard before ISO 4032: other widths at M10 and M12, lower from M5 on.
@Tag("published")
class PartsLibraryTest {
    private static final Path OPENSCAD = Path.of("/usr/bin/openscad");
    private static final Path LIBRARY = Path.of("/usr/share/openscad/libraries/MCAD/nuts_and_bolts.scad");
    private static final int NO_BEARING = 99_999;
    private static final double PRINTED = 0.0501; // half of the last digit of a size printed to 0.1 mm

    @TempDir
    static Path folder;

    private final Map<String, double[]> said = new HashMap<>();

    @BeforeEach
    void ask() throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(OPENSCAD), "needs the package openscad");
        Assumptions.assumeTrue(Files.exists(LIBRARY), "needs the package openscad-mcad");
        for (var line : Files.readAllLines(openscad("said.echo"))) {
            var words = line.replace("ECHO: ", "").replace("\"", "").split(", ");
            said.put(
                    words[0] + " " + words[1],
                    Arrays.stream(words)
                            .skip(2)
                            .mapToDouble(Double::parseDouble)
                            .toArray());
        }
    }

    @Test
    void aBearingThatTheLibraryDoesNotKnowIsNotTakenForA608() {
        assertThat(said.get("bearing " + NO_BEARING)).containsExactly(8, 22, 7);
        assertThat(bearing(608)).isPresent();
        assertThat(bearing(NO_BEARING)).isEmpty();
        assertThat(bearing(6000)).isEmpty();
        assertThat(bearing(6800)).isEmpty();
    }

    @Test
    void bearingsAreOfTheSameSizes() {
        var compared = new TreeSet<Integer>();
        bearingNumbers()
                .forEach(number -> bearing(number).ifPresent(mm -> {
                    compared.add(number);
                    assertThat(BearingSize.of(mm[0], mm[1], mm[2]))
                            .as("bearing %d, %s mm", number, Arrays.toString(mm))
                            .hasValueSatisfying(size -> {
                                assertThat(number(size)).isEqualTo(number);
                                assertThat(new double[] {size.boreMm(), size.outsideMm(), size.widthMm()})
                                        .containsExactly(mm);
                            });
                }));
        assertThat(compared).containsExactly(608, 628, 638, 688, 698);
    }

    @ParameterizedTest
    @EnumSource(Thread.class)
    void aNutIsAsWideAcrossItsCorners(Thread thread) {
        double flats = said("nut", thread)[0] * Math.cos(Math.PI / 6);
        if (thread.majorMm() < 10) {
            assertThat(thread.hexagonMm() / Math.cos(Math.PI / 6)).isCloseTo(said("nut", thread)[0], within(PRINTED));
        } else {
            assertThat(flats).as("1 mm wider before ISO 4032").isCloseTo(thread.hexagonMm() + 1, within(0.15));
        }
    }

    @ParameterizedTest
    @EnumSource(Thread.class)
    void aNutIsAsHigh(Thread thread) {
        double before = said("nut", thread)[1];
        if (thread.majorMm() < 5) {
            assertThat(thread.nutHeightMm()).isEqualTo(before);
        } else {
            assertThat(thread.nutHeightMm())
                    .as("higher since ISO 4032, never by a fifth")
                    .isBetween(before + 0.15, 1.2 * before);
        }
    }

    @ParameterizedTest // the library gives the largest bolt of tolerance 6g: nominal less 15 µm and 11 µm a mm of
    // pitch, ISO 965-1
    @EnumSource(Thread.class)
    void aThreadHasTheSameDiameterAndPitch(Thread thread) {
        double allowance = (15 + 11 * thread.pitchMm()) / 1000;
        assertThat(thread.majorMm() - allowance).isCloseTo(said("bolt", thread)[0], within(0.001));
    }

    @ParameterizedTest
    @EnumSource(Thread.class)
    void aCapHeadIsAsWideAndAsHigh(Thread thread) throws Exception {
        assertThat(ScrewHead.CAP.diameterMm(thread)).isEqualTo(said("bolt", thread)[1]);
        assertThat(ScrewHead.CAP.heightMm(thread)).isEqualTo(drawnHeadMm(thread));
    }

    @Test
    void theDemoUsesStandardBearings() {
        var compared = new TreeSet<String>();
        demo(Bearing.class).forEach(bearing -> {
            var nominal = new double[] {
                bearing.boreMm().nominal(),
                bearing.outsideMm().nominal(),
                bearing.widthMm().nominal()
            };
            var size = BearingSize.of(nominal[0], nominal[1], nominal[2]);
            assertThat(size).as(bearing.id()).isPresent();
            bearing(number(size.orElseThrow())).ifPresent(mm -> {
                compared.add(bearing.id());
                assertThat(nominal).as(bearing.id()).containsExactly(mm);
            });
        });
        assertThat(compared).contains("bearing-608");
    }

    @Test
    void theDemoUsesStandardNutsAndScrews() throws Exception {
        var nuts = demo(Nut.class).toList();
        assertThat(nuts).isNotEmpty().allSatisfy(nut -> {
            double plain = said("nut", nut.thread())[1];
            if (nut.locking()) {
                assertThat(nut.heightMm().lower()).as(nut.id()).isGreaterThan(plain);
            } else {
                assertThat(nut.heightMm().nominal()).as(nut.id()).isBetween(plain, 1.2 * plain);
            }
        });
        var caps = demo(Screw.class).filter(s -> s.head() == ScrewHead.CAP).toList();
        assertThat(caps).isNotEmpty();
        for (var screw : caps) {
            assertThat(screw.head().diameterMm(screw.thread()))
                    .as(screw.id())
                    .isEqualTo(said("bolt", screw.thread())[1]);
            assertThat(screw.head().heightMm(screw.thread())).as(screw.id()).isEqualTo(drawnHeadMm(screw.thread()));
        }
    }

    /// {@return the file that openscad wrote: what was echoed or what was drawn, by the ending of its name}
    private Path openscad(String output) throws Exception {
        var threads = Arrays.stream(Thread.values()).map(PartsLibraryTest::size).toList();
        Outside.run(
                folder,
                List.of(
                        OPENSCAD.toString(),
                        "-o",
                        output,
                        "-D",
                        "bearings=" + bearingNumbers().boxed().toList(),
                        "-D",
                        "threads=" + threads,
                        Outside.copy("parts-library.scad", folder).toString()));
        return folder.resolve(output);
    }

    /// {@return bore, outside and width of a bearing, if the library knows it}
    private Optional<double[]> bearing(int number) {
        var mm = said.get("bearing " + number);
        return number != 608 && Arrays.equals(mm, said.get("bearing " + NO_BEARING))
                ? Optional.empty()
                : Optional.ofNullable(mm);
    }

    private double[] said(String kind, Thread thread) {
        return said.get(kind + " " + size(thread));
    }

    /// {@return how far the drawn bolt of this thread stands out below the face it clamps (mm)}
    private double drawnHeadMm(Thread thread) throws Exception {
        var drawn = folder.resolve("drawn.off");
        if (Files.notExists(drawn)) {
            openscad("drawn.off");
        }
        double middle = 100 * thread.majorMm();
        try (var lines = Files.lines(drawn)) {
            return -lines.map(line -> line.strip().split(" +"))
                    .filter(words -> words.length == 3 && Math.abs(Double.parseDouble(words[0]) - middle) < 50)
                    .mapToDouble(words -> Double.parseDouble(words[2]))
                    .min()
                    .orElseThrow();
        }
    }

    private static IntStream bearingNumbers() {
        return IntStream.concat(
                Arrays.stream(BearingSize.values())
                        .mapToInt(PartsLibraryTest::number)
                        .distinct(),
                IntStream.of(NO_BEARING));
    }

    private static int number(BearingSize size) {
        return Integer.parseInt(size.toString().replace(" sealed", ""));
    }

    private static int size(Thread thread) {
        return (int) thread.majorMm();
    }

    private static <P extends Part> Stream<P> demo(Class<P> kind) {
        return Workshop.shelfOf(List.of(Tried.ROOT.resolve("demo/parts")), ReferenceFile.bundled())
                .parts()
                .values()
                .stream()
                .filter(kind::isInstance)
                .map(kind::cast);
    }
}
