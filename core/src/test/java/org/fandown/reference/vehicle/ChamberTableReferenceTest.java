package org.fandown.reference.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Basis;
import org.fandown.vehicle.ChamberEntry;
import org.fandown.vehicle.ChamberTable;
import org.fandown.vehicle.Cited;
import org.fandown.vehicle.Mount;
import org.fandown.vehicle.RatedVolume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChamberTableReferenceTest {
    @Source(
            work = "49 CFR 571.121, air brake systems",
            edition = "as amended 87 FR 34808 (8 June 2022)",
            where = "Table V, row by row",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{4}")
    @CsvSource({
        "9, 25, 1.75, 2.10, Table V type 9",
        "12, 30, 1.75, 2.10, Table V type 12",
        "14, 40, 2.25, 2.70, Table V type 14",
        "16, 46, 2.25, 2.70, Table V type 16",
        "18, 50, 2.25, 2.70, Table V type 18",
        "20, 54, 2.25, 2.70, Table V type 20",
        "24, 67, 2.50, 3.20, Table V type 24",
        "30, 89, 2.50, 3.20, Table V type 30",
        "36, 135, 3.00, 3.60, Table V type 36"
    })
    void clamp_chambers_have_the_rated_volumes_of_the_regulation(
            String type, double cubicInches, double from, double to, String where) {
        Cited<RatedVolume> rated = clamp(type).ratedVolume().orElseThrow();

        assertThat(rated.basis()).isEqualTo(Basis.PUBLISHED);
        assertThat(rated.value().volume()).isEqualTo(Quantity.of(cubicInches, Unit.CUBIC_INCH));
        assertThat(rated.value().fromStroke()).isEqualTo(Quantity.of(from, Unit.INCH));
        assertThat(rated.value().toStroke()).isEqualTo(Quantity.of(to, Unit.INCH));
    }

    @Source(
            work = "49 CFR 393.47, brake actuators, slack adjusters, linings and drums",
            edition = "as amended 86 FR 57076 (14 October 2021)",
            where = "(e), tables of clamp, bolt and rotochamber types and of the DD-3 chamber",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "clamp 14 and 18 come from 49 CFR 571.121 Table V")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "CLAMP, 6 9 12 14 16 18 20 24 30 36, clamp-type table",
        "BOLT, A B C D E F G, bolt-type table",
        "ROTOCHAMBER, 9 12 16 20 24 30 36 50, rotochamber-type table",
        "DD3, 30, DD-3 row"
    })
    void the_types_are_those_the_regulation_lists(Mount mount, String types, String where) {
        assertThat(ChamberTable.types(mount)).containsExactly(types.split(" ", -1));
    }

    @Source(
            work = "49 CFR 393.47, brake actuators, slack adjusters, linings and drums",
            edition = "as amended 86 FR 57076 (14 October 2021)",
            where = "(e)(1), clamp-type table, column long stroke",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void long_stroke_chambers_are_those_with_a_long_stroke_limit() {
        assertThat(ChamberTable.entries())
                .filteredOn(entry -> entry.longStroke().isPresent())
                .extracting(ChamberEntry::type)
                .containsExactly("12", "16", "20", "24", "30");
    }

    @Source(
            work = "49 CFR 571.121, air brake systems",
            edition = "as amended 87 FR 34808 (8 June 2022)",
            where = "S5.1.2.1 and S5.2.1.1 with Table V",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "tractor with two type 20 and four type 30; trailer with four type 30")
    @Test
    void reservoir_needs_follow_from_rated_volumes() {
        double type20 = volume("20");
        double type30 = volume("30");

        assertThat(12 * (2 * type20 + 4 * type30)).isEqualTo(5568);
        assertThat(8 * (4 * type30)).isEqualTo(2848);
    }

    @Source(
            work = "Maintenance literature on the type 30 and type 20 chamber",
            edition = "undated",
            where = "full stroke of type 20, type 30 and type 30 long stroke",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = "read at second hand; the other full strokes of the table have no source read")
    @ParameterizedTest(name = "{3}")
    @CsvSource({"20, 2.25, 2.5, type 20", "30, 2.5, 3.0, type 30 and 30 long stroke"})
    void full_strokes_are_as_reported(String type, double standard, double longer, String where) {
        assertThat(inches(clamp(type).fullStroke())).isEqualTo(standard);
        assertThat(inches(clamp(type).longStroke())).isEqualTo(longer);
    }

    private static double inches(Optional<Cited<Quantity>> stroke) {
        return stroke.orElseThrow().value().valueIn(Unit.INCH);
    }

    private static ChamberEntry clamp(String type) {
        return ChamberTable.find(Mount.CLAMP, type).orElseThrow();
    }

    private static double volume(String type) {
        return clamp(type).ratedVolume().orElseThrow().value().volume().valueIn(Unit.CUBIC_INCH);
    }
}
