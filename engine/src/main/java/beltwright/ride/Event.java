package beltwright.ride;

import beltwright.power.Governs;

/// Something that happened at one moment of a ride.
///
/// @param timeS from the start
/// @param governs what is met or left, for those two kinds
public record Event(double timeS, double distanceM, Kind kind, Governs governs) {
    /// What happened.
    public enum Kind {
        START("starts"),
        MET("begins to govern"),
        LEFT("no longer governs"),
        STOP("stops"),
        ON("rides on"),
        ROLLS_BACK("cannot start here"),
        STALLS("comes to a halt on the slope"),
        EMPTY("pack is empty"),
        DISCONNECTED("protection board disconnects: no drive and no brake"),
        TOO_LONG("given up: longer than the time allowed"),
        TOO_MANY_STEPS("given up: more steps than a ride may take"),
        ARRIVED("arrives");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /// {@return whether a ride ends here}
        public boolean last() {
            return ordinal() >= ROLLS_BACK.ordinal();
        }

        @Override
        public String toString() {
            return words;
        }
    }

    public String words() {
        return kind == Kind.MET || kind == Kind.LEFT ? governs + ": " + kind : kind.toString();
    }
}
