package beltwright.workshop;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.part.DrivePulley;
import beltwright.part.Motor;
import beltwright.quantity.Refusal;
import beltwright.workshop.document.Editable;
import beltwright.workshop.document.ReferenceFile;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShelfTest {
    private final Shelf shelf = Shelf.of(SmallWorkshop.documents(), ReferenceFile.bundled());

    @Test
    void measurementsLieOverPartsAndTheLaterWins() {
        assertThat(motor(shelf).canDiameterMm().text()).isEqualTo("50.4 ±0.05");
        assertThat(motor(shelf).canDiameterMm().provenance().words()).isEqualTo("measured, caliper, 2026-10-02");
        assertThat(motor(shelf).shaftDiameterMm().nominal()).isEqualTo(7.99);
        assertThat(motor(shelf).shaftDiameterMm().provenance().words()).isEqualTo("measured, caliper, 2026-10-01");
    }

    @Test
    void anEditWinsOverAMeasurementAndLeavesTheOldShelfAlone() {
        var edited = with("motor-50.canDiameterMm=52");
        assertThat(motor(edited).canDiameterMm().nominal()).isEqualTo(52);
        assertThat(motor(shelf).canDiameterMm().nominal()).isEqualTo(50.4);
    }

    @Test
    void everyEditUndoneGivesTheFirstShelf() {
        for (var id : List.of("motor-50", "pulley-16", "belt-305-15", "short-street")) {
            for (var field : shelf.editable(id)) {
                var value = field.path().endsWith("note") ? "another" : other(field);
                var edited = shelf.with(List.of(new Edit(id, field.path(), value)));
                assertThat(edited).as(id + "." + field).isNotEqualTo(shelf);
                assertThat(edited.with(List.of(new Edit(id, field.path(), field.text()))))
                        .isEqualTo(shelf);
            }
        }
    }

    private static String other(Editable field) {
        if (field.path().startsWith("joints.")) {
            return "{by: clamp, of: [left motor, left belt]}";
        }
        var choice =
                field.choices().stream().filter(c -> !c.equals(field.text())).findFirst();
        return choice.orElseGet(() -> switch (field.path()) {
            case "seats.left motor", "seats.left drive pulley" -> "2 x " + field.text();
            default ->
                Stream.of(
                                "1.5",
                                "75",
                                "12",
                                "30",
                                "3",
                                "0.7",
                                "100",
                                "20",
                                "300",
                                "0.05",
                                "20000",
                                "steel-hardened",
                                "standard",
                                "90 N 4.0 Nm, 130 N 5.8 Nm, 170 N 7.4 Nm",
                                "span 64.5 mm: 50 N 150 Hz, 100 N 205 Hz, 150 N 250 Hz")
                        .filter(v -> !v.equals(field.text()) && accepted(field, v))
                        .findFirst()
                        .orElseThrow();
        });
    }

    private static boolean accepted(Editable field, String value) {
        var shelf = Shelf.of(SmallWorkshop.documents(), ReferenceFile.bundled());
        for (var id : List.of("motor-50", "pulley-16", "belt-305-15", "short-street")) {
            if (shelf.editable(id).contains(field)) {
                try {
                    shelf.with(List.of(new Edit(id, field.path(), value)));
                    return true;
                } catch (Refusal e) {
                    return false;
                }
            }
        }
        return false;
    }

    @Test
    void editsReachNestedFieldsWordsCountsSeatsPlacementsAndTask() {
        var edited = with(
                "pulley-16.rim.teeth=18",
                "motor-50.shaftForm=round",
                "motor-50.massKg={value: 0.5, source: estimate}",
                "short-street.seats.left belt=2 x belt-325-15",
                "short-street.seats.left mount={part: mount-1, from: rider}",
                "short-street.joints.pulley on motor=",
                "short-street.placements.left.aboveAxleDeg=12",
                "short-street.task.gradePercent=20",
                "short-street.name=Long Street: the second");
        assertThat(((DrivePulley) edited.part("pulley-16")).rim().teeth()).isEqualTo(18);
        assertThat(motor(edited).shaftForm()).hasToString("round");
        assertThat(motor(edited).label().massKg().estimated()).isTrue();
        var kit = edited.draft("short-street");
        assertThat(requireNonNull(kit.seats().get(new SeatName(Side.LEFT, Role.BELT)))
                        .count())
                .isEqualTo(2);
        assertThat(requireNonNull(kit.seats().get(new SeatName(Side.LEFT, Role.MOUNT)))
                        .fromRider())
                .isTrue();
        assertThat(kit.joints()).isEmpty();
        assertThat(requireNonNull(kit.placements().get(Side.LEFT))
                        .aboveAxleDeg()
                        .provenance()
                        .words())
                .isEqualTo("measured, rule");
        assertThat(kit.task().gradePercent().nominal()).isEqualTo(20);
        assertThat(kit.name()).isEqualTo("Long Street: the second");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            motor-50.canDiameterMm=500     | motor-50.canDiameterMm    | '500' cannot be true  | 20 to 150 mm
            motor-50.canDiameter=50        | motor-50.canDiameter      | is not a field of     | canDiameterMm
            motor-50.id=motor-51           | motor-50.id               | is not a field of     | canDiameterMm
            motor-51.canDiameterMm=50      | motor-51                  | neither a part nor    | motor-50
            motor-late.values.x=50         | motor-late                | is a measurement      | motor-50
            pulley-16.rim.profile=6M       | pulley-16.rim.profile     | '6M' is not known     | 5M H
            short-street.task.grade=5      | short-street.task.grade   | is not a field of     | task.gradePercent
            short-street.seats.left bell=x | short-street.seats.left bell | is not a place     | belt
            short-street.placements.right.aboveAxleDeg=5 | short-street.placements.right.aboveAxleDeg | is not a field of | placements.left
            short-street.tusk=5            | short-street.tusk         | is not a field of     | name
            """)
    void anEditThatCannotBeIsRefused(String edit, String where, String wrong, String allowed) {
        assertThatThrownBy(() -> with(edit)).isInstanceOfSatisfying(Refusal.class, r -> {
            assertThat(r.where()).isEqualTo(where);
            assertThat(r.wrong()).contains(wrong);
            assertThat(r.allowed()).contains(allowed);
            assertThat(r.mend()).isNotBlank();
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "motor", "motor=5", "motor.=5", ".x=5", "motor.x"})
    void anEditThatNamesNoFieldIsRefused(String typed) {
        assertThatThrownBy(() -> Edit.parse(typed))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("DOCUMENT.FIELD=VALUE");
    }

    @Test
    void withoutEstimatesTheyAreUnknown() {
        var bare = shelf.withoutEstimates();
        assertThat(motor(bare).canLengthMm().known()).isFalse();
        assertThat(motor(bare).canDiameterMm().known()).isTrue();
        assertThat(bare.draft("short-street").task().gradePercent().known()).isFalse();
        assertThat(bare.draft("short-street").task().allUpMassKg().nominal()).isEqualTo(95);
    }

    @Test
    void fieldsSayWhatTheyMean() {
        assertThat(shelf.editable("motor-50"))
                .contains(new Editable(
                        "canDiameterMm",
                        "diameter of the turning can",
                        "mm",
                        "50.4 ±0.05",
                        "measured, caliper, 2026-10-02",
                        List.of()));
        assertThat(shelf.editable("short-street"))
                .contains(new Editable(
                        "seats.left belt",
                        "the part in this seat",
                        "",
                        "belt-305-15",
                        "",
                        List.of("belt-305-15", "belt-325-15")));
    }

    @Test
    void aKitThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> shelf.kit("long-street"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("no kit has the id 'long-street'; allowed: short-street");
        assertThatThrownBy(() -> shelf.kit("short-street"))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("kit short-street.seats.");
    }

    private Shelf with(String... edits) {
        return shelf.with(Stream.of(edits).map(Edit::parse).toList());
    }

    private static Motor motor(Shelf shelf) {
        return (Motor) shelf.part("motor-50");
    }
}
