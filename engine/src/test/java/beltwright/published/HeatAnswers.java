package beltwright.published;

import static java.util.Map.entry;

import beltwright.part.Cell;
import beltwright.power.CylinderInAir;
import beltwright.power.MotorHeat;
import beltwright.power.OpenCircuit;
import beltwright.power.Outrunner;
import beltwright.power.PackModel;
import beltwright.published.PublishedCase.Inputs;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/// Warmth and battery.
final class HeatAnswers {
    static final Map<String, ToDoubleFunction<Inputs>> ENGINE = Map.ofEntries(
            entry("time of a body to a temperature", HeatAnswers::bodyS),
            entry("temperature of a body after a time", HeatAnswers::bodyC),
            entry(
                    "where a body settles",
                    i -> heat(i).settledWindingC(
                                    new Outrunner(1, 1, 20, 0, 0), 0, i.number("lossW"), i.number("airC"), away(i))),
            entry("share of its warmth that a body sheds in a second", i -> -heat(i).caseKPerS(1, 1, 0, away(i))),
            entry("time constant of a body", i -> 1 / -heat(i).caseKPerS(1, 1, 0, away(i))),
            entry(
                    "Nusselt number of a cylinder",
                    i -> CylinderInAir.nusselt(i.number("reynolds"), i.number("prandtl"))),
            entry(
                    "heat that air takes from a cylinder",
                    i -> CylinderInAir.coefficientWm2K(i.number("speedMps"), i.number("diameterM"))),
            entry("voltage under load", i -> pack(i).voltageV(1, i.number("currentA"))),
            entry("most power of a battery", i -> pack(i).mostPowerW(1)),
            entry("voltage of a cell at rest", i -> {
                var points = ((List<?>) i.of("points"))
                        .stream().map(HeatAnswers::point).toList();
                var cell = new Cell("printed", "printed", points, Double.NaN, "printed", "none");
                return new OpenCircuit(cell).voltageV(i.number("charge"));
            }));

    private HeatAnswers() {}

    /// A pack that rests at this voltage when it is full.
    static PackModel pack(int cells, double cellV, double ohm) {
        var points = List.of(new Cell.Point(0, cellV / 2), new Cell.Point(1, cellV));
        var curve = new OpenCircuit(new Cell("printed", "printed", points, Double.NaN, "printed", "none"));
        return new PackModel(cells, curve, ohm, 1e9, 1e9, 1e9, 1e9, 0);
    }

    private static PackModel pack(Inputs i) {
        int cells = i.has("cells") ? i.count("cells") : 1;
        return pack(cells, i.number("cellV"), i.number("cellOhm") * cells);
    }

    private static Cell.Point point(Object point) {
        var numbers = (List<?>) point;
        return new Cell.Point(((Number) numbers.get(0)).doubleValue(), ((Number) numbers.get(1)).doubleValue());
    }

    /// One body: winding and can at one temperature, or apart where a resistance lies between.
    private static MotorHeat heat(Inputs i) {
        double between = i.has("innerKPerW") ? i.number("innerKPerW") : 0;
        double capacity = i.has("heatJPerK") ? i.number("heatJPerK") : 1;
        return new MotorHeat(1, capacity, between == 0 ? 1e-12 : between, outerKPerW(i), 1, 1, 1, 1e9);
    }

    private static double outerKPerW(Inputs i) {
        return i.has("outerKPerW") ? i.number("outerKPerW") : 1 / i.number("outerWPerK");
    }

    private static double away(Inputs i) {
        return heat(i).caseToAirWPerK(0, 0);
    }

    private static double bodyS(Inputs i) {
        double away = away(i);
        double air = i.number("airC");
        double from = i.number("fromC");
        var heat = heat(i);
        double span = i.number("toC") - from;
        return integrate(0, 1, (share, seconds) -> {
            double at = from + share * span;
            return span / heat.caseKPerS(at, at, air, away);
        });
    }

    private static double bodyC(Inputs i) {
        double away = away(i);
        var heat = heat(i);
        return after(i.number("fromC"), i.number("timeS"), at -> heat.caseKPerS(at, at, i.number("airC"), away));
    }

    /// {@return where a value stands after a time, its rate following from itself}
    static double after(double from, double time, DoubleUnaryOperator rate) {
        return integrate(from, time, (t, y) -> rate.applyAsDouble(y));
    }

    private static double integrate(double from, double to, DoubleBinaryOperator rate) {
        var equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                return new double[] {rate.applyAsDouble(t, y[0])};
            }
        };
        return new DormandPrince54Integrator(1e-9, to, 1e-9, 1e-9)
                .integrate(equation, new ODEState(0, new double[] {from}), to)
                .getPrimaryState()[0];
    }
}
