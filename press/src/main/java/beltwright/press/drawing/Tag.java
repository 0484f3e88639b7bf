package beltwright.press.drawing;

/// What an entity belongs to, so that a page can point at it.
///
/// @param seat name of the seat whose part it shows, or empty
/// @param finding key of the finding whose distance it shows, or empty
public record Tag(String seat, String finding, Emphasis emphasis) {
    public static final Tag NONE = new Tag("", "", Emphasis.NORMAL);

    /// How strongly it is drawn: as usual, in the accent, or thin.
    public enum Emphasis {
        NORMAL,
        CHOSEN,
        QUIET
    }

    public Tag with(Emphasis other) {
        return new Tag(seat, finding, other);
    }
}
