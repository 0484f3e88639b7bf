package beltwright.assembly;

import beltwright.kit.Drive;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.part.DrivePulley;
import beltwright.part.Material;
import beltwright.part.Mount;
import beltwright.part.Part;
import beltwright.part.ShaftForm;
import beltwright.part.Wheel;
import beltwright.part.WheelPulley;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/// What a step says, from the joint it makes and the parts it joins.
final class StepWords {
    private static final String PULLEY_SLIPS = "A pulley that slips on its shaft neither drives nor brakes.";

    /// - Source: common practice, no source.
    private static final String PLASTIC =
            "Printed or moulded plastic carries the belt's load here: it creeps, softens when warm and breaks without"
                    + " warning. Look for cracks and white marks before every ride; at the first it is scrap.";

    /// - Source: common practice, no source, the number of rides too.
    private static final String AXLE =
            "A broken axle throws the rider. One that was struck, dropped hard or bent is scrap; every 20 rides take the"
                    + " wheel off and look for cracks at its step (common practice, no source).";

    /// - Source: common practice, no source.
    private static final String PINS =
            "Wear eye protection: a hardened pin splinters under a steel hammer, so press it or use a brass drift. Wipe"
                    + " chips out of the holes, never blow them out; fingers out of the press.";

    private StepWords() {}

    static String title(Joint joint) {
        var added = joint.of().getFirst();
        if (added.role() == Role.RISER) {
            return "Lay the riser between deck and baseplate";
        }
        if (added.role() == Role.DECK) {
            return "Screw the deck on the baseplate";
        }
        var onto = joint.of().size() > 1 ? " " + onto(joint) : "";
        return switch (joint.by()) {
            case CLAMP ->
                added.role() == Role.DRIVE_PULLEY ? "Fix the " + added + " on the shaft" : "Clamp the " + added + onto;
            case SCREWS -> "Screw the " + added + onto;
            case SET_SCREWS -> "Fix the " + added + " on the shaft";
            case PRESS_FIT -> "Press the " + added + onto;
            case SLIDE -> "Slide the " + added + onto;
            case TEETH -> "Lay the " + added + " on its pulleys";
            case NUT -> "Tighten the nut of the " + added;
            case ONE_PIECE -> "Check the " + added + ", made in one piece with the hanger";
        };
    }

    private static String onto(Joint joint) {
        var base = joint.of().get(1);
        return switch (base.role()) {
            case HANGER ->
                switch (joint.by()) {
                    case CLAMP -> "on the hanger";
                    case SCREWS -> "to the hanger";
                    default -> "on the axle";
                };
            case WHEEL -> joint.by() == Joint.Way.SCREWS ? "to the wheel" : "into the wheel";
            default -> "to the " + base;
        };
    }

    private static Optional<Drive> drive(Kit kit, Joint joint) {
        return kit.drives().stream()
                .filter(d -> d.side() == joint.of().getFirst().side())
                .findFirst();
    }

    static List<String> does(Kit kit, Joint joint) {
        var added = joint.of().getFirst();
        var does = new ArrayList<String>();
        switch (joint.by()) {
            case CLAMP ->
                drive(kit, joint).ifPresent(d -> {
                    if (added.role() == Role.DRIVE_PULLEY) {
                        pulley(d, does);
                    } else {
                        clamp(d, joint, does);
                    }
                });
            case SCREWS -> screws(kit, joint, does);
            case SET_SCREWS -> drive(kit, joint).ifPresent(d -> pulley(d, does));
            case PRESS_FIT -> {
                if (added.role() == Role.WHEEL_PULLEY) {
                    does.add("Press the pulley straight into the recess of the core until it is seated all around.");
                    does.add("Mark pulley and core across the joint with paint: if the marks part, it has slipped.");
                    return does;
                }
                does.add("Press on the outer ring only, straight, until it rests on its shoulder.");
                does.add("The bearing must still turn by hand without grinding.");
            }
            case SLIDE -> slide(kit, joint, does);
            case ONE_PIECE ->
                does.add("Look along the hanger: the mount must stand square to it, without a crack at its root.");
            case TEETH -> {
                does.add("Push the motor in towards the axle.");
                does.add(
                        drive(kit, joint).map(Drive::beltSlidesOn).orElse(false)
                                ? "Lay the belt in the wheel pulley, ready to go over the drive pulley as the wheel slides on."
                                : "Lay the belt around both pulleys; never lever it over a flange.");
            }
            case NUT -> {
                boolean driven = drive(kit, joint).isPresent();
                if (driven) {
                    does.add("Turn the wheel before you tighten and remember how it feels: the belt is on, so the motor"
                            + " turns with it, and its magnets are felt as even notches.");
                }
                does.add("Tighten to the torque; at least one full thread stands past the nut.");
                does.add(
                        driven
                                ? "Turn it again: it must feel as before, without play at the rim. If it turns harder than"
                                        + " before, the core spacer is too short: stop."
                                : "The wheel must now spin freely without play. If it drags, the core spacer is too short: stop.");
            }
        }
        return does;
    }

    private static void clamp(Drive d, Joint joint, List<String> does) {
        press(joint, does);
        double angle = d.placement().aboveAxleDeg().nominal();
        does.add("Set the outer face of the plate "
                + Numbers.fixed(d.placement().plateInsetMm().nominal(), 1) + " mm inside the end face of the hanger.");
        does.add("Turn the mount so that the motor will lie " + d.placement().motor() + " of the axle, "
                + Numbers.fixed(Math.abs(angle), 0) + "° " + (angle < 0 ? "below" : "above") + " its line.");
        overPins(joint, does);
        does.add("Tighten the clamp screws in turn, a little at a time, so that the gap stays even.");
    }

    private static void screws(Kit kit, Joint joint, List<String> does) {
        if (joint.of().getFirst().role() == Role.MOTOR) {
            does.add("Hold the motor against the inner face of the plate, wires away from wheel and ground.");
            does.add(
                    "Put a washer on each screw, pass it through its slot and turn it in by hand: leave the motor just able to slide.");
            does.add("These screws get their torque when the belt tension is set.");
            return;
        }
        switch (joint.of().getFirst().role()) {
            case MOUNT -> flange(kit, joint, does);
            case IDLER -> idler(kit, joint, does);
            case COVER -> {
                does.add("Lay the wires clear of belt and wheel, then slide the cover over the drive pulley.");
                does.add("Tighten its screws by hand; turn the wheel twice: nothing rubs.");
            }
            case DECK -> {
                does.add("Pass the screws through deck" + (kit.riser().blank() ? "" : ", riser")
                        + " and baseplate, put the nuts on and tighten crosswise.");
                does.add("Lean the deck fully to both sides: no wheel, motor or wire touches it.");
            }
            default -> pulleyScrews(kit, joint, does);
        }
    }

    private static void flange(Kit kit, Joint joint, List<String> does) {
        press(joint, does);
        drive(kit, joint).ifPresent(d -> {
            double angle = d.placement().aboveAxleDeg().nominal();
            does.add("Turn the mount to the position in which the motor will lie "
                    + d.placement().motor()
                    + " of the axle, " + Numbers.fixed(Math.abs(angle), 0) + "° " + (angle < 0 ? "below" : "above")
                    + " its line; the holes allow no other near it.");
        });
        overPins(joint, does);
        does.add("Tighten the screws crosswise, a little at a time.");
    }

    private static boolean pinned(Joint joint) {
        return joint.with().stream().anyMatch(s -> s.role() == Role.DOWEL_PINS);
    }

    /// Pins go in before the screws: what screws pull on tilts, and nobody sees it.
    private static void press(Joint joint, List<String> does) {
        if (pinned(joint)) {
            does.add("Clean and lightly oil the dowel holes. Press each pin straight into the hanger, slowly, until it"
                    + " stands on the bottom of its hole.");
        }
    }

    private static void overPins(Joint joint, List<String> does) {
        if (pinned(joint)) {
            does.add("Slide the mount over the pins by hand until it lies flat, without play; never pull it on with its"
                    + " screws.");
        }
    }

    private static void idler(Kit kit, Joint joint, List<String> does) {
        drive(kit, joint)
                .ifPresent(d -> does.add("Set the idler "
                        + Numbers.fixed(d.placement().idlerAlongMm().nominal(), 1)
                        + " mm from the axle towards the motor and "
                        + Numbers.fixed(Math.abs(d.placement().idlerAsideMm().nominal()), 1) + " mm "
                        + (d.placement().idlerAsideMm().nominal() < 0 ? "below" : "above")
                        + " that line, then lock it."));
        does.add("It must stay where it is: a board brakes through the same belt.");
    }

    private static void pulleyScrews(Kit kit, Joint joint, List<String> does) {
        boolean lugs = drive(kit, joint).stream().anyMatch(d -> d.wheelPulley().holding() == WheelPulley.Holding.LUGS);
        does.add(
                lugs
                        ? "Push the lugs fully into the openings of the core; the pulley must sit flat all around."
                        : "Lay the pulley flat on the core, hole over hole.");
        does.add(
                plastic(kit, joint)
                        ? "Tighten the screws crosswise with a short key until the pulley sits flat, no further: plastic"
                                + " gives way under the heads, and what it bears is not known. Look again after the first ride."
                        : "Tighten the screws crosswise.");
    }

    private static void pulley(Drive d, List<String> does) {
        boolean keyed = d.motor().shaftForm() == ShaftForm.KEYED;
        does.add((keyed ? "Lay the key in the shaft, then slide" : "Slide") + " the pulley on, hub towards the "
                + d.drivePulley().hubSide() + ", "
                + Numbers.fixed(d.placement().pulleyStandoffMm().nominal(), 1) + " mm from the plate to its near end.");
        if (!d.setScrew().blank()) {
            does.add(nipped(d));
        }
        if (!d.hubScrew().blank()) {
            does.add(
                    "Shaft and bore must be clean and dry, the slit not over a flat. Turn the hub screws in by hand until"
                            + " the pulley just stays where it is.");
        }
        if (!d.setScrew().blank() || !d.hubScrew().blank()) {
            does.add("They get their torque when the belt is aligned.");
        }
    }

    private static String nipped(Drive d) {
        return switch (d.motor().shaftForm()) {
            case FLAT -> "Nip the set screws, one of them square on the flat of the shaft" + apart(d) + ".";
            case TWO_FLATS -> "Nip the set screws, each square on a flat of the shaft" + apart(d) + ".";
            case KEYED -> "Nip the set screw; it keeps the pulley from moving along the shaft, the key turns it.";
            case ROUND -> "Nip the set screws in turn" + apart(d) + ".";
        };
    }

    private static String apart(Drive d) {
        return d.drivePulley().setScrews() > 1
                        && d.drivePulley().setScrewsApartDeg().known()
                ? "; they stand "
                        + Numbers.fixed(d.drivePulley().setScrewsApartDeg().nominal(), 1) + "° apart"
                : "";
    }

    private static void slide(Kit kit, Joint joint, List<String> does) {
        switch (joint.of().getFirst().role()) {
            case WHEEL -> {
                if (drive(kit, joint).isPresent()) {
                    does.add(
                            "Slide the wheel on with the pulley facing the mount; the speed ring must lie on the inner ring of the bearing.");
                    does.add(
                            "Guide the belt over its pulley, then turn the wheel by hand: every tooth sits in its groove, nothing rubs.");
                } else {
                    does.add("Slide the wheel on; the speed ring must lie on the inner ring of the bearing.");
                }
            }
            case RISER ->
                does.add("Lay it hole over hole. A wedge has its thick end where the kit's drawing shows it: turned"
                        + " round it steers the wrong way.");
            case AXLE_SPACER -> does.add("Slide it up against the end face of the hanger.");
            case AXLE_WASHER -> does.add("Lay it on the outer speed ring, under the nut.");
            case CORE_SPACER ->
                does.add("Drop the core spacer in; never ride without it, the nut would pinch the bearings.");
            default ->
                does.add("Slide it up against what is already there; it touches the inner ring of the bearing only.");
        }
    }

    static List<String> cautions(Kit kit, Joint joint) {
        var cautions = new ArrayList<String>();
        switch (joint.by()) {
            case PRESS_FIT ->
                cautions.add(
                        "Never hammer a bearing or press through its balls. Eye protection; fingers out of the press.");
            case TEETH ->
                cautions.add("Battery disconnected: a belt that starts to move takes a finger at the pulley.");
            case NUT -> {
                cautions.add(
                        "A wrong stack or a missing spacer lets a wheel come off. Count the pieces on the axle once more.");
                cautions.add(AXLE);
            }
            case SCREWS -> screwCautions(joint, cautions);
            case ONE_PIECE -> cautions.add("A cracked hanger is scrap: never straighten or weld it.");
            case CLAMP ->
                cautions.add(
                        joint.of().getFirst().role() == Role.DRIVE_PULLEY
                                ? PULLEY_SLIPS
                                : "A mount that turns on the hanger throws the belt off: check the clamp after every strike.");
            case SET_SCREWS -> cautions.add(PULLEY_SLIPS);
            case SLIDE -> {
                if (joint.of().getFirst().role() == Role.WHEEL
                        && drive(kit, joint).isPresent()) {
                    cautions.add("Keep fingers out from between wheel pulley and plate.");
                }
            }
        }
        if (pinned(joint)) {
            cautions.add(PINS);
        }
        if (carriesBelt(kit, joint)) {
            cautions.add(PLASTIC);
        }
        if (plastic(kit, joint)) {
            cautions.add("No threadlocker on plastic: some plastics crack under it.");
        }
        return cautions;
    }

    private static void screwCautions(Joint joint, List<String> cautions) {
        switch (joint.of().getFirst().role()) {
            case MOTOR -> {
                cautions.add("Only the screws of this list: a longer one reaches the windings and ruins the motor.");
                cautions.add("Pinched or bent wires short the pack: keep them off edges, belt and wheel.");
            }
            case COVER -> cautions.add("Never run the belt with the cover off and hands near it.");
            case DECK ->
                cautions.add(
                        "A wheel that touches the deck stops at once and throws the rider: lean it fully by hand first.");
            case IDLER -> cautions.add("No sprung idler: under braking it gives way and the belt jumps.");
            default -> {}
        }
    }

    /// {@return whether screws clamp or enter plastic here}
    static boolean plastic(Kit kit, Joint joint) {
        return joint.by() == Joint.Way.SCREWS
                && joint.of().stream()
                        .map(kit::seat)
                        .anyMatch(seat -> material(kit, seat.part()) == Material.Hatch.PLASTIC);
    }

    /// {@return whether the part that is added here is of plastic and stands in the belt's path of load}
    private static boolean carriesBelt(Kit kit, Joint joint) {
        var added = joint.of().getFirst();
        return switch (added.role()) {
            case MOUNT, DRIVE_PULLEY, WHEEL_PULLEY ->
                material(kit, kit.seat(added).part()) == Material.Hatch.PLASTIC;
            default -> false;
        };
    }

    private static Material.@Nullable Hatch material(Kit kit, Part part) {
        var made = switch (part) {
            case DrivePulley p -> p.material();
            case Wheel w -> w.coreMaterial();
            case WheelPulley p -> p.material();
            case Mount m -> m.material();
            default -> "";
        };
        return made.isBlank() ? null : kit.reference().material(made).hatch();
    }
}
