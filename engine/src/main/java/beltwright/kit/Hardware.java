package beltwright.kit;

import beltwright.part.Mount;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/// How many pieces a seat needs, read off the mating faces: as many screws and pins as there are holes.
public final class Hardware {
    private static final int DECK_SCREWS = 4;

    /// Screws and pins that a kit has or has not, as one part of it asks.
    private static final Set<Role> OF_A_PART = EnumSet.of(
            Role.CLAMP_SCREWS,
            Role.FLANGE_SCREWS,
            Role.DOWEL_PINS,
            Role.SET_SCREWS,
            Role.PULLEY_SCREWS,
            Role.IDLER_SCREW,
            Role.COVER_SCREWS);

    private Hardware() {}

    public static int needed(Kit kit, SeatName seat) {
        var drive = kit.drives().stream().filter(d -> d.side() == seat.side()).findFirst();
        return switch (seat.role()) {
            case CLAMP_SCREWS ->
                drive.filter(d -> d.mount().fixing() == Mount.Fixing.CLAMP)
                        .map(d -> d.mount().clampScrews())
                        .orElse(0);
            case FLANGE_SCREWS ->
                drive.filter(d -> d.mount().fixing() == Mount.Fixing.FLANGE)
                        .map(d -> d.mount().flangeHoles())
                        .orElse(0);
            case DOWEL_PINS -> drive.map(d -> d.mount().dowels()).orElse(0);
            case COVER_SCREWS -> drive.map(d -> d.cover().screwHoles()).orElse(0);
            case DECK_SCREWS, DECK_NUTS -> DECK_SCREWS;
            case MOTOR_SCREWS, MOTOR_WASHERS ->
                drive.map(d -> d.mount().slots()).orElse(0);
            case SET_SCREWS -> drive.map(d -> d.drivePulley().setScrews()).orElse(0);
            case HUB_SCREWS -> drive.map(d -> d.drivePulley().hubScrews()).orElse(0);
            case PULLEY_SCREWS -> drive.map(d -> d.wheelPulley().screwHoles()).orElse(0);
            case IDLER_SCREW ->
                drive.filter(d -> !d.idler().blank()).map(d -> 1).orElse(0);
            default -> 1;
        };
    }

    /// {@return seats of screws and pins that the parts of a kit ask for and that nothing fills, with how many each
    /// needs}
    public static SortedMap<SeatName, Integer> missing(Kit kit) {
        var missing = new TreeMap<SeatName, Integer>();
        if (!kit.deck().blank()) {
            for (var role : new Role[] {Role.DECK_SCREWS, Role.DECK_NUTS}) {
                if (!kit.seats().containsKey(SeatName.of(role))) {
                    missing.put(SeatName.of(role), DECK_SCREWS);
                }
            }
        }
        for (var drive : kit.drives()) {
            for (var role : OF_A_PART) {
                var seat = drive.seat(role);
                int needed = kit.seats().containsKey(seat) ? 0 : needed(kit, seat);
                if (needed > 0) {
                    missing.put(seat, needed);
                }
            }
        }
        return missing;
    }

    /// {@return seats whose screws or pins no part of a kit has a hole for}
    public static List<SeatName> idle(Kit kit) {
        return kit.seats().keySet().stream()
                .filter(seat -> OF_A_PART.contains(seat.role()) && needed(kit, seat) == 0)
                .toList();
    }

    /// {@return whether this seat takes part in the mechanical assembly; a pack and a controller are wired, not joined}
    public static boolean joined(SeatName seat) {
        return seat.role() != Role.BATTERY_PACK && seat.role() != Role.CONTROLLER;
    }
}
