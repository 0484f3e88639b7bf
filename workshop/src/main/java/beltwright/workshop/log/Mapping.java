package beltwright.workshop.log;

import beltwright.quantity.Refusal;
import beltwright.ride.Log.Reading;
import beltwright.workshop.table.ColumnUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// Which column is to be read as what: `time=Zeit:ms,speed=v:km/h`.
///
/// A heading may hold commas, colons and equals signs: a piece begins where the name of a reading and an equals sign
/// follow a comma, and the unit stands behind the last colon.
///
/// @param columns in the order typed, each reading once
public record Mapping(List<Column> columns) {
    /// Nothing said: headings are guessed.
    public static final Mapping NONE = new Mapping(List.of());

    private static final String EXAMPLE = "write for example 'time=t:ms,speed=v:km/h,motor current=I:A'";

    /// One column.
    ///
    /// @param heading as it stands in the table; empty keeps a reading from being guessed
    /// @param unit where it is said here and not by the heading
    public record Column(Reading reading, String heading, Optional<ColumnUnit> unit) {}

    public Mapping {
        columns = List.copyOf(columns);
    }

    /// @throws Refusal if a piece names no reading, no column or a unit that is none of it
    public static Mapping parse(String typed) {
        var pieces = new ArrayList<String>();
        for (var piece : typed.split(",", -1)) {
            boolean begins = reading(piece).isPresent();
            if (begins || pieces.isEmpty()) {
                pieces.add(piece);
            } else {
                pieces.add(pieces.removeLast() + "," + piece);
            }
        }
        var columns = new ArrayList<Column>();
        for (var piece : typed.isBlank() ? List.<String>of() : pieces) {
            var column = column(piece.strip());
            if (columns.stream().anyMatch(c -> c.reading() == column.reading())) {
                throw new Refusal("columns", "'" + column.reading() + "' is mapped twice", "each once", EXAMPLE);
            }
            columns.add(column);
        }
        return new Mapping(columns);
    }

    private static Column column(String piece) {
        var reading = reading(piece)
                .orElseThrow(() -> new Refusal(
                        "columns",
                        "'" + piece + "' does not begin with a reading and an equals sign",
                        Stream.of(Reading.values()).map(Reading::toString).collect(Collectors.joining(", ")),
                        EXAMPLE));
        var rest = piece.substring(piece.indexOf('=') + 1).strip();
        for (int colon = rest.indexOf(':'); colon >= 0; colon = rest.indexOf(':', colon + 1)) {
            var unit = ColumnUnit.named(rest.substring(colon + 1));
            if (unit.isPresent()) {
                if (unit.get().of() != Guess.of(reading)) {
                    throw new Refusal(
                            "columns." + reading,
                            "'" + unit.get() + "' is no unit of it",
                            Guess.of(reading).allowed(),
                            EXAMPLE);
                }
                return new Column(reading, rest.substring(0, colon).strip(), unit);
            }
        }
        int last = rest.lastIndexOf(':');
        if (last >= 0 && ColumnUnit.titled(rest).unit().isEmpty()) {
            throw new Refusal(
                    "columns." + reading,
                    "'" + rest.substring(last + 1) + "' is not a unit",
                    Guess.of(reading).allowed(),
                    EXAMPLE);
        }
        return new Column(reading, rest, Optional.empty());
    }

    private static Optional<Reading> reading(String piece) {
        int equals = piece.indexOf('=');
        var words = equals < 0 ? "" : piece.substring(0, equals).strip();
        return Arrays.stream(Reading.values())
                .filter(r -> r.toString().equals(words))
                .findFirst();
    }
}
