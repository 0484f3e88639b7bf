package beltwright.press.drawing;

import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.DriveLayout;
import beltwright.layout.Layout;
import beltwright.part.Hanger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// The whole hanger seen from above, cut through the axle: forward is up the sheet, left is left.
///
/// Each drive is cut through its own shaft, so that pulleys, belt and screws are seen in section; it stands where it is
/// seen from above.
final class PlanView {
    private static final double DECK_PAST = 12; // how far the deck is shown past the drives (mm)

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
        hanger(drives.keySet());
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
        new DeckDrawing(kit).plan(sketch, ahead());
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

    /// {@return how far ahead of the axle a deck is shown}
    private double ahead() {
        double ahead = kit.hanger().bodyReachMm().nominal();
        for (int i = 0; i < kit.drives().size(); i++) {
            double can = kit.drives().get(i).motor().canDiameterMm().nominal() / 2;
            ahead = Math.max(ahead, layout.drives().get(i).motorXMm() + can);
        }
        for (var end : kit.ends()) {
            ahead = Math.max(ahead, end.wheel().diameterMm().nominal() / 2);
        }
        return ahead + DECK_PAST;
    }

    /// A mount in one piece with the hanger is part of its outline: there is no joint to draw.
    private void hanger(Collection<DriveSection> drives) {
        var hanger = kit.hanger();
        double half = hanger.widthMm().nominal() / 2;
        double depth = hanger.sectionDepthMm().nominal() / 2;
        if (hanger.section() == Hanger.Section.ROUND) {
            depth = hanger.sectionHeightMm().nominal() / 2;
        }
        double body = hanger.bodyWidthMm().nominal() / 2;
        double reach = Math.max(hanger.bodyReachMm().nominal(), depth);
        sketch.of(SeatName.of(Role.HANGER));
        var roots = drives.stream()
                .map(DriveSection::mount)
                .filter(MountSection::inOnePiece)
                .map(MountSection::rootOfPlate)
                .sorted(Comparator.comparingDouble(Bounds::left))
                .toList();
        var corners = new ArrayList<Point>();
        var back = List.of(
                new Point(-half, -depth),
                new Point(-body, -depth),
                new Point(-body, -reach),
                new Point(body, -reach),
                new Point(body, -depth),
                new Point(half, -depth));
        var front = back.reversed().stream().map(p -> new Point(p.x(), -p.y())).toList();
        corners.addAll(edge(back, roots, false));
        corners.addAll(edge(front, roots.reversed(), true));
        sketch.path(
                List.of(Contour.polygon(corners.toArray(Point[]::new))),
                LineClass.OUTLINE,
                materials.hatch(hanger.material()),
                false);
        for (var side : Side.values()) {
            axle(side);
        }
    }

    /// One long edge of the hanger, with every plate that grows out of it.
    private static List<Point> edge(List<Point> straight, List<Bounds> plates, boolean front) {
        var edge = new ArrayList<>(straight);
        int way = front ? -1 : 1;
        for (var plate : plates) {
            double first = front ? plate.right() : plate.left();
            double second = front ? plate.left() : plate.right();
            double out = front ? plate.top() : plate.bottom();
            int at = 0;
            while (at < edge.size() && way * edge.get(at).x() < way * first) {
                at++;
            }
            double y = edge.get(Math.max(0, at - 1)).y();
            edge.addAll(
                    at,
                    List.of(new Point(first, y), new Point(first, out), new Point(second, out), new Point(second, y)));
        }
        return edge;
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
