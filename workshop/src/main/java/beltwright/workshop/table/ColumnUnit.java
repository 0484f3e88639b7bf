package beltwright.workshop.table;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// The unit of a column of numbers, and what one of it is in the unit that this program counts in.
public enum ColumnUnit {
    SECONDS("s", Of.TIME, 1, "sec", "seconds"),
    MILLISECONDS("ms", Of.TIME, 0.001, "milliseconds"),
    MINUTES("min", Of.TIME, 60, "minutes"),
    CLOCK("h:mm:ss", Of.TIME, 1, "hh:mm:ss"),
    METRES_PER_SECOND("m/s", Of.SPEED, 1, "mps"),
    KILOMETRES_PER_HOUR("km/h", Of.SPEED, 1 / 3.6, "kmh"),
    MILES_PER_HOUR("mph", Of.SPEED, 0.44704),
    METRES("m", Of.LENGTH, 1, "metres"),
    KILOMETRES("km", Of.LENGTH, 1000),
    FEET("ft", Of.LENGTH, 0.3048, "feet"),
    MILES("mi", Of.LENGTH, 1609.344, "miles"),
    AMPERES("A", Of.CURRENT, 1),
    MILLIAMPERES("mA", Of.CURRENT, 0.001),
    VOLTS("V", Of.VOLTAGE, 1),
    MILLIVOLTS("mV", Of.VOLTAGE, 0.001),
    CELSIUS("°C", Of.TEMPERATURE, 1, "C", "degC"),
    FAHRENHEIT("°F", Of.TEMPERATURE, 5 / 9.0, "F", "degF"),
    PERCENT("%", Of.SHARE, 1, "percent"),
    FRACTION("fraction", Of.SHARE, 100);

    /// What is measured; counted in the first unit of each.
    public enum Of {
        TIME,
        SPEED,
        LENGTH,
        CURRENT,
        VOLTAGE,
        TEMPERATURE,
        SHARE;

        /// {@return the units that it may be in}
        public List<ColumnUnit> units() {
            return Arrays.stream(ColumnUnit.values()).filter(u -> u.of == this).toList();
        }

        public String allowed() {
            return units().stream().map(ColumnUnit::toString).collect(Collectors.joining(", "));
        }
    }

    private static final Map<String, ColumnUnit> EXACT = new HashMap<>();
    private static final Map<String, ColumnUnit> ANY_CASE = new HashMap<>();
    private static final Pattern IN_BRACKETS = Pattern.compile("([^\\[\\]()]*)[\\[(]([^\\[\\]()]+)[\\])]\\s*");
    private static final Pattern BEHIND = Pattern.compile("[ /,_]");
    private static final Pattern IN_NAME = Pattern.compile("(.*[a-z])(Kmh|Mps|Km|Percent|M|S|A|V|C)");

    static {
        for (var unit : values()) {
            EXACT.put(unit.symbol, unit);
            unit.others.forEach(other -> EXACT.put(other, unit));
        }
        EXACT.forEach((typed, unit) -> ANY_CASE.putIfAbsent(typed.toLowerCase(Locale.ROOT), unit));
    }

    private final String symbol;
    private final Of of;
    private final double factor;
    private final List<String> others;

    ColumnUnit(String symbol, Of of, double factor, String... others) {
        this.symbol = symbol;
        this.of = of;
        this.factor = factor;
        this.others = List.of(others);
    }

    public Of of() {
        return of;
    }

    /// {@return a number in this unit as one in the unit that this program counts in}
    public double counted(double value) {
        return this == FAHRENHEIT ? (value - 32) * factor : value * factor;
    }

    public static Optional<ColumnUnit> named(String typed) {
        var text = typed.strip();
        return Optional.ofNullable(EXACT.getOrDefault(text, ANY_CASE.get(text.toLowerCase(Locale.ROOT))));
    }

    /// A heading taken apart.
    ///
    /// @param words what stands before the unit
    /// @param typed the unit as typed, empty where none was seen
    public record Titled(String words, String typed) {
        public Optional<ColumnUnit> unit() {
            return named(typed);
        }

        /// {@return the words without case, spaces and marks}
        public String plain() {
            return words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
        }
    }

    /// {@return words and unit of `speed [km/h]`, `speed (km/h)`, `speed km/h`, `speed / km/h` or `speedKmh`}
    public static Titled titled(String heading) {
        var text = heading.strip();
        var bracketed = IN_BRACKETS.matcher(text);
        if (bracketed.matches()) {
            return new Titled(bracketed.group(1).strip(), bracketed.group(2).strip());
        }
        var behind = BEHIND.matcher(text);
        while (behind.find()) {
            var unit = text.substring(behind.end()).strip();
            if (behind.start() > 0 && named(unit).isPresent()) {
                return new Titled(text.substring(0, behind.start()).strip(), unit);
            }
        }
        var inName = IN_NAME.matcher(text);
        return inName.matches() ? new Titled(inName.group(1), inName.group(2)) : new Titled(text, "");
    }

    @Override
    public String toString() {
        return symbol;
    }
}
