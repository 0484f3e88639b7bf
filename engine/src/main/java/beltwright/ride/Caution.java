package beltwright.ride;

/// The usual cautions of the road, said wherever a number could hurt somebody.
///
/// - Source: common practice, no source.
public enum Caution {
    BRAKE(
            "No electric brake is a parking brake, and none is sure: it is gone with a belt, a wire, the pack or the radio"
                    + " link. The foot brake is counted nowhere here; whoever rides this board must be able to stop with"
                    + " it."),
    FULL(
            "A full pack takes little or nothing back: do not start a descent on it. Where the protection board disconnects, the"
                    + " brake is gone at once."),
    SPEED("Top speed is what the drive reaches, not what can be ridden or stopped safely. Read the way to a stop beside"
            + " it."),
    HEAT(
            "A can that is too hot to touch burns skin. Magnets that were too hot once stay weaker, and the numbers here no"
                    + " longer hold."),
    GEAR("Helmet, gloves, knee and elbow pads on every ride; first rides on closed, level, dry ground with somebody"
            + " near."),
    LAW("What may be ridden, where and how fast differs from place to place: find out before riding on a public way.");

    private final String words;

    Caution(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
