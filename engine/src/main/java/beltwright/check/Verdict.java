package beltwright.check;

/// The answer of a check: required margin met at worst limits, at nominal only, not even there, or a number missing.
public enum Verdict {
    FAILS("fails"),
    CANNOT_TELL("cannot tell"),
    MARGINAL("marginal"),
    HOLDS("holds");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
