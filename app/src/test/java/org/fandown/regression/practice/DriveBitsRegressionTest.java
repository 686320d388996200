package org.fandown.regression.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.files.DocumentFiles;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.RunDocument;
import org.fandown.practice.Scenario;
import org.fandown.practice.ScenarioReader;
import org.fandown.practice.ScriptReader;
import org.fandown.practice.ScriptRun;
import org.junit.jupiter.api.Test;

/**
 * Self-made, guards change alone: the bits of every example run. They must be the same on every
 * machine. Whoever changes the model on purpose writes them anew with {@code -Dfandown.write=true}
 * and says why.
 */
class DriveBitsRegressionTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Path TABLE =
            Path.of("src", "test", "resources", "regression", "drive.csv");

    @Test
    void every_example_run_gives_the_same_bits_everywhere() throws IOException {
        List<String> frozen = Files.readAllLines(TABLE);
        List<String> now = new ArrayList<>(List.of(frozen.get(0)));
        for (String row : frozen.subList(1, frozen.size())) {
            String[] cells = row.split(",", -1);
            now.add(cells[0] + "," + cells[1] + "," + fingerprint(cells[0], cells[1]));
        }
        if (Boolean.getBoolean("fandown.write")) {
            Files.write(TABLE, now);
        } else {
            assertThat(now).isEqualTo(frozen);
        }
    }

    private static String fingerprint(String scenario, String script) {
        Path file = EXAMPLES.resolve("scenarios").resolve(scenario + ".yaml");
        Scenario read =
                new ScenarioReader(name -> DocumentFiles.read(file.resolveSibling(name)))
                        .read(DocumentFiles.read(file));
        PracticeTruck truck = PracticeTruck.of(read);
        Path steps = EXAMPLES.resolve("scripts").resolve(script + ".yaml");
        new ScriptRun(truck, new ScriptReader(read.vehicle()).read(DocumentFiles.read(steps)))
                .perform(60, now -> {});
        return RunDocument.hex(truck.fingerprint());
    }
}
