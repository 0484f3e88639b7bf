package beltwright.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.kit.JumpTests;
import beltwright.part.HungWeights;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// What must hold of hung weights as typed, whatever was typed.
@Tag("law")
class HungWeightsLawTest {
    private static final int MANY = 20_000;
    private static final String MANGLES = "0123456789.,: -+eNHzmspan\u00a0\n";

    private record Pair(double pull, double hertz) {
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.1f N %.1f Hz", pull, hertz);
        }
    }

    private static String typed(List<Pair> pairs) {
        return "span 80 mm: " + pairs.stream().map(Pair::toString).collect(Collectors.joining(", "));
    }

    private static <T> Optional<T> read(Function<String, T> parser, String text) {
        try {
            return Optional.of(parser.apply(text));
        } catch (Refusal r) {
            assertThat(r.wrong()).isNotBlank();
            assertThat(r.allowed()).isNotBlank();
            assertThat(r.mend()).isNotBlank();
            return Optional.empty();
        }
    }

    private static SpanFrequency.Hung line(HungWeights hung) {
        return SpanFrequency.fit(
                hung.readings().stream()
                        .mapToDouble(HungWeights.Reading::tensionN)
                        .toArray(),
                hung.readings().stream()
                        .mapToDouble(HungWeights.Reading::frequencyHz)
                        .toArray());
    }

    /// Fewer pulls are kept and tell nothing.
    private static boolean enough(List<Pair> pairs) {
        return pairs.stream().map(Pair::pull).distinct().count() > 1;
    }

    /// The rule said a second way: no pair in which more pull sounds no higher.
    private static boolean sound(List<Pair> pairs) {
        return pairs.stream().allMatch(a -> pairs.stream().allMatch(b -> a.pull >= b.pull || a.hertz < b.hertz));
    }

    @Test
    void whatRisesIsReadWhatDoesNotIsRefusedAndALineRises() {
        var random = new Random(20_261_128);
        int taken = 0;
        for (int n = 0; n < MANY; n++) {
            var pairs = new ArrayList<Pair>();
            for (int i = 1 + random.nextInt(4); i > 0; i--) {
                pairs.add(new Pair(random.nextInt(1, 8) * 25, random.nextInt(1, 9) * 60));
            }
            var hung = read(HungWeights::parse, typed(pairs));
            assertThat(hung.isPresent()).as(typed(pairs)).isEqualTo(sound(pairs));
            hung.ifPresent(h -> assertThat(h.tell()).as(typed(pairs)).isEqualTo(enough(pairs)));
            if (hung.isPresent() && enough(pairs)) {
                taken++;
                assertThat(line(hung.get()).factor())
                        .as(typed(pairs))
                        .isPositive()
                        .isFinite();
                assertThat(line(hung.get()).offsetN()).isFinite();
                Collections.shuffle(pairs, random);
                var again = line(HungWeights.parse(typed(pairs)));
                assertThat(again.factor()).isCloseTo(line(hung.get()).factor(), within(1e-9));
            }
        }
        assertThat(taken).isBetween(MANY / 20, MANY / 2);
    }

    /// Readings of a stiff string, each a percent off at most, pulls at least a quarter apart, are never refused.
    @Test
    void honestReadingsOfAStiffStringAreTaken() {
        var random = new Random(4);
        for (int n = 0; n < 2_000; n++) {
            double bending = random.nextDouble(0, 90_000);
            double mass = random.nextDouble(0.02, 0.12);
            var pairs = new ArrayList<Pair>();
            double pull = random.nextDouble(40, 80);
            for (int i = 0; i < 4; i++, pull *= random.nextDouble(1.25, 2)) {
                double off = random.nextDouble(0.99, 1.01);
                pairs.add(new Pair(pull, off * SpanFrequency.stiffHz(pull, mass, 80, bending)));
            }
            if (bending / (80 * 80) < 4) { // a span that is more beam than string hardly rises
                assertThat(line(HungWeights.parse(typed(pairs))).factor()).isPositive();
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            span 80 mm: 50 N 250 Hz, 100 N 150 Hz               | 100 N 150 Hz after 50 N 250 Hz
            span 80 mm: 50 N 150 Hz, 80 N 400 Hz, 100 N 170 Hz  | 100 N 170 Hz after 80 N 400 Hz
            span 80 mm: 100 N 170 Hz, 50 N 150 Hz, 80 N 400 Hz  | 100 N 170 Hz after 80 N 400 Hz
            span 80 mm: 50 N 150 Hz, 100 N 150 Hz               | 100 N 150 Hz after 50 N 150 Hz
            span 80 mm: 50 N 100 Hz, 50 N 300 Hz, 80 N 200 Hz   | 80 N 200 Hz after 50 N 300 Hz
            """)
    void theRefusalNamesTheTwoThatDoNotRise(String text, String two) {
        assertThatThrownBy(() -> HungWeights.parse(text))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("hungWeights: the frequency does not rise with the pull: " + two)
                .hasMessageContaining("pluck those two again");
    }

    @Test
    void whateverIsTypedIsReadOrRefusedInOneWay() {
        var random = new Random(9);
        var texts = List.of(
                "span 64.5 mm: 50 N 265 Hz, 100 N 355 Hz, 150 N 430 Hz", "60 N 4.1 Nm, 80 N 5.6 Nm, 100 N 7 Nm");
        for (int n = 0; n < MANY; n++) {
            var text = new StringBuilder(texts.get(n % 2));
            for (int i = random.nextInt(4); i >= 0; i--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(4)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, MANGLES.charAt(random.nextInt(MANGLES.length())));
                    case 2 -> text.setCharAt(at, MANGLES.charAt(random.nextInt(MANGLES.length())));
                    default -> text.insert(at, "90".repeat(random.nextInt(200)));
                }
            }
            read(HungWeights::parse, text.toString())
                    .filter(HungWeights::tell)
                    .ifPresent(hung -> assertThat(line(hung).factor())
                            .as(text.toString())
                            .isPositive()
                            .isFinite());
            read(JumpTests::parse, text.toString())
                    .filter(JumpTests::tell)
                    .ifPresent(tests -> assertThat(tests.slope())
                            .as(text.toString())
                            .isPositive()
                            .isFinite());
        }
    }

    /// The example that a refusal shows is one a belt can give: T_0 above 0.
    @Test
    void theExampleIsOneOfARealBelt() {
        assertThatThrownBy(() -> HungWeights.parse("?")).isInstanceOfSatisfying(Refusal.class, r -> {
            var line = line(HungWeights.parse(r.allowed().split("'")[1]));
            assertThat(line.offsetN()).isBetween(0.0, 25.0);
        });
    }
}
