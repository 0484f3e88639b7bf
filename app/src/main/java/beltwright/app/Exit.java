package beltwright.app;

import beltwright.check.Finding;
import beltwright.check.Verdict;
import java.util.List;

/// The exit codes, a contract for scripts.
final class Exit {
    static final int NOTHING_FAILS = 0;
    static final int SOMETHING_FAILS = 1;
    static final int BAD_INPUT = 2;
    static final int CANNOT_TELL = 3;
    static final int INTERNAL_ERROR = 70;

    private Exit() {}

    /// A marginal finding is a warning and fails nothing.
    static int of(List<Finding> findings) {
        if (findings.stream().anyMatch(f -> f.verdict() == Verdict.FAILS)) {
            return SOMETHING_FAILS;
        }
        return findings.stream().anyMatch(f -> f.verdict() == Verdict.CANNOT_TELL) ? CANNOT_TELL : NOTHING_FAILS;
    }
}
