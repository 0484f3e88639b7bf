package beltwright.assembly;

import beltwright.kit.Drive;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
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

/// What a step says, from the joint it makes and the parts it joins.
final class StepWords {
    private StepWords() {}

    static String title(Joint joint) {
        var added = joint.of().getFirst();
        var onto = joint.of().size() > 1 ? " " + onto(joint) : "";
        return switch (joint.by()) {
            case CLAMP -> "Clamp the " + added + onto;
            case SCREWS -> "Screw the " + added + onto;
            case SET_SCREWS -> "Fix the " + added + " on the shaft";
            case PRESS_FIT -> "Press the " + added + onto;
            case SLIDE -> "Slide the " + added + onto;
            case TEETH -> "Lay the " + added + " on its pulleys";
            case NUT -> "Tighten the nut of the " + added;
        };
    }

    private static String onto(Joint joint) {
        var base = joint.of().get(1);
        return switch (base.role()) {
            case HANGER -> joint.by() == Joint.Way.CLAMP ? "on the hanger" : "on the axle";
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
            case CLAMP -> drive(kit, joint).ifPresent(d -> clamp(d, does));
            case SCREWS -> screws(kit, joint, does);
            case SET_SCREWS -> drive(kit, joint).ifPresent(d -> pulley(d, does));
            case PRESS_FIT -> {
                does.add("Press on the outer ring only, straight, until it rests on its shoulder.");
                does.add("The bearing must still turn by hand without grinding.");
            }
            case SLIDE -> slide(added, does);
            case TEETH -> {
                does.add("Push the motor in towards the axle.");
                does.add(
                        drive(kit, joint).map(Drive::beltSlidesOn).orElse(false)
                                ? "Lay the belt in the wheel pulley, ready to go over the drive pulley as the wheel slides on."
                                : "Lay the belt around both pulleys; never lever it over a flange.");
            }
            case NUT -> {
                does.add("Tighten to the torque; at least one full thread stands past the nut.");
                does.add(
                        "The wheel must now spin freely without play. If it drags, the core spacer is too short: stop.");
            }
        }
        return does;
    }

    private static void clamp(Drive d, List<String> does) {
        double angle = d.placement().aboveAxleDeg().nominal();
        does.add("Set the outer face of the plate "
                + Numbers.fixed(d.placement().plateInsetMm().nominal(), 1) + " mm inside the end face of the hanger.");
        does.add("Turn the mount so that the motor will lie " + d.placement().motor() + " of the axle, "
                + Numbers.fixed(Math.abs(angle), 0) + "° " + (angle < 0 ? "below" : "above") + " its line.");
        does.add("Tighten the clamp screws in turn, a little at a time, so that the gap stays even.");
    }

    private static void screws(Kit kit, Joint joint, List<String> does) {
        if (joint.of().getFirst().role() == Role.MOTOR) {
            does.add("Hold the motor against the inner face of the plate, wires away from wheel and ground.");
            does.add(
                    "Put a washer on each screw, pass it through its slot and turn it in by hand: leave the motor just able to slide.");
            does.add("These screws get their torque when the belt tension is set.");
        } else {
            does.add("Push the lugs fully into the openings of the core; the pulley must sit flat all around.");
            does.add(
                    plastic(kit, joint)
                            ? "Tighten the screws crosswise with a short key until the pulley sits flat, no further: plastic"
                                    + " gives way under the heads, and what it bears is not known. Look again after the first ride."
                            : "Tighten the screws crosswise.");
        }
    }

    private static void pulley(Drive d, List<String> does) {
        does.add("Slide the pulley on, hub towards the " + d.drivePulley().hubSide() + ", "
                + Numbers.fixed(d.placement().pulleyStandoffMm().nominal(), 1) + " mm from the plate to its near end.");
        does.add(
                d.motor().shaftForm() == ShaftForm.FLAT
                        ? "Nip the set screws, one of them square on the flat of the shaft."
                        : "Nip the set screws in turn.");
        does.add("They get their torque when the belt is aligned.");
    }

    private static void slide(SeatName added, List<String> does) {
        switch (added.role()) {
            case WHEEL -> {
                does.add(
                        "Slide the wheel on with the pulley facing the mount; the speed ring must lie on the inner ring of the bearing.");
                does.add(
                        "Guide the belt over its pulley, then turn the wheel by hand: every tooth sits in its groove, nothing rubs.");
            }
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
            case NUT ->
                cautions.add(
                        "A wrong stack or a missing spacer lets a wheel come off. Count the pieces on the axle once more.");
            case SCREWS -> {
                if (joint.of().getFirst().role() == Role.MOTOR) {
                    cautions.add(
                            "Only the screws of this list: a longer one reaches the windings and ruins the motor.");
                }
            }
            case CLAMP ->
                cautions.add(
                        "A mount that turns on the hanger throws the belt off: check the clamp after every strike.");
            case SET_SCREWS -> cautions.add("A pulley that slips on its shaft neither drives nor brakes.");
            case SLIDE -> {
                if (joint.of().getFirst().role() == Role.WHEEL) {
                    cautions.add("Keep fingers out from between wheel pulley and plate.");
                }
            }
        }
        if (plastic(kit, joint)) {
            cautions.add("No threadlocker on plastic: some plastics crack under it.");
        }
        return cautions;
    }

    /// {@return whether screws clamp or enter plastic here}
    static boolean plastic(Kit kit, Joint joint) {
        return joint.by() == Joint.Way.SCREWS
                && joint.of().stream()
                        .map(kit::seat)
                        .anyMatch(seat -> material(kit, seat.part()) == Material.Hatch.PLASTIC);
    }

    private static Material.Hatch material(Kit kit, Part part) {
        return switch (part) {
            case Wheel w -> kit.reference().material(w.coreMaterial()).hatch();
            case WheelPulley p -> kit.reference().material(p.material()).hatch();
            case Mount m -> kit.reference().material(m.material()).hatch();
            default -> Material.Hatch.STEEL;
        };
    }
}
