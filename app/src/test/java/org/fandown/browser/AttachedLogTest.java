package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.cli.FandownCommand;
import org.fandown.app.files.Sha256;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A pressure log in place of readings by hand, without the server: read in the browser, judged
 * there, sent with the record, and judged by the server as the command line judges the log itself.
 */
class AttachedLogTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Path LOG = EXAMPLES.resolve("traces/cold-start.csv");
    private static final String RIG = "tractor-box-trailer";
    private static final String BAD = "time s,primary psi,secondary bananas\n0,100,100\n";

    @TempDir private Path folder;

    @ParameterizedTest
    @EnumSource(Screens.class)
    void log_counts_as_on_the_command_line(Screens screen) throws Exception {
        RunningSite site = RunningSite.in(folder.resolve("store"));
        int port = site.port();
        try (Chromium chromium = new Chromium();
                BrowserContext context = chromium.profile(folder.resolve("profile"), screen)) {
            Page page = context.newPage();
            YardWalk yard = new YardWalk(page);
            yard.open(site.address());
            yard.begin(RIG);
            site.close();
            refuseBad(page);
            attach(page);
            page.reload();
            assertShown(page);
            yard.walkToTheEnd();
            yard.sign("Ines Marlowe");
            page.waitForSelector("text=not yet sent");
            assertThat(page.locator("main").textContent()).contains("cold-start.csv");
            try (RunningSite again = RunningSite.in(folder.resolve("store"), port)) {
                yard.button("Send now").click();
                page.waitForSelector("text=kept by the server");
                String id = page.url().substring(page.url().lastIndexOf('/') + 1);
                assertJudgedAsTraced(again.get("api/records/" + id).body());
                assertThat(again.get("api/records/" + id + "/report.pdf").statusCode())
                        .isEqualTo(200);
            }
        }
    }

    /** A log that cannot be used says why, and takes nothing away. */
    private static void refuseBad(Page page) {
        page.getByText("Attach a pressure log").click();
        choose(page)
                .setInputFiles(
                        new FilePayload(
                                "bad.csv", "text/csv", BAD.getBytes(StandardCharsets.UTF_8)));
        Locator alert = page.locator(".log [role=alert]");
        alert.waitFor();
        assertThat(alert.textContent())
                .contains("bad.csv:1", "bananas", "Allowed: ", "psi, kPa, bar", "Next: ");
    }

    private static Locator choose(Page page) {
        return page.locator(".log input[type=file]");
    }

    private static void attach(Page page) {
        choose(page).setInputFiles(LOG);
        page.getByText("readings from it").waitFor();
    }

    private static void assertShown(Page page) {
        Locator summary = page.locator(".log summary").first();
        summary.click();
        page.waitForSelector(".log .uplot canvas");
        List<String> found = page.locator(".log ol li").allTextContents();
        List<Node> expected = Fields.of(run("trace", LOG.toString(), "--json")).list("recognised");
        assertThat(found).hasSameSizeAs(expected);
        for (int i = 0; i < expected.size(); i++) {
            Fields one = Fields.of(expected.get(i));
            assertThat(found.get(i)).contains(one.text("text"));
        }
    }

    private void assertJudgedAsTraced(String record) throws IOException {
        Fields kept = Fields.of(Json.read("record.json", record));
        Path sheet = folder.resolve("sheet.json");
        Files.writeString(sheet, Json.write(kept.node("inspection")));
        Node judged = run("judge", sheet.toString(), "--json");
        Node traced =
                run(
                        "trace",
                        LOG.toString(),
                        "--place",
                        "CA-ON",
                        "--vehicle",
                        EXAMPLES.resolve("vehicles/" + RIG + ".yaml").toString(),
                        "--as-printed",
                        "--json");
        List<String> measured = measured(Fields.of(traced).node("judgement"));
        assertThat(measured).hasSizeGreaterThan(4);
        assertThat(measured(judged)).containsAll(measured);
        assertThat(kept.fields("log").text("sha256")).isEqualTo(Sha256.of(Files.readAllBytes(LOG)));
    }

    private static List<String> measured(Node judgement) {
        List<String> all = new ArrayList<>();
        for (Node finding : Fields.of(judgement).list("findings")) {
            if (Fields.of(finding).has("measured")) {
                all.add(Json.writeCompact(finding));
            }
        }
        return all;
    }

    private static Node run(String... args) {
        StringWriter out = new StringWriter();
        FandownCommand.run(new PrintWriter(out), new PrintWriter(new StringWriter()), args);
        return Json.read("out", out.toString());
    }
}
