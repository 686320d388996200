package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ViewportSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pictures of every page for docs/pages.md, at both sizes, light and dark. {@code
 * tools/pictures.sh} takes them anew from the real server in a real Chromium; without it, only what
 * stands there is looked at.
 */
class PagePicturesTest {
    private static final Path GUIDE = Path.of("..", "docs", "pages.md");
    private static final Path PICTURES = Path.of("..", "docs", "pages");
    private static final long MOST_BYTES = 150_000;
    private static final int MOST_HEIGHT = 1400;

    @TempDir private Path folder;

    @Test
    void every_page_has_its_small_pictures_and_the_guide_shows_them() throws IOException {
        if (Boolean.getBoolean("fandown.write")) {
            take();
            Files.writeString(GUIDE, guide());
        }
        assertThat(GUIDE).content().isEqualTo(guide());
        List<String> wanted = new ArrayList<>();
        for (PageTour.Stop stop : PageTour.STOPS) {
            for (Screens screen : Screens.values()) {
                for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                    wanted.add(name(stop, screen, scheme));
                }
            }
        }
        try (Stream<Path> files = Files.list(PICTURES)) {
            List<Path> there = files.toList();
            assertThat(there)
                    .extracting(file -> file.getFileName().toString())
                    .containsExactlyInAnyOrderElementsOf(wanted);
            for (Path file : there) {
                assertThat(Files.size(file)).as(file.toString()).isBetween(1000L, MOST_BYTES);
            }
        }
    }

    private void take() throws IOException {
        Files.createDirectories(PICTURES);
        try (RunningSite site = RunningSite.in(folder);
                Chromium chromium = new Chromium();
                Browser browser = chromium.launch()) {
            for (Screens screen : Screens.values()) {
                try (BrowserContext context = browser.newContext(screen.options())) {
                    tour(context.newPage(), site, screen);
                }
            }
        }
    }

    private static void tour(Page page, RunningSite site, Screens screen) throws IOException {
        for (PageTour.Stop stop : PageTour.STOPS) {
            stop.go().accept(page, site.address());
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                page.waitForTimeout(300);
                SmallPicture.write(shot(page), PICTURES.resolve(name(stop, screen, scheme)));
            }
        }
    }

    /** The page on a screen as high as it needs, as far as a picture is still small. */
    private static byte[] shot(Page page) {
        ViewportSize size = page.viewportSize();
        page.evaluate("scrollTo(0, 0)");
        int whole = (int) page.evaluate("document.documentElement.scrollHeight");
        page.setViewportSize(size.width, Math.max(size.height, Math.min(whole, MOST_HEIGHT)));
        byte[] png = page.screenshot();
        page.setViewportSize(size.width, size.height);
        return png;
    }

    private static String name(PageTour.Stop stop, Screens screen, ColorScheme scheme) {
        return (stop.name() + "-" + screen + "-" + scheme + ".png").toLowerCase(Locale.ROOT);
    }

    private static String guide() {
        StringBuilder text =
                new StringBuilder(
                        """
                        # The pages

                        Taken by `tools/pictures.sh` from the demonstration yard: a phone in daylight and at night, and a desk.
                        """);
        for (PageTour.Stop stop : PageTour.STOPS) {
            text.append("\n## ").append(stop.title()).append("\n\n").append(stop.tells());
            text.append("\n\n");
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                text.append(shown(stop, Screens.PHONE, scheme, 195)).append('\n');
            }
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                text.append(shown(stop, Screens.DESK, scheme, 420)).append('\n');
            }
        }
        return text.toString();
    }

    private static String shown(PageTour.Stop stop, Screens screen, ColorScheme scheme, int width) {
        String file = name(stop, screen, scheme);
        String words = (stop.title() + ", " + screen + ", " + scheme).toLowerCase(Locale.ROOT);
        return "<img src=\"pages/" + file + "\" width=\"" + width + "\" alt=\"" + words + "\">";
    }
}
