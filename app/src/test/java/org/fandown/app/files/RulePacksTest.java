package org.fandown.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.check.PlaceCode;
import org.fandown.rulebook.Rulebook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RulePacksTest {
    private static final Path FOLDER = Path.of("../core/src/main/resources/org/fandown/rulebook");

    static List<PlaceCode> places() {
        return RulePacks.builtIn().places();
    }

    @ParameterizedTest
    @MethodSource("places")
    void each_pack_that_comes_with_the_program_can_be_read(PlaceCode place) {
        assertThat(RulePacks.builtIn().rulebookFor(place)).isPresent();
    }

    @Test
    void all_packs_fit_together() {
        Rulebook all = RulePacks.builtIn().all();
        assertThat(all.places()).isEqualTo(RulePacks.builtIn().places());
    }

    @Test
    void the_list_of_places_names_exactly_the_packs_in_the_folder() {
        List<String> inFolder = new ArrayList<>();
        File[] files = FOLDER.toFile().listFiles((dir, name) -> name.endsWith(".yaml"));
        assertThat(files).isNotNull();
        for (File file : files) {
            inFolder.add(file.getName().replace(".yaml", ""));
        }
        assertThat(RulePacks.builtIn().places().stream().map(PlaceCode::code))
                .containsExactlyInAnyOrderElementsOf(inFolder);
    }
}
