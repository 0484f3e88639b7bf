package beltwright.app;

import beltwright.app.bench.Bench;
import beltwright.quantity.Refusal;
import beltwright.workshop.Workshop;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;

/// The bench, served until the person at the keyboard stops it.
final class Serving {
    static final String PORT = "8525";
    private static final int HIGHEST_PORT = 65_535;

    private Serving() {}

    /// @throws Refusal if there is no such port
    static void checkPort(int port) {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new Refusal(
                    "--port", port + " is no port", "1 to " + HIGHEST_PORT + ", or 0 for any free one", "give another");
        }
    }

    /// Serves until this process or this thread is told to stop.
    ///
    /// @param begun is told the address
    static int serve(Workshop workshop, int port, Consumer<String> begun) {
        try (var bench = Bench.start(workshop, port)) {
            begun.accept(bench.address());
            new CountDownLatch(1).await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Exit.NOTHING_FAILS;
    }

    /// Opens a browser where there is a screen for one; the address is printed anyway.
    static void openBrowser(Desk desk, String address) {
        boolean mac = System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("mac");
        boolean screen =
                desk.environment().containsKey("DISPLAY") || desk.environment().containsKey("WAYLAND_DISPLAY");
        if (mac || screen) {
            try {
                new ProcessBuilder(List.of(mac ? "open" : "xdg-open", address))
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
            } catch (IOException e) {
                desk.err().println("No browser could be opened; open the address by hand.");
            }
        }
    }
}
