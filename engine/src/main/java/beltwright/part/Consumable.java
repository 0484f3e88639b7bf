package beltwright.part;

/// Something that is used up: threadlocker, grease. Kept by what it is for.
public record Consumable(Label label, Use use) implements Part {
    /// What it does in a joint.
    public enum Use {
        MEDIUM_THREADLOCKER("medium-strength threadlocker"),
        RETAINING_COMPOUND("retaining compound"),
        GREASE("grease");

        private final String words;

        Use(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
