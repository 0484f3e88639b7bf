package beltwright.app.geometry;

/// What the independent model measured for one question.
///
/// @param value in the unit of the finding, measured as its capacity is
/// @param within how exactly the sampling can tell
/// @param engine what the engine claims to measure
record Answer(double value, double within, Claim engine) {
    /// Whether the engine measures this very distance, or says of itself that it keeps to the safe side of it.
    enum Claim {
        EXACT,
        /// Exact while the bodies are apart; how deep two bodies stand in each other is nobody's question.
        EXACT_OUTSIDE,
        AT_MOST
    }

    static final double SAMPLED_MM = 0.02;

    static Answer exact(double value) {
        return new Answer(value, SAMPLED_MM, Claim.EXACT);
    }

    static Answer exact(double value, double within) {
        return new Answer(value, within, Claim.EXACT);
    }

    static Answer between(double value) {
        return new Answer(value, SAMPLED_MM, Claim.EXACT_OUTSIDE);
    }

    static Answer atLeast(double value) {
        return new Answer(value, SAMPLED_MM, Claim.AT_MOST);
    }
}
