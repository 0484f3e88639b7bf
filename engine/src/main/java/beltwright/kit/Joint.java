package beltwright.kit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// Two or more seats held together: by what, and with which fastener seats.
public record Joint(String name, Way by, List<SeatName> of, List<SeatName> with) {
    public Joint {
        of = List.copyOf(of);
        with = List.copyOf(with);
    }

    /// How two mating faces are held together.
    public enum Way {
        CLAMP("clamp", "clamped by its screws"),
        SCREWS("screws", "screwed"),
        SET_SCREWS("set screws", "held by set screws"),
        PRESS_FIT("press fit", "pressed in"),
        SLIDE("slide", "slides on"),
        TEETH("teeth", "meshes"),
        NUT("nut", "held by the nut"),
        ONE_PIECE("one piece", "made in one piece");

        private final String words;
        private final String told;

        Way(String words, String told) {
            this.words = words;
            this.told = told;
        }

        public String told() {
            return told;
        }

        public static Optional<Way> named(String words) {
            return Arrays.stream(values()).filter(w -> w.words.equals(words)).findFirst();
        }

        public static String allowed() {
            return String.join(", ", Arrays.stream(values()).map(Way::toString).toList());
        }

        @Override
        public String toString() {
            return words;
        }
    }

    public boolean joins(SeatName seat) {
        return of.contains(seat) || with.contains(seat);
    }
}
