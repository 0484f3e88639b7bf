package beltwright.quantity;

/// The one way this project says no: where, what is wrong with which value, what is allowed, and how to mend it.
public final class Refusal extends RuntimeException {
    private final String where;
    private final String wrong;
    private final String allowed;
    private final String mend;

    /// @param where the field, seat, part or option that was refused
    /// @param wrong what is wrong, naming the value
    /// @param allowed what would have been accepted
    /// @param mend the next step for the person who typed it
    public Refusal(String where, String wrong, String allowed, String mend) {
        super(where + ": " + wrong + "; allowed: " + allowed + "; " + mend);
        this.where = where;
        this.wrong = wrong;
        this.allowed = allowed;
        this.mend = mend;
    }

    public String where() {
        return where;
    }

    public String wrong() {
        return wrong;
    }

    public String allowed() {
        return allowed;
    }

    public String mend() {
        return mend;
    }

    /// {@return the same refusal, told from further out: `hanger` + `widthMm` = `hanger.widthMm`}
    public Refusal within(String outer) {
        return new Refusal(where.isEmpty() ? outer : outer + "." + where, wrong, allowed, mend);
    }
}
