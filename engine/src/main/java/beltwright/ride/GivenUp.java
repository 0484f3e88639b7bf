package beltwright.ride;

/// Whoever asked for a long calculation no longer wants it.
public final class GivenUp extends RuntimeException {
    public GivenUp() {
        super("given up");
    }
}
