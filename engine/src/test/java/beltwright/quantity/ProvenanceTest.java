package beltwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProvenanceTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                // the first words name it, whatever the note says
                "measured | MEASURED | ``",
                "measured, caliper, customer's wheels | MEASURED | caliper, customer's wheels",
                "Measured, caliper | MEASURED | caliper",
                "measured , tape | MEASURED | tape",
                "said by a customer, caliper | CUSTOMER | caliper",
                "estimate, from a picture with a ruler | ESTIMATE | from a picture with a ruler",
                "data sheet, measured at 25 °C | DATA_SHEET | measured at 25 °C",
                "standard, gauge table | STANDARD | gauge table",
                // said anywhere
                "customer's wheels, caliper | MEASURED | customer's wheels, caliper",
                "Caliper | MEASURED | Caliper",
                "my callipers, 2026-10-02 | MEASURED | my callipers, 2026-10-02",
                "bore gauge | MEASURED | bore gauge",
                "feeler gauges | MEASURED | feeler gauges",
                "micrometer, borrowed | MEASURED | micrometer, borrowed",
                "steel tape | MEASURED | steel tape",
                "with a ruler | MEASURED | with a ruler",
                "kitchen scale | MEASURED | kitchen scale",
                "the customer measured it | MEASURED | the customer measured it",
                "customer on the phone | CUSTOMER | customer on the phone",
                "two customers | CUSTOMER | two customers",
                "customer, not measured | CUSTOMER | customer, not measured",
                "the maker's data sheet, sent by a customer | DATA_SHEET | the maker's data sheet, sent by a customer",
                // a doubt goes before a measurement
                "caliper, rest estimated | ESTIMATE | caliper, rest estimated",
                "my estimate | ESTIMATE | my estimate"
            })
    void aTextSaysItsSource(String text, Source source, String note) {
        var read = Provenance.parse(text);
        assertThat(read).isEqualTo(new Provenance(source, note));
        assertThat(Provenance.parse(read.words())).isEqualTo(read);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "a guess",
                "hearsay",
                "unmeasured",
                "not measured",
                "never measured",
                "not measured, caliper",
                "guess, caliper",
                "tapered",
                "customised",
                "upscale",
                "rule of thumb"
            })
    void whatSaysNoSourceIsRefused(String text) {
        assertThatThrownBy(() -> Provenance.parse(text))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("names no source")
                .hasMessageContaining("measured, data sheet, standard, said by a customer, estimate")
                .hasMessageContaining("what it was measured with");
    }
}
