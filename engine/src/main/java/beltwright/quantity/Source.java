package beltwright.quantity;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/// How a number came to be known. An estimate marks every finding that rests on it.
public enum Source {
    MEASURED("measured"),
    DATA_SHEET("data sheet"),
    STANDARD("standard"),
    CUSTOMER("said by a customer"),
    ESTIMATE("estimate");

    private static final String MEASURING = "measured|call?ip(?:er|ers)|gauges?|gages?|micrometers?|tape|ruler|scales?";

    private static final Pattern NOT_MEASURED = word("(?:not|never) measured|guess|guessed");

    /// What a text may say anywhere, looked for in this order: a doubt goes before a measurement, and
    /// what was measured or printed before who told it.
    private static final Map<Pattern, Source> SAID = said();

    private final String words;

    Source(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    private static Map<Pattern, Source> said() {
        var said = new LinkedHashMap<Pattern, Source>();
        said.put(word("estimate|estimated"), ESTIMATE);
        said.put(word(MEASURING), MEASURED);
        said.put(word("data sheet"), DATA_SHEET);
        said.put(word("customer|customers"), CUSTOMER);
        return said;
    }

    private static Pattern word(String words) {
        return Pattern.compile("\\b(?:" + words + ")\\b", Pattern.CASE_INSENSITIVE);
    }

    /// {@return the source that a text says without beginning with it: `customer's wheels, caliper` was measured}
    static Optional<Source> saidIn(String text) {
        return SAID.entrySet().stream()
                .filter(said -> said.getKey().matcher(text).find())
                .filter(said -> said.getValue() != MEASURED
                        || !NOT_MEASURED.matcher(text).find())
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /// {@return the source that these words name, as they are typed in a part file}
    public static Optional<Source> named(String words) {
        return Arrays.stream(values()).filter(s -> s.words.equals(words)).findFirst();
    }

    public static String allowed() {
        return String.join(", ", Arrays.stream(values()).map(Source::words).toList());
    }
}
