package beltwright.workshop.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.part.Kinds;
import beltwright.quantity.Refusal;
import beltwright.workshop.document.PartRow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ColumnsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "canDiameterMm | canDiameterMm | false",
                "Can diameter | canDiameterMm | false",
                "can diameter [mm] | canDiameterMm | false",
                "can diameter (in) | canDiameterMm | true",
                "Can diameter / inch | canDiameterMm | true",
                "CAN DIAMETER, mm | canDiameterMm | false",
                "diameter of the turning can | canDiameterMm | false",
                "Mass [kg] | massKg | false",
                "kv [rpm/V] | kvRpmPerV | false",
                "kv / rpm/V | kvRpmPerV | false",
                "bolt holes | boltHoles | false",
                "Part | id | false",
                "Source | source | false",
                "can diameter source | canDiameterMm.source | false",
                "name source | '' | false",
                "colour | '' | false",
                "'' | '' | false",
            })
    void aHeadingIsUnderstood(String heading, String path, boolean inches) {
        assertThat(Columns.suggested(Kinds.MOTOR, List.of(heading)).columns())
                .containsExactly(new Columns.Column(heading, path, inches));
    }

    @Test
    void nestedFieldsAreFoundByTheirPathAndTheirName() {
        assertThat(Columns.suggested(Kinds.WHEEL_PULLEY, List.of("rim.faceWidthMm", "teeth", "Rim profile"))
                        .columns())
                .extracting(Columns.Column::path)
                .containsExactly("rim.faceWidthMm", "rim.teeth", "rim.profile");
    }

    @ParameterizedTest
    @EnumSource(Kinds.class)
    void everyFieldOfEveryKindIsFoundByItsPath(Kinds kind) {
        var paths = PartRow.fields(kind).stream().map(f -> f.path()).toList();
        var found = Columns.suggested(kind, paths);
        assertThat(found.columns()).extracting(Columns.Column::path).isEqualTo(paths);
        assertThat(found.leftOut()).isEmpty();
    }

    @Test
    void aFieldIsSuggestedOnce() {
        assertThat(Columns.suggested(Kinds.MOTOR, List.of("name", "Name")).columns())
                .extracting(Columns.Column::path)
                .containsExactly("name", "");
    }

    @Test
    void aColumnIsGivenAnotherField() {
        var columns = Columns.suggested(Kinds.SLEEVE, List.of("Ø [in]", "length", "colour"))
                .with("Ø [in]", "outside")
                .with("colour", "boreMm [mm]")
                .with("length", "-");
        assertThat(columns.columns())
                .containsExactly(
                        new Columns.Column("Ø [in]", "outsideMm", true),
                        new Columns.Column("length", "", false),
                        new Columns.Column("colour", "boreMm", false));
        assertThat(columns.leftOut()).containsExactly("length");
    }

    @Test
    void aGuessGivesWayButAChoiceDoesNot() {
        var columns = Columns.suggested(Kinds.SLEEVE, List.of("bore", "inner Ø", "drill"));
        assertThat(columns.with("inner Ø", "bore").columns())
                .extracting(Columns.Column::path)
                .containsExactly("", "boreMm", "");
        assertThat(columns.with("inner Ø=bore,drill=bore").columns())
                .extracting(Columns.Column::path)
                .containsExactly("", "boreMm", "boreMm"); // the preview says that two columns give it
    }

    @Test
    void severalAreTypedWithCommasAndAHeadingMayHoldOne() {
        assertThat(Columns.suggested(Kinds.SLEEVE, List.of("Ø, in", "a=b", "Price"))
                        .with("Ø, in=bore [in],a=b=length,Price=-")
                        .columns())
                .containsExactly(
                        new Columns.Column("Ø, in", "boreMm", true),
                        new Columns.Column("a=b", "lengthMm", false),
                        new Columns.Column("Price", "", false));
    }

    @Test
    void whatIsNotThereIsRefused() {
        var columns = Columns.suggested(Kinds.SLEEVE, List.of("id"));
        assertThatThrownBy(() -> columns.with("Id", "id"))
                .isInstanceOf(Refusal.class)
                .hasMessage(
                        "columns: no column is headed 'Id'; allowed: id; write the heading as it stands in the table");
        assertThatThrownBy(() -> columns.with("id", "kv"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("columns.id: 'kv' is not a field of a sleeve; allowed: id, name, ");
        assertThatThrownBy(() -> new Columns(Kinds.SLEEVE, List.of(new Columns.Column("a", "kvRpmPerV", false)), ""))
                .isInstanceOf(Refusal.class);
    }
}
