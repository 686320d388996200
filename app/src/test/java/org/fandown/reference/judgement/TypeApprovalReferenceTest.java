package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fandown.judgement.Finding;
import org.fandown.judgement.MeanDeceleration;
import org.fandown.judgement.Measurement;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypeApprovalReferenceTest {
    private static final String TODAY = "2026-03-02";
    private static final String R13 = "UN Regulation No. 13";

    /** The products and quotients below are exact but for the last bits of a double. */
    private static final double LAST_BITS = 1e-12;

    @Source(
            work = R13,
            edition = "Rev.4, a clause collection's copy",
            where = "Annex 4, 2.2.1, 2.2.4",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "read at second hand")
    @ParameterizedTest(name = "{0} from {1}: {2} {3}")
    @CsvSource({
        "truck, 40 km/h, 33.82 m, MET, 'Annex 4, 2.2: 0.15 x 40 = 6; 2 x 40^2 / 115 = 3200 / 115'",
        "truck, 40 km/h, 33.83 m, NOT_MET, 'Annex 4, 2.2: 6 + 27.826 = 33.826, short of 33.83'",
        "bus, 60 km/h, 64.38 m, MET, 'Annex 4, 2.2: 0.15 x 60 = 9; 2 x 60^2 / 130 = 7200 / 130'",
        "bus, 60 km/h, 64.39 m, NOT_MET, 'Annex 4, 2.2: 9 + 55.3846 = 64.3846, short of 64.39'"
    })
    void secondary_brake_stops_within_the_distance_for_the_speed(
            String kind, String speed, String distance, Status expected, String where) {
        boolean bus = kind.equals("bus");
        Finding finding =
                judged(
                                bus ? OverseasVehicles.BUS : OverseasVehicles.TRUCK,
                                "readings: { emergency-stopping-distance: { value: %s, speed: %s } }"
                                        .formatted(distance, speed))
                        .finding(
                                bus
                                        ? "un.emergency-stopping-distance.passenger"
                                        : "un.emergency-stopping-distance.goods");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason())
                .contains(distance)
                .contains(bus ? "here 64.38 m" : "here 33.83 m");
        assertThat(Judged.section(finding)).contains("2.2");
    }

    @Source(
            work = R13,
            edition = "as reprinted in paper GRRF-56-3 (2004)",
            where = "Annex 4, 1.1",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "Directive 71/320/EEC (repealed), Annex II, 1.1.2 prints the same")
    @Test
    void mean_deceleration_of_a_stop_from_60_km_h_is_5_metres_per_second_squared() {
        Quantity v0 = Quantity.parse("60 km/h");
        // vb = 48, ve = 6: 48^2 - 6^2 = 2304 - 36 = 2268; 25.92 x 17.5 = 453.6; 2268 / 453.6 = 5
        Quantity result = MeanDeceleration.of(v0, Quantity.parse("10 m"), Quantity.parse("27.5 m"));

        assertThat(result.unit()).isEqualTo(Unit.M_PER_S2);
        assertThat(result.value()).isCloseTo(5.00, within(LAST_BITS));
    }

    @Source(
            work = "Directive 71/320/EEC (repealed)",
            edition = "consolidation of 2007-01-01",
            where = "Annex III, 1.3",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the EU twin text of UN Regulation No. 13, Annex 6")
    @ParameterizedTest(name = "{0} is reported as {1} s")
    @CsvSource({
        "0.65 s, 0.7, 'Annex III, 1.3'",
        "0.649 s, 0.6, 'Annex III, 1.3'",
        "0.15 s, 0.2, 'Annex III, 1.3'",
        "0.25 s, 0.3, 'Annex III, 1.3'",
        "0.35 s, 0.4, 'Annex III, 1.3'",
        "0.45 s, 0.5, 'Annex III, 1.3'",
        "0.55 s, 0.6, 'Annex III, 1.3'",
        "0.349 s, 0.3, 'Annex III, 1.3'"
    })
    void response_times_are_reported_in_tenths_with_a_hundredths_digit_of_5_rounded_up(
            String measured, double reported, String where) {
        Finding finding = response(measured);

        assertThat(finding.measured().map(Measurement::value).orElseThrow())
                .isCloseTo(reported, within(LAST_BITS));
        assertThat(finding.why().reason()).contains("Measured " + reported + " s");
    }

    @Source(
            work = "Directive 71/320/EEC (repealed)",
            edition = "consolidation of 2007-01-01",
            where = "Annex III, 1.3",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the limit of 0.6 s is from memory of UN Regulation No. 13, Annex 6, 2.4")
    @Test
    void response_time_is_rounded_before_it_is_compared() {
        assertThat(response("0.65 s").status()).isEqualTo(Status.NOT_MET);
        assertThat(response("0.649 s").status()).isEqualTo(Status.MET);
    }

    @Source(
            work = R13,
            edition = "a clause collection's copy",
            where = "Annex 7, 2.5.1-2.5.2",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "read at second hand; the annex number is from memory")
    @ParameterizedTest(name = "t3 of {0}: {1}")
    @CsvSource({
        "480 s, NOT_MET, 'Annex 7, 2.5.1: less than 8 min = 480 s'",
        "479.9 s, MET, 'Annex 7, 2.5.1'",
        "8 min, NOT_MET, 'Annex 7, 2.5.1'"
    })
    void compressor_with_large_auxiliary_reservoirs_takes_less_than_8_minutes(
            String time, Status expected, String where) {
        Finding finding =
                judged(
                                OverseasVehicles.TRUCK,
                                "readings: { build-up-from-empty: %s }".formatted(time))
                        .finding("un.build-up-from-empty.t3-solo");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("less than 8 min");
        assertThat(Judged.section(finding)).contains("2.5.1");
    }

    @Source(
            work = "Directive 71/320/EEC (repealed)",
            edition = "consolidation of 2007/2013",
            where = "Annex IV part A, 1.2.2.3",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the EU twin text of UN Regulation No. 13, Annex 7")
    @ParameterizedTest(name = "{0} left of 700 kPa: {1}")
    @CsvSource({
        "350 kPa, MET, 'Annex IV part A, 1.2.2.3: half of 700 is 350'",
        "349 kPa, NOT_MET, 'Annex IV part A, 1.2.2.3'"
    })
    void eighth_stroke_puts_half_of_the_first_ones_pressure_into_the_control_line(
            String after, Status expected, String where) {
        Finding finding =
                judged(
                                OverseasVehicles.TRACTOR,
                                """
                                readings:
                                  control-line-reserve: { before: 700 kPa, after: %s, applications: 8 }
                                """
                                        .formatted(after))
                        .finding("un.control-line-reserve");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(after).contains("here 350 kPa");
        assertThat(Judged.section(finding)).isEqualTo("Annex IV part A, 1.2.2.3");
    }

    @Source(
            work = R13,
            edition = "Rev.4, a clause collection's copy",
            where = "Annex 4, 2.2.1, 2.2.4",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "that type approval does not bind a vehicle in use is our reading")
    @Test
    void type_approval_is_reported_and_decides_nothing_about_a_vehicle_in_use() {
        Judged judged =
                judged(OverseasVehicles.TRUCK, "readings: { emergency-deceleration: 2.1 m/s2 }");

        Finding finding = judged.finding("un.emergency-deceleration.goods");
        assertThat(finding.status()).isEqualTo(Status.NOT_MET);
        assertThat(finding.decides()).isFalse();
        assertThat(judged.judgement().defects()).isEmpty();
    }

    private static Finding response(String time) {
        return judged(OverseasVehicles.TRUCK, "readings: { application-time: %s }".formatted(time))
                .finding("un.application-time");
    }

    private static Judged judged(String vehicle, String evidence) {
        return Judged.inspection("UN", TODAY, vehicle, evidence);
    }
}
