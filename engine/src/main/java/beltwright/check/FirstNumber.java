package beltwright.check;

import java.util.List;

/// A number worth knowing that is no verdict: a pull, a speed, a tension to start with, and how it came about.
///
/// @param key the same for the same number in every revision of a kit
/// @param habit says where the number rests on practice rather than physics, else empty
public record FirstNumber(
        String key,
        String name,
        String symbol,
        double value,
        String unit,
        List<String> needs,
        List<String> estimates,
        String habit,
        List<Line> working) {
    public FirstNumber {
        needs = List.copyOf(needs);
        estimates = List.copyOf(estimates);
        working = List.copyOf(working);
    }
}
