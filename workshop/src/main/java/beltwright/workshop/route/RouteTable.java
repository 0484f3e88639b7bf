package beltwright.workshop.route;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import beltwright.ride.GreatCircle;
import beltwright.ride.Route;
import beltwright.workshop.table.ColumnUnit;
import beltwright.workshop.table.LongTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/// A road as a table: points by distance, points by latitude and longitude, or legs with their grade.
final class RouteTable {
    private static final double STEEPEST_PERCENT = 60;
    private static final String ALLOWED =
            "distance and elevation, or latitude, longitude and elevation, or length and grade; with them speed and wait";

    /// What a column can hold.
    private enum Column {
        DISTANCE(ColumnUnit.Of.LENGTH, "distance", "dist"),
        ELEVATION(ColumnUnit.Of.LENGTH, "elevation", "ele", "height", "altitude"),
        SPEED(ColumnUnit.Of.SPEED, "speed", "wishspeed", "wishedspeed"),
        WAIT(ColumnUnit.Of.TIME, "wait", "stop"),
        LENGTH(ColumnUnit.Of.LENGTH, "length", "leg", "leglength"),
        GRADE(ColumnUnit.Of.SHARE, "grade", "gradient", "slope"),
        LATITUDE(null, "latitude", "lat"),
        LONGITUDE(null, "longitude", "lon", "long", "lng");

        private final ColumnUnit.@Nullable Of of; // none for degrees, which name no unit
        private final List<String> words;

        Column(ColumnUnit.@Nullable Of of, String... words) {
            this.of = of;
            this.words = List.of(words);
        }

        static Optional<Column> named(String plain) {
            return Arrays.stream(values()).filter(c -> c.words.contains(plain)).findFirst();
        }

        String word() {
            return words.getFirst();
        }
    }

    /// Where a column is, and what it counts in.
    private record Place(
            int index, String heading, @Nullable ColumnUnit unit) {}

    private final LongTable table;
    private final Map<Column, Place> places = new EnumMap<>(Column.class);
    private final List<String> leftOut = new ArrayList<>();
    private double before = Double.NaN;

    RouteTable(LongTable table) {
        this.table = table;
        for (int i = 0; i < table.headings().size(); i++) {
            place(i, table.headings().get(i));
        }
    }

    private void place(int index, String heading) {
        var titled = ColumnUnit.titled(heading);
        var column = Column.named(titled.plain());
        if (column.isEmpty()) {
            if (!heading.isBlank()) {
                leftOut.add(heading.strip());
            }
            return;
        }
        var of = column.get().of;
        var unit = titled.unit().filter(u -> u.of() == of);
        if (of != null && unit.isEmpty()) {
            throw new Refusal(
                    table.where(1, heading),
                    titled.typed().isEmpty() ? "names no unit" : "'" + titled.typed() + "' is no unit of it",
                    of.allowed(),
                    "write for example '" + column.get().word() + " ["
                            + of.units().getFirst() + "]'");
        }
        var other = places.put(column.get(), new Place(index, heading, unit.orElse(null)));
        if (other != null) {
            throw new Refusal(
                    table.where(1, heading),
                    "is the second column of " + column.get().word() + ", after '" + other.heading() + "'",
                    "one column of each",
                    "take one of the two out");
        }
    }

    /// {@return what there is to remark of the columns}
    List<String> remarks() {
        return leftOut.isEmpty() ? List.of() : List.of("columns left out: " + String.join(", ", leftOut));
    }

    void read(Road road) {
        boolean elevation = places.containsKey(Column.ELEVATION);
        boolean map = places.containsKey(Column.LATITUDE) && places.containsKey(Column.LONGITUDE);
        if (elevation && places.containsKey(Column.DISTANCE)) {
            table.forEach((line, cells) -> point(road, line, cells));
        } else if (map && elevation) {
            var trail = new Trail(table.file(), road);
            table.forEach((line, cells) -> place(trail, line, cells));
            trail.end();
        } else if (places.containsKey(Column.LENGTH) && places.containsKey(Column.GRADE)) {
            road.add(0, 0, Double.NaN, Double.NaN);
            table.forEach((line, cells) -> leg(road, line, cells));
        } else {
            throw new Refusal(
                    table.where(1) + ": headings",
                    String.join(", ", table.headings()) + (map ? " hold no elevation" : " do not describe a road"),
                    ALLOWED,
                    "name the columns in the first row, with their units: 'distance [m], elevation [m]'");
        }
    }

    private void point(Road road, int line, List<String> cells) {
        double distance = number(Column.DISTANCE, line, cells, -Route.LONGEST_M, Route.LONGEST_M);
        double elevation = number(Column.ELEVATION, line, cells, Route.LOWEST_M, Route.HIGHEST_M);
        if (distance < before) {
            throw new Refusal(
                    table.where(line, heading(Column.DISTANCE)),
                    Numbers.plain(distance) + " m is less than " + Numbers.plain(before) + " m in the row before",
                    "distances that do not fall from row to row",
                    "sort the rows, or correct this one");
        }
        before = distance;
        road.add(distance, elevation, speed(line, cells), stop(line, cells));
    }

    private void place(Trail trail, int line, List<String> cells) {
        var typed = cells.get(index(Column.ELEVATION));
        trail.add(
                "line " + line,
                degrees(Column.LATITUDE, line, cells),
                degrees(Column.LONGITUDE, line, cells),
                typed.isBlank() ? Double.NaN : number(Column.ELEVATION, line, cells, Route.LOWEST_M, Route.HIGHEST_M),
                null,
                speed(line, cells),
                stop(line, cells));
    }

    /// A leg says how fast it is ridden, and how long one waits at its end.
    private void leg(Road road, int line, List<String> cells) {
        double length = number(Column.LENGTH, line, cells, 0, Route.LONGEST_M);
        double grade = number(Column.GRADE, line, cells, -STEEPEST_PERCENT, STEEPEST_PERCENT);
        if (length < Road.SAME_PLACE_M) {
            throw new Refusal(
                    table.where(line, heading(Column.LENGTH)),
                    "the leg has a length of " + Numbers.plain(length) + " m",
                    "above " + Road.SAME_PLACE_M + " m",
                    "correct it, or take the leg out");
        }
        double speed = wish(line, cells);
        if (speed == 0) {
            throw new Refusal(
                    table.where(line, heading(Column.SPEED)),
                    "the leg is ridden at 0 km/h",
                    "above 0, or empty where the rider chooses",
                    "give a speed; a stop at the end of a leg is said by 'wait'");
        }
        road.wish(speed);
        double end = road.lengthM() + length;
        double elevation = road.lastElevationM() + GreatCircle.riseM(length, grade);
        if (end > Route.LONGEST_M || elevation < Route.LOWEST_M || elevation > Route.HIGHEST_M) {
            throw new Refusal(
                    table.where(line),
                    "the legs add up to " + Numbers.plain(end) + " m and " + Numbers.significant(elevation, 5)
                            + " m above the start",
                    "up to " + Numbers.plain(Route.LONGEST_M) + " m, and " + Numbers.plain(Route.LOWEST_M) + " to "
                            + Numbers.plain(Route.HIGHEST_M) + " m",
                    "check the units of length and grade");
        }
        road.add(end, elevation, Double.NaN, wait(line, cells));
    }

    private double wish(int line, List<String> cells) {
        if (blank(Column.SPEED, cells)) {
            return Double.NaN;
        }
        double kmh = number(Column.SPEED, line, cells, 0, Route.FASTEST_KMH / 3.6) * 3.6;
        return Math.rint(kmh * 1e6) / 1e6; // what was typed in km/h comes back as it was
    }

    /// A speed of 0 is a stop, and asks for nothing behind it.
    private double speed(int line, List<String> cells) {
        double wish = wish(line, cells);
        return wish == 0 ? Double.NaN : wish;
    }

    private double stop(int line, List<String> cells) {
        double wait = wait(line, cells);
        return Double.isNaN(wait) && wish(line, cells) == 0 ? 0 : wait;
    }

    private double wait(int line, List<String> cells) {
        double wait = blank(Column.WAIT, cells) ? 0 : number(Column.WAIT, line, cells, 0, Road.LONGEST_WAIT_S);
        return wait == 0 ? Double.NaN : wait;
    }

    private boolean blank(Column column, List<String> cells) {
        var place = places.get(column);
        return place == null || cells.get(place.index()).isBlank();
    }

    private int index(Column column) {
        return place(column).index();
    }

    private String heading(Column column) {
        return place(column).heading();
    }

    private Place place(Column column) {
        var place = places.get(column);
        if (place == null) {
            throw new IllegalStateException("asked for before it was found: " + column);
        }
        return place;
    }

    private double degrees(Column column, int line, List<String> cells) {
        var place = place(column);
        return table.number(line, place.heading(), cells.get(place.index()), "degrees, south and west below zero");
    }

    /// {@return the number in the unit that this program counts in}
    private double number(Column column, int line, List<String> cells, double least, double most) {
        var place = place(column);
        var unit = place.unit() == null ? ColumnUnit.METRES : place.unit();
        var counted = unit.of().units().getFirst();
        var allowed = Numbers.significant(least, 4) + " to " + Numbers.significant(most, 4) + " " + counted;
        var cell = cells.get(place.index());
        double value = unit.counted(table.number(line, place.heading(), cell, allowed));
        if (!(value >= least && value <= most + 1e-9)) {
            throw new Refusal(
                    table.where(line, place.heading()),
                    LongTable.shown(cell) + " " + unit + " cannot be true",
                    allowed,
                    "check the unit in the heading and the decimal point");
        }
        return Math.min(value, most);
    }
}
