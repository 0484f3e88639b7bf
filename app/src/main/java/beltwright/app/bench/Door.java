package beltwright.app.bench;

import beltwright.quantity.Refusal;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

/// Who may talk to the bench, and how much at once. Whoever is turned away is told why.
final class Door {
    /// Of a form without a table or a file in it, and of the lines before any (bytes).
    static final int LARGEST_FORM = 64 * 1024;

    /// Of a form with a table in it, as a browser sends it (bytes).
    static final int LARGEST_TABLE = 2 * 1024 * 1024;

    private static final Set<String> HOSTS = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final long MOST_READ_AWAY = 256L * 1024 * 1024;

    private final Bench bench;

    Door(Bench bench) {
        this.bench = bench;
    }

    /// Someone who may not talk to the bench; the answer shows nothing of the workshop.
    static final class Shut extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final transient Refusal why;

        Shut(String where, String wrong, String allowed, String mend) {
            why = new Refusal(where, wrong, allowed, mend);
        }
    }

    static void answer(Shut shut, Context ctx) {
        ctx.status(HttpStatus.FORBIDDEN)
                .contentType("text/plain; charset=utf-8")
                .result(shut.why.getMessage());
    }

    /// Only this machine's own pages may talk to the bench.
    void guard(Context ctx) {
        ctx.header("Content-Security-Policy", Bench.POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cache-Control", "no-store");
        var host = Objects.requireNonNullElse(ctx.header("Host"), "");
        if (!HOSTS.contains(host.replaceFirst(":\\d+$", ""))) {
            throw new Shut(
                    "host",
                    "'" + host + "' is not this machine, and the bench answers on this machine only",
                    "localhost, 127.0.0.1 or [::1]",
                    "open " + bench.address());
        }
        var origin = ctx.header("Origin");
        boolean writes =
                !ctx.method().name().equals("GET") && !ctx.method().name().equals("HEAD");
        if (writes && (origin == null || !origin.equals("http://" + host))) {
            throw new Shut(
                    "origin",
                    origin == null
                            ? "nothing says which page sends this, and only the bench's own may change anything"
                            : "the page '" + origin + "' may not change anything here",
                    "a form on the bench's own page, http://" + host,
                    "open " + bench.address() + " and send the form from there");
        }
        boolean file = ctx.path().endsWith("/ride/route"); // bounded and refused by the page that takes it
        if (!file && ctx.req().getContentLengthLong() > most(ctx)) {
            tooLarge(bench, ctx);
            ctx.skipRemainingHandlers();
        }
    }

    private static int most(Context ctx) {
        return ctx.path().equals("/parts/paste") ? LARGEST_TABLE : LARGEST_FORM;
    }

    /// What the server itself turns away: a form without a length beforehand is found too large while it is read.
    static void refused(Bench bench, HttpResponseException e, Context ctx) {
        if (e.getStatus() == HttpStatus.CONTENT_TOO_LARGE.getCode()) {
            tooLarge(bench, ctx);
        } else {
            ctx.status(e.getStatus())
                    .contentType("text/plain; charset=utf-8")
                    .result(Objects.requireNonNullElse(e.getMessage(), ""));
        }
    }

    private static void tooLarge(Bench bench, Context ctx) {
        readAway(ctx);
        long bytes = ctx.req().getContentLengthLong();
        int most = most(ctx);
        boolean table = most == LARGEST_TABLE;
        bench.refused(
                new Refusal(
                        table ? "table" : "form",
                        (bytes < 0
                                        ? "what was sent is larger"
                                        : "what was sent holds " + size(bytes) + ", which is more")
                                + " than this page takes; nothing was kept",
                        size(most) + (table ? " as a browser sends it" : ""),
                        table
                                ? "paste it in several parts, or save it as CSV and import it with"
                                        + " ./beltwright import FILE.csv --kind KIND"
                                : "shorten what was typed; a table of parts is pasted at /parts/paste"),
                ctx,
                HttpStatus.CONTENT_TOO_LARGE);
    }

    /// {@return so many bytes in KiB or MiB, rounded up where a limit would else seem to be met}
    private static String size(long bytes) {
        return bytes < 1024 * 1024
                ? Math.ceilDiv(bytes, 1024) + " KiB"
                : String.format(Locale.ROOT, "%.1f MiB", Math.ceilDiv(10 * bytes, 1024 * 1024) / 10.0);
    }

    /// A browser shows no answer while it still sends: what is too large is read and dropped, within bounds.
    static void readAway(Context ctx) {
        try {
            var in = ctx.req().getInputStream();
            var dropped = new byte[LARGEST_FORM];
            long left = MOST_READ_AWAY;
            for (int n = 0; n >= 0 && left > 0; left -= n) {
                n = in.read(dropped);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
