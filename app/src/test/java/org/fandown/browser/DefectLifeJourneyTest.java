package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A push rod out of its limit, certified by the mechanic, reviewed by the next driver. */
class DefectLifeJourneyTest {
    @TempDir private Path folder;

    @ParameterizedTest
    @EnumSource(Screens.class)
    void a_defect_is_followed_to_its_end_also_while_the_server_is_away(Screens screen)
            throws Exception {
        RunningSite site = RunningSite.in(folder);
        try (Chromium chromium = new Chromium();
                Browser browser = chromium.launch();
                BrowserContext context = browser.newContext(screen.options())) {
            Page page = context.newPage();
            YardWalk yard = new YardWalk(page);
            yard.open(site.address());
            yard.begin("straight-truck");
            while (page.getByText("Applied stroke at each wheel").count() == 0) {
                yard.next();
            }
            page.getByLabel("2L").first().fill("2 3/4");
            page.getByLabel("2L").first().blur();
            yard.walkToTheEnd();
            yard.sign("Ines Marlowe");
            page.waitForSelector("text=kept by the server");
            page.locator(".defects li").first().getByText("not to be driven").waitFor();
            int port = site.port();
            site.close();
            certify(page);
            page.getByText("(not yet sent)").waitFor();
            site = RunningSite.in(folder, port);
            page.reload();
            page.locator(".defects li .good").first().waitFor();
            page.waitForFunction("() => !document.body.textContent.includes('(not yet sent)')");
            review(page);
            page.locator(".defects li").first().getByText("settled and reviewed").waitFor();
            assertThat(page.locator(".events").first().textContent())
                    .contains("put right by B. Hale, Yard shop", "new slack adjuster")
                    .contains("reviewed by C. Lind");
        } finally {
            site.close();
        }
    }

    private static void certify(Page page) {
        Locator defect = page.locator(".defects li").first();
        defect.getByText("Say what was done").click();
        defect.getByText("was put right").click();
        defect.getByLabel("What was done, or why nothing is needed").fill("new slack adjuster");
        defect.getByLabel("Your name").fill("B. Hale");
        defect.getByLabel("For whom").fill("Yard shop");
        defect.getByText("Certify", new Locator.GetByTextOptions().setExact(true)).click();
    }

    private static void review(Page page) {
        page.getByText("Review by the next driver").click();
        Locator form = page.locator("details.sheet form");
        form.getByLabel("Your name").fill("C. Lind");
        form.getByText("Reviewed", new Locator.GetByTextOptions().setExact(true)).click();
    }
}
