package org.fandown.contract.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.fandown.app.cli.FandownCommand;
import org.fandown.app.files.DocumentFiles;
import org.fandown.browser.RunningSite;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A report as the server gives it to somebody who does not trust the server. */
class ServedReportContractTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final String ID = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a1c77";

    @TempDir private Path folder;
    @TempDir private Path elsewhere;

    private static String sent() {
        Tree.MapBuilder inspection = Tree.map();
        ((MapNode) DocumentFiles.read(EXAMPLES.resolve("inspections/ontario-truck-in-order.yaml")))
                .entries()
                .forEach(
                        (key, entry) -> {
                            if (!key.equals("vehicle")) {
                                inspection.put(key, entry.value());
                            }
                        });
        inspection.put(
                "vehicle", DocumentFiles.read(EXAMPLES.resolve("vehicles/straight-truck.yaml")));
        Tree.MapBuilder record =
                Tree.map()
                        .put("format", "fandown-record/1")
                        .put("id", ID)
                        .put("kind", "inspection")
                        .put("made", "2026-11-30T06:40:00-05:00")
                        .put("inspection", inspection)
                        .put(
                                "signature",
                                Json.read(
                                        "s",
                                        "{\"name\":\"Ann Ink\",\"statement\":\"I looked"
                                                + " myself.\",\"strokes\":[[1,2,30.5,40]]}"));
        return Json.writeCompact(Tree.map().put("records", Tree.list().add(record)).build());
    }

    private static Map<String, String> attached(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Map<String, String> texts = new TreeMap<>();
            for (Map.Entry<String, PDComplexFileSpecification> each :
                    document.getDocumentCatalog()
                            .getNames()
                            .getEmbeddedFiles()
                            .getKids()
                            .get(0)
                            .getNames()
                            .entrySet()) {
                texts.put(
                        each.getKey(),
                        new String(
                                each.getValue().getEmbeddedFile().toByteArray(),
                                StandardCharsets.UTF_8));
            }
            return texts;
        }
    }

    private static String verify(int expected, Path report, Path data) {
        StringWriter out = new StringWriter();
        int code =
                FandownCommand.run(
                        new PrintWriter(out, true),
                        new PrintWriter(out, true),
                        "verify",
                        report.toString(),
                        "--data",
                        data.toString());
        assertThat(code).as(out.toString()).isEqualTo(expected);
        return out.toString().replaceAll("\\s+", " ");
    }

    @Test
    void report_is_signed_holds_the_record_and_is_found_in_the_chain() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            assertThat(site.post("api/records", sent()).body()).contains("\"kept\":\"new\"");
            byte[] pdf = print(site);
            byte[] again = print(site);
            Path report = Files.write(elsewhere.resolve("report.pdf"), pdf);

            assertThat(attached(pdf))
                    .containsOnlyKeys("inspection.json", "record.json", "seal.json")
                    .containsEntry("record.json", site.get("api/records/" + ID).body())
                    .isEqualTo(attached(again));
            assertThat(verify(0, report, folder))
                    .contains("ok signature signed by 'Demo yard'", "which is known")
                    .contains("ok record", "ok page", "ok chain kept as number 1 of 1");
        }
    }

    @Test
    void site_that_never_kept_the_record_says_so() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            site.post("api/records", sent());
            Path report = Files.write(elsewhere.resolve("report.pdf"), print(site));

            assertThat(verify(1, report, elsewhere.resolve("other")))
                    .contains("NOT OK chain no record " + ID + " is kept");
        }
    }

    private static byte[] print(RunningSite site) throws Exception {
        HttpResponse<byte[]> answer =
                site.send(
                        site.request("api/records/" + ID + "/report.pdf").GET(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }
}
