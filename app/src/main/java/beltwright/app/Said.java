package beltwright.app;

import beltwright.quantity.Refusal;
import beltwright.workshop.document.Mistake;

/// What is said on standard error: one line each, `file:line: field: what is wrong; what is allowed; how to mend`.
final class Said {
    private Said() {}

    static String of(Mistake mistake) {
        return oneLine(mistake.file() + ":" + mistake.line() + ": " + of(mistake.refusal()));
    }

    static String of(Refusal refusal) {
        var where = refusal.where().isEmpty() ? "" : refusal.where() + ": ";
        return oneLine(where + refusal.wrong() + "; allowed: " + refusal.allowed() + "; " + refusal.mend());
    }

    static String oneLine(String text) {
        return text.strip().replaceAll("\\s*\\R\\s*", " ");
    }
}
