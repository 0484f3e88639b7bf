package beltwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.app.bench.Bench;
import beltwright.workshop.Workshop;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Who may talk to the bench, and what it says to what it cannot use.
class ServerTest {
    @TempDir
    Path folder;

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void anEmptyWorkshopSaysWhatToDoNext() throws Exception {
        try (var bench = Bench.start(Workshop.open(folder.resolve("w.db")), 0)) {
            var first = get(bench, "");
            assertThat(first.statusCode()).isEqualTo(302);
            assertThat(first.headers().firstValue("Location").orElseThrow()).endsWith("/parts");
            var page = get(bench, "parts");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).contains("An empty shelf").contains("Enter a hanger");
            assertThat(get(bench, "pairs").body()).contains("Nothing to hold against each other yet");
        }
    }

    @Test
    void onlyThisMachinesPagesMayTalkToIt() throws Exception {
        try (var bench = Bench.start(Workshop.open(folder.resolve("w.db")), 0)) {
            assertThat(raw(bench, "GET / HTTP/1.1\r\nHost: example.org\r\nConnection: close\r\n\r\n"))
                    .startsWith("HTTP/1.1 403");
            assertThat(post(bench, null).statusCode()).isEqualTo(403);
            assertThat(post(bench, "http://example.org").statusCode()).isEqualTo(403);
            var page = get(bench, "");
            assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                    .contains("default-src 'none'")
                    .doesNotContain("unsafe");
        }
    }

    @Test
    void whatItCannotUseGetsOneClearAnswer() throws Exception {
        try (var bench = Bench.start(Workshop.open(folder.resolve("w.db")), 0)) {
            assertThat(get(bench, "kits/none").statusCode()).isEqualTo(400);
            assertThat(get(bench, "kits/none").body()).contains("none");
            assertThat(get(bench, "kits/none?set=nonsense").body()).contains("DOCUMENT.FIELD=VALUE");
            assertThat(get(bench, "no/such/page").statusCode()).isEqualTo(404);
        }
    }

    private HttpResponse<String> get(Bench bench, String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(bench.address() + path))
                        .header("Accept", "text/html")
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(Bench bench, String origin) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(URI.create(bench.address() + "kits/none/keep"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("set=a.b%3D1"));
        if (origin != null) {
            request.header("Origin", origin);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String raw(Bench bench, String request) throws IOException {
        try (var socket = new Socket("127.0.0.1", bench.port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
