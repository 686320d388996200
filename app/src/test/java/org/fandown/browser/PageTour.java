package org.fandown.browser;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import java.util.function.BiConsumer;

/** A way through every page, each stop reached from the one before. */
final class PageTour {
    private static final String EXERCISE = "#/practice/cold-start";

    /** The pages in order. */
    static final List<Stop> STOPS =
            List.of(
                    at("start", "Start", "What one can do here.", ""),
                    at(
                            "practice",
                            "Practice",
                            "Exercises of the demonstration yard, and one of one's own.",
                            "#/practice"),
                    new Stop("cab", "In the cab", "Needles, lamps and controls.", PageTour::cab),
                    view("walk", "Walking round", "The vehicle from above.", "Walk round"),
                    view("notes", "Notes", "What the learner finds.", "Notes"),
                    view("inside", "Inside", "The air system while it works.", "Inside"),
                    new Stop(
                            "after",
                            "Afterwards",
                            "Marks, feedback, the trace and a replay.",
                            PageTour::conclude),
                    at("yard", "Yard", "A real inspection is begun, or gone on with.", "#/yard"),
                    new Stop("step", "One step", "What to do, and its entries.", PageTour::step),
                    new Stop("review", "Review", "The last look, and signing.", PageTour::review),
                    new Stop("record", "A record", "What was signed.", PageTour::sign),
                    at("records", "Records", "Of this device and of the server.", "#/records"),
                    at("vehicles", "Vehicles", "Those of the yard and one's own.", "#/vehicles"),
                    at("log-in", "Log in", "For sites with accounts.", "#/log-in"),
                    at("accounts", "Accounts", "Who may log in, and as what.", "#/accounts"),
                    at("audit", "Audit trail", "Who did what, and when.", "#/audit"),
                    new Stop(
                            "rules",
                            "Rules of a place",
                            "Each limit with its source.",
                            (page, address) -> rules(page, address, "")),
                    new Stop(
                            "two-places",
                            "Rules of two places",
                            "Side by side, differences marked.",
                            (page, address) -> rules(page, address, "US")));

    private PageTour() {}

    /**
     * One page in one state.
     *
     * @param name of its files
     * @param title of it in the guide
     * @param tells what one sees
     * @param go how to come there, from a page and the address of the site
     */
    record Stop(String name, String title, String tells, BiConsumer<Page, String> go) {}

    private static Stop at(String name, String title, String tells, String path) {
        return new Stop(name, title, tells, (page, address) -> open(page, address, path));
    }

    private static Stop view(String name, String title, String tells, String view) {
        return new Stop(name, title, tells, (page, address) -> button(page, view).click());
    }

    private static void open(Page page, String address, String path) {
        page.navigate(address + path);
        page.waitForSelector("h1");
    }

    private static void cab(Page page, String address) {
        open(page, address, EXERCISE);
        page.waitForSelector(".gauge");
        control(page, "Key").click();
        control(page, "Engine").click();
        page.getByLabel("Engine speed, rpm").fill("1500");
        page.waitForTimeout(6000);
    }

    private static void conclude(Page page, String address) {
        button(page, "Notes").click();
        button(page, "not fit to move").click();
        button(page, "I am done: this is my conclusion").click();
        page.waitForSelector("[aria-label=Marks]");
        page.waitForSelector(".u-over");
    }

    private static void step(Page page, String address) {
        YardWalk walk = new YardWalk(page);
        walk.begin("straight-truck");
        Locator figures = page.locator("fieldset.entry .figure");
        while (figures.count() == 0) {
            walk.answer();
            walk.next();
        }
    }

    private static void review(Page page, String address) {
        new YardWalk(page).walkToTheEnd();
    }

    private static void sign(Page page, String address) {
        new YardWalk(page).sign("Ines Marlowe");
        page.waitForSelector("text=kept by the server");
    }

    private static void rules(Page page, String address, String against) {
        open(page, address, "#/rules");
        page.locator("select[name=against]").selectOption(against);
        page.locator(against.isEmpty() ? ".rule" : ".two .rule").first().waitFor();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static Locator control(Page page, String name) {
        return page.locator(".controls button", new Page.LocatorOptions().setHasText(name));
    }
}
