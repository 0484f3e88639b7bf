package beltwright.kit;

import beltwright.part.BatteryPack;
import beltwright.part.Bearing;
import beltwright.part.Belt;
import beltwright.part.BeltTolerance;
import beltwright.part.Blank;
import beltwright.part.Controller;
import beltwright.part.Cover;
import beltwright.part.Deck;
import beltwright.part.DowelPin;
import beltwright.part.DrivePulley;
import beltwright.part.Hanger;
import beltwright.part.HungWeights;
import beltwright.part.Idler;
import beltwright.part.Kinds;
import beltwright.part.Motor;
import beltwright.part.Mount;
import beltwright.part.Nut;
import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.part.Riser;
import beltwright.part.Screw;
import beltwright.part.Sleeve;
import beltwright.part.Washer;
import beltwright.part.Wheel;
import beltwright.part.WheelPulley;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/// A kit resolved: every seat holds a part of the right kind, every joint names seats that exist. What does not fit is
/// a finding, not a refusal.
public record Kit(
        KitDraft draft,
        SortedMap<SeatName, Seat> seats,
        List<Joint> joints,
        Hanger hanger,
        BatteryPack pack,
        Controller controller,
        Deck deck,
        Riser riser,
        Screw deckScrew,
        Nut deckNut,
        List<WheelEnd> ends,
        List<Drive> drives,
        Task task,
        Reference reference,
        Chance chance) {

    public Kit {
        seats = Collections.unmodifiableSortedMap(new TreeMap<>(seats));
        joints = List.copyOf(joints);
        ends = List.copyOf(ends);
        drives = List.copyOf(drives);
    }

    public String id() {
        return draft.id();
    }

    /// {@return whether this is a kit, not a few parts on their own}
    public boolean whole() {
        return !id().isEmpty();
    }

    /// Puts parts into the seats of a draft.
    ///
    /// @param shelf finds a part by id, or refuses
    /// @param reference materials and their sources
    /// @throws Refusal for the first thing that keeps this from being a kit at all
    public static Kit resolve(KitDraft draft, Function<String, Part> shelf, Reference reference) {
        try {
            return new Resolution(draft, filled(draft, shelf, reference), Blanks.NONE).kit(reference);
        } catch (Refusal r) {
            throw r.within("kit " + draft.id());
        }
    }

    /// Puts parts into the seats of a draft in which one was exchanged: screws that the new part asks for and that
    /// nobody
    /// has put in yet are blank, and [Hardware#missing] says so; those that it has no hole for are left out.
    public static Kit exchanged(KitDraft draft, Function<String, Part> shelf, Reference reference) {
        try {
            var kit = new Resolution(draft, filled(draft, shelf, reference), Blanks.SCREWS).kit(reference);
            var idle = Hardware.idle(kit);
            if (idle.isEmpty()) {
                return kit;
            }
            var without = draft.without(idle);
            return new Resolution(without, filled(without, shelf, reference), Blanks.SCREWS).kit(reference);
        } catch (Refusal r) {
            throw r.within("kit " + draft.id());
        }
    }

    /// Puts some parts where they would sit in a kit and leaves the rest blank, so that those checks can be asked
    /// whose parts are all there.
    public static Kit partly(Map<SeatName, ? extends Part> parts, Reference reference) {
        var byId = new TreeMap<String, Part>();
        var filled = new TreeMap<SeatName, KitDraft.Filling>();
        parts.forEach((seat, part) -> {
            byId.put(part.id(), part);
            filled.put(seat, new KitDraft.Filling(part.id(), 1, false));
        });
        var nowhere = Blank.of(Placement.class);
        var draft = new KitDraft(
                "",
                "parts without a kit",
                false,
                "",
                filled,
                Map.of(),
                Map.of(Side.LEFT, nowhere, Side.RIGHT, nowhere),
                Blank.of(Task.class));
        return new Resolution(draft, filled(draft, id -> Objects.requireNonNull(byId.get(id)), reference), Blanks.ANY)
                .kit(reference);
    }

    /// {@return this kit with other pieces of the same parts in its seats; its structure is not looked at again}
    public Kit drawn(
            Function<Seat, Part> pieces,
            Map<Side, Placement> placements,
            Task task,
            Reference reference,
            Chance chance) {
        var other = new TreeMap<>(seats);
        other.replaceAll((name, seat) -> {
            var piece = pieces.apply(seat);
            return piece == seat.part() ? seat : new Seat(name, piece, seat.count(), seat.fromRider());
        });
        var typed = new KitDraft(
                draft.id(),
                draft.name(),
                draft.invented(),
                draft.note(),
                draft.seats(),
                draft.joints(),
                placements,
                task);
        return new Resolution(typed, other, Blanks.NONE).built(joints, reference, chance);
    }

    private static SortedMap<SeatName, Seat> filled(KitDraft draft, Function<String, Part> shelf, Reference reference) {
        var seats = new TreeMap<SeatName, Seat>();
        draft.seats().forEach((name, filling) -> seats.put(name, Resolution.filled(name, filling, shelf, reference)));
        return seats;
    }

    /// Which seats may stay empty though a whole kit fills them.
    private enum Blanks {
        NONE,
        SCREWS,
        ANY
    }

    /// One pass over a draft; refuses on structure only.
    private static final class Resolution {
        private final KitDraft draft;
        private final Blanks blanks;
        private final SortedMap<SeatName, Seat> seats;

        Resolution(KitDraft draft, SortedMap<SeatName, Seat> seats, Blanks blanks) {
            this.draft = draft;
            this.seats = seats;
            this.blanks = blanks;
        }

        private static Seat filled(
                SeatName name, KitDraft.Filling filling, Function<String, Part> shelf, Reference reference) {
            Part part;
            try {
                part = shelf.apply(filling.part());
            } catch (Refusal r) {
                throw r.within("seats." + name);
            }
            if (!name.role().type().isInstance(part)) {
                throw new Refusal(
                        "seats." + name,
                        "'" + part.id() + "' is a " + part.kind(),
                        "a " + Kinds.of(name.role().type()).words(),
                        "put a part of that kind into this seat");
            }
            return new Seat(name, estimated(part, reference), filling.count(), filling.fromRider());
        }

        /// A belt of which nobody has measured how far its length is off has the tolerance of a new one, as an estimate
        /// that every finding names; it sits in the seat so that each piece is drawn on its own.
        private static Part estimated(Part part, Reference reference) {
            return part instanceof Belt belt && reference.estimating() ? BeltTolerance.standingIn(belt) : part;
        }

        Kit kit(Reference reference) {
            for (var seat : seats.values()) {
                named(seat.part(), reference);
            }
            var joints = new ArrayList<>(draft.joints().values());
            joints.sort(Comparator.comparing(Joint::name));
            for (var joint : joints) {
                for (var seat : joint.of()) {
                    known(joint, seat);
                }
                for (var seat : joint.with()) {
                    known(joint, seat);
                }
            }
            var kit = built(joints, reference, Chance.NONE);
            for (var drive : kit.drives()) {
                try {
                    optional(drive.placement().jumpTests(), JumpTests::parse);
                } catch (Refusal r) {
                    throw r.within("placements." + drive.side());
                }
            }
            return kit;
        }

        /// Stands the parts in drives, ends and kit.
        Kit built(List<Joint> joints, Reference reference, Chance chance) {
            var ends = new ArrayList<WheelEnd>();
            var drives = new ArrayList<Drive>();
            for (var side : Side.values()) {
                boolean driven = seats.containsKey(new SeatName(side, Role.MOTOR))
                        || (blanks == Blanks.ANY && side == Side.LEFT);
                if (driven || seats.containsKey(new SeatName(side, Role.WHEEL))) {
                    ends.add(end(side));
                }
                if (driven) {
                    drives.add(drive(side, ends.getLast()));
                }
            }
            if (drives.isEmpty()) {
                throw new Refusal(
                        "seats", "no side has a motor", "a 'left motor' or a 'right motor'", "fill one of these seats");
            }
            boolean decked = seats.containsKey(SeatName.of(Role.DECK));
            return new Kit(
                    draft,
                    seats,
                    joints,
                    part(null, Role.HANGER, Hanger.class),
                    part(null, Role.BATTERY_PACK, BatteryPack.class),
                    part(null, Role.CONTROLLER, Controller.class),
                    part(null, Role.DECK, Deck.class),
                    part(null, Role.RISER, Riser.class),
                    part(null, Role.DECK_SCREWS, Screw.class, decked),
                    part(null, Role.DECK_NUTS, Nut.class, decked),
                    ends,
                    drives,
                    draft.task(),
                    reference,
                    chance);
        }

        /// Everything that a part names in the reference file is there, and its written readings can be read.
        private static void named(Part part, Reference reference) {
            try {
                switch (part) {
                    case Motor m -> {
                        optional(m.threadMaterial(), reference::material);
                        optional(m.shaftMaterial(), reference::material);
                    }
                    case Mount m -> {
                        optional(m.material(), reference::material);
                        optional(m.dowelMaterial(), reference::material);
                    }
                    case DowelPin p -> reference.material(p.material());
                    case Hanger h -> {
                        optional(h.material(), reference::material);
                        optional(h.axleMaterial(), reference::material);
                    }
                    case Wheel w -> optional(w.coreMaterial(), reference::material);
                    case WheelPulley p -> optional(p.material(), reference::material);
                    case DrivePulley p -> optional(p.material(), reference::material);
                    case BatteryPack p -> optional(p.cell(), reference::cell);
                    case Belt b -> {
                        optional(b.grade(), reference::grade);
                        optional(b.hungWeights(), HungWeights::parse);
                    }
                    default -> {}
                }
            } catch (Refusal r) {
                throw r.within(part.id());
            }
        }

        private static void optional(String text, Consumer<String> read) {
            if (!text.isBlank()) {
                read.accept(text);
            }
        }

        private void known(Joint joint, SeatName seat) {
            if (!seats.containsKey(seat)) {
                throw new Refusal(
                        "joints." + joint.name(),
                        "'" + seat + "' is not a seat of this kit",
                        String.join(
                                ", ",
                                seats.keySet().stream().map(SeatName::toString).toList()),
                        "add the seat, or take it out of the joint");
            }
        }

        private WheelEnd end(Side side) {
            return new WheelEnd(
                    side,
                    part(side, Role.WHEEL, Wheel.class),
                    part(side, Role.INNER_BEARING, Bearing.class),
                    part(side, Role.OUTER_BEARING, Bearing.class),
                    part(side, Role.CORE_SPACER, Sleeve.class),
                    part(side, Role.INNER_RING, Sleeve.class),
                    part(side, Role.OUTER_RING, Sleeve.class),
                    part(side, Role.AXLE_SPACER, Sleeve.class),
                    part(side, Role.AXLE_WASHER, Washer.class),
                    part(side, Role.AXLE_NUT, Nut.class));
        }

        private Drive drive(Side side, WheelEnd end) {
            var placement = draft.placements().get(side);
            if (placement == null) {
                throw new Refusal(
                        "placements." + side,
                        "missing",
                        "motor, aboveAxleDeg, plateInsetMm, pulleyStandoffMm",
                        "say where the " + side + " motor sits");
            }
            var mount = part(side, Role.MOUNT, Mount.class);
            var drivePulley = part(side, Role.DRIVE_PULLEY, DrivePulley.class);
            var wheelPulley = part(side, Role.WHEEL_PULLEY, WheelPulley.class);
            var idler = part(side, Role.IDLER, Idler.class);
            var cover = part(side, Role.COVER, Cover.class);
            return new Drive(
                    side,
                    mount,
                    part(side, Role.CLAMP_SCREWS, Screw.class, mount.fixing() == Mount.Fixing.CLAMP),
                    part(side, Role.FLANGE_SCREWS, Screw.class, mount.fixing() == Mount.Fixing.FLANGE),
                    part(side, Role.DOWEL_PINS, DowelPin.class),
                    part(side, Role.MOTOR, Motor.class),
                    part(side, Role.MOTOR_SCREWS, Screw.class),
                    part(side, Role.MOTOR_WASHERS, Washer.class),
                    drivePulley,
                    part(side, Role.SET_SCREWS, Screw.class, drivePulley.setScrews() > 0),
                    part(side, Role.HUB_SCREWS, Screw.class, drivePulley.hubScrews() > 0),
                    part(side, Role.BELT, Belt.class),
                    wheelPulley,
                    part(side, Role.PULLEY_SCREWS, Screw.class, wheelPulley.screwHoles() > 0),
                    idler,
                    part(side, Role.IDLER_SCREW, Screw.class, !idler.blank()),
                    cover,
                    part(side, Role.COVER_SCREWS, Screw.class, cover.screwHoles() > 0),
                    placement,
                    end);
        }

        private <P extends Part> P part(@Nullable Side side, Role role, Class<P> type) {
            return part(side, role, type, !role.optional());
        }

        /// {@return what fills a seat, a blank where nothing does and nothing needs to}
        private <P extends Part> P part(@Nullable Side side, Role role, Class<P> type, boolean wanted) {
            var name = new SeatName(side, role);
            var seat = seats.get(name);
            if (seat == null && (!wanted || blanks == Blanks.ANY || blanks == Blanks.SCREWS && role.fastener())) {
                return type.cast(Blank.of(type.asSubclass(Record.class)));
            }
            if (seat == null) {
                throw new Refusal(
                        "seats." + name,
                        "empty",
                        "a part of kind " + Kinds.of(role.type()).words(),
                        "fill this seat");
            }
            return type.cast(seat.part());
        }
    }

    public Seat seat(SeatName name) {
        var seat = seats.get(name);
        if (seat == null) {
            throw new Refusal(
                    "seats." + name,
                    "no such seat in kit " + id(),
                    seats.keySet().toString(),
                    "add the seat");
        }
        return seat;
    }

    /// {@return the parts of this kit by id, each once}
    public Map<String, Part> parts() {
        var parts = new TreeMap<String, Part>();
        seats.values().forEach(s -> parts.put(s.part().id(), s.part()));
        return parts;
    }
}
