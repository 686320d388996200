package org.fandown.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fandown.check.Check;
import org.fandown.check.Circumstance;
import org.fandown.check.Component;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.Report;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The guide to file formats says what the program does. */
class FormatsGuideTest {
    private static final Path GUIDE = Path.of("..", "docs", "formats.md");
    private static final Path EXAMPLES = Path.of("..", "examples", "inspections");

    private String guide = "";

    @BeforeEach
    void read_the_guide() throws IOException {
        guide = Files.readString(GUIDE);
    }

    @Test
    void the_vehicle_loads_as_it_is_printed() {
        Vehicle vehicle = VehicleReader.read(DocumentText.yaml("formats.md", block("vehicle")));

        assertThat(vehicle.axleCount()).isEqualTo(3);
    }

    @Test
    void the_inspection_loads_as_it_is_printed() {
        InspectionReader reader =
                new InspectionReader(name -> DocumentFiles.read(EXAMPLES.resolve(name)));
        Inspection inspection = reader.read(DocumentText.yaml("formats.md", block("inspection")));

        assertThat(inspection.readings()).hasSize(8);
        assertThat(inspection.wheels()).hasSize(3);
    }

    @Test
    void every_reading_part_circumstance_and_report_entry_is_named() {
        for (Check check : Check.values()) {
            switch (check.kind()) {
                case VALUE, BUILD_UP, AIR_LOSS, RESERVE, YES_NO ->
                        assertThat(guide).contains("| `" + check.id() + "` | " + check.title());
                default -> assertThat(guide).doesNotContain("| `" + check.id() + "` |");
            }
        }
        for (Component part : Component.values()) {
            assertThat(guide).contains("`" + part.id() + "`");
        }
        for (Circumstance circumstance : Circumstance.values()) {
            assertThat(guide).contains("`" + circumstance.id() + "`");
            assertThat(guide.replaceAll("\\s+", " "))
                    .contains(String.join(", ", circumstance.states()));
        }
        for (Report.Entry entry : Report.Entry.values()) {
            assertThat(guide).contains(org.fandown.document.Names.kebab(entry));
        }
    }

    private String block(String name) {
        String opening = "```yaml " + name + "\n";
        int begin = guide.indexOf(opening) + opening.length();
        return guide.substring(begin, guide.indexOf("```", begin));
    }
}
