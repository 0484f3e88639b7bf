package beltwright.workshop.table;

import beltwright.quantity.Unit;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// What a heading says: words, and a unit in brackets, behind a slash or a comma, or behind `in`; a
/// unit of length also behind a space.
///
///     Face width [mm]     face width (in)     Face width / mm     Face width in cm     Face width mm     massKg
///
/// @param unit its symbol, empty where the heading names none
record Heading(String words, String unit) {
    private static final Pattern IN_BRACKETS = Pattern.compile("(.*)[\\[(]([^\\[\\]()]+)[\\])]\\s*");
    private static final Pattern BEHIND = Pattern.compile("[/,]|\\s+in\\s+|[\\s_](?=(?:mm|cm|inch|inches)$)");
    private static final Map<String, String> UNITS = units();

    private static Map<String, String> units() {
        var units = new TreeMap<String, String>();
        Stream.of(Unit.values()).filter(u -> u != Unit.NONE).forEach(u -> units.put(u.symbol(), u.symbol()));
        Stream.of("in", "inch", "inches", "\"", "″").forEach(inch -> units.put(inch, "in"));
        units.putAll(Map.of("ohm", "Ω", "deg", "°", "Nm", "N·m", "rpm/v", "rpm/V", "RPM/V", "rpm/V"));
        Stream.of("mm", "cm").forEach(u -> {
            var prefix = u.equals("mm") ? "milli" : "centi";
            Stream.of(u, prefix + "metre", prefix + "metres", prefix + "meter", prefix + "meters")
                    .forEach(typed -> units.put(typed, u));
        });
        // No field is in these, but a heading may be, and must then be refused.
        Stream.of("m", "µm", "lb", "oz", "mΩ", "ft").forEach(other -> units.put(other, other));
        return units;
    }

    static Heading of(String typed) {
        var text = typed.strip();
        var bracketed = IN_BRACKETS.matcher(text);
        if (bracketed.matches()) {
            var unit = unit(bracketed.group(2));
            return unit.isEmpty()
                    ? new Heading(text, "")
                    : new Heading(bracketed.group(1).strip(), unit);
        }
        var behind = BEHIND.matcher(text);
        while (behind.find()) {
            var unit = unit(text.substring(behind.end()));
            if (!unit.isEmpty()) {
                return new Heading(text.substring(0, behind.start()).strip(), unit);
            }
        }
        return new Heading(text, "");
    }

    private static String unit(String typed) {
        var text = typed.strip();
        var exact = UNITS.get(text);
        return exact != null ? exact : UNITS.getOrDefault(text.toLowerCase(Locale.ROOT), "");
    }

    /// {@return the unit that it names, millimetres where it names none of a length}
    LengthUnit length() {
        return LengthUnit.named(unit).orElse(LengthUnit.MM);
    }
}
