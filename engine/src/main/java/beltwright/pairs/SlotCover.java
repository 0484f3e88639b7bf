package beltwright.pairs;

import beltwright.check.Answer;
import beltwright.check.Ladder;
import beltwright.check.Verdict;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.layout.LayoutSolver;
import beltwright.part.Belt;
import beltwright.part.DrivePulley;
import beltwright.part.Mount;
import beltwright.part.Part;
import beltwright.part.Reference;
import beltwright.part.StandardSizes;
import beltwright.part.WheelPulley;
import beltwright.quantity.Range;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/// Which belts fall in the slot of one mount, for every two pulleys: centre distances over the slot, every number of
/// teeth that comes near it, those on the shelf told apart.
///
/// @param slot from the shortest to the longest centre distance that the slots allow (mm)
public record SlotCover(Mount mount, Range slot, List<Line> lines) {
    /// The checks that say whether a belt falls in a slot.
    private static final Set<String> TELLING = Set.of("take-up", "fitting-travel", "pulleys-clear", "belt-profile");

    /// What a belt of the shelf is asked beside: of one that is bought the width is still to be chosen.
    private static final String WIDTH = "belt-width";

    /// How far beside the slot marks are still told (mm).
    public static final double BESIDE_MM = 6;

    public SlotCover {
        lines = List.copyOf(lines);
    }

    /// Two pulleys and the belts that come near the slot, shortest first; pulleys that differ in nothing here share a
    /// line.
    public record Line(List<DrivePulley> drives, List<WheelPulley> wheels, List<Mark> marks) {
        public Line {
            drives = List.copyOf(drives);
            wheels = List.copyOf(wheels);
            marks = List.copyOf(marks);
        }

        private String alike() {
            return drives.getFirst().rim().teeth() + " "
                    + wheels.getFirst().rim().teeth()
                    + marks.stream()
                            .map(m -> m.teeth() + "@" + m.centreDistanceMm() + m.verdict() + m.belts())
                            .toList();
        }

        /// {@return the teeth of both pulleys: `15 with 40 teeth`}
        public String teeth() {
            return drives.getFirst().rim().teeth() + " with "
                    + wheels.getFirst().rim().teeth() + " teeth";
        }

        private Line and(Line other) {
            return new Line(joined(drives, other.drives), joined(wheels, other.wheels), marks);
        }

        private static <P> List<P> joined(List<P> a, List<P> b) {
            var all = new LinkedHashSet<>(a);
            all.addAll(b);
            return List.copyOf(all);
        }

        /// {@return the ids of the drive pulleys, then of the wheel pulleys}
        public List<String> names() {
            return List.of(
                    String.join(", ", drives.stream().map(Part::id).toList()),
                    String.join(", ", wheels.stream().map(Part::id).toList()));
        }
    }

    /// One number of belt teeth over two pulleys. Belts of the shelf that have so many teeth and are told otherwise,
    /// for
    /// their width or their length, have a mark each, the best first.
    ///
    /// @param belts the ids of these belts; empty where the shelf has none
    /// @param decides what decides whether it falls in the slot, and lies on both faces
    public record Mark(int teeth, List<String> belts, Range centreDistanceMm, Verdict verdict, Answer decides) {
        public boolean onShelf() {
            return !belts.isEmpty();
        }
    }

    /// {@return the slot of this mount over these pulleys and belts}
    ///
    /// A belt that is not on the shelf, or whose length deviation nobody knows, is taken with the
    /// usual tolerance of its length.
    ///
    /// @throws Refusal where the mount's slot is unknown
    public static SlotCover of(
            Mount mount, List<DrivePulley> drives, List<WheelPulley> wheels, List<Belt> belts, Reference reference) {
        for (var end : List.of(mount.slotMinMm(), mount.slotMaxMm())) {
            if (!end.known()) {
                throw new Refusal(
                        end.of(),
                        "is unknown, so where the slot begins and ends cannot be told",
                        "a length",
                        "measure it and enter it");
            }
        }
        var lines = new LinkedHashMap<String, Line>();
        for (var drive : drives) {
            for (var wheel : wheels) {
                if (drive.rim().profile() == wheel.rim().profile()) {
                    var line = new Line(List.of(drive), List.of(wheel), marks(mount, drive, wheel, belts, reference));
                    lines.merge(line.alike(), line, Line::and);
                }
            }
        }
        return new SlotCover(
                mount,
                new Range(
                        mount.slotMinMm().nominal(),
                        (mount.slotMinMm().nominal() + mount.slotMaxMm().nominal()) / 2,
                        mount.slotMaxMm().nominal()),
                List.copyOf(lines.values()));
    }

    private static List<Mark> marks(
            Mount mount, DrivePulley drive, WheelPulley wheel, List<Belt> belts, Reference reference) {
        var marks = new ArrayList<Mark>();
        double pitch = drive.rim().profile().pitchMm();
        int fewest = (int) Math.ceil((drive.rim().teeth() + wheel.rim().teeth()) / 2.0);
        int most = (int)
                Math.floor((2 * (mount.slotMaxMm().nominal() + 2 * BESIDE_MM) + Math.PI * reach(drive, wheel)) / pitch);
        for (int teeth = fewest; teeth <= most; teeth++) {
            int count = teeth;
            var stocked = belts.stream()
                    .filter(b ->
                            b.teeth() == count && b.profile() == drive.rim().profile())
                    .toList();
            var told = new LinkedHashMap<Told, List<String>>();
            for (var belt : stocked) {
                var one = belt.lengthDeviationMm().known()
                        ? belt
                        : StandardSizes.belt(drive.rim().profile(), count, belt.widthMm());
                told.computeIfAbsent(told(mount, drive, wheel, one, true, reference), t -> new ArrayList<>())
                        .add(belt.id());
            }
            if (stocked.isEmpty()) {
                var one = StandardSizes.belt(
                        drive.rim().profile(), count, drive.rim().faceWidthMm());
                told.put(told(mount, drive, wheel, one, false, reference), List.of());
            }
            told.entrySet().stream()
                    .filter(e -> near(mount, e.getKey().centreDistanceMm()))
                    .map(e -> new Mark(
                            count,
                            List.copyOf(e.getValue()),
                            e.getKey().centreDistanceMm(),
                            e.getKey().decides().verdict(),
                            e.getKey().decides()))
                    .sorted(Comparator.comparing(Mark::verdict).reversed())
                    .forEach(marks::add);
        }
        return marks;
    }

    /// What is told of one belt, the same for all that are alike.
    private record Told(Range centreDistanceMm, Answer decides) {}

    private static Told told(
            Mount mount, DrivePulley drive, WheelPulley wheel, Belt belt, boolean width, Reference reference) {
        var kit = Kit.partly(seats(mount, drive, wheel, belt), reference);
        var layout = LayoutSolver.solve(kit);
        return new Told(
                layout.drives().getFirst().centreDistanceMm(),
                Ladder.answers(
                                kit,
                                layout,
                                check -> TELLING.contains(check.slug())
                                        || width && check.slug().equals(WIDTH))
                        .stream()
                        .min(Ladder.WEAKEST)
                        .orElseThrow());
    }

    private static boolean near(Mount mount, Range centre) {
        return centre.known()
                && centre.nominal() > mount.slotMinMm().nominal() - BESIDE_MM
                && centre.nominal() < mount.slotMaxMm().nominal() + BESIDE_MM;
    }

    private static double reach(DrivePulley drive, WheelPulley wheel) {
        return Math.max(drive.rim().pitchDiameterMm(), wheel.rim().pitchDiameterMm());
    }

    private static Map<SeatName, Part> seats(Mount mount, DrivePulley drive, WheelPulley wheel, Belt belt) {
        var seats = new TreeMap<SeatName, Part>();
        seats.put(new SeatName(Side.LEFT, Role.MOUNT), mount);
        seats.put(new SeatName(Side.LEFT, Role.DRIVE_PULLEY), drive);
        seats.put(new SeatName(Side.LEFT, Role.WHEEL_PULLEY), wheel);
        seats.put(new SeatName(Side.LEFT, Role.BELT), belt);
        return seats;
    }
}
