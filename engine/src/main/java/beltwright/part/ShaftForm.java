package beltwright.part;

/// The form of a shaft end or a bore. A bore's form is its own: a screw on a flat does not make a D bore.
public enum ShaftForm {
    ROUND("round"),
    FLAT("D"),
    TWO_FLATS("two flats"),
    KEYED("keyed");

    private final String words;

    ShaftForm(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
