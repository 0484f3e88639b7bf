package beltwright.workshop.document;

import beltwright.quantity.Refusal;
import java.util.Comparator;

/// One thing that is wrong in a file, said so that it can be put right.
///
/// @param line counted from 1
/// @param field the document's id and the path of the field, as `change --set` names it
public record Mistake(String file, int line, String field, String wrong, String allowed, String mend) {
    /// Reading order: file by file, from the top down.
    public static final Comparator<Mistake> ORDER =
            Comparator.comparing(Mistake::file).thenComparingInt(Mistake::line).thenComparing(Mistake::field);

    public Refusal refusal() {
        return new Refusal(field, wrong, allowed, mend);
    }

    @Override
    public String toString() {
        return file + ":" + line + ": " + field + ": " + wrong + "; " + allowed + "; " + mend;
    }
}
