package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.files.DocumentFiles;
import org.fandown.document.Json;
import org.fandown.practice.ScenarioDocument;
import org.fandown.practice.ScenarioReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The core compiled for the browser gives the bits it gives here: every example run, in a real
 * Chromium, against the frozen table that the runs on this side are held to.
 */
class CoreInBrowserRegressionTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Path TABLE =
            Path.of("src", "test", "resources", "regression", "drive.csv");

    private static final String RUN =
            """
            async ([scenario, script]) => {
              const { ask } = await import('/js/engine.js');
              const { id } = await ask('open', scenario);
              await ask('perform', id, script);
              return ask('fingerprint', id);
            }""";

    @TempDir private Path folder;

    @Test
    void every_example_run_gives_the_same_bits_in_chromium() throws IOException {
        List<String> frozen = Files.readAllLines(TABLE);
        List<String> now = new ArrayList<>(List.of(frozen.get(0)));
        try (RunningSite site = RunningSite.in(folder);
                Chromium chromium = new Chromium()) {
            Page page = chromium.launch().newPage();
            page.navigate(site.address());
            for (String row : frozen.subList(1, frozen.size())) {
                String[] cells = row.split(",", -1);
                Object print = page.evaluate(RUN, List.of(scenario(cells[0]), script(cells[1])));
                now.add(cells[0] + "," + cells[1] + "," + print);
            }
        }
        assertThat(now).isEqualTo(frozen);
    }

    private static String scenario(String name) {
        Path file = EXAMPLES.resolve("scenarios").resolve(name + ".yaml");
        return Json.write(
                ScenarioDocument.of(
                        new ScenarioReader(
                                        beside -> DocumentFiles.read(file.resolveSibling(beside)))
                                .read(DocumentFiles.read(file))));
    }

    private static String script(String name) {
        return Json.write(DocumentFiles.read(EXAMPLES.resolve("scripts").resolve(name + ".yaml")));
    }
}
