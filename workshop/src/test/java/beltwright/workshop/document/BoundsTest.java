package beltwright.workshop.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.part.Kinds;
import beltwright.part.Sleeve;
import beltwright.quantity.Refusal;
import beltwright.workshop.Workshop;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundsTest {
    @TempDir
    Path folder;

    Workshop workshop;

    @BeforeEach
    void open() {
        workshop = Workshop.open(folder.resolve("a.db"));
    }

    private static Map<String, String> sleeve(String bore, String outside) {
        return new HashMap<>(Map.of(
                "id",
                "ring",
                "name",
                "Ring",
                "revision",
                "A",
                "source",
                "measured, caliper",
                "boreMm",
                bore,
                "outsideMm",
                outside,
                "lengthMm",
                "10"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8 ± 9     | 12        | ring.boreMm: the lower limit −1 of '8 ± 9' cannot be true of a real one; 3 to 30 mm: bore",
                "29..31    | 40        | ring.boreMm: the upper limit 31 of '29..31' cannot be true of a real one; 3 to 30 mm: bore",
                "12        | 12        | ring.boreMm: the bore '12' is no less than the outside diameter '12' around it; less than outsideMm",
                "1/2 in    | 12 ± 0.1  | ring.boreMm: the bore '1/2 in' is no less than the outside diameter '12 ± 0.1' around it"
            })
    void whatNoSleeveIsIsRefused(String bore, String outside, String says) {
        assertThat(workshop.importPart(Kinds.SLEEVE, sleeve(bore, outside), false))
                .singleElement()
                .asString()
                .contains(says);
        assertThat(workshop.store().documents()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"8 ± 5, 13.1", "unknown, 4", "8, unknown", "3..30, 31", "11.9 ± 0.2, 12 ± 0.2"})
    void whatMayBeIsKept(String bore, String outside) {
        assertThat(workshop.importPart(Kinds.SLEEVE, sleeve(bore, outside), false))
                .isEmpty();
    }

    @Test
    void anEditIsHeldAgainstItToo() {
        workshop.importPart(Kinds.SLEEVE, sleeve("8", "12"), false);
        var ring = (Sleeve) workshop.shelf().part("ring");
        assertThatThrownBy(() -> Changes.changed(ring, "outsideMm", "7.9"))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith(
                        "ring.boreMm: the bore '8' is no less than the outside diameter '7.9' around it");
        assertThatThrownBy(() -> Changes.changed(ring, "boreMm", "8 ± 9"))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("ring.boreMm: the lower limit −1");
    }

    @Test // a workshop must open whatever an earlier version let in, and its other fields can be edited
    void whatIsKeptAlreadyIsNotLost() {
        var kept = Codec.readOne(
                "an earlier file",
                "schema: 1\npart: ring\nkind: sleeve\nname: Ring\nrevision: A\nsource: standard\n"
                        + "dimensions: {boreMm: 8 ± 9, outsideMm: 7, lengthMm: 10}\n");
        var ring = (Sleeve) ((Document.OfPart) kept).part();
        assertThat(ring.boreMm().lower()).isEqualTo(-1);
        var edited = (Sleeve) Changes.changed(ring, "lengthMm", "11");
        assertThat(edited.lengthMm().nominal()).isEqualTo(11);
        assertThat(Bounds.of(ring)).hasSize(2);
    }
}
