package beltwright.check;

import beltwright.kit.Hardware;
import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.Seat;
import beltwright.kit.SeatName;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/// Every joint has its fasteners, none is over, and nothing lies loose in the box.
final class HardwareCheck extends Check {
    HardwareCheck() {
        super(
                "hardware",
                "Hardware complete",
                "pieces",
                Scope.KIT,
                "counted: holes of the mating faces against seats and joints");
    }

    /// {@return pieces that the mating faces ask for and that sit in a seat which a joint uses}
    static int placed(Kit kit) {
        int placed = 0;
        for (var seat : kit.seats().values()) {
            if (jointed(kit, seat.name())) {
                placed += Math.min(seat.count(), Hardware.needed(kit, seat.name()));
            }
        }
        return placed;
    }

    static int needed(Kit kit) {
        int needed = 0;
        for (var seat : kit.seats().values()) {
            if (Hardware.joined(seat.name())) {
                needed += Math.max(seat.count(), Hardware.needed(kit, seat.name()));
            }
        }
        for (int pieces : Hardware.missing(kit).values()) {
            needed += pieces;
        }
        return needed + bare(kit).size();
    }

    private static boolean jointed(Kit kit, SeatName seat) {
        if (!Hardware.joined(seat)) {
            return false;
        }
        for (var joint : kit.joints()) {
            if (joint.joins(seat)) {
                return true;
            }
        }
        return false;
    }

    /// {@return joints that are held by fasteners and name none}
    static List<Joint> bare(Kit kit) {
        var bare = new ArrayList<Joint>(0);
        for (var joint : kit.joints()) {
            boolean fastened = switch (joint.by()) {
                case CLAMP, SCREWS, SET_SCREWS, NUT -> true;
                case PRESS_FIT, SLIDE, TEETH, ONE_PIECE -> false;
            };
            if (fastened && !hasFastener(joint)) {
                bare.add(joint);
            }
        }
        return bare;
    }

    private static boolean hasFastener(Joint joint) {
        for (var seat : joint.with()) {
            if (seat.role().fastener()) {
                return true;
            }
        }
        return false;
    }

    @Override
    public void measure(Subject s, Reading out) {
        out.set(needed(s.kit()), Range.exact(placed(s.kit())));
    }

    @Override
    public void explain(Subject s, Working w, Reading out) {
        for (var seat : s.kit().seats().values()) {
            if (Hardware.joined(seat.name())) {
                int needed = Hardware.needed(s.kit(), seat.name());
                var state = !jointed(s.kit(), seat.name())
                        ? "in no joint"
                        : seat.count() == needed ? "complete" : needed + " needed";
                w.given(
                        seat.name().toString(),
                        seat.count() + " × " + seat.part().name() + ": " + state,
                        seat.count(),
                        "pieces",
                        "counted");
            }
        }
        Hardware.missing(s.kit())
                .forEach((seat, pieces) -> w.given(
                        seat.toString(), "nothing in this seat: " + pieces + " needed", 0, "pieces", "counted"));
        for (var joint : bare(s.kit())) {
            w.given(joint.name(), "held by " + joint.by() + " but names no fastener", 0, "pieces", "counted");
        }
        double placed = w.given("placed", "pieces in place", placed(s.kit()), "pieces", "counted");
        out.set(
                w.given(
                        "wanted",
                        "pieces wanted or shipped, the larger for each seat",
                        needed(s.kit()),
                        "pieces",
                        "counted"),
                Range.exact(placed));
    }

    @Override
    public String says(Subject s, Reading r) {
        var missing = Hardware.missing(s.kit()).keySet().stream()
                .map(seat -> ", no " + seat)
                .collect(Collectors.joining());
        return Numbers.fixed(r.capacity(), 0) + " of " + Numbers.fixed(r.demand(), 0) + " pieces in place" + missing
                + (s.kit().seats().values().stream().anyMatch(seat -> seat.fromRider())
                        ? ", the rider's own counted"
                        : "");
    }

    @Override
    public String remedy(Subject s, Reading r) {
        var mend = new ArrayList<String>();
        for (var seat : s.kit().seats().values()) {
            int needed = Hardware.needed(s.kit(), seat.name());
            if (!Hardware.joined(seat.name())) {
                continue;
            }
            if (!jointed(s.kit(), seat.name())) {
                mend.add("say which joint uses the " + seat.name());
            } else if (seat.count() < needed) {
                mend.add("add " + (needed - seat.count()) + " to the " + seat.name());
            } else if (seat.count() > needed) {
                mend.add("take " + (seat.count() - needed) + " from the " + seat.name());
            }
        }
        Hardware.missing(s.kit()).forEach((seat, pieces) -> mend.add("put " + pieces + " into the " + seat));
        bare(s.kit()).forEach(j -> mend.add("name the fasteners of '" + j.name() + "'"));
        return String.join("; ", mend);
    }

    @Override
    public List<SeatName> seats(Subject s) {
        var seats = new ArrayList<>(Hardware.missing(s.kit()).keySet());
        s.kit().seats().values().stream()
                .filter(seat -> Hardware.joined(seat.name()))
                .filter(seat -> !jointed(s.kit(), seat.name()) || seat.count() != Hardware.needed(s.kit(), seat.name()))
                .map(Seat::name)
                .forEach(seats::add);
        return List.copyOf(seats);
    }
}
