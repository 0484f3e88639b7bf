package beltwright.ride;

import org.hipparchus.ode.ODEStateAndDerivative;

/// Ends a ride that the integrator follows in ever smaller steps.
final class TooManySteps extends RuntimeException {
    private static final long serialVersionUID = 1;

    /// Where it was by then.
    final transient ODEStateAndDerivative reached;

    TooManySteps(ODEStateAndDerivative reached) {
        super("too many steps");
        this.reached = reached;
    }
}
