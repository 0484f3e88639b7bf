package beltwright.app.bench;

import beltwright.part.Signed;
import beltwright.quantity.Numbers;
import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/// What was typed into a short form, field by field, and what is wrong with it. A field that cannot be read gives a
/// value of no use: whoever reads asks `sound` before keeping anything.
public final class TypedForm {
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,6}(?:[.,][0-9]{1,6})?|[.,][0-9]{1,6}");
    private static final Pattern WHO = Pattern.compile("[^(),\\p{Cntrl}]{1,40}");
    private static final String BY = "by";
    private static final String WHEN = "when";

    private final Map<String, String> typed;
    private final Map<String, String> errors = new LinkedHashMap<>();

    TypedForm(Map<String, String> typed) {
        this.typed = typed;
    }

    static TypedForm of(Context ctx) {
        var typed = new HashMap<String, String>();
        ctx.formParamMap().forEach((name, values) -> typed.put(name, values.getFirst()));
        return new TypedForm(typed);
    }

    /// One field as a form shows it.
    ///
    /// @param choices empty where it is typed
    public record Entry(
            String name,
            String label,
            String unit,
            String typed,
            String error,
            String hint,
            List<String> choices,
            boolean first) {}

    /// {@return this field, with what was typed or else what is usual}
    Entry entry(String name, String label, String unit, String usual, String hint, List<String> choices) {
        var error = errors.getOrDefault(name, "");
        boolean first = !error.isEmpty() && errors.keySet().iterator().next().equals(name);
        return new Entry(name, label, unit, typed.getOrDefault(name, usual), error, hint, choices, first);
    }

    /// {@return who read and when, as two fields}
    List<Entry> signing() {
        return List.of(
                entry(BY, "by", "", "", "who read it", List.of()),
                entry(WHEN, "when", "", LocalDate.now().toString(), "year-month-day", List.of()));
    }

    boolean sound() {
        return errors.isEmpty();
    }

    /// {@return what is wrong with no single field, or empty}
    String elsewhere() {
        return errors.getOrDefault("", "");
    }

    void wrong(String name, String what, String allowed, String mend) {
        errors.putIfAbsent(name, what + "; " + allowed + "; " + mend);
    }

    private String text(String name) {
        return typed.getOrDefault(name, "").strip();
    }

    /// {@return a number above 0, decimal point or comma; NaN where there is none}
    double number(String name, double least, double most, String unit) {
        var text = text(name);
        var allowed = Numbers.plain(least) + " to " + Numbers.plain(most) + " " + unit;
        if (text.isEmpty()) {
            wrong(name, "is empty", allowed, "type what was read");
            return Double.NaN;
        }
        if (!NUMBER.matcher(text).matches()) {
            wrong(name, "'" + text + "' is no number", allowed, "type digits, with a decimal point or comma");
            return Double.NaN;
        }
        double value = Double.parseDouble(text.replace(',', '.'));
        if (value < least || value > most) {
            wrong(name, "'" + text + "' cannot be true of a real one", allowed, "check the unit and the decimal point");
            return Double.NaN;
        }
        return value;
    }

    /// {@return which of the choices}
    String choice(String name, List<String> choices) {
        var text = text(name);
        if (!choices.contains(text)) {
            wrong(name, "'" + text + "' is none of the choices", String.join(", ", choices), "choose one of these");
            return choices.getFirst();
        }
        return text;
    }

    /// {@return who read and when}
    Signed signed() {
        var by = text(BY);
        if (!WHO.matcher(by).matches()) {
            wrong(
                    BY,
                    by.isEmpty() ? "is empty" : "'" + by + "' cannot be kept",
                    "1 to 40 letters without brackets or commas",
                    "type who read it");
        }
        var when = text(WHEN);
        try {
            if (LocalDate.parse(when).isAfter(LocalDate.now())) {
                wrong(WHEN, "'" + when + "' is still to come", "a day up to today", "correct the day");
            }
        } catch (DateTimeException e) {
            wrong(
                    WHEN,
                    when.isEmpty() ? "is empty" : "'" + when + "' is no day",
                    "year-month-day, 2026-11-20",
                    "correct the day");
        }
        return new Signed(by, when);
    }
}
