package beltwright.assembly;

import static beltwright.assembly.StepWords.cautions;
import static beltwright.assembly.StepWords.does;
import static beltwright.assembly.StepWords.title;

import beltwright.check.TensionCard;
import beltwright.kit.Drive;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.Seat;
import beltwright.kit.SeatName;
import beltwright.part.Consumable;
import beltwright.quantity.Numbers;
import beltwright.ride.Board;
import beltwright.ride.LimitSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/// Box, steps and the proof that they meet. The box is counted from the joints; the steps count for themselves.
public final class Guide {
    private Guide() {}

    /// {@return one line for each part that some joint of this kit uses and that the box supplies}
    public static Box box(Kit kit) {
        var jointed = new LinkedHashSet<SeatName>();
        for (var joint : kit.joints()) {
            jointed.addAll(joint.of());
            jointed.addAll(joint.with());
        }
        var byPart = new TreeMap<String, List<Seat>>();
        for (var seat : kit.seats().values()) {
            if (jointed.contains(seat.name()) && !seat.fromRider()) {
                byPart.computeIfAbsent(seat.part().id(), id -> new ArrayList<>())
                        .add(seat);
            }
        }
        return new Box(byPart.values().stream().map(Guide::item).toList());
    }

    private static Box.Item item(List<Seat> seats) {
        var part = seats.getFirst().part();
        int count = seats.stream().mapToInt(Seat::count).sum();
        return new Box.Item(
                part.id(),
                part.name(),
                part.kind(),
                part.label().revision(),
                count,
                count * part.label().massKg().nominal(),
                seats.stream().map(s -> s.name().toString()).toList());
    }

    /// {@return the steps in the order that the joints and their geometry dictate}
    ///
    /// @param cards how tight each belt is to be
    public static List<Step> steps(Kit kit, List<TensionCard> cards) {
        var steps = new ArrayList<Step>();
        steps.add(layOut(kit));
        var placed = Order.of(kit);
        for (var one : placed) {
            if (!closing(one.joint())) {
                steps.add(step(kit, one, steps.size() + 1));
            }
        }
        for (var drive : kit.drives()) {
            var card = cards.stream()
                    .filter(c -> c.side() == drive.side())
                    .findFirst()
                    .orElseThrow();
            steps.add(tension(drive, card, steps.size() + 1));
        }
        for (var one : placed) {
            if (closing(one.joint())) {
                steps.add(step(kit, one, steps.size() + 1));
            }
        }
        steps.add(firstRide(kit, steps.size() + 1));
        return steps;
    }

    /// {@return whether a joint hides the belt, or carries the board: both wait until the belt is set}
    private static boolean closing(Joint joint) {
        return switch (joint.of().getFirst().role()) {
            case COVER, DECK, RISER -> true;
            default -> false;
        };
    }

    /// {@return for each part, how many the box holds and how many the steps use}
    public static List<Tally> tallies(Box box, List<Step> steps) {
        var used = new TreeMap<String, Integer>();
        var names = new TreeMap<String, String>();
        for (var step : steps) {
            for (var take : step.takes()) {
                if (!take.fromRider()) {
                    used.merge(take.part(), take.count(), Integer::sum);
                    names.put(take.part(), take.name());
                }
            }
        }
        var boxed = new TreeMap<String, Integer>();
        for (var item : box.items()) {
            boxed.put(item.part(), item.count());
            names.put(item.part(), item.name());
        }
        return names.entrySet().stream()
                .map(e -> new Tally(
                        e.getKey(), e.getValue(), boxed.getOrDefault(e.getKey(), 0), used.getOrDefault(e.getKey(), 0)))
                .toList();
    }

    /// What everything else is put on is laid out first.
    private static boolean base(Seat seat) {
        return switch (seat.name().role()) {
            case HANGER, WHEEL, THREADLOCKER -> true;
            default -> false;
        };
    }

    private static Step layOut(Kit kit) {
        var takes = kit.seats().values().stream()
                .filter(Guide::base)
                .filter(s -> kit.joints().stream().anyMatch(j -> j.joins(s.name())))
                .map(s -> take(s))
                .toList();
        return new Step(
                1,
                "Lay out hanger and wheels",
                "",
                takes,
                List.of(),
                null,
                "",
                layOutDoes(takes),
                List.of(
                        "Disconnect and remove the battery before any work on the board. A turning belt or wheel takes fingers.",
                        "Wear eye protection when you press, drill or tap. A bent axle or a cracked hanger is scrap: never straighten it."),
                takes.stream().map(Step.Take::seat).toList(),
                List.of());
    }

    private static List<String> layOutDoes(List<Step.Take> takes) {
        var does = new ArrayList<String>();
        does.add("Compare everything in the box with the list; stop if a piece is missing or another revision.");
        if (takes.stream().anyMatch(Step.Take::fromRider)) {
            does.add("Take the rider's own parts off the old board, press out old bearings and clean the seats.");
        }
        return does;
    }

    private static Step step(Kit kit, Order.Placed placed, int number) {
        var joint = placed.joint();
        var added = new ArrayList<Seat>();
        var first = kit.seat(joint.of().getFirst());
        if (!base(first)) {
            added.add(first);
        }
        joint.with().stream().map(kit::seat).filter(s -> !base(s)).forEach(added::add);
        return new Step(
                number,
                title(joint),
                joint.name(),
                added.stream().filter(s -> brings(joint, s)).map(Guide::take).toList(),
                Tools.of(kit, joint),
                Torques.of(kit, joint).orElse(null),
                threadlocker(kit, joint),
                does(kit, joint),
                cautions(kit, joint),
                seats(joint),
                placed.after());
    }

    /// The nut's joint names the wheel first, but the wheel already lies there.
    private static boolean brings(Joint joint, Seat seat) {
        return joint.with().contains(seat.name()) || joint.of().getFirst().equals(seat.name());
    }

    private static List<String> seats(Joint joint) {
        var seats = new ArrayList<String>();
        joint.of().forEach(s -> seats.add(s.toString()));
        joint.with().forEach(s -> seats.add(s.toString()));
        return seats;
    }

    private static String threadlocker(Kit kit, Joint joint) {
        return joint.with().stream()
                .filter(s -> s.role() == Role.THREADLOCKER)
                .map(s -> kit.seat(s).part())
                .findFirst()
                .map(p -> ((Consumable) p).use() + ", one small drop, metal threads only; keep it off skin and eyes")
                .orElse("");
    }

    private static Step.Take take(Seat s) {
        return new Step.Take(s.part().id(), s.part().name(), s.count(), s.name().toString(), s.fromRider());
    }

    private static Step tension(Drive drive, TensionCard card, int number) {
        var does = new ArrayList<String>();
        does.add(aligned(drive));
        does.addAll(card.steps());
        var seats = List.of(
                drive.seat(Role.BELT),
                drive.seat(Role.DRIVE_PULLEY),
                drive.seat(Role.MOTOR),
                drive.seat(Role.MOTOR_SCREWS));
        return new Step(
                number,
                "Align the " + drive.side() + " belt and set its tension",
                "",
                List.of(),
                tensionTools(drive),
                Torques.screw(drive.motorScrew()),
                "",
                does,
                TensionCard.CAUTIONS,
                seats.stream().map(SeatName::toString).toList(),
                List.of());
    }

    /// {@return how both pulleys come into one plane, and what then gets its torque}
    private static String aligned(Drive drive) {
        var straightedge =
                "ay a straightedge across the rims of both pulleys and slide the drive pulley until they lie";
        var hub = drive.hubScrew();
        if (drive.setScrew().blank() && hub.blank()) {
            return "L" + straightedge + " in one plane.";
        }
        var tighten = new ArrayList<String>();
        if (!hub.blank()) {
            var torque = Torques.screw(hub);
            tighten.add("the hub screws" + (drive.drivePulley().hubScrews() > 1 ? " in turn" : "") + to(torque));
        }
        if (!drive.setScrew().blank()) {
            tighten.add("the set screws" + to(Torques.screw(drive.setScrew())));
        }
        var loosen = hub.blank() ? "set screws" : drive.setScrew().blank() ? "hub screws" : "set screws and hub screws";
        return "Loosen the " + loosen + ", l" + straightedge + " in one plane. Tighten "
                + String.join(", then ", tighten) + ".";
    }

    private static String to(Step.@Nullable Torque torque) {
        return torque == null ? "" : " to " + Numbers.fixed(torque.torqueNm(), 1) + " N·m";
    }

    private static List<String> tensionTools(Drive drive) {
        var tools = new LinkedHashSet<String>();
        tools.add(Tools.hexKey(drive.motorScrew().head(), drive.motorScrew().thread()));
        if (!drive.setScrew().blank()) {
            tools.add(Tools.hexKey(drive.setScrew().head(), drive.setScrew().thread()));
        }
        if (!drive.hubScrew().blank()) {
            tools.add(Tools.hexKey(drive.hubScrew().head(), drive.hubScrew().thread()));
        }
        tools.addAll(List.of("phone with a tuner, or spring scale and rule", "straightedge", "torque wrench"));
        return List.copyOf(tools);
    }

    /// {@return what to set in the controller, by the sheet of the same kit}
    private static String limited(List<LimitSheet.Row> limits) {
        var set = new ArrayList<String>();
        for (var key : List.of("first-ride-current", "first-ride-ramp", "first-ride-brake", "lost-link")) {
            row(limits, key)
                    .ifPresent(row ->
                            set.add(row.name().replace("First ride: ", "").replace("Radio", "radio") + ": "
                                    + Numbers.significant(row.value(), 6) + " " + row.unit()));
        }
        return set.isEmpty()
                ? "The limits to set in the controller cannot be told: a number is missing in this kit's data."
                : "Set the controller by the sheet Limits to set of this kit. For the first ride: "
                        + String.join("; ", set) + ".";
    }

    private static Optional<LimitSheet.Row> row(List<LimitSheet.Row> limits, String key) {
        return limits.stream().filter(r -> r.key().equals(key)).findFirst();
    }

    private static Step firstRide(Kit kit, int number) {
        var does = new ArrayList<String>();
        does.add("Turn each wheel by hand, both ways: nothing rubs, nothing clicks, no play at the rim.");
        var board = Board.of(kit);
        var limits = LimitSheet.of(kit, board);
        does.add(limited(limits));
        does.add("Lift the wheels off the ground, connect the battery, and run them slowly in both directions.");
        does.add(
                "Mark every screw and nut with paint. Check torque and tension again after the first ride, after 10 km, then every 100 km.");
        var cautions = new ArrayList<>(
                List.of(
                        "Hands, hair and sleeves away from belts and wheels while they run. Mind the polarity of the pack; it sparks and burns when shorted.",
                        "First ride: helmet, wrist, knee and elbow protection, walking pace, closed dry level ground, a second person present.",
                        "The belt is the brake: a broken belt brakes nothing. Do not start a long descent on a full pack; it may not take the charge.",
                        "Margins are advice to a competent builder, not a certificate. Local law and licensed practice come first."));
        row(limits, "lost-link")
                .ifPresent(lost -> cautions.add("Radio link lost, brake of " + Numbers.significant(lost.value(), 6)
                        + " A a motor: "
                        + LimitSheet.holds(
                                kit, board, lost.value() / board.belting().statedPerDirect()) + "."));
        return new Step(
                number,
                "Check before the first ride",
                "",
                List.of(),
                List.of("paint pen", "torque wrench"),
                null,
                "",
                does,
                cautions,
                kit.seats().keySet().stream()
                        .sorted(Comparator.naturalOrder())
                        .filter(s -> s.role() == Role.WHEEL || s.role() == Role.AXLE_NUT)
                        .map(SeatName::toString)
                        .toList(),
                List.of());
    }
}
