package org.fandown.browser;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;

/** What somebody does in the yard with a page. */
record YardWalk(Page page) {
    /** Resolves when the device can start the pages by itself. */
    private static final String KEPT_ON_DEVICE = "navigator.serviceWorker.ready.then(() => 1)";

    /** Opens the yard, and waits until the device has all of it. */
    void open(String address) {
        page.navigate(address + "#/yard");
        page.evaluate(KEPT_ON_DEVICE);
    }

    void begin(String vehicle) {
        page.locator("select[name=vehicle]").selectOption(vehicle);
        button("Begin").click();
        page.waitForSelector("progress");
    }

    /** Says of everything on this screen that it is in order. */
    void answer() {
        for (Locator yes : page.getByText("Yes, in order").all()) {
            yes.click();
        }
    }

    int at() {
        return Integer.parseInt(page.locator("progress").getAttribute("value"));
    }

    void next() {
        int before = at();
        button("Next").click();
        page.locator("progress[value='" + (before + 1) + "']").waitFor();
    }

    void walkToTheEnd() {
        while (button("Next").count() > 0) {
            answer();
            next();
        }
    }

    void sign(String name) {
        page.getByLabel("Your name").fill(name);
        page.getByLabel("Your name").blur();
        Locator field = page.locator("canvas[aria-label=Signature]");
        field.scrollIntoViewIfNeeded();
        var box = field.boundingBox();
        page.mouse().move(box.x + 20, box.y + 20);
        page.mouse().down();
        page.mouse().move(box.x + 120, box.y + 60);
        page.mouse().up();
        button("Sign and finish").click();
    }

    Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
