package beltwright.press.drawing;

import beltwright.assembly.Step;
import beltwright.dossier.Dossier;
import beltwright.kit.Drive;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DriveLayout;
import beltwright.part.Idler;
import beltwright.part.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/// Draws a dossier: a side view for each drive, a plan of the whole hanger, and a small picture for a guide step.
///
/// @param revision as the title strip prints it, "draft" where it is not released
/// @param finding key of the finding whose distance is drawn in the accent, or empty
public record DrawingOffice(Dossier dossier, Reference reference, String revision, String finding) {
    private static final double[] SCALES = {1, 0.5, 0.2, 0.1};
    private static final double WIDEST = 420; // A3 across (mm)
    private static final double HIGHEST = 297;
    private static final double MARGIN = 6; // around a view inside the frame (mm on the sheet)

    public DrawingOffice(Dossier dossier, Reference reference, String revision) {
        this(dossier, reference, revision, "");
    }

    /// {@return the same office, with the distance of one finding in the accent}
    public DrawingOffice pointingAt(String findingKey) {
        return new DrawingOffice(dossier, reference, revision, findingKey);
    }

    /// {@return every sheet of the kit: side views in the order of its drives, then the plan}
    public List<Drawing> all() {
        var all = new ArrayList<Drawing>();
        dossier.layout().drives().forEach(d -> all.add(side(d.side())));
        all.add(plan());
        return all;
    }

    /// @throws java.util.NoSuchElementException if that side has no drive
    public Drawing side(Side side) {
        var sketch = sideSketch(side);
        return sheet(
                "side-" + side,
                "Side view, " + side + " drive",
                layout(side).closed()
                        ? "seen from outside, wheel off, hanger cut at the mount"
                        : "the belt does not go around: the motor is drawn in the middle of its slot",
                facing(sketch.entities(), side),
                wanted(DrawnDimension.View.SIDE, Optional.of(side)),
                sideWords(side),
                sketch.unfinished(),
                new Point(side == Side.LEFT ? -1 : 1, 0));
    }

    public Drawing plan() {
        var sketch = new PlanView(dossier.kit(), dossier.layout(), new Materials(reference)).draw();
        return sheet(
                "plan",
                "Plan",
                dossier.kit().drives().stream().allMatch(d -> d.idler().blank())
                        ? "seen from above, cut through the axle and the motor shafts"
                        : "seen from above, cut through axle, motor shafts and idlers",
                sketch.entities(),
                wanted(DrawnDimension.View.PLAN, Optional.empty()),
                planWords(),
                sketch.unfinished(),
                new Point(0, 1));
    }

    /// {@return what draws a small picture of what a guide step works on; empty where its seats are in no view}
    public Function<Step, Optional<Drawing>> steps() {
        return new StepPicture(this)::of;
    }

    Sketch sideSketch(Side side) {
        return new SideView(dossier.kit(), drive(side), layout(side), new Materials(reference)).draw();
    }

    static List<Entity> facing(List<Entity> entities, Side side) {
        var placing = SideView.facing(side);
        return placing.mirrored()
                ? entities.stream().map(e -> Mirror.of(e, placing)).toList()
                : entities;
    }

    private Drawing sheet(
            String id,
            String view,
            String note,
            List<Entity> entities,
            List<Annotation.Wanted> wanted,
            List<Callout> callouts,
            List<String> unfinished,
            Point travel) {
        var kit = dossier.kit().draft();
        var told = unfinished.isEmpty()
                ? note
                : "not drawn whole, a dimension is unknown: " + String.join(", ", unfinished);
        Drawing drawing = null;
        for (double scale : SCALES) {
            var annotation = new Annotation(entities, scale);
            annotation.dimensions(wanted);
            annotation.callouts(callouts);
            var words = new TitleStrip.Words(kit.name(), revision, view, told, scale, kit.invented());
            var covered = annotation.bounds().grown(MARGIN);
            double width = Math.ceil(Math.max(covered.width() + 2 * TitleStrip.FRAME, words.leastWidthMm()));
            double height = Math.ceil(covered.height() + 2 * TitleStrip.FRAME + TitleStrip.FOOT + TitleStrip.HEAD);
            var place = new Point(
                    (width - covered.width()) / 2 - covered.left(),
                    TitleStrip.FRAME + TitleStrip.FOOT - covered.bottom());
            var all = new ArrayList<>(entities);
            all.addAll(annotation.placed());
            drawing = new Drawing(
                    kit.id() + "-" + id,
                    kit.name() + ": " + view.toLowerCase(Locale.ROOT),
                    tells(view, told, wanted),
                    width,
                    height,
                    scale,
                    List.of(
                            new View(
                                    "sheet",
                                    TitleStrip.of(words, width, height, travel),
                                    new Placing(1, Point.ORIGIN),
                                    null),
                            new View(view, all, new Placing(scale, place), null)));
            if (width <= WIDEST && height <= HIGHEST) {
                break;
            }
        }
        return Objects.requireNonNull(drawing);
    }

    private static String tells(String view, String note, List<Annotation.Wanted> wanted) {
        var tells = new StringBuilder(view).append(", ").append(note).append('.');
        for (var w : wanted) {
            tells.append(' ')
                    .append(Character.toUpperCase(w.dimension().name().charAt(0)))
                    .append(w.dimension().name().substring(1))
                    .append(", ")
                    .append(w.dimension().side())
                    .append(": ")
                    .append(w.text())
                    .append(" mm.");
        }
        return tells.toString();
    }

    private List<Annotation.Wanted> wanted(DrawnDimension.View view, Optional<Side> side) {
        return dossier.dimensions().stream()
                .filter(d -> d.view() == view && side.map(s -> s == d.side()).orElse(true))
                .map(d -> {
                    var from = onSheet(d, d.fromX(), d.fromY());
                    var to = onSheet(d, d.toX(), d.toY());
                    return new Annotation.Wanted(
                            d, from, to, !finding.isEmpty() && d.finding().equals(finding));
                })
                .filter(w -> w.from().finite() && w.to().finite())
                .toList();
    }

    private static Point onSheet(DrawnDimension d, double x, double y) {
        return switch (d.view()) {
            case SIDE -> SideView.facing(d.side()).of(new Point(x, y));
            case PLAN -> PlanView.onSheet(x, y);
        };
    }

    private List<Callout> sideWords(Side side) {
        var drive = drive(side);
        var at = layout(side);
        var facing = SideView.facing(side);
        var motor = new Point(at.motorXMm(), at.motorZMm());
        var outward = motor.unit();
        var words = new ArrayList<Callout>();
        var wheel = drive.end().wheel();
        double worn = wheel.wornDiameterMm().nominal() / 2;
        double fresh = wheel.diameterMm().nominal() / 2;
        double away = outward.angle() + Math.PI;
        words.add(edge(drive, Role.WHEEL, facing.of(Point.polar(fresh, away + 0.5)), "wheel, new"));
        words.add(edge(drive, Role.WHEEL, facing.of(Point.polar(worn, away + 0.75)), "wheel, worn"));
        var big = drive.wheelPulley().rim();
        words.add(edge(
                drive,
                Role.WHEEL_PULLEY,
                facing.of(Point.polar(big.outsideDiameterMm() / 2, away - 0.6)),
                big.teeth() + " teeth"));
        var small = drive.drivePulley().rim();
        words.add(edge(
                drive,
                Role.DRIVE_PULLEY,
                facing.of(motor.plus(Point.polar(small.outsideDiameterMm() / 2, outward.angle() - 0.3))),
                small.teeth() + " teeth"));
        var can = drive.motor().canDiameterMm().nominal() / 2;
        words.add(edge(drive, Role.MOTOR, facing.of(motor.plus(Point.polar(can, outward.angle() + 1.9))), "motor can"));
        var belt = drive.belt();
        var path = BeltPath.of(drive, at);
        if (path.exists()) {
            words.add(edge(
                    drive,
                    Role.BELT,
                    facing.of(path.stretches(0).getLast().halfway()),
                    belt.profile().standard() + ", " + belt.teeth() + " teeth"));
        }
        var idler = new IdlerDrawing(drive, at);
        if (idler.any()) {
            words.add(Callout.face(drive.seat(Role.IDLER), facing.of(idler.face()), idlerWords(drive.idler())));
        }
        var cover = new CoverDrawing(drive, at);
        if (cover.any()) {
            words.add(edge(drive, Role.COVER, facing.of(cover.farEnd()), "cover, face cut away"));
        }
        var deck = new DeckDrawing(dossier.kit());
        words.add(Callout.edge(SeatName.of(Role.HANGER), facing.of(deck.axisEndMm()), "steering axis"));
        if (!dossier.kit().deck().blank()) {
            words.add(Callout.edge(SeatName.of(Role.DECK), facing.of(deck.topMm()), "deck"));
        }
        if (!dossier.kit().riser().blank()) {
            words.add(Callout.edge(SeatName.of(Role.RISER), facing.of(deck.riserEndMm()), "riser"));
        }
        return words;
    }

    private static String idlerWords(Idler idler) {
        return idler.runs() == Idler.Runs.INSIDE ? "idler, " + idler.teeth() + " teeth" : "idler on the back";
    }

    private static Callout edge(Drive drive, Role role, Point at, String words) {
        return Callout.edge(drive.seat(role), at, words);
    }

    /// Names of the parts on the first driven side, and where the windings begin on every one.
    private List<Callout> planWords() {
        var words = new ArrayList<Callout>();
        for (var at : dossier.layout().drives()) {
            var drive = drive(at.side());
            double depth =
                    at.plateInnerMm().nominal() - drive.motor().threadDepthMm().nominal();
            double can = drive.motor().canDiameterMm().nominal() / 2;
            var across = new Stations(dossier.kit(), at.side());
            words.add(edge(
                    drive,
                    Role.MOTOR,
                    new Point(across.x(depth), at.motorXMm() + (at.motorXMm() < 0 ? -can : can)),
                    "windings begin"));
        }
        var at = dossier.layout().drives().getFirst();
        var drive = drive(at.side());
        if (!dossier.kit().deck().blank()) {
            words.add(Callout.edge(SeatName.of(Role.DECK), new DeckDrawing(dossier.kit()).edgeMm(), "deck"));
        }
        words.addAll(PartNames.of(dossier.kit(), drive, at, dossier.layout().end(at.side())));
        return words;
    }

    Drive drive(Side side) {
        return dossier.kit().drives().stream()
                .filter(d -> d.side() == side)
                .findFirst()
                .orElseThrow();
    }

    private DriveLayout layout(Side side) {
        return dossier.layout().drives().stream()
                .filter(d -> d.side() == side)
                .findFirst()
                .orElseThrow();
    }
}
