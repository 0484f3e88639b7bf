package beltwright.pairs;

import beltwright.check.Answer;
import beltwright.check.Ladder;
import beltwright.check.Verdict;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// A row held against a column: the verdict, and the one answer that decides it.
///
/// @param verdict of the weakest answer; null where the two never meet: no check reads both
/// @param decides of the answers with that verdict the weakest in mm, since who asks what fits wants a dimension; where
///     none is in mm the weakest; null where there is none
/// @param asked how many checks read both
/// @param failing how many of them fail
/// @param centreDistanceMm where a belt closes over two pulleys, the centre distance it sets; else NaN
/// @param needs what is unknown and keeps the deciding answer from being told; empty where it is told
/// @param refused why the two make no kit at all, else empty
public record Pair(
        String row,
        String column,
        @Nullable Verdict verdict,
        @Nullable Answer decides,
        int asked,
        int failing,
        double centreDistanceMm,
        List<String> needs,
        String refused) {
    public Pair {
        needs = List.copyOf(needs);
    }

    /// The weakest first; of those with one verdict whatever is a length, a strength or a count after it.
    static final Comparator<Answer> DECIDES = Comparator.comparing(Answer::verdict)
            .thenComparing(answer -> !answer.unit().equals("mm"))
            .thenComparing(Ladder.WEAKEST);

    static Pair strangers(Thing row, Thing column) {
        return new Pair(row.id(), column.id(), null, null, 0, 0, Double.NaN, List.of(), "");
    }

    static Pair refused(Thing row, Thing column, String why) {
        return new Pair(row.id(), column.id(), Verdict.CANNOT_TELL, null, 0, 0, Double.NaN, List.of(), why);
    }
}
