package beltwright.workshop.document;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.part.Belt;
import beltwright.part.Kinds;
import beltwright.workshop.table.Columns;
import beltwright.workshop.table.Preview;
import beltwright.workshop.table.Table;
import beltwright.workshop.table.Tables;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Jump tests and hung weights of the workshop's own, as files and tables bring them.
class OwnTestsOfABeltTest {
    private static final String HUNG = "span 64.50 mm: 50 N 265 Hz,  100 N 355 Hz";
    private static final String JUMPS = "60 N 4.10 Nm, 80 N 5.6 N·m,100 N 6.9 Nm";
    private static final String BELT = """
            schema: 1
            part: belt-1
            kind: belt
            name: Belt
            revision: A
            source: data sheet, invented
            dimensions:
              profile: 5M H
              teeth: 54
              widthMm: 15
              grade: reinforced
              hungWeights: "span 64.50 mm: 50 N 265 Hz,  100 N 355 Hz"
            """;
    private static final String KIT = """
            schema: 1
            kit: kit-1
            name: Kit
            seats: {}
            joints: {}
            placements:
              left:
                motor: behind
                aboveAxleDeg: 20
                jumpTests: "60 N 4.10 Nm, 80 N 5.6 N·m,100 N 6.9 Nm"
                source: measured, protractor
            task: {source: estimate}
            """;

    private static List<Mistake> mistakes(String text) {
        var reading = Codec.read("own.yaml", text);
        assertThat(reading.mistakes()).isEmpty();
        return Agreement.mistakes(reading, Map.of(), ReferenceFile.bundled());
    }

    private static Belt belt(String text) {
        var document = Codec.read("own.yaml", text).documents().getFirst().document();
        return (Belt) ((Document.OfPart) document).part();
    }

    @Test
    void areKeptToTheLetter() {
        assertThat(mistakes(BELT)).isEmpty();
        assertThat(belt(BELT).hungWeights()).isEqualTo(HUNG);
        var kit = Codec.read("own.yaml", KIT).documents().getFirst().document();
        for (var document : List.of(Codec.readOne("own.yaml", BELT), kit)) {
            var text = Codec.write(document);
            assertThat(Codec.readOne("written", text)).isEqualTo(document);
            assertThat(text).contains(document instanceof Document.OfPart ? HUNG : JUMPS);
        }
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            grade: reinforced    | grade: reenforced    | 11 | grade       | 'reenforced' is not in the reference file
            50 N 265 Hz,         | 50 N 265 Hz;         | 12 | hungWeights | cannot be read
            span 64.50 mm: 50 N  | 50 N                 | 12 | hungWeights | cannot be read
            ,  100 N 355 Hz      | ``                   | 12 | hungWeights | fewer than two different pulls
            100 N 355 Hz         | 100 N 0 Hz           | 12 | hungWeights | a number is not above 0
            100 N 355 Hz         | 100 N 200 Hz         | 12 | hungWeights | the frequency does not rise with the pull
            100 N 355 Hz         | 100 N 9000000 Hz     | 12 | hungWeights | beyond 0.001 to 1000000
            100 N 355 Hz         | 1.0.0 N 355 Hz       | 12 | hungWeights | something that is no number
            """)
    void wrongTextOfABeltIsNamedWithItsLine(String sound, String broken, int line, String field, String wrong) {
        assertThat(BELT).contains(sound);
        assertThat(mistakes(BELT.replace(sound, broken))).singleElement().satisfies(m -> {
            assertThat(m.file()).isEqualTo("own.yaml");
            assertThat(m.line()).isEqualTo(line);
            assertThat(m.field()).isEqualTo("belt-1." + field);
            assertThat(m.wrong()).contains(wrong);
            assertThat(m.toString()).doesNotContain("\n");
        });
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ,100 N 6.9 Nm | ``            | fewer than 3 different tensions
            100 N 6.9 Nm  | 80 N 6.9 Nm   | fewer than 3 different tensions
            60 N 4.10 Nm  | 60 4.10       | '60 4.10' cannot be read
            100 N 6.9 Nm  | 100 N 0.2 Nm  | torque does not rise with tension
            60 N 4.10 Nm  | 60 N 0 Nm     | a number is not above 0
            """)
    void wrongTextOfAKitIsNamedWithItsLine(String sound, String broken, String wrong) {
        assertThat(KIT).contains(sound);
        assertThat(mistakes(KIT.replace(sound, broken))).singleElement().satisfies(m -> {
            assertThat(m.line()).isEqualTo(10);
            assertThat(m.field()).isEqualTo("kit-1.placements.left.jumpTests");
            assertThat(m.wrong()).contains(wrong);
            assertThat(m.allowed()).contains("60 N 4.1 Nm, 80 N 5.6 Nm, 100 N 6.9 Nm");
        });
    }

    @Test
    void goOutAsATableAndComeBack() {
        var csv = Tables.csv(Kinds.BELT, List.of(belt(BELT)));
        var table = Table.parse(csv);
        var preview = Preview.of("belts.csv", table, Columns.suggested(Kinds.BELT, table.headings()))
                .against(Map.of(), ReferenceFile.bundled(), false);
        assertThat(preview.mistakes()).isEmpty();
        assertThat(preview.parts()).singleElement().isEqualTo(belt(BELT));

        var wrong = Table.parse(csv.replace("100 N 355 Hz", "100 N"));
        assertThat(Preview.of("belts.csv", wrong, Columns.suggested(Kinds.BELT, wrong.headings()))
                        .against(Map.of(), ReferenceFile.bundled(), false)
                        .mistakes())
                .singleElement()
                .satisfies(m -> assertThat(m.field()).endsWith("hungWeights"));
    }
}
