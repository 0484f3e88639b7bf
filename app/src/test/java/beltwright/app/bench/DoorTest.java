package beltwright.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DoorTest {
    @TempDir
    static Path folder;

    static Visitor visitor;

    @BeforeAll
    static void open() {
        visitor = new Visitor(folder);
    }

    @AfterAll
    static void close() {
        visitor.close();
    }

    private static Map<String, String> table(int rows, String note) {
        var text = new StringBuilder("name\thole\toutside\tthickness\tnote\n");
        for (int i = 0; i < rows; i++) {
            text.append("Washer ")
                    .append(i)
                    .append("\t4.3\t9\t0.8\t")
                    .append(note)
                    .append('\n');
        }
        return Map.of("kind", "washer", "source", "measured, caliper", "text", text.toString(), "preview", "yes");
    }

    @Test
    void aTableOfThreeThousandRowsIsLookedAt() {
        var page = visitor.post("parts/paste", table(3000, "from the drawer"));
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("3000 rows, nothing wrong").contains("id, made of the name; revision, A");
        assertThat(visitor.workshop.store().documents()).isEmpty();
    }

    @Test
    void aTableThatIsTooLargeIsRefusedInWords() {
        var page = visitor.post("parts/paste", table(3000, "x".repeat(1000)));
        assertThat(page.statusCode()).isEqualTo(413);
        assertThat(Visitor.plain(page.body()))
                .contains("table: what was sent holds 3.0 MiB, which is more than this page takes; nothing was kept")
                .contains("Allowed: 2.0 MiB")
                .contains("import it with ./beltwright import FILE.csv --kind KIND")
                .contains("<nav");
        assertThat(visitor.workshop.store().documents()).isEmpty();
    }

    @Test
    void aFormThatIsTooLargeIsRefusedInWords() {
        var page = visitor.post("parts/save", Map.of("kind", "washer", "name", "Washer", "note", "x".repeat(100_000)));
        assertThat(page.statusCode()).isEqualTo(413);
        assertThat(Visitor.plain(page.body()))
                .contains("form: what was sent holds 98 KiB, which is more than this page takes")
                .contains("Allowed: 64 KiB")
                .contains("shorten what was typed");
        assertThat(visitor.workshop.store().documents()).isEmpty();
    }

    @Test // no length is told beforehand
    void aTableInPiecesIsBoundedToo() throws Exception {
        var body = "kind=washer&text=" + "x".repeat(3 * 1024 * 1024);
        try (var client = HttpClient.newHttpClient()) {
            var answer = client.send(
                    HttpRequest.newBuilder(URI.create(visitor.bench.address() + "parts/paste"))
                            .header("Accept", "text/html")
                            .header("Origin", visitor.bench.address().replaceFirst("/$", ""))
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .POST(HttpRequest.BodyPublishers.ofInputStream(
                                    () -> new java.io.ByteArrayInputStream(body.getBytes(StandardCharsets.UTF_8))))
                            .build(),
                    BodyHandlers.ofString());
            assertThat(answer.statusCode()).isEqualTo(413);
            assertThat(Visitor.plain(answer.body())).contains("what was sent is larger than this page takes");
        }
    }

    @Test
    void whoMayNotTalkToItIsToldWhy() throws Exception {
        var port = visitor.bench.port();
        assertThat(raw("GET /parts HTTP/1.1\r\nHost: example.org\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403")
                .contains("host: 'example.org' is not this machine")
                .contains("allowed: localhost, 127.0.0.1 or [::1]; open http://127.0.0.1:" + port)
                .contains("nosniff")
                .doesNotContain("<");
        var post = "POST /parts/save HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n%sContent-Length: 0\r\n"
                + "Connection: close\r\n\r\n";
        assertThat(raw(post.formatted("Origin: http://example.org\r\n")))
                .startsWith("HTTP/1.1 403")
                .contains("origin: the page 'http://example.org' may not change anything here")
                .contains("send the form from there");
        assertThat(raw(post.formatted(""))).startsWith("HTTP/1.1 403").contains("origin: nothing says which page");
    }

    private static String raw(String request) throws IOException {
        try (var socket = new Socket("127.0.0.1", visitor.bench.port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
