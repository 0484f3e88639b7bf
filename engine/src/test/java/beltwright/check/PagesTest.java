package beltwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.kit.Task;
import beltwright.part.Field;
import beltwright.part.Kinds;
import beltwright.quantity.Dimension;
import beltwright.quantity.Unit;
import beltwright.ride.Channel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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

    @Test
    void everyFieldWithItsUnitAndEveryChannelIsInTheNomenclature() throws IOException {
        var nomenclature = page("nomenclature.md");
        var types = new ArrayList<Class<?>>(List.of(Task.class));
        Stream.of(Kinds.values()).map(Kinds::type).forEach(types::add);
        for (var type : types) {
            for (var component : type.getRecordComponents()) {
                if (component.isAnnotationPresent(Field.class)) {
                    var name = component.getName();
                    var unit = component.getType() == Dimension.class
                            ? Unit.of(name).symbol()
                            : "";
                    assertThat(nomenclature)
                            .as("%s of a %s", name, type.getSimpleName())
                            .contains("| `" + name + "` | " + (unit.isEmpty() ? "" : unit + " ") + "|");
                }
            }
        }
        for (var channel : Channel.values()) {
            assertThat(nomenclature).contains(channel.symbol().isEmpty() ? "" : "`" + channel.symbol() + "`");
        }
    }
}
