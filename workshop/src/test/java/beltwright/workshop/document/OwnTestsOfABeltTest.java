package beltwright.workshop.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.kit.JumpTests;
import beltwright.part.Belt;
import beltwright.part.HungWeights;
import beltwright.part.Kinds;
import beltwright.part.Signed;
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
            100 N 355 Hz         | 100 N 355 Hz (me)    | 12 | hungWeights | cannot be read
            100 N 355 Hz         | 50 N 355 Hz (a 2026) | 12 | hungWeights | cannot be read
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
            100 N 6.9 Nm  | 100 N 6.9 Nm (me 2026-02-30) | '2026-02-30' is no day
            100 N 6.9 Nm  | 100 N jump 6.9 Nm            | '100 N jump 6.9 Nm' cannot be read
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
            assertThat(m.allowed() + m.mend())
                    .containsAnyOf("60 N 4.1 Nm, 80 N 5.6 Nm", "a tighter belt stands more torque", "2026-11-20");
        });
    }

    /// Fewer than it takes are kept, each with who and when, and tell nothing yet.
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            60 N 4.1 Nm (shop, 2026-11-20)                                     | refused
            60 N 4.1 Nm (Ann O. 2026-11-20)                                    | 2
            60 N 4.1 Nm, 80 N 5.6 Nm                                           | 1
            60 N 4.1 Nm, 80 N 5.6 Nm, 80 N 5.7 Nm, 100 N no jump to 7 Nm       | 1
            60 N 4.1 Nm, 80.5 N by 270 Hz 5.6 Nm, 100 N 7 Nm (shop 2026-11-20) | 0
            """)
    void fewerThanItTakesAreKept(String text, String lacking) {
        if (lacking.equals("refused")) {
            assertThatThrownBy(() -> JumpTests.parse(text)).hasMessageContaining("cannot be read");
            return;
        }
        var tests = JumpTests.parse(text);
        assertThat(tests.lacking()).isEqualTo(Integer.parseInt(lacking));
        assertThat(tests.tell()).isEqualTo(tests.lacking() == 0);
        assertThat(mistakes(KIT.replace(JUMPS, text)))
                .extracting(Mistake::field)
                .containsExactly("kit-1.seats");
        assertThat(tests.tests().stream().map(Object::toString)).containsExactly(text.split(", "));
    }

    @Test
    void oneMoreIsWrittenBehindAndReadBack() {
        var signed = new Signed("shop", "2026-11-20");
        var text = JumpTests.added(JUMPS, new JumpTests.Test(120, 0, 8.25, 0, false, signed));
        assertThat(text).isEqualTo(JUMPS + ", 120 N no jump to 8.25 Nm (shop 2026-11-20)");
        assertThat(JumpTests.parse(text).toString())
                .isEqualTo(JumpTests.parse(JUMPS).toString());
        assertThatThrownBy(() -> JumpTests.added(text, new JumpTests.Test(120, 0, 8.25, 0, false, signed)))
                .hasMessageContaining("is recorded already");
        assertThatThrownBy(() -> JumpTests.added(text, new JumpTests.Test(120, 0, 0.1, 0, true, signed)))
                .hasMessageContaining("torque does not rise with tension");

        var hung = HungWeights.added("", 64.5, new HungWeights.Reading(50, 150, signed));
        assertThat(HungWeights.tell(hung)).isFalse();
        assertThat(mistakes(BELT.replace(HUNG, hung))).isEmpty();
        var more = HungWeights.added(hung, 64.5, new HungWeights.Reading(100, 235, Signed.NOT));
        assertThat(more).isEqualTo("span 64.5 mm: 50 N 150 Hz (shop 2026-11-20), 100 N 235 Hz");
        assertThat(HungWeights.tell(more)).isTrue();
        assertThatThrownBy(() -> HungWeights.added(more, 70, new HungWeights.Reading(150, 300, Signed.NOT)))
                .hasMessageContaining("were taken on 64.5 mm");
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
