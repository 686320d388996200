package org.fandown.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The real Chromium of this machine, without a screen. */
final class Chromium implements AutoCloseable {
    private static final List<String> QUIET =
            List.of(
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync");

    private final Playwright playwright =
            Playwright.create(
                    new Playwright.CreateOptions()
                            .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));

    /** Starts it. */
    Browser launch() {
        return playwright
                .chromium()
                .launch(
                        new BrowserType.LaunchOptions()
                                .setExecutablePath(path())
                                .setArgs(QUIET)
                                .setHeadless(true));
    }

    /**
     * Opens what a person kept open: the same profile keeps its store from one start to the next.
     */
    BrowserContext profile(Path folder, Screens screen) {
        return playwright
                .chromium()
                .launchPersistentContext(
                        folder,
                        screen.profile()
                                .setExecutablePath(path())
                                .setArgs(QUIET)
                                .setHeadless(true));
    }

    /** Where it lies. */
    static Path path() {
        return Stream.of(System.getenv("PATH").split(":"))
                .flatMap(
                        folder ->
                                Stream.of("chromium", "chromium-browser", "google-chrome")
                                        .map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalStateException(
                                        "Chromium is missing; install it (on Debian: apt-get"
                                                + " install chromium)."));
    }

    @Override
    public void close() {
        playwright.close();
    }
}
