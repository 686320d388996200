package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every page at both sizes, light and dark, without a violation that axe-core knows of. */
class AccessibilityTest {
    private static final List<String> PAGES =
            List.of(
                    "",
                    "#/practice",
                    "#/practice/cold-start",
                    "#/yard",
                    "#/rules",
                    "#/vehicles",
                    "#/records");

    @TempDir private static Path folder;
    private static RunningSite site;
    private static Chromium chromium;
    private static Browser browser;

    @BeforeAll
    static void start() {
        site = RunningSite.in(folder);
        chromium = new Chromium();
        browser = chromium.launch();
    }

    @AfterAll
    static void stop() {
        chromium.close();
        site.close();
    }

    @ParameterizedTest
    @EnumSource(Screens.class)
    void no_page_shuts_anybody_out(Screens screen) {
        try (BrowserContext context = browser.newContext(screen.options())) {
            Page page = context.newPage();
            for (String path : PAGES) {
                page.navigate(site.address() + path);
                page.waitForSelector("h1");
                List<Rule> violations = new AxeBuilder(page).analyze().getViolations();
                assertThat(violations)
                        .as(screen + " " + path)
                        .extracting(rule -> rule.getId() + ": " + rule.getNodes())
                        .isEmpty();
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Screens.class)
    void no_page_is_wider_than_the_screen(Screens screen) {
        try (BrowserContext context = browser.newContext(screen.options())) {
            Page page = context.newPage();
            for (String path : PAGES) {
                page.navigate(site.address() + path);
                page.waitForSelector("h1");
                Object over =
                        page.evaluate(
                                "document.documentElement.scrollWidth - document.documentElement.clientWidth");
                assertThat(over).as(screen + " " + path).isEqualTo(0);
            }
        }
    }
}
