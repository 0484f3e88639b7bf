package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Import, export, kits and change, as typed.
class CommandsTest {
    @TempDir
    Path folder;

    Typed typed;

    @BeforeEach
    void open() {
        typed = new Typed(folder);
    }

    @Test
    void importTellsWhatItTook() throws IOException {
        var answer = typed.run("import", typed.source());
        assertThat(answer.code()).isZero();
        assertThat(answer.err()).isEmpty();
        assertThat(answer.out().lines().findFirst().orElseThrow())
                .matches("Imported 1 kit, \\d+ parts into workshop\\.db");
        assertThat(answer.out()).contains("new workshop").contains("--workshop demo-out/demo.db");
        var json = typed.run("import", typed.source(), "--json", "--workshop", "other.db")
                .json();
        assertThat(json.at("/documents")).hasSizeGreaterThan(20);
        assertThat(json.at("/mistakes")).isEmpty();
    }

    @Test
    void importListsEveryMistakeAndLeavesNothingBehind() throws IOException {
        var bad = typed.source(
                "plateRadiusMm: 26 ±0.2\n  fixing: clamp", "plateRadiusMm: 800\n  colour: red\n  fixing: clamp");
        var answer = typed.run("import", bad);
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.out()).isEmpty();
        var lines = answer.err().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(lines.getFirst())
                .matches(".*hangers-and-mounts\\.yaml:\\d+: mount-city\\.plateRadiusMm: .*800.*; allowed: .*; .+");
        assertThat(lines.get(1)).matches(".*hangers-and-mounts\\.yaml:\\d+: mount-city\\.colour: .*; allowed: .*; .+");
        assertThat(lines.getLast()).isEqualTo("Nothing was imported: 2 mistakes");
        assertThat(folder.resolve("workshop.db")).doesNotExist();
    }

    @Test
    void aBadImportLeavesTheWorkshopAsItWas() throws IOException {
        Typed.withSmallWorkshop(folder);
        var before = typed.run("check", Typed.KIT, "--json").out();
        var bad = typed.source("plateRadiusMm: 26 ±0.2\n  fixing: clamp", "plateRadiusMm: 800\n  fixing: clamp");
        var answer = typed.run("import", bad, "--json");
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.json().at("/mistakes/0/field").asText()).isEqualTo("mount-city.plateRadiusMm");
        assertThat(answer.json().at("/documents")).isEmpty();
        assertThat(typed.run("check", Typed.KIT, "--json").out()).isEqualTo(before);
    }

    @Test
    void aFolderWithNothingToReadMakesNoWorkshop() throws IOException {
        Files.createDirectory(folder.resolve("empty"));
        for (var name : new String[] {"empty", "missing"}) {
            var answer = typed.run("import", name);
            assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
            assertThat(answer.err().lines()).hasSize(1);
            assertThat(folder.resolve("workshop.db")).doesNotExist();
        }
    }

    @Test
    void whatIsExportedIsImportedEqual() throws IOException {
        Typed.withSmallWorkshop(folder);
        var exported = typed.run("export", "copy");
        assertThat(exported.out().strip()).matches("Exported 1 kit, \\d+ parts into copy");
        assertThat(exported.code()).isZero();
        var answer = typed.run("import", folder.resolve("copy").toString(), "--workshop", "second.db");
        assertThat(answer.err()).isEmpty();
        assertThat(typed.run("check", Typed.KIT, "--json", "--workshop", "second.db")
                        .out())
                .isEqualTo(typed.run("check", Typed.KIT, "--json").out());
        assertThat(typed.run("export", "copy").err()).contains("not empty");
        assertThat(typed.run("export", "third", "--json").json().at("/documents"))
                .hasSizeGreaterThan(20);
    }

    @Test
    void kitsTellsHowEachStands() throws IOException {
        Typed.withSmallWorkshop(folder);
        var answer = typed.run("kits");
        assertThat(answer.code()).isZero();
        assertThat(answer.out()).startsWith("market-hill-single  Market Hill, one motor  ⬓ 1 marginal · ■ ");
        var kit = typed.run("kits", "--json").json().at("/kits/0");
        assertThat(kit.get("id").asText()).isEqualTo(Typed.KIT);
        assertThat(kit.at("/verdicts/holds").asInt()).isPositive();
        assertThat(typed.run("kits", "--no-estimates", "--json")
                        .json()
                        .at("/kits/0/verdicts/cannotTell")
                        .asInt())
                .isPositive();
    }

    @Test
    void changeTellsBeforeAndAfterAndSavesNothing() throws IOException {
        Typed.withSmallWorkshop(folder);
        var before = typed.run("check", Typed.KIT, "--json").out();
        var answer = typed.run("change", Typed.KIT, "--set", Typed.THICK_PLATE);
        assertThat(answer.code()).isEqualTo(Exit.SOMETHING_FAILS);
        assertThat(answer.out())
                .containsSubsequence(
                        "× finding",
                        "Thread engaged by the motor screw, left",
                        "before  holds: 5.2 mm engaged",
                        "after   fails: 2.20 mm engaged",
                        "× drawing dimension",
                        "before  ⬓ 1 marginal · ■ ",
                        "after   ⊠ 2 fails");
        assertThat(typed.run("check", Typed.KIT, "--json").out()).isEqualTo(before);
    }

    @Test
    void changeAsJsonHoldsBothDossiers() throws IOException {
        Typed.withSmallWorkshop(folder);
        var json = typed.run("change", Typed.KIT, "--set", Typed.THICK_PLATE, "--json")
                .json();
        assertThat(json.at("/set/0").asText()).isEqualTo(Typed.THICK_PLATE);
        assertThat(json.at("/before/verdicts/fails").asInt()).isZero();
        assertThat(json.at("/after/verdicts/fails").asInt()).isEqualTo(2);
        assertThat(json.at("/moved").findValuesAsText("key")).contains("motor-screw-engagement.left");
    }

    @Test
    void anEditToTheValueThatIsThereMovesNothing() {
        Typed.withSmallWorkshop(folder);
        var answer = typed.run("change", Typed.KIT, "--set", "mount-city.plateThicknessMm=6 ±0.1");
        assertThat(answer.code()).isZero();
        assertThat(answer.out()).contains("Nothing moves.");
    }

    @Test
    void changeWithNothingToChangeIsRefused() {
        Typed.withSmallWorkshop(folder);
        var answer = typed.run("change", Typed.KIT);
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.err()).startsWith("--set: nothing to change; allowed: ");
    }

    @Test
    void theWorkshopIsNamedByTheOptionThenTheVariableThenFound() throws IOException {
        assertThat(typed.run("kits").err())
                .startsWith("--workshop: no workshop here; ")
                .contains("./beltwright demo", "./beltwright import");
        Files.createDirectory(folder.resolve("demo-out"));
        typed.run("import", typed.source(), "--workshop", "demo-out/demo.db");
        assertThat(typed.run("kits").code()).isZero();
        assertThat(new Typed(folder)
                        .with("BELTWRIGHT_WORKSHOP", "none.db")
                        .run("kits")
                        .err())
                .startsWith("--workshop: 'none.db' is not there; ");
        assertThat(new Typed(folder)
                        .with("BELTWRIGHT_WORKSHOP", "none.db")
                        .run("kits", "--workshop", "demo-out/demo.db")
                        .code())
                .isZero();
        assertThat(folder.resolve("none.db")).doesNotExist();
    }

    @Test
    void drawWritesEverySheetAsSvg() throws Exception {
        Typed.withSmallWorkshop(folder);
        var answer = typed.run("draw", Typed.KIT);
        assertThat(answer.err()).isEmpty();
        assertThat(answer.code()).isZero();
        var files = answer.out().lines().map(folder::resolve).toList();
        assertThat(files).hasSize(2).allSatisfy(file -> assertThat(file).startsWith(folder.resolve(Typed.KIT)));
        for (var file : files) {
            var root = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(file.toFile())
                    .getDocumentElement();
            assertThat(root.getTagName()).isEqualTo("svg");
            assertThat(root.getElementsByTagName("path").getLength()).isPositive();
        }
    }

    @Test
    void aDraftIsDrawnAsEdited() throws IOException {
        Typed.withSmallWorkshop(folder);
        typed.run("draw", Typed.KIT, "--out", "before");
        var answer =
                typed.run("draw", Typed.KIT, "--out", "after", "--set", "mount-city.plateThicknessMm=12", "--json");
        assertThat(answer.code()).isEqualTo(Exit.SOMETHING_FAILS);
        assertThat(answer.json().at("/kit/id").asText()).isEqualTo(Typed.KIT);
        var edited = Files.readString(folder.resolve("after").resolve(Typed.KIT + "-plan.svg"));
        assertThat(edited)
                .isNotEqualTo(Files.readString(folder.resolve("before").resolve(Typed.KIT + "-plan.svg")));
    }

    @Test
    void aFolderThatCannotBeWrittenIsRefused() throws IOException {
        Typed.withSmallWorkshop(folder);
        Files.createFile(folder.resolve("taken"));
        var answer = typed.run("draw", Typed.KIT, "--out", "taken");
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.err()).matches("--out: '.*taken.*' cannot be written: .+; allowed: .+; .+\\s*");
    }
}
