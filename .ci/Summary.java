import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;

/// Reads what Maven's test runner reported and closes the run: `NOT RUN: test, why` for each test that could not run,
/// then `N passed, N failed, N skipped`. Exits 1 if a test failed, if none ran, or, under CI=true, if one could not run.
///
/// @param alsoFailed trials outside Maven that failed
void main(String[] alsoFailed) throws Exception {
    int passed = 0;
    int failed = alsoFailed.length;
    int skipped = 0;
    for (var name : alsoFailed) {
        IO.println("FAILED: " + name);
    }
    for (var report : reports()) {
        var cases = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(report.toFile())
                .getElementsByTagName("testcase");
        for (int i = 0; i < cases.getLength(); i++) {
            var test = (Element) cases.item(i);
            var name = test.getAttribute("classname") + "." + test.getAttribute("name");
            var skip = (Element) test.getElementsByTagName("skipped").item(0);
            if (has(test, "failure") || has(test, "error")) {
                failed++;
                IO.println("FAILED: " + name);
            } else if (skip != null) {
                skipped++;
                IO.println("NOT RUN: " + name + ", " + reason(skip));
            } else {
                passed++;
            }
        }
    }
    if (passed + failed == 0) {
        IO.println("No test ran.");
    }
    IO.println(passed + " passed, " + failed + " failed, " + skipped + " skipped");
    boolean ci = "true".equals(System.getenv("CI"));
    System.exit(passed + failed == 0 || failed > 0 || ci && skipped > 0 ? 1 : 0);
}

List<Path> reports() throws IOException {
    try (var modules = Files.list(Path.of(""))) {
        return modules.map(m -> m.resolve("target/surefire-reports"))
                .filter(Files::isDirectory)
                .flatMap(folder -> {
                    try (var files = Files.list(folder)) {
                        return files.toList().stream();
                    } catch (IOException e) {
                        throw new java.io.UncheckedIOException(e);
                    }
                })
                .filter(f -> f.getFileName().toString().matches("TEST-.*\\.xml"))
                .sorted()
                .toList();
    }
}

boolean has(Element test, String outcome) {
    return test.getElementsByTagName(outcome).getLength() > 0;
}

/// {@return why a test could not run: an attribute if it was disabled, the first line of the trace if it gave up itself}
String reason(Element skip) {
    return (skip.getAttribute("message") + "\n" + skip.getTextContent())
            .lines()
            .filter(line -> !line.isBlank())
            .findFirst()
            .map(line -> line.replaceFirst("^.*Assumption failed: ", ""))
            .orElse("no reason given");
}
