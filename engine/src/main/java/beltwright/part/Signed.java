package beltwright.part;

import beltwright.quantity.Refusal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/// Who took a reading and when, in brackets behind it: `60 N 4.1 Nm (workshop 2026-11-20)`.
///
/// @param by empty where nobody signed
/// @param when the day as typed, empty where nobody signed
public record Signed(String by, String when) {
    public static final Signed NOT = new Signed("", "");

    /// What may stand behind a reading: two groups, who and when.
    public static final String PATTERN = "(?: \\(([^(),\\p{Cntrl}]{1,40}) ([0-9-]{10})\\))?";

    /// @param where the field that the reading is typed into
    /// @throws Refusal if somebody signed on no day of the calendar
    public static Signed of(String where, @Nullable String by, @Nullable String when) {
        if (by == null || when == null) {
            return NOT;
        }
        try {
            LocalDate.parse(when);
        } catch (RuntimeException e) { // its own type stands beside the clock, which the engine may not see
            throw new Refusal(where, "'" + when + "' is no day", "year-month-day, 2026-11-20", "correct the day");
        }
        return new Signed(by, when);
    }

    @Override
    public String toString() {
        return by.isEmpty() ? "" : " (" + by + " " + when + ")";
    }
}
