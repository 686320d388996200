package org.fandown.reference.trace;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.trace.VehicleNumber;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VehicleNumberReferenceTest {
    @Source(
            work = "49 CFR Part 565, tables III to V",
            edition = "as reprinted, with worked examples; the sums were done again by hand",
            where = "row by row",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "1G4AH59H45G118341, true, example with the sum 411",
        "1G4AH59H55G118341, false, the same with a wrong check digit",
        "1J9RP1A36A1644345, true, example of a federal guide with the sum 314",
        "1M8GDM9AXKP042788, true, check digit X with the sum 351",
        "11111111111111111, true, seventeen ones with the sum 89"
    })
    void check_digit(String vin, boolean right, String where) {
        assertThat(new VehicleNumber(vin, 0).hasCheckDigit()).as(where).isEqualTo(right);
    }
}
