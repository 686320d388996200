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
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything can be done by the keyboard alone, with a focus that is seen and never caught. */
class KeyboardTest {
    /** A step that is shown is watched to its end within, ms. */
    private static final double WATCHED = 60_000;

    @TempDir private Path folder;
    private RunningSite site;
    private Chromium chromium;
    private BrowserContext context;
    private Page page;
    private Keyboard keys;

    @BeforeEach
    void open() {
        site = RunningSite.in(folder);
        chromium = new Chromium();
        Browser browser = chromium.launch();
        context = browser.newContext(Screens.DESK.options());
        page = context.newPage();
        keys = new Keyboard(page);
    }

    @AfterEach
    void close() {
        context.close();
        chromium.close();
        site.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#/practice", "#/yard", "#/rules", "#/records"})
    void the_focus_goes_round_every_page(String path) {
        at(path);
        assertThat(keys.round()).contains("Practice", "Records").hasSizeGreaterThan(4);
    }

    @Test
    void a_whole_exercise_is_done() {
        at("#/practice");
        keys.press("Practise: Grade without chocks");
        page.waitForSelector(".gauge");
        assertThat(keys.round()).contains("Cab", "Foot brake hold, 0 %");

        keys.press("Walk round").press("Wheel 2L");
        assertThat(page.getByText("You are at: 2L")).isVisible();
        keys.press("Chock this wheel");
        assertThat(page.getByLabel("Wheel 2L, chocked")).isVisible();
        keys.space("Measure the push rod").press("Listen");
        assertThat(page.locator(".seen")).containsText("push rod of 2L");

        keys.press("Cab").space("Key").press("Engine");
        assertThat(control("Engine")).containsText("running");
        keys.to("Engine speed, rpm").key("ArrowRight").key("ArrowRight");
        assertThat(page.getByLabel("Engine speed, rpm")).hasValue("700");
        keys.to("Foot brake");
        page.keyboard().down("Space");
        assertThat(control("Foot brake")).containsText("100 %");
        page.keyboard().up("Space");
        assertThat(control("Foot brake")).containsText("hold, 0 %");
        keys.press("Parking brakes");
        assertThat(control("Parking brakes")).containsText("released");
        keys.key("Enter");
        assertThat(control("Parking brakes")).containsText("set");
        keys.press("Lap");

        keys.press("Notes").press("Governor cut-out");
        page.getByLabel("Primary, psi").waitFor();
        keys.type("Primary, psi", "121");
        keys.press("fit to move").press("I am done");
        Locator marks =
                page.getByRole(AriaRole.REGION, new Page.GetByRoleOptions().setName("Marks"));
        assertThat(marks.locator(".number")).hasText(Pattern.compile("\\d+ of \\d+, .*passed"));
        keys.to("Replay").key("Home");
        assertThat(page.getByLabel("Replay:")).hasValue("0");

        keys.press("Records");
        page.waitForSelector("nav.views a");
        keys.press("Practice");
        page.waitForSelector("text=Exercises on simulated vehicles");
        keys.press("Open");
        assertThat(marks).isVisible();
    }

    @Test
    void a_guide_is_followed_and_shows_a_step() {
        at("#/practice/roll-away/guided");
        page.waitForSelector(".guide");
        assertThat(page.locator(".guide h2")).hasText("Chock the wheels");
        keys.press("Walk round").press("Wheel 2L").press("Chock this wheel");
        assertThat(page.locator(".guide")).containsText("Done: Chock the wheels");
        String second = page.locator(".guide h2").innerText();
        keys.press("Show me");
        assertThat(page.locator(".guide"))
                .containsText(
                        "Done: " + second,
                        new LocatorAssertions.ContainsTextOptions().setTimeout(WATCHED));
        keys.press("Back one step");
        assertThat(page.locator(".guide h2")).hasText(second);
    }

    @Test
    void an_inspection_is_made_and_signed() {
        at("#/yard");
        keys.press("Begin");
        page.waitForSelector("progress");
        int steps = Integer.parseInt(page.locator("progress").getAttribute("max"));
        for (int at = 1; at < steps; at++) {
            if (page.getByText("Yes, in order").count() > 0) {
                keys.press("Yes, in order");
            }
            keys.press("Next");
            page.locator("progress[value='" + (at + 1) + "']").waitFor();
        }
        keys.type("Your name", "Ines Marlowe");
        assertThat(page.getByLabel("Your name")).hasValue("Ines Marlowe");
        assertThat(keys.round()).contains("Back", "Undo", "Clear");
        keys.to("Signature").key("ArrowRight").key("ArrowUp").key("Space").key("ArrowRight");
        keys.press("Sign and finish");
        page.waitForSelector("text=kept by the server");
        assertThat(page.getByRole(AriaRole.HEADING).first()).isVisible();
    }

    @Test
    void rules_are_chosen_and_one_is_read_in_words() {
        at("#/rules");
        List<String> met = keys.round();
        assertThat(met).anySatisfy(name -> assertThat(name).startsWith("Place"));
        keys.to("Place").key("ArrowDown");
        page.locator("summary").first().waitFor();
        keys.to("In words").key("Enter");
        assertThat(page.locator("details[open]")).hasCount(1);
    }

    private void at(String path) {
        page.navigate(site.address() + path);
        page.waitForSelector("h1");
    }

    private Locator control(String name) {
        return page.getByRole(
                AriaRole.BUTTON,
                new Page.GetByRoleOptions().setName(Pattern.compile("^\\s*" + name)));
    }
}
