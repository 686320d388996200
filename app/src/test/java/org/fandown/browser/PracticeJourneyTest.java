package org.fandown.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * An exercise in the browser from the choice of a hidden fault to the record of it, loaded again on
 * the way.
 */
class PracticeJourneyTest {
    /** A build-up of some psi at fast idle, ms: the truck takes the time a truck takes. */
    private static final double BUILD_UP = 60_000;

    @TempDir private Path folder;

    @ParameterizedTest
    @EnumSource(Screens.class)
    void an_exercise_is_done_marked_replayed_and_kept(Screens screen) throws Exception {
        try (RunningSite site = RunningSite.in(folder.resolve("store"));
                Chromium chromium = new Chromium();
                BrowserContext context = chromium.profile(folder.resolve("profile"), screen)) {
            Page page = context.newPage();
            page.navigate(site.address() + "#/practice");
            chooseHiddenFault(page);

            chock(page, "3L");
            buildUp(page);
            pedalIsHeldAsLongAsItIsPressed(page);
            knobsAreWorked(page);
            lapClockStartsAgain(page);
            note(page);
            nothingIsLostByLoadingAgain(page);
            measureStroke(page, "2L");
            stateConditionAndConclude(page);
            marksTraceAndReplay(page);
            recordIsKept(page, site.address());
            serverHasItOnceAndApart(site);
            anotherDeviceOpensIt(chromium, screen, site.address());
        }
    }

    private static void chooseHiddenFault(Page page) {
        page.locator("select[name=vehicle]").selectOption("tractor-box-trailer");
        page.locator("select[name=place]").selectOption("CA-ON");
        page.locator("select[name=start]").selectOption("100 psi");
        page.locator("select[name=hidden]").selectOption("instructor");
        Locator fault =
                page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName("Low-air switch set too low"));
        page.getByText(Pattern.compile("^Instruments")).click();
        assertThat(fault).isVisible();
        fault.click();
        assertThat(fault).hasAttribute("aria-pressed", "true");
        page.getByRole(AriaRole.REGION, new Page.GetByRoleOptions().setName("Your own exercise"))
                .getByRole(
                        AriaRole.BUTTON,
                        new Locator.GetByRoleOptions().setName("Practise").setExact(true))
                .click();
        page.waitForSelector(".gauge");
    }

    private static void chock(Page page, String wheel) {
        view(page, "Walk round").click();
        place(page, "Wheel " + wheel).click();
        assertThat(page.getByText("You are at: " + wheel)).isVisible();
        button(page, "Chock this wheel").click();
        assertThat(place(page, "Wheel " + wheel + ", chocked")).isVisible();
    }

    private static void buildUp(Page page) {
        view(page, "Cab").click();
        control(page, "Key").click();
        assertThat(control(page, "Key")).containsText("on");
        control(page, "Engine").click();
        assertThat(control(page, "Engine")).containsText("running");
        page.getByLabel("Engine speed, rpm").fill("1500");
        assertThat(needles(page).first())
                .hasText(
                        Pattern.compile("10[7-9]|1[1-3]\\d"),
                        new LocatorAssertions.HasTextOptions().setTimeout(BUILD_UP));
        assertThat(page.locator(".gauge svg"))
                .hasAttribute(
                        "aria-label",
                        Pattern.compile("primary (10[7-9]|1[1-3]\\d) psi, secondary \\d+ psi"));
    }

    private static void pedalIsHeldAsLongAsItIsPressed(Page page) {
        Locator pedal = control(page, "Foot brake");
        pedal.scrollIntoViewIfNeeded();
        var box = pedal.boundingBox();
        page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
        page.mouse().down();
        assertThat(pedal).containsText("100 %");
        assertThat(page.getByText("Stop lamps: on")).hasCount(1);
        page.mouse().up();
        assertThat(pedal).containsText("hold, 0 %");
    }

    private static void knobsAreWorked(Page page) {
        Locator parking = control(page, "Parking brakes");
        parking.click();
        assertThat(parking).containsText("released");
        parking.click();
        assertThat(parking).containsText("set");
        control(page, "Trailer supply").click();
        assertThat(control(page, "Trailer supply")).hasAttribute("aria-pressed", "true");
    }

    private static void lapClockStartsAgain(Page page) {
        button(page, "Lap").click();
        assertThat(page.locator(".figures .number").nth(2)).hasText(Pattern.compile("0:0\\d"));
    }

    private static void note(Page page) {
        view(page, "Notes").click();
        check(page, "Governor cut-out").click();
        page.getByLabel("Primary, psi").fill("121");
        page.getByLabel("Primary, psi").blur();
        assertThat(check(page, "Governor cut-out")).containsText("noted");
    }

    private static void nothingIsLostByLoadingAgain(Page page) {
        view(page, "What happened").click();
        int happened = page.locator(".events li").count();
        String first = page.locator(".events li").first().innerText();
        page.reload();
        page.waitForSelector(".gauge");
        assertThat(control(page, "Key")).containsText("on");
        assertThat(control(page, "Engine")).containsText("running");
        assertThat(page.getByLabel("Engine speed, rpm")).hasValue("1500");
        assertThat(control(page, "Trailer supply")).hasAttribute("aria-pressed", "true");
        assertThat(primary(page)).isGreaterThan(60);
        view(page, "What happened").click();
        assertThat(page.locator(".events li").first()).hasText(first);
        assertThat(page.locator(".events li").count()).isGreaterThanOrEqualTo(happened);
        view(page, "Notes").click();
        assertThat(check(page, "Governor cut-out")).containsText("noted");
        assertThat(page.getByLabel("Primary, psi")).hasValue("121");
        view(page, "Walk round").click();
        assertThat(place(page, "Wheel 3L, chocked")).isVisible();
    }

    private static void measureStroke(Page page, String wheel) {
        button(page, "Put a helper in the cab").click();
        button(page, "Send the helper away").waitFor();
        place(page, "Wheel " + wheel).click();
        button(page, "Measure the push rod").click();
        assertThat(page.locator(".seen")).containsText("push rod of " + wheel + " is out");
    }

    private static void stateConditionAndConclude(Page page) {
        view(page, "Notes").click();
        check(page, "Walk-round inspection").click();
        button(page, "All others looked at and in order").click();
        button(page, "not fit to move").click();
        page.getByText("What is wrong (0)").click();
        button(page, "low air warning").click();
        assertThat(page.getByText("What is wrong (1)")).isVisible();
        button(page, "I am done: this is my conclusion").click();
    }

    private static void marksTraceAndReplay(Page page) {
        Locator marks =
                page.getByRole(AriaRole.REGION, new Page.GetByRoleOptions().setName("Marks"));
        marks.waitFor(new Locator.WaitForOptions().setTimeout(BUILD_UP));
        assertThat(marks.locator(".number")).hasText(Pattern.compile("\\d+ of \\d+, .*passed"));
        assertThat(marks).containsText("Instead:");
        assertThat(page.locator(".trace canvas")).isVisible();
        Locator slider = page.getByLabel("Replay:");
        slider.fill("0");
        assertThat(page.locator(".needles .number").first()).hasText("100");
        slider.fill(slider.getAttribute("max"));
        assertThat(primary(page)).isGreaterThan(60);
    }

    private static void recordIsKept(Page page, String address) {
        page.navigate(address + "#/records");
        assertThat(page.getByText("Nothing found.")).isVisible();
        page.navigate(address + "#/records/practice");
        Locator card = page.locator(".cards li").first();
        assertThat(card).containsText("Tractor 7 with box trailer 31");
        assertThat(card).containsText("Exercise");
        assertThat(card).containsText("passed");
        assertThat(card)
                .containsText(
                        "kept by the server",
                        new LocatorAssertions.ContainsTextOptions().setTimeout(BUILD_UP));
        card.getByRole(AriaRole.LINK).click();
        assertThat(page.getByRole(AriaRole.REGION, new Page.GetByRoleOptions().setName("Marks")))
                .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(BUILD_UP));
        page.navigate(address + "#/practice");
        page.waitForSelector("h1");
        assertThat(page.getByText("Not finished yet")).hasCount(0);
    }

    private static void serverHasItOnceAndApart(RunningSite site) throws Exception {
        assertThat(site.get("api/records?kind=practice").body())
                .contains("\"count\":1")
                .contains("passed");
        assertThat(site.get("api/records?kind=inspection").body()).contains("\"records\":[]");
    }

    private static void anotherDeviceOpensIt(Chromium chromium, Screens screen, String address) {
        try (Browser browser = chromium.launch();
                BrowserContext context = browser.newContext(screen.options())) {
            Page page = context.newPage();
            page.navigate(address + "#/records/practice");
            page.locator(".cards li").first().getByRole(AriaRole.LINK).click();
            Locator marks =
                    page.getByRole(AriaRole.REGION, new Page.GetByRoleOptions().setName("Marks"));
            assertThat(marks).containsText("Instead:");
            assertThat(page.getByText("Exercise on a simulated vehicle")).isVisible();
            assertThat(page.getByText("kept by the server")).isVisible();
            assertThat(page.getByText("Report, PDF")).hasCount(0);
            assertThat(page.locator(".trace canvas"))
                    .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(BUILD_UP));
        }
    }

    private static int primary(Page page) {
        return Integer.parseInt(needles(page).first().innerText());
    }

    private static Locator needles(Page page) {
        return page.locator(".needles .number");
    }

    private static Locator view(Page page, String name) {
        return page.locator("nav.views")
                .getByText(name, new Locator.GetByTextOptions().setExact(true));
    }

    private static Locator place(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON,
                new Page.GetByRoleOptions().setName(Pattern.compile("^" + name + "(,|$)")));
    }

    private static Locator check(Page page, String title) {
        return page.locator(".checks > li > button")
                .filter(new Locator.FilterOptions().setHasText(title));
    }

    private static Locator control(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON,
                new Page.GetByRoleOptions().setName(Pattern.compile("^\\s*" + name)));
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
