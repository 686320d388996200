package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.fandown.app.files.DocumentFiles;
import org.fandown.browser.RunningSite;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A defect from the report that finds it to its end, from the outside over HTTP. */
class DefectLifeContractTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final String OVER = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a2c01";
    private static final String SOUND = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a2c02";
    private static final String REPAIR = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a2c03";
    private static final String AGAIN = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a2c04";
    private static final String REVIEW = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a2c05";

    @TempDir private Path folder;

    @Test
    void an_open_defect_stops_fit_to_move_until_it_is_certified() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            keep(site, record(OVER, "inspection", inspection("'2L': '2 3/4 in'")));
            assertThat(site.get("api/defects?plate=qrk-552").body())
                    .contains("2L")
                    .contains("\"severity\":\"major\"");
            keep(site, record(SOUND, "inspection", inspection("")));
            assertThat(verdict(site, SOUND)).isEqualTo("not fit to move");
            assertThat(site.get("api/records/" + SOUND + "/defects").body())
                    .contains("Not put right since 2026-11-");
            keep(site, repair(REPAIR, OVER, 1));
            assertThat(site.get("api/defects?plate=QRK%20552").body())
                    .isEqualTo("{\"defects\":[]}");
            keep(site, record(AGAIN, "inspection", inspection("")));
            assertThat(verdict(site, AGAIN)).isEqualTo("fit to move");
        }
        try (RunningSite site = RunningSite.in(folder)) {
            keep(site, record(REVIEW, "review", "{'of':'" + OVER + "','by':'C. Lind'}"));
            assertThat(site.get("api/records/" + OVER + "/defects").body())
                    .contains("\"state\":\"reviewed\"")
                    .contains("\"by\":\"B. Hale, Yard shop\"")
                    .contains("\"sense\":\"keep\"");
        }
    }

    @Test
    void what_follows_no_report_or_names_no_defect_of_it_is_refused_with_the_reason()
            throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            assertThat(send(site, repair(REPAIR, OVER, 1)))
                    .contains("refused", "Send the inspection first");
            keep(site, record(SOUND, "inspection", inspection("")));
            assertThat(send(site, repair(REPAIR, SOUND, 1)))
                    .contains("refused", "The report has no defect 1");
            assertThat(site.get("api/records").body()).contains("\"count\":1");
        }
    }

    @Test
    void what_is_handed_over_holds_records_reports_and_seals() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            keep(site, record(OVER, "inspection", inspection("'2L': '2 3/4 in'")));
            keep(site, repair(REPAIR, OVER, 1));
            Map<String, byte[]> files = unpacked(site, "api/records/" + OVER + "/hand-over.zip");
            assertThat(files.keySet())
                    .containsExactlyInAnyOrder(
                            "READ-ME.txt",
                            "seals.json",
                            "records/1-inspection.json",
                            "records/2-repair.json",
                            "statements/1-inspection.json",
                            "statements/2-repair.json",
                            "reports/1-inspection.pdf");
            assertThat(text(files, "reports/1-inspection.pdf")).startsWith("%PDF-");
            assertThat(text(files, "seals.json")).contains("fandown-seal/1", "QRK552");
            String code =
                    Json.write(
                            Json.read("s.json", site.get("api/records/" + OVER + "/seal").body()));
            String hash = code.substring(code.indexOf("\"hash\": \"") + 9).substring(0, 16);
            assertThat(unpacked(site, "r/" + hash).keySet()).isEqualTo(files.keySet());
            assertThat(site.get("r/0000000000000000").statusCode()).isEqualTo(404);
            assertThat(site.get("api/records/" + OVER + "/code.svg").body())
                    .startsWith("<svg")
                    .contains("/r/" + hash);
        }
    }

    private static void keep(RunningSite site, String record) throws Exception {
        assertThat(send(site, record)).contains("\"kept\":\"new\"");
    }

    private static String send(RunningSite site, String record) throws Exception {
        return site.post("api/records", "{\"records\":[" + record + "]}").body();
    }

    private static String verdict(RunningSite site, String id) throws Exception {
        String answer = site.get("api/records/" + id + "/defects").body();
        MapNode read = (MapNode) Json.read("answer.json", answer);
        return Json.writeCompact(read.get("verdict").orElseThrow()).replace("\"", "");
    }

    private static String record(String id, String kind, String content) {
        return json(
                "{'format':'fandown-record/1','id':'"
                        + id
                        + "','kind':'"
                        + kind
                        + "','made':'2026-11-30T06:40:00-05:00','"
                        + kind
                        + "':"
                        + content
                        + "}");
    }

    private static String repair(String id, String of, int defect) {
        return record(
                id,
                "repair",
                "{'of':'"
                        + of
                        + "','by':'B. Hale','firm':'Yard shop','settled':[{'defect':"
                        + defect
                        + ",'outcome':'repaired','work':'new slack adjuster'}]}");
    }

    private static String json(String text) {
        return text.replace('\'', '"');
    }

    /** The truck in order, but for the strokes given. */
    private static String inspection(String strokes) {
        MapNode read =
                (MapNode)
                        DocumentFiles.read(
                                EXAMPLES.resolve("inspections/ontario-truck-in-order.yaml"));
        Tree.MapBuilder map = Tree.map();
        read.entries()
                .forEach(
                        (key, entry) -> {
                            if (!key.equals("vehicle") && !key.equals("wheels")) {
                                map.put(key, entry.value());
                            }
                        });
        MapNode wheels = (MapNode) read.get("wheels").orElseThrow();
        MapNode other = (MapNode) Json.read("strokes.json", "{" + json(strokes) + "}");
        Tree.MapBuilder measured = Tree.map();
        wheels.entries()
                .forEach((key, entry) -> measured.put(key, other.get(key).orElse(entry.value())));
        return Json.writeCompact(
                map.put("wheels", measured)
                        .put(
                                "vehicle",
                                DocumentFiles.read(
                                        EXAMPLES.resolve("vehicles/straight-truck.yaml")))
                        .build());
    }

    private static Map<String, byte[]> unpacked(RunningSite site, String path) throws Exception {
        HttpResponse<byte[]> answer =
                site.send(site.request(path), HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/zip");
        return files(answer.body());
    }

    private static Map<String, byte[]> files(byte[] zip) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        return files;
    }

    private static String text(Map<String, byte[]> files, String name) {
        return new String(files.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
    }
}
