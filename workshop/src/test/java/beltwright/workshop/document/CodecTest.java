package beltwright.workshop.document;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.kit.Side;
import beltwright.part.DrivePulley;
import beltwright.part.Kinds;
import beltwright.part.Motor;
import beltwright.part.ShaftForm;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Source;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CodecTest {
    /// Invented, as is every document of these tests.
    static final String MOTOR = """
            schema: 1
            part: motor-50
            kind: motor
            name: Outrunner 50 x 60
            revision: A
            massKg: 0.52
            source: data sheet, invented maker's sheet
            dimensions:
              canDiameterMm: 50 ±0.2
              canLengthMm: 60
              shaftForm: D
              shaftDiameterMm: {value: 8 h6, source: "measured, caliper"}
              shaftFlatMm: 7.5
              shaftLengthMm: 25
              boltCircleMm: 30
              boltHoles: 4
              thread: M4
              threadMaterial: aluminium-6061-t6
              bossDiameterMm: 16
              kvRpmPerV: 190 ±5 %
              resistanceOhm: 0.05
              resistanceIs: line to line
              noLoadCurrentA: 1
              wireExit: side
            """;

    @Test
    void readsAPartAndTheSourceOfEachOfItsDimensions() {
        var motor = (Motor) part(MOTOR);
        assertThat(motor.shaftForm()).isEqualTo(ShaftForm.FLAT);
        assertThat(motor.canDiameterMm().of()).isEqualTo("motor-50.canDiameterMm");
        assertThat(motor.canDiameterMm().lower()).isEqualTo(49.8);
        assertThat(motor.canDiameterMm().provenance())
                .isEqualTo(new Provenance(Source.DATA_SHEET, "invented maker's sheet"));
        assertThat(motor.shaftDiameterMm().provenance()).isEqualTo(new Provenance(Source.MEASURED, "caliper"));
        assertThat(motor.label().massKg().of()).isEqualTo("motor-50.massKg");
        assertThat(motor.label().note()).isEmpty();
    }

    @Test
    void aDimensionLeftOutIsUnknown() {
        var depth = ((Motor) part(MOTOR)).threadDepthMm();
        assertThat(depth.known()).isFalse();
        assertThat(depth.of()).isEqualTo("motor-50.threadDepthMm");
    }

    @Test
    void readsNestedRecordsUnderTheirOwnName() {
        var pulley = (DrivePulley) part("""
                schema: 1
                part: pulley-16
                kind: drive pulley
                name: Sixteen teeth
                revision: A
                source: measured, caliper
                dimensions:
                  rim: {profile: 5M H, teeth: 16, faceWidthMm: 16 ±0.1, flanges: both}
                  boreForm: D
                  boreDiameterMm: 8 H7
                  hubSide: wheel
                  setScrews: 2
                  setScrewThread: M4
                """);
        assertThat(pulley.rim().faceWidthMm().of()).isEqualTo("pulley-16.rim.faceWidthMm");
        assertThat(pulley.rim().faceWidthMm().upper()).isEqualTo(16.1);
    }

    @Test
    void readsAKitAndAMeasurementFromOneFile() {
        var documents = Codec.read("kit.yaml", """
                schema: 1
                kit: short-street
                name: Short Street
                invented: true
                seats:
                  left motor: motor-50
                  left motor screws: 4 × screw-m4x12
                  left motor washers: {part: washer-m4, count: 4}
                  left mount: mount-50
                  left wheel: {part: wheel-100, from: rider}
                joints:
                  motor on mount: {by: screws, of: [left motor, left mount], with: [left motor screws, left motor washers]}
                placements:
                  left: {source: estimate, motor: behind, aboveAxleDeg: -5, plateInsetMm: 2}
                task: {source: "estimate, common practice", allUpMassKg: {value: 95, source: said by a customer}}
                ---
                schema: 1
                measurement: wheels-oct-02
                of: wheel-100
                by: workshop
                with: caliper, 0.02 mm
                when: 2026-10-02
                values: {diameterMm: 99.4 ±0.1}
                """).orRefuse();
        var kit = ((Document.OfKit) documents.getFirst()).kit();
        assertThat(kit.seats().values()).extracting("count").containsExactly(1, 1, 4, 4, 1);
        assertThat(kit.seats().values()).extracting("fromRider").containsExactly(false, false, false, false, true);
        assertThat(requireNonNull(kit.placements().get(Side.LEFT))
                        .aboveAxleDeg()
                        .of())
                .isEqualTo("short-street.placements.left.aboveAxleDeg");
        assertThat(kit.task().allUpMassKg().provenance().source()).isEqualTo(Source.CUSTOMER);
        var measurement = ((Document.OfMeasurement) documents.getLast()).measurement();
        var diameter = requireNonNull(measurement.values().get("diameterMm"));
        assertThat(diameter.of()).isEqualTo("wheel-100.diameterMm");
        assertThat(diameter.provenance().words()).isEqualTo("measured, caliper, 0.02 mm, 2026-10-02");
    }

    @Test
    void writesTheCommonestSourceOnceAndTypedTextToTheLetter() {
        var written = Codec.write(Codec.readOne("motor", MOTOR));
        var losses = Stream.of(
                "resistanceAtC",
                "noLoadAtRpm",
                "noLoadGrowthPercent",
                "windingJPerK",
                "caseJPerK",
                "windingToCaseKPerW",
                "caseToAirKPerW",
                "airflowPercent",
                "mostWindingC",
                "rotorKgM2",
                "frontBearingMm",
                "bearingSpanMm",
                "bearingRatedN",
                "bearingStaticN");
        var plugs = Stream.of("wireBendMm", "phasePlugMm", "sensorPins", "sensorPitchMm");
        assertThat(written)
                .isEqualTo(MOTOR.replace("  threadMaterial", "  threadDepthMm: unknown\n  threadMaterial")
                                .replace(
                                        "  wireExit",
                                        unknown(losses) + "  polePairs: unknown\n  wireDiameterMm: unknown\n  wireExit")
                        + unknown(plugs));
    }

    private static String unknown(Stream<String> fields) {
        return fields.map(f -> "  " + f + ": unknown\n").collect(Collectors.joining());
    }

    @ParameterizedTest
    @EnumSource(Kinds.class)
    void partsOfEveryKindComeBackEqual(Kinds kind) {
        for (long seed = 0; seed < 40; seed++) {
            comesBack(new Document.OfPart(new Invented(seed).part(kind)));
        }
    }

    @Test
    void kitsAndMeasurementsComeBackEqual() {
        for (long seed = 0; seed < 200; seed++) {
            comesBack(new Document.OfKit(new Invented(seed).kit()));
            comesBack(new Document.OfMeasurement(new Invented(seed).measurement()));
        }
    }

    @Test
    void routesAndLogsComeBackEqual() {
        for (long seed = 0; seed < 400; seed++) {
            comesBack(new Document.OfRoute(new Invented(seed).route()));
            comesBack(new Document.OfLog(new Invented(seed).log()));
        }
    }

    private static void comesBack(Document document) {
        var text = Codec.write(document);
        var reading = Codec.read("made up", text);
        assertThat(reading.mistakes()).as(text).isEmpty();
        assertThat(reading.orRefuse()).as(text).containsExactly(document);
        assertThat(Codec.write(reading.orRefuse().getFirst()).getBytes(StandardCharsets.UTF_8))
                .isEqualTo(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void oneDocumentIsOne() {
        assertThatThrownBy(() -> Codec.readOne("row", MOTOR + "---\n" + MOTOR))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("holds 2 documents");
    }

    private static Object part(String text) {
        return ((Document.OfPart) Codec.readOne("part", text)).part();
    }
}
