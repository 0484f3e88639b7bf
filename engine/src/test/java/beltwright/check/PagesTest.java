package beltwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// The pages that explain the checks know every check and every symbol that a working prints.
class PagesTest {
    private static final Path ROOT = Path.of(System.getProperty("beltwright.root", ".."));

    /// A symbol as the sources of the checks name it; a trailing `_` is continued at run time.
    private static final Pattern SYMBOL = Pattern.compile(
            "\\b(?:given|line|chain|plus|minus|direct)\\(\\s*(?:w,\\s*)?\"([\\p{L}\\p{N}_]+)\"\\s*[,+]");

    private static String page(String name) throws IOException {
        return Files.readString(ROOT.resolve("docs").resolve(name));
    }

    @Test
    void everyCheckIsInTheTheory() throws IOException {
        var theory = page("theory.md");
        assertThat(Checks.ALL)
                .extracting(Check::slug)
                .allSatisfy(slug -> assertThat(theory).contains("`" + slug + "`"));
    }

    @Test
    void theTheoryKnowsNoCheckThatIsGone() throws IOException {
        var theory = page("theory.md");
        var table = theory.substring(theory.indexOf("## The checks"), theory.indexOf("## Habits"));
        var named = Pattern.compile("`([a-z-]+)`")
                .matcher(table)
                .results()
                .map(m -> m.group(1))
                .toList();
        assertThat(named)
                .containsExactlyInAnyOrderElementsOf(
                        Checks.ALL.stream().map(Check::slug).toList());
    }

    @Test
    void everySymbolIsInTheNomenclature() throws IOException {
        var nomenclature = page("nomenclature.md");
        var symbols = new TreeSet<String>();
        try (var files = Files.list(ROOT.resolve("engine/src/main/java/beltwright/check"))) {
            for (var file : files.toList()) {
                SYMBOL.matcher(Files.readString(file)).results().forEach(m -> symbols.add(m.group(1)));
            }
        }
        symbols.removeIf(s -> s.endsWith("_min") || s.endsWith("_max"));
        assertThat(symbols)
                .hasSizeGreaterThan(100)
                .allSatisfy(symbol ->
                        assertThat(nomenclature).contains(symbol.endsWith("_") ? "`" + symbol : "`" + symbol + "`"));
    }
}
