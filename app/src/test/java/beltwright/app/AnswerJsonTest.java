package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.Verdict;
import beltwright.pairs.Pair;
import beltwright.press.json.PairJson;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The answers of the commands that print no single dossier, held against their page in both directions.
class AnswerJsonTest {
    private static final Pattern DOCUMENTED = Pattern.compile("^\\| (\\w+) \\| `([^`]+)` \\|", Pattern.MULTILINE);

    private static final Set<String> ELSEWHERE = Set.of(
            "demo kits[]",
            "export documents[]",
            "change before",
            "change after",
            "ride rides[]",
            "pairs pairs[].decides",
            "slots lines[].marks[].decides");

    @TempDir
    Path folder;

    @Test
    void thePageNamesEveryFieldAndNoneThatDoesNotExist() throws IOException {
        var page = Files.readString(Typed.ROOT.resolve("docs").resolve("json.md"));
        var documented = new TreeSet<String>();
        DOCUMENTED.matcher(page).results().forEach(m -> documented.add(m.group(1) + " " + m.group(2)));

        var typed = new Typed(folder);
        var real = new TreeSet<String>();
        collect(
                "import",
                "",
                typed.run("import", typed.source("name: ", "nom: "), "--json").json(),
                real);
        collect("import", "", typed.run("import", typed.source(), "--json").json(), real);
        collect("kits", "", typed.run("kits", "--json").json(), real);
        collect("export", "", typed.run("export", "copy", "--json").json(), real);
        collect("export", "", typed.run("export", "--csv", "tables", "--json").json(), real);
        Files.writeString(folder.resolve("sleeves.csv"), "id,name,revision,bore,colour\nring-1,Ring,A,8,red\n");
        collect(
                "import",
                "",
                typed.run("import", "sleeves.csv", "--kind", "sleeve", "--source", "measured", "--json")
                        .json(),
                real);
        collect("demo", "", typed.run("demo", "--no-serve", "--json").json(), real);
        collect(
                "change",
                "",
                typed.run("change", Typed.KIT, "--set", Typed.THICK_PLATE, "--json")
                        .json(),
                real);
        var demo = new String[] {"--json", "--workshop", "demo-out/demo.db"};
        var pairs = typed.run(with(demo, "pairs", "wheel pulleys", "kits")).json();
        collect("pairs", "", pairs, real);
        collect("DECIDES", "", pairs.at("/pairs/0/decides"), real);
        collect( // nothing of the demo is refused
                "pairs",
                "pairs[]",
                PairJson.of(new Pair(
                        "a",
                        "b",
                        Verdict.CANNOT_TELL,
                        null,
                        0,
                        0,
                        Double.NaN,
                        java.util.List.of("x.y"),
                        "no such material")),
                real);
        collect("slots", "", typed.run(with(demo, "slots", "mount-hill")).json(), real);
        collect("mend", "", typed.run(with(demo, "mend", "steep-street-light")).json(), real);
        for (var command : new String[] {"tension", "weakest"}) {
            collect(command, "", typed.run(with(demo, command, "steep-street")).json(), real);
            collect(
                    command,
                    "",
                    typed.run(with(demo, command, "steep-street", "--no-estimates"))
                            .json(),
                    real);
        }
        collect(
                "spread",
                "",
                typed.run(with(demo, "spread", "orchard-lane", "--kits", "200")).json(),
                real);
        collect(
                "spread",
                "",
                typed.run(with(demo, "spread", "steep-street", "--kits", "200", "--no-estimates"))
                        .json(),
                real);
        for (var kit : new String[] {"steep-street", "market-hill-single"}) {
            var ride = new String[] {"ride", kit, "--route", "mill-hill"};
            collect("power", "", typed.run(with(demo, "power", kit)).json(), real);
            collect(
                    "power",
                    "",
                    typed.run(with(demo, "power", kit, "--no-estimates")).json(),
                    real);
            collect("ride", "", typed.run(with(demo, ride)).json(), real);
            collect(
                    "ride",
                    "",
                    typed.run(with(demo, with(new String[] {"--no-estimates"}, ride)))
                            .json(),
                    real);
        }
        var both = new String[] {"ride", "steep-street", "--route", "mill-hill", "--with", "market-hill-single"};
        collect("ride", "", typed.run(with(demo, both)).json(), real);
        var calibrate = new String[] {"calibrate", "steep-street", "--log", "river-coast", "--find", "rolling"};
        collect("calibrate", "", typed.run(with(demo, calibrate)).json(), real);
        collect(
                "calibrate",
                "",
                typed.run(with(demo, with(new String[] {"--no-estimates"}, calibrate)))
                        .json(),
                real);
        collect("serve", "", AnswerJson.serving(""), real);
        assertThat(real).isEqualTo(documented);
    }

    private static String[] with(String[] demo, String... words) {
        return Stream.concat(Stream.of(words), Stream.of(demo)).toArray(String[]::new);
    }

    /// Goes into what is documented here; a whole dossier, and what another row documents, is one field.
    private static void collect(String command, String path, JsonNode node, Set<String> fields) {
        boolean elsewhere = ELSEWHERE.contains(command + " " + path);
        if (node.isObject() && !elsewhere) {
            node.properties()
                    .forEach(e -> collect(
                            command, path.isEmpty() ? e.getKey() : path + "." + e.getKey(), e.getValue(), fields));
        } else if (node.isArray()) {
            node.forEach(one -> collect(command, path + "[]", one, fields));
        } else if (!path.equals("schema")) {
            fields.add(command + " " + path);
        }
    }
}
