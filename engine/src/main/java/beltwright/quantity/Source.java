package beltwright.quantity;

import java.util.Arrays;
import java.util.Optional;

/// How a number came to be known. An estimate marks every finding that rests on it.
public enum Source {
    MEASURED("measured"),
    DATA_SHEET("data sheet"),
    STANDARD("standard"),
    CUSTOMER("said by a customer"),
    ESTIMATE("estimate");

    private final String words;

    Source(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /// {@return the source that these words name, as they are typed in a part file}
    public static Optional<Source> named(String words) {
        return Arrays.stream(values()).filter(s -> s.words.equals(words)).findFirst();
    }

    public static String allowed() {
        return String.join(", ", Arrays.stream(values()).map(Source::words).toList());
    }
}
