package beltwright.kit;

/// How many pieces a seat needs, read off the mating faces: as many screws as there are holes.
public final class Hardware {
    private static final int DECK_SCREWS = 4;

    private Hardware() {}

    public static int needed(Kit kit, SeatName seat) {
        var drive = kit.drives().stream().filter(d -> d.side() == seat.side()).findFirst();
        return switch (seat.role()) {
            case CLAMP_SCREWS -> drive.map(d -> d.mount().clampScrews()).orElse(0);
            case FLANGE_SCREWS -> drive.map(d -> d.mount().flangeHoles()).orElse(0);
            case COVER_SCREWS -> drive.map(d -> d.cover().screwHoles()).orElse(0);
            case DECK_SCREWS, DECK_NUTS -> DECK_SCREWS;
            case MOTOR_SCREWS, MOTOR_WASHERS ->
                drive.map(d -> d.mount().slots()).orElse(0);
            case SET_SCREWS -> drive.map(d -> d.drivePulley().setScrews()).orElse(0);
            case HUB_SCREWS -> drive.map(d -> d.drivePulley().hubScrews()).orElse(0);
            case PULLEY_SCREWS -> drive.map(d -> d.wheelPulley().screwHoles()).orElse(0);
            default -> 1;
        };
    }

    /// {@return whether this seat takes part in the mechanical assembly; a pack and a controller are wired, not joined}
    public static boolean joined(SeatName seat) {
        return seat.role() != Role.BATTERY_PACK && seat.role() != Role.CONTROLLER;
    }
}
