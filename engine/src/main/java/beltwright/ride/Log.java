package beltwright.ride;

import beltwright.quantity.Refusal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/// A measured ride: readings over time of one kit, in the units of `Reading`.
///
/// @param kit id of the kit that was ridden
/// @param by who rode
/// @param with what measured
/// @param belts whether the belts were on: a coast-down without them leaves motor and belt drag out
/// @param readings columns of equal length; time is always there and always rises
public record Log(
        String id,
        String kit,
        String by,
        String with,
        LocalDate when,
        Belts belts,
        Map<Reading, List<Double>> readings) {
    public static final int MOST_ROWS = 100_000;

    /// Whether the belts were on.
    public enum Belts {
        ON,
        OFF;

        @Override
        public String toString() {
            return this == ON ? "on" : "off";
        }
    }

    /// What a column holds, and in which unit.
    public enum Reading {
        TIME("time", "s", 0, 1e6),
        SPEED("speed", "m/s", -1, 40),
        DISTANCE("distance", "m", 0, 1e6),
        ELEVATION("elevation", "m", -500, 9000),
        GRADE("grade", "%", -60, 60),
        /// Direct current of equal torque in one motor; below zero it brakes.
        MOTOR_CURRENT("motor current", "A", -500, 500),
        BATTERY_CURRENT("battery current", "A", -500, 500),
        VOLTAGE("voltage", "V", 5, 200),
        WINDING("winding temperature", "°C", -30, 250),
        CASE("case temperature", "°C", -30, 250);

        private final String words;
        private final String unit;
        private final double least;
        private final double most;

        Reading(String words, String unit, double least, double most) {
            this.words = words;
            this.unit = unit;
            this.least = least;
            this.most = most;
        }

        public String unit() {
            return unit;
        }

        public double least() {
            return least;
        }

        public double most() {
            return most;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    public Log {
        var copy = new EnumMap<Reading, List<Double>>(Reading.class);
        readings.forEach((what, values) -> copy.put(what, List.copyOf(values)));
        readings = copy;
        var time = copy.get(Reading.TIME);
        if (time == null || time.size() < 3 || time.size() > MOST_ROWS) {
            throw new Refusal(
                    id + ".time",
                    time == null ? "no column" : time.size() + " rows",
                    "a column of 3 to " + MOST_ROWS + " times (s)",
                    "say which column is the time, or thin the rows out");
        }
        copy.forEach((what, values) -> {
            if (values.size() != time.size()) {
                throw new Refusal(id + "." + what, values.size() + " rows", time.size() + " as time has", "fill them");
            }
            for (int i = 0; i < values.size(); i++) {
                double v = values.get(i);
                if (!(v >= what.least && v <= what.most)) {
                    throw new Refusal(
                            id + "." + what + ", row " + (i + 1),
                            v + " " + what.unit,
                            what.least + " to " + what.most + " " + what.unit,
                            "look whether this column is in another unit");
                }
                if (what == Reading.TIME && i > 0 && !(v > values.get(i - 1))) {
                    throw new Refusal(
                            id + ".time, row " + (i + 1),
                            v + " s does not come after " + values.get(i - 1) + " s",
                            "times that rise from row to row",
                            "take this row out, or sort the rows");
                }
            }
        });
    }

    public int rows() {
        return of(Reading.TIME).size();
    }

    public boolean has(Reading what) {
        return readings.containsKey(what);
    }

    /// @throws Refusal if this was not measured
    public List<Double> of(Reading what) {
        var values = readings.get(what);
        if (values == null) {
            throw new Refusal(
                    id + "." + what,
                    "was not measured",
                    "a column of it (" + what.unit + ")",
                    "map a column to it, or log it");
        }
        return values;
    }
}
