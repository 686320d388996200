package org.fandown.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same exercise in two windows of one browser. */
class PracticeWindowsTest {
    private static final String ELSEWHERE = "This exercise is open in another window";

    /** A window is loaded, and the other lets go, ms: on a machine with much else to do. */
    private static final LocatorAssertions.IsVisibleOptions SOON =
            new LocatorAssertions.IsVisibleOptions().setTimeout(30_000);

    @TempDir private Path folder;

    @Test
    void it_goes_on_in_one_window_and_can_be_taken_over_with_all_that_was_done() {
        try (RunningSite site = RunningSite.in(folder);
                Chromium chromium = new Chromium();
                Browser browser = chromium.launch();
                BrowserContext context = browser.newContext(Screens.DESK.options())) {
            Page first = context.newPage();
            first.navigate(site.address() + "#/practice/cold-start/free");
            first.waitForSelector(".gauge");
            key(first).click();
            assertThat(key(first)).hasAttribute("aria-pressed", "true");

            Page second = context.newPage();
            second.navigate(first.url());
            assertThat(second.getByText(ELSEWHERE)).isVisible(SOON);
            assertThat(second.locator(".gauge")).hasCount(0);
            takeOver(second);
            assertThat(key(second)).hasAttribute("aria-pressed", "true");
            assertThat(first.getByText(ELSEWHERE)).isVisible(SOON);

            key(second).click();
            assertThat(key(second)).hasAttribute("aria-pressed", "false");
            takeOver(first);
            assertThat(key(first)).hasAttribute("aria-pressed", "false");
            assertThat(second.getByText(ELSEWHERE)).isVisible(SOON);

            first.close();
            second.reload();
            assertThat(second.locator(".gauge")).isVisible(SOON);
        }
    }

    private static void takeOver(Page page) {
        page.bringToFront();
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Go on here")).click();
        assertThat(page.locator(".gauge")).isVisible(SOON);
    }

    private static Locator key(Page page) {
        return page.locator(".controls button", new Page.LocatorOptions().setHasText("Key"));
    }
}
