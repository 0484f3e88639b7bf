package beltwright.benchmark;

import beltwright.check.Ladder;
import beltwright.dossier.Dossiers;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.part.Reference;
import beltwright.press.drawing.DrawingOffice;
import beltwright.press.svg.SvgWriter;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.Workshop;
import beltwright.workshop.document.ReferenceFile;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/// What one edit costs: the bare measures, the whole dossier, and the dossier with plan and side view drawn. The
/// yardstick
/// in the same run is `readYaml`: reading the same kit's text once with the YAML library alone.
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 6, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC") // as the launcher runs it
public class RecheckBenchmark {
    @Param("steep-street")
    public String kitId = "steep-street";

    private Shelf shelf;
    private Kit kit;
    private Reference reference;
    private String yaml;
    private int turn;

    @Setup
    public void read() throws java.io.IOException {
        var demo = Path.of(System.getProperty("beltwright.root", ".")).resolve("demo");
        reference = ReferenceFile.bundled();
        shelf = Workshop.shelfOf(
                Stream.of("parts", "kits", "measurements").map(demo::resolve).toList(), reference);
        kit = shelf.kit(kitId);
        yaml = java.nio.file.Files.readString(demo.resolve("kits").resolve(kitId + ".yaml"));
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    public Object layoutAndMeasure() {
        return Ladder.measure(kit, LayoutSolver.solve(kit));
    }

    /// As the bench does it: the edit read, the kit resolved, everything computed, both drawings written.
    @Benchmark
    @BenchmarkMode(Mode.SampleTime)
    public void editCheckAndDraw(Blackhole hole) {
        double length = 14 + turn++ % 20 / 100.0;
        var edited = shelf.with(List.of(new Edit("screw-m4x14", "lengthMm", length + " ±0.35")));
        var dossier = Dossiers.of(edited.kit(kitId));
        var office = new DrawingOffice(dossier, reference, "draft");
        hole.consume(dossier);
        hole.consume(SvgWriter.inline(office.plan(), "plan"));
        hole.consume(
                SvgWriter.inline(office.side(dossier.kit().drives().getFirst().side()), "side"));
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    public Object dossier() {
        return Dossiers.of(kit);
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    public Object readYaml() {
        return new org.snakeyaml.engine.v2.api.Load(
                        org.snakeyaml.engine.v2.api.LoadSettings.builder().build())
                .loadFromString(yaml);
    }
}
