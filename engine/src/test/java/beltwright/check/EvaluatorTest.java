package beltwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EvaluatorTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 + 2·3                                    | 7
            2 − 3 − 4                                  | -5
            12/4/3                                     | 1
            −5/2 + 1                                   | -1.5
            −2^2                                       | -4
            2^3^2                                      | 512
            3·(−2)                                     | -6
            3 − (−2)                                   | 5
            √(3^2 + 4^2)                               | 5
            2·√(66.643584^2 − ((57.2957795 − 23.8732415)/2)^2) | 129.0287
            abs(−3.5)                                  | 3.5
            floor(5.998)                               | 5
            min(2, 3)                                  | 2
            max(1, 2, 3)                               | 3
            min(4, max(1, 2, 3), 8)                    | 3
            max(min(4, 5), min(6, 7), (2 + 3)·2)       | 10
            π/2                                        | 1.5707963267949
            asin(1) + acos(1) + atan(1)                | 2.3561944901923
            sin(π/6) + cos(π/3) + tan(π/4)             | 2
            0.000123·1000000                           | 123
            """)
    void readsWhatAWorkingPrints(String numbers, double value) {
        assertThat(Evaluator.value(numbers)).isCloseTo(value, within(1e-4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"unknown + 1", "2·unknown/3", "max(unknown, 3)", "√(unknown)"})
    void staysUnknownWhereANumberIs(String numbers) {
        assertThat(Evaluator.value(numbers)).isNaN();
    }

    @Test
    void knowsInfinity() {
        assertThat(Evaluator.value("∞ − 1")).isInfinite();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2 + symbol", "max(1, 2", "min(1)", "(1 + 2"})
    void refusesWhatIsNoNumber(String numbers) {
        assertThatThrownBy(() -> Evaluator.value(numbers)).isInstanceOf(RuntimeException.class);
    }

    @Test
    void evaluatesALineOfAWorkingToItsValue() {
        var working = new Working();
        double a = working.given("a", "one side", 3.25, "mm", "test");
        double b = working.given("b", "the other side", -1.75, "mm", "test");
        double value = working.line("g", "√(a^2 + b^2) − max(a, b, 1)/2", Math.hypot(a, b) - a / 2, "mm", "test");
        assertThat(Evaluator.value(working.lines().getLast().numbers())).isCloseTo(value, within(1e-9));
    }
}
