package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitedStatesPerformanceReferenceTest {
    private static final String TODAY = "2026-03-02";

    @Source(
            work = "49 CFR 393.52, brake performance",
            edition = "electronic code, stored copy",
            where = "(d), class B3",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void combination_of_80000_lb_needs_a_braking_force_of_34800_lb() {
        assertThat(force(34_800).status()).isEqualTo(Status.MET);
        assertThat(force(34_799).status()).isEqualTo(Status.NOT_MET);
        assertThat(force(34_799).why().reason()).contains("at least 43.5 %");
        assertThat(Judged.section(force(34_799))).isEqualTo("393.52(d)");
    }

    /** The force as a share of 80,000 lb, the form in which a reading is noted. */
    private static Finding force(double pounds) {
        String share = Double.toString(pounds / 80_000 * 100);
        return Judged.inspection(
                        "US",
                        TODAY,
                        UnitedStatesVehicles.TRACTOR_TRAILER,
                        "readings: { braking-force: " + share + " % }")
                .finding("us.braking-force.b3-tractor");
    }

    @Source(
            work = "49 CFR 393.52, brake performance",
            edition = "electronic code, stored copy",
            where = "(d), classes A3, B2 and B3",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}, {1} {2} ft: {4}")
    @CsvSource({
        "combination, stopping-distance, 40, us.stopping-distance.b3-tractor, MET, B3",
        "combination, stopping-distance, 40.1, us.stopping-distance.b3-tractor, NOT_MET, B3",
        "truck, stopping-distance, 35, us.stopping-distance.b2, MET, B2",
        "truck, stopping-distance, 35.1, us.stopping-distance.b2, NOT_MET, B2",
        "truck, emergency-stopping-distance, 85, us.emergency-stopping-distance.b2, MET, B2",
        "truck, emergency-stopping-distance, 85.1, us.emergency-stopping-distance.b2, NOT_MET, B2",
        "bus, stopping-distance, 35, us.stopping-distance.a3, MET, A3",
        "bus, stopping-distance, 35.1, us.stopping-distance.a3, NOT_MET, A3",
        "bus, emergency-stopping-distance, 85, us.emergency-stopping-distance.a3, MET, A3",
        "bus, emergency-stopping-distance, 85.1, us.emergency-stopping-distance.a3, NOT_MET, A3"
    })
    void vehicle_stops_from_20_mph_within_the_distance_of_its_class(
            String kind, String check, String feet, String rule, Status expected, String where) {
        String evidence =
                """
                readings:
                  %s: { value: %s ft, speed: 20 mph }
                """
                        .formatted(check, feet);
        Finding finding = Judged.inspection("US", TODAY, vehicle(kind), evidence).finding(rule);

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("Measured " + feet + " ft");
        assertThat(Judged.section(finding)).isEqualTo("393.52(d)");
    }

    @Source(
            work = "49 CFR 571.121, air brake systems",
            edition = "as amended 87 FR 34808 (8 June 2022)",
            where = "Table III, column 60 psi",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} %: {1}")
    @CsvSource({"31, MET, Table III", "30, NOT_MET, Table III"})
    void trailer_brakes_at_60_psi_give_31_percent_of_the_axle_ratings(
            String percent, Status expected, String where) {
        String evidence =
                """
                readings:
                  retardation-force: { value: %s %%, reservoir-pressure: 60 psi }
                """
                        .formatted(percent);
        Finding finding =
                Judged.inspection("US", TODAY, UnitedStatesVehicles.TRACTOR_TRAILER, evidence)
                        .finding("us.retardation-force.trailer-60");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("Measured " + percent + " %");
        assertThat(Judged.section(finding)).isEqualTo(where);
    }

    @Source(
            work = "49 CFR 571.121, air brake systems",
            edition = "as amended 87 FR 34808 (8 June 2022)",
            where = "S5.1.7",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} psi: {1}")
    @CsvSource({"6, MET, S5.1.7", "8, NOT_MET, S5.1.7"})
    void stop_lamp_lights_by_6_psi(String psi, Status expected, String where) {
        Finding finding =
                Judged.inspection(
                                "US",
                                TODAY,
                                UnitedStatesVehicles.TRUCK,
                                "readings: { stop-lamp-pressure: " + psi + " psi }")
                        .finding("us.stop-lamp-pressure.fmvss-121");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("Measured " + psi + " psi");
        assertThat(Judged.section(finding)).isEqualTo(where);
    }

    private static String vehicle(String kind) {
        return switch (kind) {
            case "bus" -> UnitedStatesVehicles.BUS;
            case "truck" -> UnitedStatesVehicles.TRUCK;
            default -> UnitedStatesVehicles.TRACTOR_TRAILER;
        };
    }
}
