package org.fandown.practice;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.fandown.generated.Generated;
import org.junit.jupiter.api.Test;

class PracticeDocumentsTest {
    @Test
    void the_defaults_of_the_practice_truck_are_listed() throws IOException {
        StringBuilder table = new StringBuilder("| what | value | basis | source |\n");
        table.append("|---|---|---|---|\n");
        for (PracticeDefault each : PracticeDefault.values()) {
            String basis = each.basis().name().toLowerCase(Locale.ROOT).replace('_', ' ');
            String source = each.source().isEmpty() ? "assumption" : each.source();
            table.append("| ").append(each.label());
            table.append(" | ").append(each.value());
            table.append(" | ").append(basis);
            table.append(" | ").append(source).append(" |\n");
        }
        Generated.check(Path.of("..", "docs", "model.md"), "practice-defaults", table.toString());
    }
}
