package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.fandown.app.files.DocumentFiles;
import org.fandown.browser.RunningSite;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What devices can count on when they send and ask for records, from the outside over HTTP. */
class RecordApiContractTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final String ID = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a1c01";

    @TempDir private Path folder;

    private static Node example(String name) {
        MapNode read = (MapNode) DocumentFiles.read(EXAMPLES.resolve("inspections/" + name));
        Tree.MapBuilder map = Tree.map();
        read.entries()
                .forEach(
                        (key, entry) -> {
                            if (!key.equals("vehicle")) {
                                map.put(key, entry.value());
                            }
                        });
        return map.put(
                        "vehicle",
                        DocumentFiles.read(EXAMPLES.resolve("vehicles/straight-truck.yaml")))
                .build();
    }

    private static String sent(String id, Node inspection) {
        return Json.writeCompact(
                Tree.map()
                        .put(
                                "records",
                                Tree.list()
                                        .add(
                                                Tree.map()
                                                        .put("format", "fandown-record/1")
                                                        .put("id", id)
                                                        .put("kind", "inspection")
                                                        .put("made", "2026-11-30T06:40:00-05:00")
                                                        .put("inspection", inspection)))
                        .build());
    }

    @Test
    void sent_record_is_kept_once_judged_here_found_opened_and_printed() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            String body = sent(ID, example("ontario-truck-in-order.yaml"));
            assertThat(site.post("api/records", body).body()).contains("\"kept\":\"new\"");
            assertThat(site.post("api/records", body).body()).contains("\"kept\":\"before\"");
            assertThat(
                            site.post(
                                            "api/records",
                                            sent(
                                                    ID,
                                                    example(
                                                            "ontario-governor-between-two-pages.yaml")))
                                    .body())
                    .contains("\"kept\":\"conflict\"");
            assertThat(site.get("api/records?words=ca-on").body())
                    .contains(ID)
                    .contains("\"count\":1")
                    .contains("fit to move");
            assertThat(site.get("api/records?words=nowhere").body()).doesNotContain(ID);
            assertThat(site.get("api/records/" + ID).body()).contains("governor-cut-out");
            assertThat(site.get("api/records/" + ID + "/seal").body())
                    .contains("\"format\":\"fandown-seal/1\",\"number\":1,")
                    .contains("\"vehicle\":\"QRK552\"")
                    .contains("\"verdict\":\"fit-to-move\"");
            HttpResponse<String> report = site.get("api/records/" + ID + "/report.pdf");
            assertThat(report.headers().firstValue("Content-Type")).contains("application/pdf");
            assertThat(report.body()).startsWith("%PDF-");
        }
    }

    @Test
    void record_outlives_the_server() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            site.post("api/records", sent(ID, example("ontario-truck-in-order.yaml")));
        }
        try (RunningSite site = RunningSite.in(folder)) {
            assertThat(site.get("api/records/" + ID).statusCode()).isEqualTo(200);
        }
    }

    @Test
    void what_is_no_record_is_refused_with_the_reason_and_nothing_is_kept() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            assertThat(site.post("api/records", "{").statusCode()).isEqualTo(400);
            assertThat(site.post("api/records", "{\"records\":[{\"format\":\"x\"}]}").body())
                    .contains("refused")
                    .contains("fandown-record/1");
            assertThat(
                            site.post(
                                            "api/records",
                                            sent("1", example("ontario-truck-in-order.yaml")))
                                    .body())
                    .contains("refused")
                    .contains("UUID");
            assertThat(site.get("api/records/../../etc/passwd").statusCode()).isEqualTo(404);
            assertThat(site.get("api/records/" + ID).statusCode()).isEqualTo(404);
            assertThat(site.get("api/records").body()).contains("\"count\":0");
        }
    }

    @Test
    void page_of_another_site_cannot_write() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            HttpRequest.Builder foreign =
                    site.request("api/records")
                            .header("Origin", "http://elsewhere.example")
                            .POST(
                                    HttpRequest.BodyPublishers.ofString(
                                            sent(ID, example("ontario-truck-in-order.yaml"))));
            assertThat(site.send(foreign).statusCode()).isEqualTo(403);
            assertThat(site.get("api/records").body()).contains("\"count\":0");
        }
    }

    @Test
    void pages_run_their_own_scripts_alone_and_only_the_worker_may_make_functions()
            throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            HttpResponse<String> page = site.get("");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                    .contains("default-src 'self'")
                    .doesNotContain("unsafe-eval");
            assertThat(
                            site.get("js/worker.js")
                                    .headers()
                                    .firstValue("Content-Security-Policy")
                                    .orElseThrow())
                    .contains("'unsafe-eval'");
            assertThat(site.get("api/health").body()).contains("\"up\"");
        }
    }
}
