package beltwright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import beltwright.check.WeakestLink;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/// The order of the engine's packages, as `docs/architecture.md` prints it, is the order that the code keeps.
class PackageOrderTest {
    private static final Path ROOT = Path.of(System.getProperty("beltwright.root", ".."));
    private static final Pattern ROW = Pattern.compile("^\\| `(beltwright\\.[a-z]+)` \\|.*", Pattern.MULTILINE);
    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("beltwright");
    private static final List<String> ORDER = printed();

    private static List<String> printed() {
        try {
            var page = Files.readString(ROOT.resolve("docs/architecture.md"));
            return ROW.matcher(page).results().map(row -> row.group(1)).toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static Stream<Arguments> packages() {
        return IntStream.range(0, ORDER.size())
                .mapToObj(i -> Arguments.of(ORDER.get(i), ORDER.subList(i + 1, ORDER.size())));
    }

    @Test
    void thePageListsEveryPackageAndNoOther() {
        assertThat(ENGINE.stream().map(JavaClass::getPackageName).distinct())
                .containsExactlyInAnyOrderElementsOf(ORDER);
        assertThat(ORDER).doesNotHaveDuplicates().isNotEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packages")
    void importsOnlyWhatStandsAboveIt(String name, List<String> below) {
        if (!below.isEmpty()) {
            noClasses()
                    .that()
                    .resideInAPackage(name)
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(below.toArray(String[]::new))
                    .check(ENGINE);
        }
    }

    @Test
    void theEngineHasNoFilesClockNetworkOrThreads() {
        noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "java.io..",
                                "java.nio.file..",
                                "java.nio.channels..",
                                "java.net..",
                                "java.sql..",
                                "javax.sql..",
                                "java.time..",
                                "java.util.concurrent..")
                        .and(not(type(LocalDate.class)))) // a day is a value; to ask which is today needs a clock
                .orShould()
                .callMethod(LocalDate.class, "now")
                .because("what is true needs no file, clock, network, database or thread")
                .check(ENGINE);
        noClasses()
                .should()
                .dependOnClassesThat()
                .belongToAnyOf(
                        Thread.class,
                        ProcessBuilder.class,
                        java.util.Timer.class,
                        java.util.Date.class,
                        java.util.Calendar.class)
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .check(ENGINE);
    }

    @Test
    void libraryTypesStayOutOfSight() {
        noClasses()
                .that()
                .resideOutsideOfPackages("beltwright.belt", "beltwright.power", "beltwright.ride")
                .and()
                .areNotAssignableTo(WeakestLink.class)
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.hipparchus..")
                .because("solvers serve the formulas and nobody else")
                .check(ENGINE);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packages")
    void everyRoomSaysWhatLivesThereAndWhatMayNot(String name, List<String> below) throws IOException {
        var info = Files.readString(ROOT.resolve("engine/src/main/java")
                .resolve(name.replace('.', '/'))
                .resolve("package-info.java"));
        assertThat(info).startsWith("/// ").contains("@NullMarked").containsAnyOf("May not", "may not");
        assertThat(name).doesNotContain("util");
    }

    @Test
    void noFilePast500Lines() throws IOException {
        try (var files = Files.walk(ROOT.resolve("engine/src"))) {
            var tooLong = files.filter(f -> f.toString().endsWith(".java"))
                    .filter(f -> lines(f) > 500)
                    .toList();
            assertThat(tooLong).isEmpty();
        }
    }

    private static long lines(Path file) {
        try (var lines = Files.lines(file)) {
            return lines.count();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
