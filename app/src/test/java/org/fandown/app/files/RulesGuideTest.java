package org.fandown.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.Circumstance;
import org.fandown.check.Component;
import org.fandown.check.ReportItem;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.PackReader;
import org.fandown.rulebook.Rulebook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The guide for writers of rule packs says what the program does. */
class RulesGuideTest {
    private static final Path GUIDE = Path.of("..", "docs", "rules.md");

    private String guide = "";

    @BeforeEach
    void read_the_guide() throws IOException {
        guide = Files.readString(GUIDE);
    }

    @Test
    void the_example_pack_loads_as_it_is_printed() {
        Pack pack = PackReader.read(DocumentText.yaml("rules.md", firstBlock("yaml")));

        assertThat(pack.place()).hasToString("XA");
        assertThat(pack.rules())
                .extracting(rule -> rule.id())
                .containsExactly(
                        "xa.governor-cut-out",
                        "xa.low-air-warning",
                        "xa.air-loss-applied.single",
                        "xa.report-retention");
        assertThat(Rulebook.of(List.of(pack)).places()).containsExactly(pack.place());
    }

    @Test
    void every_check_has_its_row_with_a_star_where_it_is_expected_of_all_places() {
        for (Check check : Check.values()) {
            String star = check.expectedEverywhere() ? " *" : "";
            assertThat(guide)
                    .contains("| `" + check.id() + "`" + star + " | " + check.title() + " |");
        }
    }

    @Test
    void every_part_and_every_report_item_is_listed() {
        for (Component part : Component.values()) {
            assertThat(section("## Parts")).contains("`" + part.id() + "`");
        }
        for (ReportItem item : ReportItem.values()) {
            assertThat(section("## Report items"))
                    .contains("| `" + item.id() + "` | " + item.title() + " |");
        }
    }

    @Test
    void every_circumstance_is_listed_with_its_states() {
        for (Circumstance circumstance : Circumstance.values()) {
            String row = row(section("## Conditions of a test"), circumstance.id());
            for (String state : circumstance.states()) {
                assertThat(row).contains("`" + state + "`");
            }
        }
    }

    private String firstBlock(String language) {
        String opening = "```" + language + "\n";
        int start = guide.indexOf(opening) + opening.length();
        return guide.substring(start, guide.indexOf("```", start));
    }

    private String section(String heading) {
        int start = guide.indexOf("\n" + heading + "\n");
        assertThat(start).as("the section %s", heading).isNotNegative();
        int end = guide.indexOf("\n## ", start + 1);
        return guide.substring(start, end < 0 ? guide.length() : end);
    }

    private static String row(String section, String key) {
        return section.lines()
                .filter(line -> line.startsWith("| `" + key + "` |"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No row for " + key));
    }
}
