package beltwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/// Every number of every case file, and the page that is generated from them.
@Tag("published")
class PublishedCasesTest {
    private static final List<PublishedCase> CASES = PublishedCase.all();
    private static final Path PAGE = PublishedCase.ROOT.resolve("docs/validation.md");
    private static final int LEAST_READ = 120;

    static Stream<Arguments> numbers() {
        return CASES.stream()
                .flatMap(c -> c.values().stream()
                        .map(v -> Arguments.of(c.id() + " " + v.what() + " (" + v.inputs() + ")", v)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("numbers")
    void agreesWithThePrintedNumber(String name, PublishedCase.Value value) {
        var held = Agreement.of(value);
        assertThat(held.agrees())
                .as(value.differs() == null ? held.toString() : held + ": agrees now, so take out 'differs'")
                .isEqualTo(value.differs() == null);
    }

    @Test
    void enoughOfThemWereReadInTheirSource() {
        assertThat(ValidationPage.read(CASES)).isGreaterThanOrEqualTo(LEAST_READ);
    }

    @Test
    void everyCaseHasItsOwnId() {
        assertThat(CASES).extracting(PublishedCase::id).doesNotHaveDuplicates();
    }

    @Test
    void thePageShowsWhatTheCasesSay() throws IOException {
        var page = ValidationPage.of(CASES);
        if (Boolean.getBoolean("beltwright.write")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.exists(PAGE) ? Files.readString(PAGE) : "")
                .as("docs/validation.md is out of date: run this test with -Dbeltwright.write=true and read the diff")
                .isEqualTo(page);
    }
}
