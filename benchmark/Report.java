import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/// Writes the figures of one benchmark run as a page. Arguments: the JMH result as JSON, then medians in ms of a bare
/// JVM, of `check` with the JDK's cache and without it, then what the browser trial measured.
void main(String[] args) throws Exception {
    var json = Files.readString(Path.of(args[0]));
    double measure = score(json, "layoutAndMeasure");
    double dossier = score(json, "dossier");
    double yaml = score(json, "readYaml");
    double edit = score(json, "editCheckAndDraw");
    double p99 = percentile(json, "editCheckAndDraw", "99.0");
    double bare = Double.parseDouble(args[1]);
    double with = Double.parseDouble(args[2]);
    double without = Double.parseDouble(args[3]);
    IO.println("# Benchmark, " + java.time.LocalDate.now());
    IO.println("");
    IO.println("`benchmark/run` on " + Runtime.getRuntime().availableProcessors() + " cores, "
            + System.getProperty("java.vm.name") + " " + Runtime.version() + ". Two-motor kit `steep-street` of the demo.");
    IO.println("Times are of this machine on this day; only ratios within the run mean much elsewhere.");
    IO.println("");
    IO.println("| case | time | against the yardstick of the same run |");
    IO.println("| --- | ---: | ---: |");
    row("read the kit's YAML text with the YAML library alone (yardstick)", yaml, "µs", 1);
    row("layout plus all measures (wanted: under 60 µs)", measure, "µs", measure / yaml);
    row("whole dossier, workings included", dossier, "µs", dossier / yaml);
    row("edit, check, plan and side view drawn, mean", edit, "µs", edit / yaml);
    row("the same, 99th percentile (wanted: under 16 ms)", p99, "µs", p99 / yaml);
    row("bare JVM that prints one word (yardstick)", bare, "ms", 1);
    row("`check steep-street` with the JDK's AOT cache", with, "ms", with / bare);
    row("`check steep-street` without it", without, "ms", without / bare);
    IO.println("");
    IO.println("Input to painted page, Chromium, 40 edits: " + args[4]);
}

void row(String what, double value, String unit, double ratio) {
    IO.println("| " + what + " | " + String.format(Locale.ROOT, "%.1f %s", value, unit) + " | "
            + String.format(Locale.ROOT, "%.2f", ratio) + " |");
}

double score(String json, String name) {
    return number(json, name, "\"score\"\\s*:\\s*([0-9.E+-]+)");
}

double percentile(String json, String name, String which) {
    return number(json, name, "\"" + Pattern.quote(which) + "\"\\s*:\\s*([0-9.E+-]+)");
}

double number(String json, String name, String pattern) {
    var from = json.indexOf("RecheckBenchmark." + name + "\"");
    var found = Pattern.compile(pattern).matcher(json);
    if (from < 0 || !found.find(from)) {
        throw new IllegalStateException(name + " is not in the result");
    }
    return Double.parseDouble(found.group(1));
}
