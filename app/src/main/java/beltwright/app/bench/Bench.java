package beltwright.app.bench;

import beltwright.check.Ladder;
import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.layout.LayoutSolver;
import beltwright.press.chart.SlotChart;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.DrawingOffice;
import beltwright.press.guide.GuidePage;
import beltwright.press.json.DossierJson;
import beltwright.press.svg.SvgWriter;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.Workshop;
import com.fasterxml.jackson.databind.JsonNode;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/// Serves the bench on loopback. A page is a pure function of the store and the draft in its address.
public final class Bench implements AutoCloseable {
    static final String POLICY = "default-src 'none'; script-src 'self'; img-src 'self' data:; connect-src 'self';"
            + " form-action 'self'; base-uri 'none'; frame-ancestors 'none'; style-src 'self'";
    private static final String HTML = "text/html; charset=utf-8";
    private static final Pattern STYLE = Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL);
    private static final String CHARTS = "/META-INF/resources/webjars/uplot/1.6.30/dist/";

    private final Workshop workshop;
    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    private final Javalin server;
    private final SpreadPages spreads = new SpreadPages(this);
    private @Nullable Read read;

    /// What was last read from the store, and the fingerprint it had then.
    private record Read(String hash, Shelf shelf) {}

    private Bench(Workshop workshop, int port) {
        this.workshop = workshop;
        this.server = Javalin.create(this::configure).start("127.0.0.1", port);
    }

    /// Starts serving.
    ///
    /// @param port 0 for any free one
    public static Bench start(Workshop workshop, int port) {
        try {
            return new Bench(workshop, port);
        } catch (io.javalin.util.JavalinBindException e) {
            throw new Refusal(
                    "--port",
                    port + " is taken by another program",
                    "a free port, or 0 for any",
                    "give another --port");
        }
    }

    public int port() {
        return server.port();
    }

    public String address() {
        return "http://127.0.0.1:" + port() + "/";
    }

    @Override
    public void close() {
        server.stop();
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.http.maxRequestSize = Door.LARGEST_TABLE; // a table; all other pages take less, and the door says so
        config.jetty.modifyHttpConfiguration(http -> {
            http.setRequestHeaderSize(Door.LARGEST_FORM);
            http.setSendServerVersion(false);
        });
        config.jetty.multipartConfig.maxFileSize(RidePages.LARGEST_FORM, SizeUnit.BYTES); // the pages refuse in words
        config.jetty.multipartConfig.maxTotalRequestSize(RidePages.LARGEST_FORM, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxInMemoryFileSize(RidePages.LARGEST_FORM, SizeUnit.BYTES);
        config.routes.before(new Door(this)::guard);
        config.routes.get("/", this::first);
        var pairs = new PairsPages(this);
        config.routes.get("/pairs", pairs::page);
        config.routes.get("/pairs/why", pairs::why);
        config.routes.get("/pairs/stream", pairs::stream);
        config.routes.get("/kits/{kit}/mend", pairs::mend);
        var parts = new PartsPages(this);
        config.routes.get("/parts", parts::list);
        config.routes.get("/parts/csv", parts::csv);
        var pastes = new PastePages(this);
        config.routes.get("/parts/paste", pastes::paste);
        config.routes.post("/parts/paste", pastes::pasted);
        var entries = new EntryPages(this);
        config.routes.get("/parts/new", entries::fresh);
        config.routes.post("/parts/save", entries::save);
        config.routes.get("/parts/{part}", entries::open);
        var tension = new TensionPages(this);
        config.routes.get("/kits/{kit}/tension", tension::tension);
        config.routes.get("/kits/{kit}/tension/json", tension::tensionJson);
        config.routes.post("/kits/{kit}/tension/jump", tension::jump);
        config.routes.post("/kits/{kit}/tension/hung", tension::hung);
        config.routes.get("/kits/{kit}/weakest", tension::weakest);
        config.routes.get("/kits/{kit}/weakest/json", tension::weakestJson);
        config.routes.get("/kits/{kit}/spread", spreads::page);
        config.routes.get("/kits/{kit}/spread/json", spreads::json);
        var road = new RoadPages(this);
        config.routes.get("/kits/{kit}/power", road::power);
        config.routes.get("/kits/{kit}/power/json", road::json);
        config.routes.get("/kits/{kit}/brakes", road::brakes);
        config.routes.get("/kits/{kit}/limits", road::limits);
        var rides = new RidePages(this);
        config.routes.get("/kits/{kit}/ride", rides::page);
        config.routes.get("/kits/{kit}/ride/json", rides::json);
        config.routes.get("/kits/{kit}/ride/csv", rides::csv);
        config.routes.post("/kits/{kit}/ride/route", rides::add);
        config.routes.get("/routes/{route}/json", rides::route);
        config.routes.get("/kits/{kit}/log", new LogPages(this)::page);
        config.routes.get("/slots/{mount}", this::slots);
        config.routes.get("/kits/{kit}", this::sheet);
        config.routes.get("/kits/{kit}/edit", this::edit);
        config.routes.get("/kits/{kit}/working", this::working);
        config.routes.post("/kits/{kit}/keep", this::keep);
        config.routes.get(
                "/kits/{kit}/guide",
                ctx -> printed(ctx, GuidePage.html(dossier(ctx), workshop.reference(), revision(ctx))));
        config.routes.get(
                "/kits/{kit}/box",
                ctx -> printed(ctx, GuidePage.box(dossier(ctx), workshop.reference(), revision(ctx))));
        config.routes.get(
                "/kits/{kit}/json",
                ctx -> ctx.contentType("application/json; charset=utf-8").result(DossierJson.text(dossier(ctx))));
        config.routes.get("/kits/{kit}/drawings/{drawing}", this::drawing);
        config.routes.get(
                "/sheet.css",
                ctx -> ctx.contentType("text/css; charset=utf-8").result(SvgWriter.style() + resource("sheet.css")));
        script(config, "/shelf.js", "shelf.js");
        script(config, "/bench.js", "bench.js");
        script(config, "/ride.js", "ride.js");
        script(config, "/uplot.js", CHARTS + "uPlot.esm.js");
        config.routes.get(
                "/uplot.css",
                ctx -> ctx.contentType("text/css; charset=utf-8").result(resource(CHARTS + "uPlot.min.css")));
        config.routes.exception(Refusal.class, (r, ctx) -> refused(r, ctx, HttpStatus.BAD_REQUEST));
        config.routes.exception(Door.Shut.class, Door::answer);
        config.routes.exception(HttpResponseException.class, (e, ctx) -> Door.refused(this, e, ctx));
        config.routes.error(404, ctx -> page(ctx, "There is no such page.", "Choose a kit from the list."));
    }

    private static void script(JavalinConfig config, String path, String resource) {
        config.routes.get(
                path, ctx -> ctx.contentType("text/javascript; charset=utf-8").result(resource(resource)));
    }

    /// {@return everything kept, read anew when another command has changed it}
    synchronized Shelf shelf() {
        var hash = workshop.store().contentHash();
        var current = read;
        if (current == null || !hash.equals(current.hash())) {
            current = new Read(hash, workshop.shelf());
            read = current;
        }
        return current.shelf();
    }

    static Draft draft(Context ctx) {
        return Draft.parse(ctx.pathParam("kit"), ctx.queryParams("set"));
    }

    private Dossier dossier(Context ctx) {
        var draft = draft(ctx);
        return Dossiers.of(draft.over(shelf()).kit(draft.kit()));
    }

    private static String revision(Context ctx) {
        return ctx.queryParams("set").isEmpty() ? "draft" : "draft, edits not kept";
    }

    Workshop workshop() {
        return workshop;
    }

    static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /// Which belts fall in the slot of a mount.
    private void slots(Context ctx) {
        var shelf = shelf();
        var cover = Slots.cover(shelf, ctx.pathParam("mount"));
        render(
                ctx,
                "bench/slots.jte",
                Map.of(
                        "places",
                        Places.of(shelf, "parts"),
                        "cover",
                        cover,
                        "shelf",
                        shelf,
                        "chart",
                        SvgWriter.inline(SlotChart.of(cover), "slots")));
    }

    /// Opens the kit that fails first; a bench with nothing on it says what to do next.
    private void first(Context ctx) {
        var links = links(shelf(), "");
        if (links.isEmpty()) {
            ctx.redirect(shelf().parts().isEmpty() ? "/parts" : "/pairs");
            return;
        }
        var open =
                links.stream().filter(k -> k.mark().equals("fails")).findFirst().orElse(links.getFirst());
        ctx.redirect("/kits/" + open.id());
    }

    private void sheet(Context ctx) {
        show(ctx, draft(ctx), ctx.queryParam("seat"), null);
    }

    private void show(Context ctx, Draft draft, @Nullable String seat, Sheet.@Nullable Refused refused) {
        var kept = shelf();
        kept.draft(draft.kit());
        boolean brief = ctx.header("X-Bench") != null;
        var sheet = new Sheet(kept, draft, links(kept, draft.kit()), seat, refused, brief, spreads.odds(ctx));
        render(ctx, "bench/sheet.jte", Map.of("sheet", sheet));
    }

    /// One field typed on the sheet. What can be true becomes part of the draft's address; what
    /// cannot is shown where it was typed, and the sheet stays as it was.
    private void edit(Context ctx) {
        var draft = draft(ctx);
        var field = Objects.requireNonNullElse(ctx.queryParam("field"), "");
        var value = Objects.requireNonNullElse(ctx.queryParam("value"), "");
        var seat = ctx.queryParam("seat");
        try {
            var edit = Edit.parse(field + "=" + value);
            var kept = shelf();
            var next = changes(kept, edit) ? draft.with(edit) : draft.without(edit);
            next.over(kept).kit(draft.kit());
            ctx.redirect(seat == null ? next.address("") : next.at(seat), HttpStatus.SEE_OTHER);
        } catch (Refusal r) {
            ctx.status(422);
            show(
                    ctx,
                    draft,
                    seat,
                    new Sheet.Refused(field, value, r.wrong() + "; allowed: " + r.allowed() + "; " + r.mend()));
        }
    }

    /// The working of one finding or first number, for a rung that is opened after a change.
    private void working(Context ctx) {
        var key = Objects.requireNonNullElse(ctx.queryParam("of"), "");
        var dossier = dossier(ctx);
        var finding =
                dossier.findings().stream().filter(f -> f.key().equals(key)).findFirst();
        if (finding.isPresent()) {
            part(
                    ctx,
                    draft(ctx),
                    finding.get().check(),
                    "bench/finding.jte",
                    Map.of(
                            "f",
                            finding.get(),
                            "missing",
                            Missing.of(shelf(), finding.get().needs())));
            return;
        }
        var number = dossier.numbers().stream().filter(n -> n.key().equals(key)).findFirst();
        var n = number.orElseThrow(() -> new Refusal(
                "of",
                "no finding or number has the key '" + key + "'",
                "a key of this kit, as its JSON lists them",
                "reload the page"));
        part(ctx, draft(ctx), n.name(), "bench/number.jte", Map.of("n", n));
    }

    private static boolean changes(Shelf kept, Edit edit) {
        return kept.editable(edit.document()).stream()
                .noneMatch(f -> f.path().equals(edit.path()) && f.text().equals(edit.value()));
    }

    private void keep(Context ctx) {
        var edits = ctx.formParams("set").stream().map(Edit::parse).toList();
        workshop.keep(edits);
        ctx.redirect("/kits/" + ctx.pathParam("kit"), HttpStatus.SEE_OTHER);
    }

    private void drawing(Context ctx) {
        var wanted = ctx.pathParam("drawing").replaceFirst("\\.svg$", "");
        var office = new DrawingOffice(dossier(ctx), workshop.reference(), revision(ctx));
        var found = office.all().stream().filter(d -> d.id().equals(wanted)).findFirst();
        if (found.isEmpty()) {
            throw new Refusal(
                    "drawing",
                    "no drawing '" + wanted + "'",
                    String.join(", ", office.all().stream().map(Drawing::id).toList()),
                    "use one of these");
        }
        allowStyle(ctx, SvgWriter.standalone(found.get()));
        ctx.contentType("image/svg+xml").result(SvgWriter.standalone(found.get()));
    }

    private static List<Sheet.KitLink> links(Shelf shelf, String here) {
        var links = new ArrayList<Sheet.KitLink>();
        for (var id : shelf.drafts().keySet()) {
            var kit = shelf.kit(id);
            var counts = Ladder.measure(kit, LayoutSolver.solve(kit));
            var worst = Verdict.HOLDS;
            for (var verdict : Verdict.values()) {
                if (counts[verdict.ordinal()] > 0) {
                    worst = verdict;
                    break;
                }
            }
            links.add(new Sheet.KitLink(
                    id,
                    kit.draft().name(),
                    worst.toString().replace(' ', '-'),
                    counts[worst.ordinal()] + " " + worst,
                    id.equals(here)));
        }
        return links;
    }

    void refused(Refusal r, Context ctx, HttpStatus status) {
        ctx.status(status);
        if (Objects.requireNonNullElse(ctx.header("Accept"), "").contains("text/html")) {
            page(
                    ctx,
                    (r.where().isEmpty() ? "" : r.where() + ": ") + r.wrong(),
                    "Allowed: " + r.allowed() + ". To mend it: " + r.mend() + ".");
        } else {
            ctx.contentType("text/plain").result(r.getMessage());
        }
    }

    private void page(Context ctx, String says, String next) {
        var shelf = shelf();
        render(
                ctx,
                "bench/note.jte",
                Map.of("says", says, "next", next, "kits", links(shelf, ""), "places", Places.of(shelf, "")));
    }

    void render(Context ctx, String template, Map<String, Object> data) {
        ctx.contentType(HTML).result(rendered(template, data));
    }

    private String rendered(String template, Map<String, Object> data) {
        var output = new StringOutput(256 * 1024);
        templates.render(template, data, output);
        return output.toString();
    }

    /// A part of a sheet: by itself for the sheet that fetches it, a whole page where its address is opened alone.
    void part(Context ctx, Draft draft, String title, String template, Map<String, Object> data) {
        if (ctx.header("X-Bench") != null) {
            render(ctx, template, data);
            return;
        }
        var shelf = draft.over(shelf());
        render(
                ctx,
                "bench/alone.jte",
                Map.of(
                        "places", Places.of(shelf, "kits"),
                        "title", title,
                        "kit", shelf.draft(draft.kit()).name(),
                        "back", draft.address(""),
                        "body", rendered(template, data)));
    }

    static void json(Context ctx, JsonNode json) {
        ctx.contentType("application/json; charset=utf-8").result(json.toString());
    }

    private static void printed(Context ctx, String html) {
        allowStyle(ctx, html);
        ctx.html(html);
    }

    /// A page that is handed out carries its style in itself; the policy names exactly that style.
    private static void allowStyle(Context ctx, String text) {
        var hashes = new StringBuilder();
        var styles = STYLE.matcher(text);
        while (styles.find()) {
            hashes.append(" 'sha256-").append(sha256(styles.group(1))).append('\'');
        }
        ctx.header("Content-Security-Policy", POLICY + hashes);
    }

    private static String sha256(String text) {
        try {
            return Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String resource(String name) {
        try (var in = Objects.requireNonNull(Bench.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
