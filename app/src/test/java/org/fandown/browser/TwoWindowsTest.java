package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same inspection in two windows of one browser. */
class TwoWindowsTest {
    @TempDir private Path folder;

    @Test
    void nothing_entered_in_either_is_lost_and_one_record_is_sent_once() throws Exception {
        Queue<String> sent = new ConcurrentLinkedQueue<>();
        try (RunningSite site = RunningSite.in(folder);
                Chromium chromium = new Chromium();
                Browser browser = chromium.launch();
                BrowserContext context = browser.newContext(Screens.DESK.options())) {
            context.onRequest(
                    request -> {
                        if (request.method().equals("POST")) {
                            sent.add(request.url());
                        }
                    });
            Page first = context.newPage();
            YardWalk one = new YardWalk(first);
            one.open(site.address());
            one.begin("straight-truck");
            Page second = context.newPage();
            second.navigate(first.url());
            second.waitForSelector("progress");
            YardWalk two = new YardWalk(second);
            goTo(one, "Primary");
            goTo(two, "Primary");
            two.next();
            goTo(two, "Primary");
            figure(first, "Primary, psi", "123");
            figure(second, "Primary, psi", "98");
            figure(first, "Secondary, psi", "121");
            first.bringToFront();
            one.walkToTheEnd();
            assertThat(readings(first)).contains("123", "121", "98");
            one.sign("Ines Marlowe");
            first.waitForSelector("text=kept by the server");
            second.waitForSelector("text=finished or thrown away in another window");
            assertThat(site.get("api/records").body()).contains("\"count\":1");
            assertThat(sent).hasSize(1);
        }
    }

    /** Walks on until a field with this label is on the screen. */
    private static void goTo(YardWalk yard, String label) {
        while (yard.page().getByLabel(label).count() == 0) {
            yard.next();
        }
    }

    private static void figure(Page page, String label, String value) {
        Locator field = page.getByLabel(label, new Page.GetByLabelOptions().setExact(true)).first();
        field.fill(value);
        field.blur();
    }

    /** The readings of the draft that the device keeps. */
    private static String readings(Page page) {
        return (String)
                page.evaluate(
                        "() => new Promise((done) => {"
                                + " const asking = indexedDB.open('fandown');"
                                + " asking.onsuccess = () => {"
                                + "  const all = asking.result.transaction('drafts')"
                                + ".objectStore('drafts').getAll();"
                                + "  all.onsuccess = () => {"
                                + "   asking.result.close();"
                                + "   done(JSON.stringify(all.result.map((d) => d.readings)));"
                                + "  }; }; })");
    }
}
