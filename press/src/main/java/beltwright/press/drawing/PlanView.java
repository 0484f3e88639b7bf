package beltwright.press.drawing;

import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.DriveLayout;
import beltwright.layout.Layout;
import beltwright.part.Hanger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// The whole hanger seen from above, cut through the axle: forward is up the sheet, left is left.
///
/// Each drive is cut through its own shaft, so that pulleys, belt and screws are seen in section; it stands where it is
/// seen from above.
final class PlanView {
    private final Kit kit;
    private final Layout layout;
    private final Materials materials;
    private final Sketch sketch = new Sketch();

    PlanView(Kit kit, Layout layout, Materials materials) {
        this.kit = kit;
        this.layout = layout;
        this.materials = materials;
    }

    /// {@return where a point of the plan, x forward and y left, stands on the sheet}
    static Point onSheet(double forward, double left) {
        return new Point(-left, forward);
    }

    Sketch draw() {
        var drives = sections();
        // what lies below the axle is drawn first, so that what lies above it covers it
        drives.forEach((section, at) -> {
            if (at.motorZMm() < 0) {
                section.drawOnMotor();
            }
        });
        hanger();
        for (var end : kit.ends()) {
            var seat = layout.drives().stream()
                    .filter(d -> d.side() == end.side())
                    .mapToDouble(d -> d.pulleySeatMm().nominal())
                    .findFirst();
            new EndSection(sketch, kit, end, layout.end(end.side()), seat, materials).draw();
        }
        drives.forEach((section, at) -> section.drawOnAxle());
        drives.forEach((section, at) -> {
            if (!(at.motorZMm() < 0)) {
                section.drawOnMotor();
            }
        });
        centreLine();
        return sketch;
    }

    private Map<DriveSection, DriveLayout> sections() {
        var sections = new LinkedHashMap<DriveSection, DriveLayout>();
        for (int i = 0; i < layout.drives().size(); i++) {
            var at = layout.drives().get(i);
            sections.put(new DriveSection(sketch, kit, kit.drives().get(i), at, materials), at);
        }
        return sections;
    }

    private void hanger() {
        var hanger = kit.hanger();
        double half = hanger.widthMm().nominal() / 2;
        double depth = hanger.sectionDepthMm().nominal() / 2;
        if (hanger.section() == Hanger.Section.ROUND) {
            depth = hanger.sectionHeightMm().nominal() / 2;
        }
        double body = hanger.bodyWidthMm().nominal() / 2;
        double reach = Math.max(hanger.bodyReachMm().nominal(), depth);
        sketch.of(SeatName.of(Role.HANGER));
        sketch.path(
                List.of(Contour.polygon(
                        new Point(-half, -depth),
                        new Point(-body, -depth),
                        new Point(-body, -reach),
                        new Point(body, -reach),
                        new Point(body, -depth),
                        new Point(half, -depth),
                        new Point(half, depth),
                        new Point(body, depth),
                        new Point(body, reach),
                        new Point(-body, reach),
                        new Point(-body, depth),
                        new Point(-half, depth))),
                LineClass.OUTLINE,
                materials.hatch(hanger.material()),
                false);
        for (var side : Side.values()) {
            axle(side);
        }
    }

    /// A shaft is not hatched when it is cut lengthwise.
    private void axle(Side side) {
        var hanger = kit.hanger();
        var across = new Stations(kit, side);
        double r = hanger.axleDiameterMm().nominal() / 2;
        double end = hanger.axleLengthMm().nominal();
        double thread = end - hanger.axleThreadLengthMm().nominal();
        double major = hanger.axleThread().majorMm() / 2;
        double minor = hanger.axleThread().minorDiameterMm() / 2;
        sketch.rectangle(across.x(0), -r, across.x(thread), r, LineClass.OUTLINE, Fill.PAPER);
        sketch.rectangle(across.x(thread), -major, across.x(end), major, LineClass.OUTLINE, Fill.PAPER);
        sketch.line(across.x(thread), minor, across.x(end), minor, LineClass.EDGE);
        sketch.line(across.x(thread), -minor, across.x(end), -minor, LineClass.EDGE);
    }

    private void centreLine() {
        sketch.ofNothing();
        double end = kit.hanger().widthMm().nominal() / 2
                + kit.hanger().axleLengthMm().nominal()
                + 6;
        sketch.line(-end, 0, end, 0, LineClass.CENTRE);
        double reach = kit.hanger().bodyReachMm().nominal() + 6;
        sketch.line(0, -reach, 0, reach, LineClass.CENTRE);
    }
}
