package beltwright.published;

import static java.util.Map.entry;

import beltwright.part.BearingSize;
import beltwright.published.PublishedCase.Inputs;
import beltwright.quantity.Range;
import beltwright.quantity.Tolerance;
import beltwright.spread.NormalQuantile;
import beltwright.spread.RootSumSquare;
import java.util.Arrays;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// Limits, fits, bearing sizes and chains.
final class FitAnswers {
    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry("width of grade", i -> {
                var h = Tolerance.iso286(i.number("sizeMm"), "h" + i.count("grade"));
                return h.upper() - h.lower();
            }),
            entry("upper deviation", i -> deviation(i).upper()),
            entry("lower deviation", i -> deviation(i).lower()),
            entry("upper limit", i -> i.number("sizeMm") + deviation(i).upper()),
            entry("lower limit", i -> i.number("sizeMm") + deviation(i).lower()),
            entry(
                    "over of a bearing bore",
                    i -> BearingSize.boreTolerance(i.number("boreMm")).upper()),
            entry(
                    "under of a bearing bore",
                    i -> BearingSize.boreTolerance(i.number("boreMm")).lower()),
            entry("bearing", i -> {
                var bearing = BearingSize.named(i.text("number")).orElseThrow();
                return switch (i.text("of")) {
                    case "bore" -> bearing.boreMm();
                    case "outside" -> bearing.outsideMm();
                    case "width" -> bearing.widthMm();
                    default -> throw new IllegalArgumentException("a bearing has no " + i.text("of"));
                };
            }),
            entry("half width of a worst-case chain", i -> {
                var chain = Range.ZERO;
                for (int member = 0; member < i.count("members"); member++) {
                    chain = chain.plus(new Range(-i.number("half"), 0, i.number("half")));
                }
                return (chain.high() - chain.low()) / 2;
            }),
            entry("half width of a root-sum-square chain", i -> {
                var members = new double[i.count("members")];
                Arrays.fill(members, i.number("half"));
                return RootSumSquare.of(members);
            }),
            entry("normal quantile", i -> NormalQuantile.of(i.number("probability"))));

    private FitAnswers() {}

    private static Tolerance deviation(Inputs i) {
        return Tolerance.iso286(i.number("sizeMm"), i.text("code"));
    }
}
