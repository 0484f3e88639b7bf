package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.workshop.Store;
import beltwright.workshop.document.Codec;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/// What was acknowledged survives a kill, and nothing is half saved.
class KillTest {
    private static final int KILLS = 8;

    @TempDir
    Path folder;

    /// Saves one more pair of documents and says so, for ever.
    public static final class Saving {
        private Saving() {}

        public static void main(String[] args) {
            var store = Store.open(Path.of(args[0]));
            for (int n = Integer.parseInt(args[1]); ; n++) {
                store.save(Codec.read("pair", text("first-" + n) + "---\n" + text("second-" + n))
                        .orRefuse());
                System.out.println(n);
            }
        }

        private static String text(String id) {
            return """
                    schema: 1
                    part: %s
                    kind: nut
                    name: Nut
                    revision: A
                    source: "standard, invented"
                    dimensions: {thread: M8, heightMm: 8, locking: true}
                    """.formatted(id);
        }
    }

    @Test
    @Timeout(120)
    void everyAcknowledgedSaveIsThereAfterAKill() throws Exception {
        var file = folder.resolve("killed.db");
        var random = new Random(12);
        int acknowledged = -1;
        for (int kill = 0; kill < KILLS; kill++) {
            var process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "--enable-native-access=ALL-UNNAMED",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Saving.class.getName(),
                            file.toString(),
                            String.valueOf(acknowledged + 1))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            int until = acknowledged + 1 + random.nextInt(25);
            try (var said =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
                for (var line = said.readLine(); line != null; line = said.readLine()) {
                    acknowledged = Integer.parseInt(line);
                    if (acknowledged >= until) {
                        process.destroyForcibly();
                        break;
                    }
                }
            }
            process.waitFor();

            var kept = Store.open(file).documents().keySet();
            for (int n = 0; n <= acknowledged; n++) {
                assertThat(kept).contains("first-" + n, "second-" + n);
            }
            assertThat(kept.stream().filter(id -> id.startsWith("first-")).count())
                    .as("pairs are whole")
                    .isEqualTo(
                            kept.stream().filter(id -> id.startsWith("second-")).count());
        }
        assertThat(acknowledged).isGreaterThan(KILLS);
    }
}
