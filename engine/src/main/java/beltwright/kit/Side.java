package beltwright.kit;

/// Which side of the board, seen by the rider: left is +y.
public enum Side {
    LEFT("left"),
    RIGHT("right");

    private final String words;

    Side(String words) {
        this.words = words;
    }

    public Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }

    @Override
    public String toString() {
        return words;
    }
}
