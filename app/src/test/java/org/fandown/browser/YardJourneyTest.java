package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
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
                YardWalk yard = new YardWalk(page);
                yard.open(address);
                yard.begin("straight-truck");
                yard.answer();
                yard.next();
                yard.answer();
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
                YardWalk yard = new YardWalk(page);
                yard.walkToTheEnd();
                yard.sign("Ines Marlowe");
                page.waitForSelector("text=not yet sent");
                try (RunningSite again = RunningSite.in(folder.resolve("store"), port)) {
                    yard.button("Send now").click();
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
}
