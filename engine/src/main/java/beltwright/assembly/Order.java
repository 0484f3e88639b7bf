package beltwright.assembly;

import beltwright.kit.Drive;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/// The order in which joints can be made, from what stands in whose way. The order in which they were typed plays no
/// part.
final class Order {
    private static final Set<Role> TURNS_WITH_WHEEL =
            EnumSet.of(Role.WHEEL, Role.INNER_BEARING, Role.OUTER_BEARING, Role.CORE_SPACER, Role.WHEEL_PULLEY);

    /// One joint must wait for another, and why.
    record Wait(Joint first, Joint then, String why) {}

    private final Kit kit;
    private final List<Wait> waits = new ArrayList<>();

    private Order(Kit kit) {
        this.kit = kit;
    }

    /// A joint in its place, with what it had to wait for.
    record Placed(Joint joint, List<String> after) {}

    static List<Placed> of(Kit kit) {
        var order = new Order(kit);
        for (var side : Side.values()) {
            order.wheel(side);
            order.axle(side);
        }
        kit.drives().forEach(order::drive);
        order.board();
        return order.sorted();
    }

    /// What turns with the wheel is put together before the wheel goes on the axle.
    private void wheel(Side side) {
        var onAxle = joint(side, Role.WHEEL, Joint.Way.SLIDE);
        for (var joint : kit.joints()) {
            if (side(joint) == side && turns(joint)) {
                wait(joint, onAxle, "on the axle it can no longer be reached");
            }
        }
        var inner = joint(side, Role.INNER_BEARING, Joint.Way.PRESS_FIT);
        var outer = joint(side, Role.OUTER_BEARING, Joint.Way.PRESS_FIT);
        var spacer = joint(side, Role.CORE_SPACER, Joint.Way.SLIDE);
        wait(inner, spacer, "the spacer rests on the first bearing");
        wait(spacer, outer, "the second bearing closes the core over the spacer");
        wait(inner, outer, "one bearing after the other");
    }

    /// What is further in goes on first.
    private void axle(Side side) {
        var mount = mount(side);
        var spacer = joint(side, Role.AXLE_SPACER, Joint.Way.SLIDE);
        var ring = joint(side, Role.INNER_RING, Joint.Way.SLIDE);
        var wheel = joint(side, Role.WHEEL, Joint.Way.SLIDE);
        var outer = joint(side, Role.OUTER_RING, Joint.Way.SLIDE);
        var washer = joint(side, Role.AXLE_WASHER, Joint.Way.SLIDE);
        var nut = joint(side, Role.WHEEL, Joint.Way.NUT);
        var line = new ArrayList<Joint>();
        for (var joint : new Joint[] {mount, spacer, ring, wheel, outer, washer, nut}) {
            if (joint != null) {
                if (!line.isEmpty()) {
                    wait(line.getLast(), joint, "further in on the same axle");
                }
                line.add(joint);
            }
        }
    }

    /// The deck comes last, over its riser.
    private void board() {
        var riser = first(Role.RISER);
        var deck = first(Role.DECK);
        wait(riser, deck, "it lies under the deck");
        for (var drive : kit.drives()) {
            wait(
                    joint(drive.side(), Role.COVER, Joint.Way.SCREWS),
                    riser == null ? deck : riser,
                    "the deck hides the cover");
        }
    }

    /// {@return the joint that adds the one part of this role}
    private @Nullable Joint first(Role role) {
        return kit.joints().stream()
                .filter(j -> j.of().getFirst().equals(SeatName.of(role)))
                .findFirst()
                .orElse(null);
    }

    private void drive(Drive drive) {
        var side = drive.side();
        var motor = joint(side, Role.MOTOR, Joint.Way.SCREWS);
        var pulley = first(
                joint(side, Role.DRIVE_PULLEY, Joint.Way.SET_SCREWS), joint(side, Role.DRIVE_PULLEY, Joint.Way.CLAMP));
        var wheelPulley = first(
                joint(side, Role.WHEEL_PULLEY, Joint.Way.SCREWS), joint(side, Role.WHEEL_PULLEY, Joint.Way.PRESS_FIT));
        var belt = joint(side, Role.BELT, Joint.Way.TEETH);
        var idler = joint(side, Role.IDLER, Joint.Way.SCREWS);
        var onAxle = joint(side, Role.WHEEL, Joint.Way.SLIDE);
        double pulleyReach = drive.drivePulley().rim().reachDiameterMm();
        if (!(pulleyReach < drive.mount().openingMm().lower())) {
            wait(motor, pulley, "the drive pulley does not pass the opening of the plate");
        }
        wait(mount(side), motor, "the mount is aligned before it carries the motor");
        wait(motor, idler, "the idler stands beside the line to the motor");
        wait(idler, belt, "the belt runs over it");
        wait(pulley, belt, "the belt runs on it");
        wait(wheelPulley, belt, "the belt runs on it");
        if (drive.wheelPulley().boreDiameterMm().upper()
                < drive.end().innerBearing().outsideMm().lower()) {
            wait(
                    joint(side, Role.INNER_BEARING, Joint.Way.PRESS_FIT),
                    wheelPulley,
                    "the bearing does not pass the pulley's bore");
        }
        if (drive.beltSlidesOn()) {
            wait(belt, onAxle, "belt and wheel pulley slide on together");
        } else {
            wait(onAxle, belt, "the belt is lifted over the flange with the motor pushed in");
            wait(belt, joint(side, Role.WHEEL, Joint.Way.NUT), "the wheel can still move out a little");
        }
    }

    /// {@return how the mount of this side is held to the hanger, by whichever way}
    private @Nullable Joint mount(Side side) {
        return first(
                joint(side, Role.MOUNT, Joint.Way.CLAMP),
                joint(side, Role.MOUNT, Joint.Way.SCREWS),
                joint(side, Role.MOUNT, Joint.Way.ONE_PIECE));
    }

    private static @Nullable Joint first(@Nullable Joint... joints) {
        for (var joint : joints) {
            if (joint != null) {
                return joint;
            }
        }
        return null;
    }

    private void wait(@Nullable Joint first, @Nullable Joint then, String why) {
        if (first != null && then != null) {
            waits.add(new Wait(first, then, why));
        }
    }

    private @Nullable Joint joint(Side side, Role added, Joint.Way by) {
        var seat = new SeatName(side, added);
        return kit.joints().stream()
                .filter(j -> j.by() == by && j.of().getFirst().equals(seat))
                .findFirst()
                .orElse(null);
    }

    private static boolean turns(Joint joint) {
        return joint.of().stream().allMatch(s -> TURNS_WITH_WHEEL.contains(s.role()));
    }

    static @Nullable Side side(Joint joint) {
        return joint.of().getFirst().side();
    }

    private List<Placed> sorted() {
        var waiting = new HashMap<Joint, Integer>();
        kit.joints().forEach(j -> waiting.put(j, 0));
        waits.forEach(w -> waiting.merge(w.then(), 1, Integer::sum));
        var ready = new PriorityQueue<>(READING);
        waiting.forEach((joint, count) -> {
            if (count == 0) {
                ready.add(joint);
            }
        });
        var placed = new ArrayList<Placed>();
        while (!ready.isEmpty()) {
            var joint = ready.remove();
            placed.add(new Placed(joint, reasons(joint)));
            for (var wait : waits) {
                if (wait.first().equals(joint) && waiting.merge(wait.then(), -1, Integer::sum) == 0) {
                    ready.add(wait.then());
                }
            }
        }
        return placed;
    }

    private List<String> reasons(Joint joint) {
        return waits.stream()
                .filter(w -> w.then().equals(joint))
                .map(w -> w.first().name() + ": " + w.why())
                .sorted()
                .toList();
    }

    private static int rank(Joint joint) {
        if (turns(joint)) {
            return 0;
        }
        return switch (joint.by()) {
            case PRESS_FIT -> 1;
            case CLAMP, ONE_PIECE -> joint.of().getFirst().role() == Role.DRIVE_PULLEY ? 4 : 2;
            case SCREWS -> 3;
            case SET_SCREWS -> 4;
            case TEETH -> 5;
            case SLIDE -> 6;
            case NUT -> 7;
        };
    }

    /// Among joints that are free: one side after the other, the bench before the axle, then by what is added.
    private static final Comparator<Joint> READING = Comparator.comparing((Joint j) -> side(j) == Side.RIGHT ? 1 : 0)
            .thenComparing(Order::rank)
            .thenComparing(j -> j.of().getFirst())
            .thenComparing(Joint::name);
}
