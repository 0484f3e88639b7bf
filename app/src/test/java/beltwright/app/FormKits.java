package beltwright.app;

import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.util.List;
import java.util.stream.Stream;

/// Kits of the demo with parts that none of them has, for tests that ask every check.
final class FormKits {
    static final String PINNED = "harbour-mile";

    private FormKits() {}

    /// {@return the demo, its flanged mount held by two dowel pins}
    static Shelf pinned() {
        return DemoKits.SHELF.with(edits(
                "mount-flange.dowels=2",
                "mount-flange.dowelMm=4 ±0.01",
                "mount-flange.dowelArmMm=15 ±0.05",
                "mount-flange.dowelDepthMm=6 ±0.2",
                "mount-flange.dowelMaterial=steel-dowel"));
    }

    private static List<Edit> edits(String... edits) {
        return Stream.of(edits).map(Edit::parse).toList();
    }
}
