package beltwright.published;

import static java.util.Map.entry;

import beltwright.published.PublishedCase.Inputs;
import beltwright.published.PublishedCase.Value;
import java.util.Arrays;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// Which engine function answers which `what` of a case file.
final class Answers {
    /// What one printed unit is in the engine's unit.
    private static final Map<String, Double> UNIT = Map.ofEntries(
            entry("in", 25.4),
            entry("µm", 0.001),
            entry("ft", 0.3048),
            entry("km", 1000.0),
            entry("√in", Math.sqrt(25.4)),
            entry("°", Math.PI / 180),
            entry("lbf", 4.4482216152605),
            entry("kN", 1000.0),
            entry("kip", 4448.2216152605),
            entry("kN·m", 1000.0),
            entry("N·mm", 0.001),
            entry("lbf·in", 0.1129848290276),
            entry("ft·lbf", 1.3558179483314),
            entry("MN/m", 1000.0),
            entry("Mlbf/in", 175_126.835),
            entry("psi", 0.006894757293168),
            entry("kpsi", 6.894757293168),
            entry("kW", 1000.0));

    private static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Stream.of(
                    BeltAnswers.ENGINE,
                    ScrewAnswers.ENGINE,
                    FitAnswers.ENGINE,
                    ShaftAnswers.ENGINE,
                    StrengthAnswers.ENGINE,
                    PowerAnswers.ENGINE,
                    RideAnswers.ENGINE,
                    HeatAnswers.ENGINE)
            .flatMap(room -> room.entrySet().stream())
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

    private Answers() {}

    /// {@return the engine's answer in the printed unit}
    static double to(Value value) {
        var function = ENGINE.get(value.what());
        if (function == null) {
            throw new IllegalArgumentException("no engine function answers '" + value.what() + "'");
        }
        return function.applyAsDouble(value.inputs()) / UNIT.getOrDefault(value.unit(), 1.0);
    }

    static <E extends Enum<E>> E named(E[] values, String words) {
        return Arrays.stream(values)
                .filter(v -> v.toString().equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + words + "' is none of " + Arrays.asList(values)));
    }
}
