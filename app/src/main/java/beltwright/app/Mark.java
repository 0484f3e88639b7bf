package beltwright.app;

import beltwright.check.Verdict;

/// The verdict marks as letters of a terminal: filled, half filled, struck, dotted. The word always stands beside.
final class Mark {
    private Mark() {}

    static String of(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> "■";
            case MARGINAL -> "⬓";
            case FAILS -> "⊠";
            case CANNOT_TELL -> "⬚";
        };
    }
}
