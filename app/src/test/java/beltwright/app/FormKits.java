package beltwright.app;

import beltwright.kit.Joint;
import beltwright.kit.KitDraft;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

/// Kits of the demo with parts that none of them has, for tests that ask every check.
public final class FormKits {
    public static final String PINNED = "harbour-mile";
    public static final String CLAMPED = "market-hill-single";

    private FormKits() {}

    /// {@return edits after which the flanged kit of the demo has no dowel pins in its seat, and these}
    static String[] loose(String... more) {
        return Stream.concat(
                        Stream.of(
                                PINNED + ".joints.left mount on hanger={by: screws, of: [left mount, hanger],"
                                        + " with: [left flange screws, threadlocker]}",
                                PINNED + ".seats.left dowel pins="),
                        Stream.of(more))
                .toArray(String[]::new);
    }

    /// {@return edits after which that kit has neither pins nor holes for them, so that friction alone holds, and
    /// these}
    static String[] bare(String... more) {
        return loose(Stream.concat(Stream.of("mount-flange.dowels=0"), Stream.of(more))
                .toArray(String[]::new));
    }

    /// {@return the demo, its flanged mount held by its screws alone}
    static Shelf screwed() {
        return DemoKits.SHELF.with(edits(bare()));
    }

    /// {@return the demo, its flanged mount held by two dowel pins of which the mount alone tells}
    public static Shelf pinned() {
        return DemoKits.SHELF.with(edits(loose(
                "mount-flange.dowels=2",
                "mount-flange.dowelMm=4 ±0.01",
                "mount-flange.dowelArmMm=15 ±0.05",
                "mount-flange.dowelDepthMm=6 ±0.2",
                "mount-flange.dowelMaterial=steel-dowel")));
    }

    /// {@return the demo, a drive pulley of one motor clamped on its shaft: round bore, no set screws, screws M4
    /// across the slit of its hub, 7 mm from the axis}
    ///
    /// @param screws how many are in the box; two are wanted
    public static Shelf clamped(int screws, String... more) {
        var clamp = edits(
                "pulley-15.boreForm=round",
                "pulley-15.setScrews=0",
                "pulley-15.hubScrews=2",
                "pulley-15.hubScrewThread=M4",
                "pulley-15.hubScrewArmMm=7 ±0.1",
                "pulley-15.hubScrewGripMm=6 ±0.1",
                "pulley-15.hubThreadDepthMm=8 ±0.2");
        var shelf = DemoKits.SHELF.with(
                Stream.concat(clamp.stream(), edits(more).stream()).toList());
        var drafts = new TreeMap<>(shelf.drafts());
        drafts.computeIfPresent(CLAMPED, (id, draft) -> clamped(draft, screws));
        return new Shelf(shelf.parts(), drafts, shelf.measurements(), shelf.routes(), shelf.logs(), shelf.reference());
    }

    private static KitDraft clamped(KitDraft d, int screws) {
        var hub = new SeatName(Side.LEFT, Role.HUB_SCREWS);
        var seats = new TreeMap<>(d.seats());
        seats.remove(new SeatName(Side.LEFT, Role.SET_SCREWS));
        if (screws > 0) {
            seats.put(hub, new KitDraft.Filling("screw-m4x12", screws, false));
        }
        var joints = new TreeMap<>(d.joints());
        joints.computeIfPresent(
                "left drive pulley on shaft",
                (name, joint) -> new Joint(name, Joint.Way.CLAMP, joint.of(), screws > 0 ? List.of(hub) : List.of()));
        return new KitDraft(d.id(), d.name(), true, d.note(), seats, joints, d.placements(), d.task());
    }

    private static List<Edit> edits(String... edits) {
        return Stream.of(edits).map(Edit::parse).toList();
    }
}
