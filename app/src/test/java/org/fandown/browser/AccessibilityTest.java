package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

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

    static Stream<Arguments> everyLook() {
        return Stream.of(Screens.values())
                .flatMap(
                        screen ->
                                Stream.of(ColorScheme.LIGHT, ColorScheme.DARK)
                                        .map(scheme -> Arguments.of(screen, scheme)));
    }

    @ParameterizedTest
    @MethodSource("everyLook")
    void no_page_shuts_anybody_out(Screens screen, ColorScheme scheme) {
        try (BrowserContext context = browser.newContext(screen.options().setColorScheme(scheme))) {
            Page page = context.newPage();
            for (String path : PAGES) {
                open(page, path);
                shutsNobodyOut(page, screen + " " + scheme + " " + path);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("everyLook")
    void no_view_of_an_exercise_nor_what_comes_after_it(Screens screen, ColorScheme scheme) {
        try (BrowserContext context = browser.newContext(screen.options().setColorScheme(scheme))) {
            Page page = context.newPage();
            open(page, "#/practice/roll-away/guided");
            page.waitForSelector(".guide");
            for (String view : List.of("Walk round", "Notes", "Inside", "What happened", "Cab")) {
                page.locator("nav.views").getByText(view).click();
                if (view.equals("Notes")) {
                    page.locator(".checks > li > button").first().click();
                    page.locator(".checks fieldset").first().waitFor();
                }
                openAll(page);
                shutsNobodyOut(page, screen + " " + scheme + " " + view);
            }
            page.getByText("Show me").click();
            page.getByText("Done: ").waitFor(new Locator.WaitForOptions().setTimeout(60_000));
            page.locator("nav.views").getByText("Notes").click();
            page.locator(".entry").getByText("not proven").click();
            page.getByText("I am done").click();
            page.waitForSelector("[aria-label=Marks]");
            openAll(page);
            shutsNobodyOut(page, screen + " " + scheme + " marks");
            assertThat(over(page)).as("marks").isEqualTo(0);
            open(page, "#/records");
            shutsNobodyOut(page, screen + " " + scheme + " records");
        }
    }

    @ParameterizedTest
    @MethodSource("everyLook")
    void no_choice_of_faults_nor_a_question_of_the_yard(Screens screen, ColorScheme scheme) {
        try (BrowserContext context = browser.newContext(screen.options().setColorScheme(scheme))) {
            Page page = context.newPage();
            open(page, "#/practice");
            page.locator("select[name=hidden]").selectOption("instructor");
            page.waitForSelector("details.group");
            openAll(page);
            shutsNobodyOut(page, screen + " " + scheme + " faults");
            assertThat(over(page)).as("faults").isEqualTo(0);
            open(page, "#/yard");
            page.getByText("Begin", new Page.GetByTextOptions().setExact(true)).last().click();
            page.waitForSelector("progress");
            openAll(page);
            shutsNobodyOut(page, screen + " " + scheme + " yard");
        }
    }

    private static void open(Page page, String path) {
        page.navigate(site.address() + path);
        page.waitForSelector("h1");
    }

    /** Opens whatever can be unfolded. */
    private static void openAll(Page page) {
        page.evaluate("document.querySelectorAll('details').forEach((d) => { d.open = true; })");
    }

    private static Object over(Page page) {
        return page.evaluate(
                "document.documentElement.scrollWidth - document.documentElement.clientWidth");
    }

    private static void shutsNobodyOut(Page page, String where) {
        List<Rule> violations = new AxeBuilder(page).analyze().getViolations();
        assertThat(violations)
                .as(where)
                .extracting(rule -> rule.getId() + ": " + rule.getNodes())
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Screens.class)
    void no_page_is_wider_than_the_screen(Screens screen) {
        try (BrowserContext context = browser.newContext(screen.options())) {
            Page page = context.newPage();
            for (String path : PAGES) {
                open(page, path);
                assertThat(over(page)).as(screen + " " + path).isEqualTo(0);
            }
        }
    }
}
