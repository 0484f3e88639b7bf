package beltwright.app.bench;

import beltwright.workshop.Workshop;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// The bench served on a workshop, and someone who fills in its forms as a browser without script would.
final class Visitor implements AutoCloseable {
    private static final Pattern FIELD = Pattern.compile(
            "<(input|textarea)\\b([^>]*)>(?:([^<]*)</textarea>)?|<select\\b([^>]*)>(.*?)</select>", Pattern.DOTALL);
    private static final Pattern OPTION = Pattern.compile("<option\\b([^>]*)>([^<]*)</option>");

    final Workshop workshop;
    final Bench bench;
    private final HttpClient client = HttpClient.newHttpClient();

    Visitor(Path folder) {
        workshop = Workshop.open(folder.resolve("visited.db"));
        bench = Bench.start(workshop, 0);
    }

    /// With the parts, kits and measurements of the demo.
    Visitor withDemo() {
        var root = Path.of(System.getProperty("beltwright.root", ".."));
        var read = workshop.importFolders(Stream.of("parts", "kits", "measurements", "routes")
                .map(f -> root.resolve("demo").resolve(f))
                .toList());
        if (!read.mistakes().isEmpty()) {
            throw new IllegalStateException(read.mistakes().toString());
        }
        return this;
    }

    HttpResponse<String> get(String path) {
        return send(request(path));
    }

    HttpResponse<String> post(String path, Map<String, String> fields) {
        var body = fields.entrySet().stream()
                .map(e -> coded(e.getKey()) + "=" + coded(e.getValue()))
                .collect(Collectors.joining("&"));
        return send(request(path)
                .header("Origin", bench.address().replaceFirst("/$", ""))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(bench.address() + path)).header("Accept", "text/html");
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /// {@return what the form on a page holds, as it would be sent}
    static Map<String, String> form(String page) {
        var fields = new LinkedHashMap<String, String>();
        var found = FIELD.matcher(page);
        while (found.find()) {
            if (found.group(4) != null) {
                fields.put(attribute(found.group(4), "name"), chosen(found.group(5)));
            } else if (found.group(1).equals("textarea")) {
                fields.put(attribute(found.group(2), "name"), plain(found.group(3)));
            } else {
                var type = attribute(found.group(2), "type");
                boolean ticked = found.group(2).matches("(?s).*\\bchecked\\b.*");
                if (ticked || !(type.equals("checkbox") || type.equals("radio"))) {
                    fields.put(attribute(found.group(2), "name"), attribute(found.group(2), "value"));
                }
            }
        }
        return fields;
    }

    private static String chosen(String options) {
        var first = "";
        var found = OPTION.matcher(options);
        for (boolean any = false; found.find(); any = true) {
            var value = found.group(1).contains("value=") ? attribute(found.group(1), "value") : plain(found.group(2));
            if (found.group(1).matches("(?s).*\\bselected\\b.*")) {
                return value;
            }
            first = any ? first : value;
        }
        return first;
    }

    private static String attribute(String tag, String name) {
        var found = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(tag);
        return found.find() ? plain(found.group(1)) : "";
    }

    static String plain(String html) {
        return html.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&quot;", "\"")
                .replace("&amp;", "&");
    }

    @Override
    public void close() {
        bench.close();
        client.close();
    }
}
