package beltwright.press.json;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.press.HandMade;
import beltwright.press.drawing.DemoKits;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class DossierJsonTest {
    private static final Pattern DOCUMENTED = Pattern.compile("^\\| `([^`]+)` \\|", Pattern.MULTILINE);

    @Test
    void thePageNamesEveryFieldAndNoneThatDoesNotExist() throws IOException {
        var page = Files.readString(Path.of(System.getProperty("beltwright.root"), "docs", "json.md"));
        var documented = new TreeSet<String>();
        DOCUMENTED.matcher(page).results().forEach(m -> documented.add(m.group(1)));

        var real = new TreeSet<String>();
        collect("", DossierJson.of(HandMade.dossier()), real);
        for (var kit : List.of("market-hill-single", "quarry-road-load", "steep-street", "steep-street-light")) {
            collect("", DossierJson.of(DemoKits.dossier(kit)), real);
        }

        assertThat(documented).isEqualTo(real);
    }

    @Test
    void aNumberThatIsNotKnownIsNullAndNeverNaN() throws IOException {
        var text = DossierJson.text(HandMade.dossier());
        assertThat(text).doesNotContain("NaN").doesNotContain("Infinity");

        var json = JsonMapper.builder().build().readTree(text);
        var waiting = json.at("/findings/1");
        assertThat(waiting.get("verdict").asText()).isEqualTo("cannot tell");
        assertThat(waiting.get("capacity").isNull()).isTrue();
        assertThat(waiting.get("margin").isNull()).isTrue();
        assertThat(waiting.get("needs").get(0).asText()).isEqualTo("mount.clampGripMm");
    }

    @Test
    void theSameDossierGivesTheSameBytes() {
        assertThat(DossierJson.text(HandMade.dossier())).isEqualTo(DossierJson.text(HandMade.dossier()));
    }

    @Test
    void numbersArriveToTheLastBit() throws IOException {
        var json = JsonMapper.builder().build().readTree(DossierJson.text(HandMade.dossier()));
        var drive = HandMade.dossier().layout().drives().getFirst();
        assertThat(json.at("/layout/left/centreDistanceMm").asDouble())
                .isEqualTo(drive.centreDistanceMm().nominal());
        assertThat(json.at("/layout/left/centreDistanceLowMm").asDouble())
                .isEqualTo(drive.centreDistanceMm().low());
    }

    private static void collect(String path, JsonNode node, Set<String> fields) {
        if (node.isObject()) {
            if (path.equals("steps[].torque")) {
                fields.add(path);
            }
            node.properties().forEach(e -> {
                var name = path.equals("layout") ? "SIDE" : e.getKey();
                collect(path.isEmpty() ? name : path + "." + name, e.getValue(), fields);
            });
        } else if (node.isArray()) {
            node.forEach(one -> collect(path + "[]", one, fields));
        } else {
            fields.add(path);
        }
    }
}
