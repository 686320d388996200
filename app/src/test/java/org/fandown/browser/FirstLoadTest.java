package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How much a device loads, over a slow network in a yard, until it works without one. */
class FirstLoadTest {
    private static final long MOST_BYTES = 900_000;

    /** Resolves with how many files are kept, once that is all of them. */
    private static final String KEPT =
            """
            async () => {
              await navigator.serviceWorker.ready;
              const [name] = await caches.keys();
              return (await (await caches.open(name)).keys()).length;
            }""";

    @TempDir private Path folder;

    @Test
    void everything_comes_once_and_small() throws Exception {
        try (RunningSite site = RunningSite.in(folder);
                CountedWay way = new CountedWay(site.port());
                Chromium chromium = new Chromium()) {
            Page page = chromium.launch().newPage();
            page.navigate(way.address() + "#/rules");
            page.waitForSelector(".rule");
            assertThat((int) page.evaluate(KEPT)).isGreaterThan(40);
            assertThat(way.answered()).isLessThan(MOST_BYTES);
            long before = way.answered();
            page.reload();
            page.waitForSelector(".rule");
            assertThat(way.answered() - before).as("bytes of a later load").isLessThan(20_000);
        }
    }
}
