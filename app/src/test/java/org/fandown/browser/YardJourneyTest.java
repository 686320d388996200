package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A real inspection in the browser, with everything that can happen to it on the way: the server is
 * killed, the page loaded again, the browser closed and opened; then the server is back.
 */
class YardJourneyTest {
    /** Resolves when the device can start the pages by itself. */
    private static final String KEPT_ON_DEVICE = "navigator.serviceWorker.ready.then(() => 1)";

    @TempDir private Path folder;

    @ParameterizedTest
    @EnumSource(Screens.class)
    void nothing_entered_is_lost_and_the_record_arrives_once(Screens screen) throws Exception {
        RunningSite site = RunningSite.in(folder.resolve("store"));
        int port = site.port();
        String address = site.address();
        try (Chromium chromium = new Chromium()) {
            try (BrowserContext context = open(chromium, screen)) {
                Page page = context.newPage();
                page.navigate(address + "#/yard");
                page.evaluate(KEPT_ON_DEVICE);
                begin(page);
                answer(page);
                button(page, "Next").click();
                answer(page);
                site.close();
                page.reload();
                page.waitForSelector("progress");
                assertThat(page.locator("progress").getAttribute("value")).isEqualTo("2");
            }
            try (BrowserContext context = open(chromium, screen)) {
                Page page = context.newPage();
                page.navigate(address + "#/yard");
                page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Go on")).click();
                page.waitForSelector("progress");
                assertThat(page.locator("progress").getAttribute("value")).isEqualTo("2");
                walkToTheEnd(page);
                sign(page);
                page.waitForSelector("text=not yet sent");
                try (RunningSite again = RunningSite.in(folder.resolve("store"), port)) {
                    button(page, "Send now").click();
                    page.waitForSelector("text=kept by the server");
                    page.reload();
                    page.waitForSelector("text=kept by the server");
                    assertThat(again.get("api/records").body())
                            .contains("\"count\":1")
                            .contains("Ines Marlowe");
                }
            }
        }
    }

    private BrowserContext open(Chromium chromium, Screens screen) {
        return chromium.profile(folder.resolve("profile"), screen);
    }

    private static void begin(Page page) {
        page.locator("select[name=vehicle]").selectOption("straight-truck");
        button(page, "Begin").click();
        page.waitForSelector("progress");
    }

    private static void answer(Page page) {
        for (Locator yes : page.getByText("Yes, in order").all()) {
            yes.click();
        }
    }

    private static void walkToTheEnd(Page page) {
        Locator next = button(page, "Next");
        while (next.count() > 0) {
            int at = Integer.parseInt(page.locator("progress").getAttribute("value"));
            answer(page);
            next.click();
            page.locator("progress[value='" + (at + 1) + "']").waitFor();
        }
    }

    private static void sign(Page page) {
        page.getByLabel("Your name").fill("Ines Marlowe");
        page.getByLabel("Your name").blur();
        Locator field = page.locator("canvas");
        field.scrollIntoViewIfNeeded();
        var box = field.boundingBox();
        page.mouse().move(box.x + 20, box.y + 20);
        page.mouse().down();
        page.mouse().move(box.x + 120, box.y + 60);
        page.mouse().up();
        button(page, "Sign and finish").click();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
