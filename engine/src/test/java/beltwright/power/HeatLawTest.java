package beltwright.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// A motor as two bodies, held against the matrix exponential of the numeric library: at one current and speed the
/// equations are linear, even with a resistance that grows with warmth.
@Tag("law")
class HeatLawTest {
    /// One motor at one current and speed.
    private record At(MotorHeat heat, Outrunner motor, double currentA, double otherW, double airC, double awayWPerK) {
        static At of(Draw draw) {
            var heat = new MotorHeat(
                    draw.between(40, 300),
                    draw.between(60, 600),
                    draw.between(0.1, 2),
                    draw.between(0.5, 6),
                    draw.between(0.04, 0.08),
                    draw.between(0.006, 0.03),
                    draw.between(0, 1),
                    120);
            var motor = Outrunner.of(draw.between(100, 300), draw.between(0.02, 0.1), 22, 1.5, 600, 0.5);
            double away = heat.caseToAirWPerK(draw.between(0, 15), draw.between(0, 900));
            return new At(heat, motor, draw.between(0, 30), draw.between(0, 40), draw.between(-10, 40), away);
        }

        /// Rates of (T_w, T_c, 1): the heat paths written as a matrix.
        RealMatrix matrix() {
            double atZero = currentA * currentA * motor.resistanceOhm(0);
            double perK = currentA * currentA * (motor.resistanceOhm(1) - motor.resistanceOhm(0));
            double across = 1 / heat.windingToCaseKPerW();
            double w = heat.windingJPerK();
            double c = heat.caseJPerK();
            return MatrixUtils.createRealMatrix(new double[][] {
                {(perK - across) / w, across / w, (atZero + otherW) / w},
                {across / c, -(across + awayWPerK) / c, awayWPerK * airC / c},
                {0, 0, 0}
            });
        }

        double[] after(double seconds, double windingC, double caseC) {
            return MatrixUtils.matrixExponential(matrix().scalarMultiply(seconds))
                    .operate(new double[] {windingC, caseC, 1});
        }
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void warmingIsTheMatrixExponential(Draw draw) {
        var at = At.of(draw);
        double seconds = draw.between(1, 1500);
        var end = new DormandPrince853Integrator(1e-6, 50, 1e-10, 1e-12)
                .integrate(
                        new OrdinaryDifferentialEquation() {
                            @Override
                            public int getDimension() {
                                return 2;
                            }

                            @Override
                            public double[] computeDerivatives(double t, double[] y) {
                                double loss = MotorModel.copperLossW(
                                                at.currentA(), at.motor().resistanceOhm(y[0]))
                                        + at.otherW();
                                return new double[] {
                                    at.heat().windingKPerS(loss, y[0], y[1]),
                                    at.heat().caseKPerS(y[0], y[1], at.airC(), at.awayWPerK())
                                };
                            }
                        },
                        new ODEState(0, new double[] {at.airC(), at.airC()}),
                        seconds)
                .getPrimaryState();
        var exact = at.after(seconds, at.airC(), at.airC());
        assertThat(end[0]).isCloseTo(exact[0], within(1e-8 * (100 + Math.abs(exact[0]))));
        assertThat(end[1]).isCloseTo(exact[1], within(1e-8 * (100 + Math.abs(exact[1]))));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void coolingIsTheMatrixExponential(Draw draw) {
        var drawn = At.of(draw);
        var at = new At(drawn.heat(), drawn.motor(), 0, 0, drawn.airC(), drawn.awayWPerK());
        double seconds = draw.between(0, 3000);
        double winding = draw.between(20, 150);
        double casing = draw.between(20, 100);
        assertThat(at.heat().cooledC(winding, casing, at.airC(), at.awayWPerK(), seconds))
                .containsExactly(java.util.Arrays.copyOf(at.after(seconds, winding, casing), 2), within(1e-9));
        assertThat(at.heat().cooledC(winding, casing, at.airC(), at.awayWPerK(), 86_400)[0])
                .isCloseTo(at.airC(), within(1e-6));
    }

    @ParameterizedTest // where the matrix exponential no longer moves
    @MethodSource("beltwright.Seeds#draws")
    void settledIsWhereNothingMoves(Draw draw) {
        var at = At.of(draw);
        double settled = at.heat().settledWindingC(at.motor(), at.currentA(), at.otherW(), at.airC(), at.awayWPerK());
        if (settled < 1000) {
            assertThat(at.after(1e6, at.airC(), at.airC())[0]).isCloseTo(settled, within(1e-6 * settled));
        } else {
            assertThat(at.after(3000, at.airC(), at.airC())[0]).isGreaterThan(200);
        }
    }
}
