package beltwright.trials;

import beltwright.app.bench.Bench;
import beltwright.workshop.Workshop;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/// The bench served on a fresh workshop with the demo in it, and a browser to try it with.
final class Tried implements AutoCloseable {
    static final Path ROOT = Path.of(System.getProperty("beltwright.root", ".."));
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");

    final Path store;
    final Workshop workshop;
    final Bench bench;

    /// What watched pages told the console and nobody expected: all but the refusals that a trial provokes.
    final List<String> complaints = new ArrayList<>();

    private final Playwright playwright;
    private final Browser browser;

    Tried(Path folder) {
        this(folder, true);
    }

    private Tried(Path folder, boolean demo) {
        Assumptions.assumeTrue(Files.isExecutable(CHROMIUM), "needs the package chromium");
        store = folder.resolve("tried.db");
        workshop = Workshop.open(store);
        if (demo) {
            importDemo();
        }
        bench = Bench.start(workshop, 0);
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync",
                                "--no-first-run")));
    }

    private void importDemo() {
        var read = workshop.importFolders(Stream.of("parts", "kits", "measurements", "routes")
                .map(f -> ROOT.resolve("demo").resolve(f))
                .toList());
        if (!read.mistakes().isEmpty()) {
            throw new IllegalStateException(read.mistakes().toString());
        }
    }

    static Tried fresh() {
        return in("tried", true);
    }

    /// {@return a bench on a workshop that holds nothing}
    static Tried empty() {
        return in("empty", false);
    }

    private static Tried in(String folder, boolean demo) {
        try {
            return new Tried(Files.createTempDirectory(folder), demo);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    Page page() {
        return page(new Browser.NewContextOptions().setViewportSize(1400, 1000));
    }

    /// {@return a page whose complaints are kept}
    Page watched() {
        var page = page();
        page.onConsoleMessage(m -> {
            if (m.type().equals("error") && !m.text().contains("422")) {
                complaints.add(m.text());
            }
        });
        page.onPageError(complaints::add);
        return page;
    }

    Page page(Browser.NewContextOptions options) {
        return browser.newContext(options).newPage();
    }

    /// Closes every page; one that stays open is laid out and painted beside all that follow.
    void closePages() {
        browser.contexts().forEach(BrowserContext::close);
    }

    String at(String path) {
        return bench.address() + path;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
        bench.close();
    }
}
