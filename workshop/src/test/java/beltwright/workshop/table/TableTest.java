package beltwright.workshop.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.quantity.Refusal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableTest {
    @ParameterizedTest
    @ValueSource(strings = {"\t", ";"})
    void aDecimalCommaSurvivesBetweenTabsAndSemicolons(String separator) {
        var table = Table.parse("id\tlength, mm\twidth\nring\t12,5 ± 0,1\t3\n".replace("\t", separator));
        assertThat(table.headings()).containsExactly("id", "length, mm", "width");
        assertThat(table.rows()).containsExactly(new Table.Row(2, List.of("ring", "12,5 ± 0,1", "3")));
    }

    @Test
    void commasSeparateWhereNothingElseDoes() {
        var table = Table.parse("\uFEFFid,\"length; in all\"\r\nring,\"12,5\"\r\n");
        assertThat(table.headings()).containsExactly("id", "length; in all");
        assertThat(table.rows().getFirst().cells()).containsExactly("ring", "12,5");
    }

    @Test
    void marksOfInchesAreNoQuotationMarks() {
        assertThat(Table.parse("id\tlength\nring\t2.5\"\nnut\t3/8\"\n").rows())
                .extracting(row -> row.cells().get(1))
                .containsExactly("2.5\"", "3/8\"");
    }

    @Test
    void rowsKeepTheirLinesAndEmptyOnesAreLeftOut() {
        var table = Table.parse("\nid,note,\n\na,\"two\r\nlines\",\n,,\nb\n");
        assertThat(table.headings()).containsExactly("id", "note");
        assertThat(table.line()).isEqualTo(2);
        assertThat(table.rows())
                .containsExactly(new Table.Row(4, List.of("a", "two\nlines")), new Table.Row(7, List.of("b", "")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "~~ | is empty",
                "id,name | no row below its headings",
                "id,name\\na,b,c | pasted table:2: row: has 3 cells, the last 'c'; allowed: at most 2",
                "id,name\\na,\"b\\nc,d | pasted table:2: row: cannot be read: A quotation mark is never closed",
                "id,name\\na,\"b\"c | pasted table:2: row: cannot be read: Unexpected character after closing quote",
                "id,name\\na,b\u0007c | pasted table:2: column 2: holds a control character",
            })
    void refusesWhatIsNoTable(String typed, String said) {
        assertThatThrownBy(() -> Table.parse(typed.replace("\\n", "\n")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(said)
                .hasMessageContaining("allowed");
    }

    @Test
    void aCarriageReturnAloneEndsALine() {
        assertThat(Table.parse("id,name\ra,b\rc,d").rows())
                .extracting(Table.Row::line)
                .containsExactly(2, 3);
    }

    @Test
    void refusesWhatIsTooLarge() {
        assertThat(Table.parse("id\n" + "a\n".repeat(Table.MOST_ROWS)).rows()).hasSize(Table.MOST_ROWS);
        assertThatThrownBy(() -> Table.parse("id\n" + "a\n".repeat(Table.MOST_ROWS + 1)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("more than 5000 rows");
        assertThatThrownBy(() -> Table.parse("a,".repeat(Table.MOST_COLUMNS) + "a\n1"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("has 201 columns");
        assertThatThrownBy(() -> Table.parse("id\n" + "a".repeat(Table.LARGEST)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("larger");
    }
}
