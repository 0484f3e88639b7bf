package beltwright.ride;

import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/// Ends a leg where a quantity falls through zero.
final class End implements ODEEventDetector {
    private final ToDoubleFunction<double[]> left;

    /// @param left what is left of it in a state; above zero while the leg goes on
    End(ToDoubleFunction<double[]> left) {
        this.left = left;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return (state, isForward) -> 1;
    }

    @Override
    public int getMaxIterationCount() {
        return 100;
    }

    @Override
    public BracketingNthOrderBrentSolver getSolver() {
        return new BracketingNthOrderBrentSolver(0, 1e-9, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
        return (state, detector, increasing) -> increasing ? Action.CONTINUE : Action.STOP;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        return left.applyAsDouble(state.getPrimaryState());
    }
}
