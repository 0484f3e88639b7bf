package beltwright.press;

import beltwright.assembly.Box;
import beltwright.assembly.Step;
import beltwright.assembly.Tally;
import beltwright.check.Finding;
import beltwright.check.FirstNumber;
import beltwright.check.Line;
import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.kit.Chance;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.KitDraft;
import beltwright.kit.Role;
import beltwright.kit.Seat;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.DrawnDimension;
import beltwright.layout.DriveLayout;
import beltwright.layout.EndLayout;
import beltwright.layout.Layout;
import beltwright.part.Label;
import beltwright.part.PropertyClass;
import beltwright.part.Screw;
import beltwright.part.ScrewHead;
import beltwright.part.Thread;
import beltwright.quantity.Dimension;
import beltwright.quantity.Provenance;
import beltwright.quantity.Range;
import beltwright.quantity.Source;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/// A dossier written by hand, small enough to read: one failing finding, one that cannot tell, one step.
public final class HandMade {
    private static final Provenance MEASURED = new Provenance(Source.MEASURED, "written by hand for a test");
    private static final SeatName MOTOR_SCREWS = new SeatName(Side.LEFT, Role.MOTOR_SCREWS);

    private HandMade() {}

    public static Dossier dossier() {
        var step = new Step(
                1,
                "Screw the left motor to its mount",
                "left motor to mount",
                List.of(new Step.Take("screw-m4x16", "M4 × 16 socket head screw <4>", 4, "left motor screws", false)),
                List.of("3 mm hex key"),
                new Step.Torque(2.1, "70 % of proof load, friction 0.12"),
                "medium-strength threadlocker on the thread",
                List.of("Put the four screws in finger-tight."),
                List.of("Keep the pack unplugged."),
                List.of("left motor screws"),
                List.of("left mount to hanger: the screws are behind the plate afterwards"));
        return new Dossier(
                kit(),
                new Layout(List.of(drive()), List.of(end())),
                List.of(screwFails(), clampCannotTell()),
                List.of(new FirstNumber(
                        "hill current.left",
                        "Current per motor on the hill",
                        "I",
                        31.5,
                        "A",
                        List.of("task.gradePercent"),
                        List.of("motor.resistanceOhm"),
                        "rolling resistance by habit",
                        working())),
                List.of(new DrawnDimension(
                        "centre distance",
                        DrawnDimension.View.SIDE,
                        Side.LEFT,
                        0,
                        0,
                        68,
                        22.1,
                        DrawnDimension.Along.POINTS,
                        false,
                        "slot.left")),
                new Box(List.of(new Box.Item(
                        "screw-m4x16",
                        "M4 × 16 socket head screw <4>",
                        "screw",
                        "1",
                        4,
                        Double.NaN,
                        List.of("left motor screws")))),
                List.of(step),
                List.of(new Tally("screw-m4x16", "M4 × 16 socket head screw <4>", 4, 4)));
    }

    private static Kit kit() {
        var mass = Dimension.unknown("screw-m4x16.massKg", MEASURED);
        var screw = new Screw(
                new Label("screw-m4x16", "M4 × 16 socket head screw <4>", "1", mass, ""),
                Thread.M4,
                ScrewHead.values()[0],
                Dimension.exact("screw-m4x16.lengthMm", 16, MEASURED),
                PropertyClass.values()[0]);
        var filling = new KitDraft.Filling(screw.id(), 4, false);
        var draft = new KitDraft(
                "hand-made",
                "Hand-made & small",
                true,
                "for tests",
                Map.of(MOTOR_SCREWS, filling),
                Map.of(),
                Map.of(),
                null);
        var seats = new TreeMap<SeatName, Seat>();
        seats.put(MOTOR_SCREWS, new Seat(MOTOR_SCREWS, screw, 4, false));
        var no = List.<Joint>of();
        return new Kit(
                draft,
                seats,
                no,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                List.of(),
                null,
                null,
                Chance.NONE);
    }

    private static List<Line> working() {
        return List.of(new Line("t", "L - g - w", "16 - 8 - 0.8", 7.2, "mm", "dimension chain"));
    }

    private static Finding screwFails() {
        return new Finding(
                "screw into motor.left",
                "screw into motor",
                Verdict.FAILS,
                7.2,
                6,
                7.55,
                6,
                6.85,
                6,
                "mm",
                6 / 7.2 - 1,
                6 / 7.55 - 1,
                6 / 6.85 - 1,
                List.of("left motor screws", "left motor"),
                List.of("screw-m4x16.massKg"),
                List.of("motor.threadDepthMm"),
                "The screw reaches 7.2 mm into the motor; 6.0 mm is allowed.",
                "14 mm long instead: 5.2 mm.",
                "dimension chain",
                working());
    }

    private static Finding clampCannotTell() {
        double none = Double.NaN;
        return new Finding(
                "clamp screw.left",
                "clamp screw",
                Verdict.CANNOT_TELL,
                none,
                none,
                none,
                none,
                none,
                none,
                "mm",
                null,
                null,
                null,
                List.of("left mount"),
                List.of("mount.clampGripMm"),
                List.of(),
                "Needs the grip of the clamp.",
                "Measure the clamp.",
                "dimension chain",
                List.of());
    }

    private static DriveLayout drive() {
        var r = new Range(70.9, 71.5, 72.1);
        return new DriveLayout(
                Side.LEFT,
                true,
                r,
                r,
                r,
                Range.exact(5.998),
                134.9,
                66.2,
                68,
                22.1,
                Double.NaN,
                Double.NaN,
                r,
                r,
                r,
                r,
                r,
                r,
                r,
                r,
                r,
                r,
                r);
    }

    private static EndLayout end() {
        var r = new Range(1, 2, 3);
        return new EndLayout(Side.LEFT, r, r, r, r, r, r, r, r);
    }
}
