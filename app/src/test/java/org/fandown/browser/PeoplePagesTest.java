package org.fandown.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Dialog;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import org.fandown.app.store.Role;
import org.fandown.contract.people.PeopleSite;
import org.fandown.contract.people.Person;
import org.fandown.contract.serve.Records;
import org.fandown.document.Json;
import org.fandown.document.Tree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Pages about people: logging in, accounts, the audit trail; and the others for who is not in. */
class PeoplePagesTest {
    private static final String HURT = "<img src=x onerror=\"window.hurt=1\">";
    private static final String SCRIPT = "\"><script>window.hurt=1</script>";
    private static final String WAITS = "on this device, not yet sent";

    @TempDir private Path folder;
    private PeopleSite site;
    private Chromium chromium;
    private Browser browser;

    @BeforeEach
    void open() {
        site = PeopleSite.in(folder);
        chromium = new Chromium();
        browser = chromium.launch();
    }

    @AfterEach
    void close() {
        chromium.close();
        site.close();
    }

    private void at(Page page, String path) {
        page.navigate(site.site().address() + path);
        page.waitForSelector("h1");
    }

    private void logIn(Page page, String name) {
        at(page, "#/log-in");
        page.getByLabel("Name").fill(name);
        page.getByLabel("Password").fill(PeopleSite.PASSWORD);
        button(page, "Log in").click();
        page.getByText("You are logged in as").waitFor();
    }

    private static com.microsoft.playwright.Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    @ParameterizedTest
    @EnumSource(Screens.class)
    void people_log_in_see_who_they_are_and_log_out(Screens screen) {
        try (BrowserContext context = browser.newContext(screen.options())) {
            Page page = context.newPage();
            at(page, "#/log-in");
            page.getByLabel("Name").fill("driver");
            page.getByLabel("Password").fill("not the password");
            button(page, "Log in").click();
            page.getByText("Name or password is wrong").waitFor();
            logIn(page, "driver");
            assertThat(page.locator(".who")).containsText("driver");
            assertThat(page.locator(".who")).not().containsText("Accounts");
            page.reload();
            assertThat(page.locator(".who")).containsText("driver");
            Page other = context.newPage();
            at(other, "#/records");
            assertThat(other.locator(".who")).containsText("driver");
            button(page, "Log out").click();
            assertThat(page.locator(".who")).containsText("Log in");
            assertThat(other.locator(".who")).containsText("Log in");
            assertThat(context.cookies()).isEmpty();
        }
    }

    @Test
    void site_manager_looks_after_accounts_by_the_keyboard_alone() {
        try (BrowserContext context = browser.newContext(Screens.DESK.options())) {
            Page page = context.newPage();
            Keyboard keys = new Keyboard(page);
            at(page, "#/log-in");
            keys.type("Name", "site manager").type("Password", PeopleSite.PASSWORD);
            keys.key("Enter");
            page.getByText("You are logged in as site manager").waitFor();
            keys.press("Accounts");
            page.getByText("Add an account").waitFor();
            keys.type("Name", "Ines Marlowe").key("ArrowDown");
            keys.type("Password of the new account", "seven loose gravel stones").key("Enter");
            page.getByText("The account is added").waitFor();
            assertThat(page.locator(".cards li").last()).containsText("Ines Marlowe");
            assertThat(page.locator(".cards li").last()).containsText("driver");
            keys.press("Change: Ines Marlowe").to("Role of Ines Marlowe").key("ArrowDown");
            keys.press("Give this role to Ines Marlowe");
            assertThat(page.locator(".cards li").last()).containsText("instructor");
            page.onDialog(Dialog::accept);
            keys.press("Close the account of Ines Marlowe");
            assertThat(page.locator(".cards li").last()).containsText("closed");
            keys.press("Audit trail");
            assertThat(page.locator("tbody tr").first()).containsText("account closed");
            assertThat(keys.round()).contains("Accounts", "Log out");
        }
    }

    @Test
    void markup_in_names_and_records_is_shown_and_never_run() throws Exception {
        Person manager = site.as(Role.SITE_MANAGER);
        for (String name : List.of(HURT, SCRIPT)) {
            String body =
                    Json.writeCompact(
                            Tree.map()
                                    .put("name", name)
                                    .put("role", "site-manager")
                                    .put("password", PeopleSite.PASSWORD)
                                    .build());
            assertThat(manager.post("api/accounts", body).statusCode()).isEqualTo(201);
        }
        String record =
                Records.record("0b7e3a52-93d1-4c0e-9a65-0d5f6f0a1c01")
                        .replace("Straight truck", HURT.replace("\"", "\\\""));
        manager.post("api/records", Records.body(record));
        try (BrowserContext context = browser.newContext(Screens.DESK.options())) {
            Page page = context.newPage();
            logIn(page, HURT);
            assertThat(page.locator(".who")).containsText(HURT);
            for (String path : List.of("#/accounts", "#/audit")) {
                at(page, path);
                assertThat(page.locator("main")).containsText(HURT);
                assertThat(page.locator("main")).containsText(SCRIPT);
                assertThat(page.locator("main img")).hasCount(0);
            }
            at(page, "#/records");
            page.locator(".cards li").first().waitFor();
            page.locator(".cards a.button").first().click();
            page.getByText("Findings").first().waitFor();
            assertThat(page.locator("main img:not(.code)")).hasCount(0);
            assertThat(page.evaluate("window.hurt")).isNull();
        }
    }

    @Test
    void session_that_ends_loses_nothing_and_says_what_to_do() throws Exception {
        try (BrowserContext context = browser.newContext(Screens.PHONE.options())) {
            Page page = context.newPage();
            logIn(page, "driver");
            Person manager = site.as(Role.SITE_MANAGER);
            String same = "{\"password\":\"" + PeopleSite.PASSWORD + "\"}";
            assertThat(manager.post("api/accounts/3/password", same).statusCode()).isEqualTo(204);
            at(page, "#/yard");
            YardWalk walk = new YardWalk(page);
            walk.begin("straight-truck");
            walk.walkToTheEnd();
            walk.sign("Ines Marlowe");
            assertThat(page.locator("main")).containsText(WAITS);
            assertThat(page.locator(".who")).containsText("Log in");
            at(page, "#/records");
            assertThat(page.locator("main")).containsText("Nobody is logged in");
            assertThat(page.locator(".cards li")).hasCount(1);
            logIn(page, "learner");
            at(page, "#/records");
            assertThat(page.locator(".cards li")).containsText(WAITS);
            button(page, "Log out").click();
            page.getByText("Nothing is sent").waitFor();
            logIn(page, "driver");
            at(page, "#/records");
            assertThat(page.locator(".cards li")).containsText("kept by the server");
            assertThat(manager.get("api/records").body()).contains("\"count\":1");
        }
    }

    @ParameterizedTest
    @EnumSource(Screens.class)
    void no_page_about_people_shuts_anybody_out(Screens screen) {
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            try (BrowserContext context =
                    browser.newContext(screen.options().setColorScheme(scheme))) {
                Page page = context.newPage();
                at(page, "#/log-in");
                shutsNobodyOut(page, "log-in");
                at(page, "#/records");
                page.getByText("Nobody is logged in").waitFor();
                shutsNobodyOut(page, "records, nobody");
                logIn(page, "site manager");
                shutsNobodyOut(page, "myself");
                at(page, "#/accounts");
                page.evaluate(
                        "document.querySelectorAll('details').forEach((d) => { d.open = true; })");
                shutsNobodyOut(page, "accounts");
                at(page, "#/audit");
                shutsNobodyOut(page, "audit");
            }
        }
    }

    private static void shutsNobodyOut(Page page, String where) {
        List<Rule> violations = new AxeBuilder(page).analyze().getViolations();
        assertThat(violations)
                .as(where)
                .extracting(rule -> rule.getId() + ": " + rule.getNodes())
                .isEmpty();
        assertThat(
                        page.evaluate(
                                "document.documentElement.scrollWidth"
                                        + " - document.documentElement.clientWidth"))
                .as("width of " + where)
                .isEqualTo(0);
    }
}
