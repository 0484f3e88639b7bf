package beltwright.press.drawing;

import beltwright.kit.Drive;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.layout.DriveLayout;
import beltwright.part.Mount;

/// The mount of one drive in the plan, cut through the motor shaft, with what holds it to the hanger.
final class MountSection {
    private static final Point FORWARD = new Point(1, 0);

    private final Sketch sketch;
    private final Kit kit;
    private final Drive drive;
    private final DriveLayout at;
    private final Materials materials;
    private final Stations across;
    private final MountPlate plate;
    private final double axis;
    private final double toward;

    MountSection(Sketch sketch, Kit kit, Drive drive, DriveLayout at, Materials materials) {
        this.sketch = sketch;
        this.kit = kit;
        this.drive = drive;
        this.at = at;
        this.materials = materials;
        across = new Stations(kit, drive.side());
        axis = at.motorXMm();
        toward = axis < 0 ? -1 : 1;
        plate = new MountPlate(drive.mount(), kit.hanger(), FORWARD);
    }

    /// Plate and clamp: hatched around the slot and the opening, and around the hanger, which runs
    /// through it. The root of a mount in one piece with the hanger is drawn with the hanger.
    void draw() {
        var mount = drive.mount();
        double outer = at.plateOuterMm().nominal();
        double inner = at.plateInnerMm().nominal();
        double middle = (mount.slotMinMm().nominal() + mount.slotMaxMm().nominal()) / 2;
        double travel = (mount.slotMaxMm().nominal() - mount.slotMinMm().nominal()) / 2;
        double plan = Math.abs(axis) / Math.hypot(axis, at.motorZMm());
        double centre = toward * middle * plan;
        double tip = mount.plateRadiusMm().nominal() + travel * plan;
        double opening = plate.opening(FORWARD);
        double wall = plate.half(FORWARD);
        double hole = mount.openingMm().nominal() / 2 + travel * plan;
        double slot = mount.boltCircleMm().nominal() / 2;
        double slotHalf = mount.slotWidthMm().nominal() / 2 + travel * plan;
        var hatch = materials.hatch(mount.material());
        sketch.of(drive.seat(Role.MOUNT));
        sketch.rectangle(
                across.x(inner),
                centre - toward * tip,
                across.x(outer),
                centre + toward * tip,
                LineClass.OUTLINE,
                Fill.PAPER);
        // from the tip back to the axle: solid, slot, solid, opening, solid, slot, solid up to the clamp
        solid(inner, outer, centre + toward * tip, centre + toward * (slot + slotHalf), hatch);
        solid(inner, outer, centre + toward * (slot - slotHalf), centre + toward * hole, hatch);
        solid(inner, outer, centre - toward * hole, centre - toward * (slot - slotHalf), hatch);
        if (inOnePiece()) {
            return;
        }
        solid(inner, outer, centre - toward * (slot + slotHalf), toward * opening, hatch);
        solid(inner, outer, -toward * opening, -toward * wall, hatch);
        if (mount.fixing() == Mount.Fixing.FLANGE) {
            flange();
        } else {
            double clamp = inner - mount.clampLengthMm().nominal();
            solid(clamp, inner, toward * wall, toward * opening, hatch);
            solid(clamp, inner, -toward * opening, -toward * wall, hatch);
        }
    }

    boolean inOnePiece() {
        return drive.mount().fixing() == Mount.Fixing.ONE_PIECE;
    }

    /// {@return the root of a plate in one piece with the hanger, from behind the axle to its slots}
    Bounds rootOfPlate() {
        var mount = drive.mount();
        double middle = (mount.slotMinMm().nominal() + mount.slotMaxMm().nominal()) / 2;
        double travel = (mount.slotMaxMm().nominal() - mount.slotMinMm().nominal()) / 2;
        double plan = Math.abs(axis) / Math.hypot(axis, at.motorZMm());
        double wall = plate.half(FORWARD);
        double slots = middle * plan
                - mount.boltCircleMm().nominal() / 2
                - mount.slotWidthMm().nominal() / 2
                - travel * plan;
        return Bounds.of(
                new Point(across.x(at.plateInnerMm().nominal()), -toward * wall),
                new Point(across.x(at.plateOuterMm().nominal()), toward * Math.max(wall, slots)));
    }

    /// The screws and pins of the flange, and the shoulder of the hanger that carries their threads: it stands where
    /// the plate does.
    private void flange() {
        var mount = drive.mount();
        var hanger = kit.hanger();
        double inner = at.plateInnerMm().nominal();
        double circle = hanger.flangeCircleMm().nominal() / 2;
        double body = plate.opening(FORWARD);
        double major = hanger.flangeThread().majorMm();
        double deep = inner - hanger.flangeThreadDepthMm().nominal() - major / 2; // the wall behind is not measured
        for (int sign = -1; sign <= 1; sign += 2) {
            sketch.of(SeatName.of(Role.HANGER));
            sketch.rectangle(
                    across.x(deep),
                    sign * body,
                    across.x(inner),
                    sign * (circle + major),
                    materials.hatch(hanger.material()),
                    false);
            double hole = mount.flangeHoleMm().nominal() / 2;
            double head = inner + mount.flangeGripMm().nominal();
            sketch.of(drive.seat(Role.MOUNT));
            sketch.rectangle(
                    across.x(inner),
                    sign * circle - hole,
                    across.x(head),
                    sign * circle + hole,
                    LineClass.EDGE,
                    Fill.PAPER);
            sketch.of(drive.seat(Role.FLANGE_SCREWS));
            new ScrewFigure(drive.flangeScrew(), new Point(across.x(head), sign * circle), across.inward())
                    .draw(sketch);
        }
        dowelPins();
    }

    /// The dowel pins, above or below the cut, each on the bottom of its hole in the hanger.
    private void dowelPins() {
        var pin = drive.dowelPin();
        if (pin.blank()) {
            return;
        }
        double deep =
                at.plateInnerMm().nominal() - kit.hanger().dowelHoleDepthMm().nominal();
        double tip = deep + pin.lengthMm().nominal();
        double r = pin.diameterMm().nominal() / 2;
        var seen = new MountPlate(drive.mount(), kit.hanger(), new Point(axis, at.motorZMm()).unit());
        sketch.of(drive.seat(Role.DOWEL_PINS));
        for (var place : seen.dowelPins()) {
            sketch.rectangle(across.x(deep), place.x() - r, across.x(tip), place.x() + r, LineClass.HIDDEN, Fill.OPEN);
            sketch.line(
                    new Point(across.x(deep - 2), place.x()),
                    new Point(across.x(tip + 2), place.x()),
                    LineClass.CENTRE);
        }
    }

    /// One hatched piece, where there is any of it.
    private void solid(double from, double to, double near, double far, Fill hatch) {
        if ((near - far) * toward > 0) {
            sketch.rectangle(across.x(from), near, across.x(to), far, hatch, true);
        }
    }
}
