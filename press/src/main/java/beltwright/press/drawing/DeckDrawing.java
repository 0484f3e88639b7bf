package beltwright.press.drawing;

import beltwright.kit.Hardware;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import java.util.List;

/// Baseplate, riser and deck over the drive, with their screws: all in phantom lines, for the drive is
/// what the views show.
///
/// The deck ends behind the axle and is broken off ahead of it.
record DeckDrawing(Kit kit) {
    private static final double BREAK = 6; // how far the break line zigzags (mm)
    private static final double AXIS_BELOW = 20; // of the steering axis on either side of the axle, as drawn (mm)
    private static final double AXIS_ABOVE = 58;
    private static final double PLATE_EDGE = 9; // from a hole to the end of baseplate and riser, as drawn (mm)

    private double base() {
        return kit.hanger().axleDropMm().nominal();
    }

    private double riser() {
        return kit.riser().blank() ? 0 : kit.riser().thicknessMm().nominal();
    }

    double undersideMm() {
        return base() + riser();
    }

    /// {@return where the deck ends, x ahead of the axle (mm)}
    double endMm() {
        return kit.hanger().axleFromBaseMm().nominal() - kit.deck().endMm().nominal();
    }

    private double middle() {
        return kit.hanger().axleFromBaseMm().nominal();
    }

    /// {@return a point on the upper face, where its name is hung}
    Point topMm() {
        return new Point(endMm() + 12, undersideMm() + kit.deck().thicknessMm().nominal());
    }

    /// {@return a point on the edge of the deck in the plan}
    Point edgeMm() {
        return new Point(kit.deck().widthMm().nominal() * 0.3, endMm());
    }

    /// {@return a point on the hind face of the riser}
    Point riserEndMm() {
        return new Point(
                middle() - kit.riser().holesLengthMm().nominal() / 2 - PLATE_EDGE, undersideMm() - riser() / 4);
    }

    private List<Double> holes() {
        double half = kit.hanger().baseLengthMm().nominal() / 2;
        return List.of(middle() - half, middle() + half);
    }

    /// @param ahead how far ahead of the axle the deck is shown
    void side(Sketch sketch, double ahead) {
        baseplate(sketch);
        steeringAxis(sketch);
        wedge(sketch);
        if (kit.deck().blank()) {
            return;
        }
        double under = undersideMm();
        double thick = kit.deck().thicknessMm().nominal();
        double well = kit.deck().wheelWellMm().nominal();
        sketch.of(SeatName.of(Role.DECK));
        sketch.line(ahead, under, endMm(), under, LineClass.PHANTOM);
        sketch.line(endMm(), under, endMm(), under + thick, LineClass.PHANTOM);
        sketch.line(endMm(), under + thick, ahead, under + thick, LineClass.PHANTOM);
        zigzag(sketch, new Point(ahead, under), new Point(ahead, under + thick));
        if (well > 0) {
            double reach = kit.ends().getFirst().wheel().diameterMm().nominal() / 2;
            sketch.line(
                    Math.max(endMm(), -reach), under + well, Math.min(ahead, reach), under + well, LineClass.PHANTOM);
        }
        sketch.of(SeatName.of(Role.DECK_SCREWS));
        for (double x : holes()) {
            new ScrewFigure(kit.deckScrew(), new Point(x, under + thick), new Point(0, -1))
                    .outline(sketch, LineClass.PHANTOM);
            sketch.line(
                    x,
                    under + thick + 3,
                    x,
                    under + thick - kit.deckScrew().lengthMm().nominal() - 3,
                    LineClass.CENTRE);
        }
        sketch.of(SeatName.of(Role.DECK_NUTS));
        double corner = kit.deckNut().thread().hexagonMm() / Math.sqrt(3);
        for (double x : holes()) {
            double seat = face(x) - kit.hanger().baseThicknessMm().nominal();
            sketch.rectangle(
                    x - corner,
                    seat,
                    x + corner,
                    seat - kit.deckNut().heightMm().nominal(),
                    LineClass.PHANTOM,
                    Fill.OPEN);
        }
    }

    /// {@return height of the baseplate's face above the axle: under a wedge it slopes}
    ///
    /// A wedge is measured in the middle of its holes. One that adds to the steering axis is
    /// thicker ahead, for that axis rises towards the board's end.
    private double face(double x) {
        double wedge = kit.riser().blank() ? 0 : kit.riser().wedgeDeg().nominal();
        return base() - (x - middle()) * Math.tan(Math.toRadians(wedge));
    }

    private void baseplate(Sketch sketch) {
        double half = kit.hanger().baseLengthMm().nominal() / 2 + PLATE_EDGE;
        double thick = kit.hanger().baseThicknessMm().nominal();
        double behind = middle() - half;
        double ahead = middle() + half;
        sketch.of(SeatName.of(Role.HANGER));
        sketch.path(
                Contour.polygon(
                        new Point(behind, face(behind) - thick),
                        new Point(ahead, face(ahead) - thick),
                        new Point(ahead, face(ahead)),
                        new Point(behind, face(behind))),
                LineClass.PHANTOM,
                Fill.OPEN);
    }

    /// The axis that the hanger turns about, beside the axle. The other one of a double kingpin is not drawn.
    private void steeringAxis(Sketch sketch) {
        sketch.of(SeatName.of(Role.HANGER));
        sketch.line(axisMm(-AXIS_BELOW), axisMm(AXIS_ABOVE), LineClass.CENTRE);
    }

    /// {@return a point on the steering axis, where its name is hung}
    Point axisEndMm() {
        return axisMm(AXIS_ABOVE);
    }

    /// It rises towards the board's end.
    private Point axisMm(double fromFoot) {
        double angle = Math.toRadians(kit.hanger().steeringAxisDeg().nominal());
        double rake = kit.hanger().rakeMm().nominal();
        var foot = new Point(-rake * Math.sin(angle), -rake * Math.cos(angle));
        return foot.plus(new Point(-Math.cos(angle), Math.sin(angle)).times(fromFoot));
    }

    private void wedge(Sketch sketch) {
        if (kit.riser().blank()) {
            return;
        }
        double half = kit.riser().holesLengthMm().nominal() / 2 + PLATE_EDGE;
        double behind = middle() - half;
        double ahead = middle() + half;
        sketch.of(SeatName.of(Role.RISER));
        sketch.path(
                Contour.polygon(
                        new Point(behind, face(behind)),
                        new Point(ahead, face(ahead)),
                        new Point(ahead, undersideMm()),
                        new Point(behind, undersideMm())),
                LineClass.PHANTOM,
                Fill.OPEN);
    }

    private static void zigzag(Sketch sketch, Point from, Point to) {
        var step = to.minus(from);
        var aside = step.unit().left().times(BREAK / 2);
        var a = from.plus(step.times(0.4)).plus(aside);
        var b = from.plus(step.times(0.6)).minus(aside);
        sketch.line(from, a, LineClass.PHANTOM);
        sketch.line(a, b, LineClass.PHANTOM);
        sketch.line(b, to, LineClass.PHANTOM);
    }

    /// @param ahead how far ahead of the axle the deck is shown
    void plan(Sketch sketch, double ahead) {
        double length = kit.hanger().baseLengthMm().nominal() / 2 + PLATE_EDGE;
        double width = kit.hanger().baseWidthMm().nominal() / 2 + PLATE_EDGE;
        sketch.of(SeatName.of(Role.HANGER));
        sketch.rectangle(-width, middle() - length, width, middle() + length, LineClass.PHANTOM, Fill.OPEN);
        if (!kit.riser().blank()) {
            double half = kit.riser().holesLengthMm().nominal() / 2 + PLATE_EDGE;
            double wide = kit.riser().holesWidthMm().nominal() / 2 + PLATE_EDGE;
            sketch.of(SeatName.of(Role.RISER));
            sketch.rectangle(-wide, middle() - half, wide, middle() + half, LineClass.PHANTOM, Fill.OPEN);
        }
        if (kit.deck().blank()) {
            return;
        }
        double wide = kit.deck().widthMm().nominal() / 2;
        sketch.of(SeatName.of(Role.DECK));
        sketch.line(-wide, ahead, -wide, endMm(), LineClass.PHANTOM);
        sketch.line(-wide, endMm(), wide, endMm(), LineClass.PHANTOM);
        sketch.line(wide, endMm(), wide, ahead, LineClass.PHANTOM);
        zigzag(sketch, new Point(-wide, ahead), new Point(wide, ahead));
        double half = kit.deck().holesWidthMm().nominal() / 2;
        double along = kit.deck().holesLengthMm().nominal() / 2;
        double hole = kit.deck().holeMm().nominal() / 2;
        for (int i = 0; i < Hardware.needed(kit, SeatName.of(Role.DECK_SCREWS)); i++) {
            var at = new Point((i % 2 == 0 ? -1 : 1) * half, middle() + (i < 2 ? -1 : 1) * along);
            sketch.of(SeatName.of(Role.DECK));
            sketch.circle(at, hole, LineClass.PHANTOM);
            sketch.of(SeatName.of(Role.DECK_SCREWS));
            sketch.circle(at, kit.deckScrew().head().diameterMm(kit.deckScrew().thread()) / 2, LineClass.PHANTOM);
        }
    }
}
