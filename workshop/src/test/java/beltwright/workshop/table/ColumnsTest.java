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
                "canDiameterMm | canDiameterMm | MM",
                "Can diameter | canDiameterMm | MM",
                "can diameter [mm] | canDiameterMm | MM",
                "can diameter (in) | canDiameterMm | INCH",
                "Can diameter / inch | canDiameterMm | INCH",
                "CAN DIAMETER, mm | canDiameterMm | MM",
                "diameter of the turning can | canDiameterMm | MM",
                "Can diameter [cm] | canDiameterMm | CM",
                "Can diameter in mm | canDiameterMm | MM",
                "can diameter in inches | canDiameterMm | INCH",
                "Can diameter in centimetres | canDiameterMm | CM",
                "can_diameter_cm | canDiameterMm | CM",
                "Can diameter mm | canDiameterMm | MM",
                "Can Diameter inch | canDiameterMm | INCH",
                "shaft length (mm) | shaftLengthMm | MM",
                "Shaft diameter [inch] | shaftDiameterMm | INCH",
                "Mass in kg | massKg | MM",
                "Mass [kg] | massKg | MM",
                "kv [rpm/V] | kvRpmPerV | MM",
                "kv / rpm/V | kvRpmPerV | MM",
                "bolt holes | boltHoles | MM",
                "Part | id | MM",
                "Source | source | MM",
                "can diameter source | canDiameterMm.source | MM",
                "name source | '' | MM",
                "colour | '' | MM",
                "'' | '' | MM",
            })
    void aHeadingIsUnderstood(String heading, String path, LengthUnit unit) {
        assertThat(Columns.suggested(Kinds.MOTOR, List.of(heading)).columns())
                .containsExactly(new Columns.Column(heading, path, unit));
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
                        new Columns.Column("Ø [in]", "outsideMm", LengthUnit.INCH),
                        new Columns.Column("length", "", LengthUnit.MM),
                        new Columns.Column("colour", "boreMm", LengthUnit.MM));
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
                        new Columns.Column("Ø, in", "boreMm", LengthUnit.INCH),
                        new Columns.Column("a=b", "lengthMm", LengthUnit.MM),
                        new Columns.Column("Price", "", LengthUnit.MM));
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
        assertThatThrownBy(() ->
                        new Columns(Kinds.SLEEVE, List.of(new Columns.Column("a", "kvRpmPerV", LengthUnit.MM)), ""))
                .isInstanceOf(Refusal.class);
    }
}
