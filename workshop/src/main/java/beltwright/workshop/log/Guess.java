package beltwright.workshop.log;

import beltwright.ride.Log.Reading;
import beltwright.workshop.table.ColumnUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// What a heading in plain words seems to mean.
final class Guess {
    private Guess() {}

    static Optional<Reading> reading(ColumnUnit.Titled heading) {
        var plain = heading.plain();
        return Arrays.stream(Reading.values())
                .filter(r -> words(r).contains(plain))
                .findFirst();
    }

    private static List<String> words(Reading reading) {
        return switch (reading) {
            case TIME -> List.of("time", "t");
            case SPEED -> List.of("speed");
            case DISTANCE -> List.of("distance", "dist");
            case ELEVATION -> List.of("elevation", "altitude", "height");
            case GRADE -> List.of("grade", "gradient", "slope");
            case MOTOR_CURRENT -> List.of("motorcurrent");
            case BATTERY_CURRENT -> List.of("batterycurrent", "packcurrent");
            case VOLTAGE -> List.of("voltage", "batteryvoltage", "packvoltage");
            case WINDING -> List.of("windingtemperature");
            case CASE -> List.of("casetemperature");
        };
    }

    static ColumnUnit.Of of(Reading reading) {
        return switch (reading) {
            case TIME -> ColumnUnit.Of.TIME;
            case SPEED -> ColumnUnit.Of.SPEED;
            case DISTANCE, ELEVATION -> ColumnUnit.Of.LENGTH;
            case GRADE -> ColumnUnit.Of.SHARE;
            case MOTOR_CURRENT, BATTERY_CURRENT -> ColumnUnit.Of.CURRENT;
            case VOLTAGE -> ColumnUnit.Of.VOLTAGE;
            case WINDING, CASE -> ColumnUnit.Of.TEMPERATURE;
        };
    }
}
