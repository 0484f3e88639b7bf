package beltwright.press.drawing;

/// What an entity belongs to, so that a page can point at it.
///
/// @param seat name of the seat whose part it shows, or empty
/// @param finding key of the finding whose distance it shows, or empty
/// @param field path of the field of a part that it shows where to measure, or empty
public record Tag(String seat, String finding, String field, Emphasis emphasis) {
    public static final Tag NONE = new Tag("", "", Emphasis.NORMAL);

    /// How strongly it is drawn: as usual, in the accent, or thin.
    public enum Emphasis {
        NORMAL,
        CHOSEN,
        QUIET
    }

    Tag(String seat, String finding, Emphasis emphasis) {
        this(seat, finding, "", emphasis);
    }

    public static Tag field(String path) {
        return new Tag("", "", path, Emphasis.NORMAL);
    }

    public Tag with(Emphasis other) {
        return new Tag(seat, finding, field, other);
    }
}
