package beltwright.workshop.document;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.part.Material;
import beltwright.part.Reference;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MistakesTest {
    private static final Reference STEEL = new Reference(
            Map.of(
                    "steel",
                    new Material(
                            "steel",
                            "Steel",
                            Material.Hatch.STEEL,
                            Map.of(Material.Property.SHEAR, new Material.Value(300, "from memory")))),
            Map.of(),
            Map.of(),
            true,
            "");

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            canLengthMm: 60           | canLengthMm: 600        | 10 | canLengthMm  | '600' cannot be true of a real one | 15 to 200 mm | check the unit
            canLengthMm: 60           | canLengthMm: sixty      | 10 | canLengthMm  | 'sixty' cannot be read             | a number     | correct
            canLengthMm: 60           | canLenghtMm: 60         | 10 | canLenghtMm  | is not a field here                | canLengthMm  | did you mean 'canLengthMm'?
            canLengthMm: 60           | canLengthMm: [60]       | 10 | canLengthMm  | nested values                      | 15 to 200 mm | type one value
            canLengthMm: 60           | canLengthMm:            | 10 | canLengthMm  | is empty                           | 15 to 200 mm | type a value
            canLengthMm: 60           | canDiameterMm: 60       | 10 | document     | canDiameterMm                      |              |
            shaftForm: D              | shaftForm: d            | 11 | shaftForm    | 'd' is not known                   | round, D     | did you mean 'D'?
            boltHoles: 4              | boltHoles: 4.5          | 16 | boltHoles    | '4.5' is not a whole number        | 2 to 8       | number of pieces
            boltHoles: 4              | boltHoles: 40           | 16 | boltHoles    | '40' cannot be true                | 2 to 8       | check the unit
            `{value: 8 h6, `          | `{value: 8 h99, `       | 12 | shaftDiameterMm | 'h99'                           | grades       | write the limits out
            "measured, caliper"     | "guess, caliper"      | 12 | shaftDiameterMm.source | names no source          | data sheet   | measured, caliper
            kind: motor             | kind: moter           | 3  | kind         | 'moter' is not a kind              | motor        | did you mean 'motor'?
            schema: 1               | schema: 2             | 1  | schema       | '2' is not a schema                | schema: 1    | version
            part: motor-50          | part: Motor 50        | 2  | part         | 'Motor 50' is not an id            | lower-case   | motor-50
            source: data sheet      | sauce: data sheet     | 7  | sauce        | is not a field here                | source       | did you mean 'source'?
            """)
    void areNamedWithLineFieldValueAllowedAndMend(
            String sound, String broken, int line, String field, String wrong, String allowed, String mend) {
        assertThat(CodecTest.MOTOR).contains(sound);
        var mistakes =
                Codec.read("motor.yaml", CodecTest.MOTOR.replace(sound, broken)).mistakes();
        if (field.equals("document")) { // given twice: told at the second
            assertThat(mistakes).singleElement().satisfies(m -> {
                assertThat(m.line()).isEqualTo(line);
                assertThat(m.wrong()).isEqualTo("is given twice");
                assertThat(m.field()).endsWith(wrong);
            });
            return;
        }
        assertThat(mistakes).anySatisfy(m -> {
            assertThat(m.line()).isEqualTo(line);
            assertThat(m.field()).endsWith(field);
            assertThat(m.wrong()).contains(wrong);
            assertThat(m.allowed()).contains(allowed);
            assertThat(m.mend()).contains(mend);
        });
    }

    @Test
    void printAsFileLineFieldWrongAllowedMend() {
        var text = CodecTest.MOTOR.replace("boltHoles: 4", "boltHoles: 1");
        assertThat(Codec.read("parts/motor.yaml", text).mistakes())
                .singleElement()
                .hasToString("parts/motor.yaml:16: motor-50.boltHoles: '1' cannot be true of a real one; "
                        + "a whole number, 2 to 8: number of mounting holes; check the unit and the decimal point");
    }

    @Test
    void areAllCollectedOverTheDocumentsOfAFile() {
        var text = CodecTest.MOTOR.replace("boltHoles: 4", "boltHoles: 1").replace("thread: M4", "thread: M7")
                + "---\nschema: 1\npart: [unclosed\n---\n"
                + CodecTest.MOTOR.replace("motor-50", "motor-51").replace("kind: motor", "kind: engine");
        var mistakes = Codec.read("many.yaml", text).mistakes();
        assertThat(mistakes).extracting(Mistake::line).isSorted();
        assertThat(mistakes)
                .extracting(Mistake::field)
                .containsExactly("motor-50.boltHoles", "motor-50.thread", "document", "motor-51.kind");
        assertThat(mistakes.getLast().line()).isEqualTo(31);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            'a: &x 1'                   | anchor
            'a: [*x, *x]'               | alias
            'a: !!str 1'                | tag
            '[[[[[[[[[[[1]]]]]]]]]]]'   | nested too deeply
            '{[1, 2]: 3}'               | name of a field
            'just text'                 | holds no nested fields
            'a: "\\u0007"'              | control character
            'a: b: c'                   | cannot be read as YAML
            """)
    void yamlThatNoWorkshopNeedsIsRefused(String text, String wrong) {
        assertThat(Codec.read("odd.yaml", text).mistakes())
                .singleElement()
                .satisfies(m -> assertThat(m.wrong()).contains(wrong));
    }

    @Test
    void filesThatAreTooLargeOrNotTextAreRefused() {
        assertThat(Codec.read("large.yaml", new byte[Codec.LARGEST_BYTES + 1]).mistakes())
                .singleElement()
                .satisfies(m -> assertThat(m.wrong()).contains("larger than"));
        assertThat(Codec.read("latin.yaml", "name: Müller".getBytes(StandardCharsets.ISO_8859_1))
                        .mistakes())
                .singleElement()
                .satisfies(m -> assertThat(m.wrong()).contains("not UTF-8"));
    }

    @Test
    void aKitNamesItsOwnMistakes() {
        var mistakes = Codec.read("kit.yaml", """
                schema: 1
                kit: short-street
                name: Short Street
                seats:
                  left moter: motor-50
                  left motor screws: 4 x Screw
                  left wheel: {part: wheel-100, from: shop}
                joints:
                  one: {by: glue, of: [left wheel, hanger]}
                  two: {by: nut, of: [left wheel]}
                placements:
                  middle: {source: estimate}
                """).mistakes();
        assertThat(mistakes)
                .extracting(Mistake::field)
                .containsExactlyInAnyOrder(
                        "short-street.seats.left moter",
                        "short-street.seats.left motor screws",
                        "short-street.seats.left wheel.from",
                        "short-street.joints.one.by",
                        "short-street.joints.one.of",
                        "short-street.joints.two.of",
                        "short-street.placements.middle",
                        "short-street.task");
    }

    @Test
    void documentsMustAgree() {
        var reading = Codec.read("all.yaml", CodecTest.MOTOR + "---\n" + CodecTest.MOTOR + """
                ---
                schema: 1
                kit: short-street
                name: Short Street
                seats:
                  left motor: motor-51
                  hanger: motor-50
                joints: {}
                placements: {}
                task: {source: estimate, allUpMassKg: heavy}
                ---
                schema: 1
                measurement: m-1
                of: motor-50
                by: us
                with: caliper
                when: 2026-10-02
                values: {canDiameter: 50, boltHoles: 4, shaftDiameterMm: 80, canLengthMm: 61}
                ---
                schema: 1
                measurement: m-2
                of: motor-52
                by: us
                with: caliper
                when: 2026-13-02
                values: {}
                """);
        var mistakes = reading.and(Agreement.mistakes(reading, Map.of(), STEEL)).mistakes();
        assertThat(mistakes)
                .extracting(m -> m.field() + ": " + m.wrong())
                .containsExactlyInAnyOrder(
                        "motor-50: the id is used twice, first in all.yaml:1",
                        "motor-50.threadMaterial: 'aluminium-6061-t6' is not in the reference file",
                        "motor-50.threadMaterial: 'aluminium-6061-t6' is not in the reference file",
                        "short-street.seats.left motor: no part has the id 'motor-51'",
                        "short-street.seats.hanger: 'motor-50' is a motor",
                        "short-street.task.allUpMassKg: 'heavy' cannot be read as a dimension",
                        "m-1.values.canDiameter: is not a dimension of 'motor-50', a motor",
                        "m-1.values.boltHoles: is not a dimension of 'motor-50', a motor",
                        "m-1.values.shaftDiameterMm: '80' cannot be true of a real one",
                        "m-2.of: no part or kit has the id 'motor-52'",
                        "m-2.when: '2026-13-02' is not a day");
    }

    @Test
    void aStoredIdKeepsItsKind() {
        var stored = Codec.readOne("stored", CodecTest.MOTOR);
        var reading = Codec.read("new.yaml", """
                schema: 1
                part: motor-50
                kind: nut
                name: Nut
                revision: A
                source: estimate
                dimensions: {thread: M8, locking: true}
                """);
        assertThat(Agreement.mistakes(reading, Map.of("motor-50", stored), STEEL))
                .singleElement()
                .satisfies(m -> assertThat(m.wrong()).contains("is a nut, but a motor with this id is kept already"));
    }

    @Test
    void aPartWithMistakesIsNotAlsoCalledMissing() {
        var reading = Codec.read("m.yaml", CodecTest.MOTOR.replace("thread: M4", "thread: M7") + """
                ---
                schema: 1
                measurement: m-1
                of: motor-50
                by: us
                with: caliper
                when: 2026-10-02
                values: {canLengthMm: 61}
                """);
        assertThat(reading.mistakes()).hasSize(1);
        assertThat(Agreement.mistakes(reading, Map.of(), STEEL)).isEmpty();
    }
}
