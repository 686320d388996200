package org.fandown.reference.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.rulebook.Pack;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Only the row of 60 mph is judged; the others are told in the words of the rules. */
class UnitedStatesStoppingTableTest {
    private static final PlaceCode US = new PlaceCode("US");
    private static final Pack PACK =
            RulePacks.builtIn().rulebookFor(US).orElseThrow().pack(US).orElseThrow();
    private static final int[] MPH = {30, 35, 40, 45, 50, 55};

    @Source(
            work = "49 CFR 571.121, air brake systems",
            edition = "as amended 87 FR 34808 (8 June 2022)",
            where = "Table II, 30 to 60 mph, column by column",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "us.stopping-distance.fmvss-121-bus, 70 96 125 158 195 236, 280, column 1",
        "us.stopping-distance.fmvss-121-truck-loaded, 78 106 138 175 216 261, 310, column 2",
        "us.stopping-distance.fmvss-121-tractor-loaded, 65 89 114 144 176 212, 250, column 3",
        "us.stopping-distance.fmvss-121-tractor-heavy, 78 106 138 175 216 261, 310, column 4",
        "us.stopping-distance.fmvss-121-truck-unloaded, 84 114 149 189 233 281, 335, column 5",
        "us.stopping-distance.fmvss-121-tractor-bobtail, 61 84 108 136 166 199, 235, column 6",
        "us.emergency-stopping-distance.fmvss-121-other,"
                + " 170 225 288 358 435 520, 613, column 7",
        "us.emergency-stopping-distance.fmvss-121-tractor,"
                + " 186 250 325 409 504 608, 720, column 8"
    })
    void distances_told_are_those_of_the_table(
            String rule, String feet, String at60, String where) {
        String words = BoundaryTriples.find(PACK, rule).orElseThrow().words();
        String[] column = feet.split(" ", -1);

        assertThat(words).contains("from 60 mph within " + at60 + " ft");
        assertThat(IntStream.range(0, MPH.length))
                .allSatisfy(
                        i -> assertThat(words).contains(column[i] + " ft from " + MPH[i] + " mph"));
    }
}
