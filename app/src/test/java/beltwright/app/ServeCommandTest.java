package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
class ServeCommandTest {
    @TempDir
    static Path folder;

    static Typed typed;

    @BeforeAll
    static void importSmall() {
        typed = Typed.withSmallWorkshop(folder);
    }

    @Test
    void servesTheWorkshopUntilItIsStopped() throws Exception {
        var running = typed.start("serve", "--port", "0", "--json");
        var told = JsonMapper.builder().build().readTree(running.until("}"));
        var address = URI.create(told.get("address").asText());
        assertThat(address.getHost()).isEqualTo("127.0.0.1");
        try (var client = HttpClient.newHttpClient()) {
            var request = HttpRequest.newBuilder(address.resolve("/kits/" + Typed.KIT + "/json"))
                    .build();
            var answer = client.send(request, BodyHandlers.ofString());
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.body())
                    .isEqualTo(typed.run("check", Typed.KIT, "--json").out());
        }
        assertThat(running.stop()).isZero();
    }

    @Test
    void demoServesWhenItIsDone() throws Exception {
        var running = typed.start("demo", "--port", "0");
        assertThat(running.until("Ctrl-C"))
                .containsSubsequence("Margin ladder", "Written:", "The bench is at http://127.0.0.1:");
        assertThat(running.stop()).isZero();
    }

    @Test
    void aPortThatIsTakenIsRefused() throws Exception {
        try (var taken = new ServerSocket(0, 1, java.net.InetAddress.getLoopbackAddress())) {
            var answer = typed.run("serve", "--port", String.valueOf(taken.getLocalPort()));
            assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
            assertThat(answer.err())
                    .startsWith("--port: " + taken.getLocalPort())
                    .contains("; allowed: ");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"serve", "demo"})
    void aNumberThatIsNoPortIsRefused(String command) {
        var answer = typed.run(command, "--port", "70000");
        assertThat(answer.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(answer.err()).startsWith("--port: 70000 is no port; allowed: ");
    }
}
