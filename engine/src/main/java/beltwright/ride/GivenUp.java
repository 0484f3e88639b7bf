package beltwright.ride;

/// Whoever asked for a ride no longer wants it.
public final class GivenUp extends RuntimeException {
    GivenUp() {
        super("given up");
    }
}
