package beltwright.check;

/// One line of a working: `symbol = formula = numbers = value unit (source)`.
///
/// @param numbers the formula with the numbers put in; evaluated again it gives the value. A line that only quotes a
///     dimension repeats the value here
public record Line(String symbol, String formula, String numbers, double value, String unit, String source) {}
