package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import java.time.OffsetDateTime;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.record.FollowingDates;
import org.fandown.record.FollowingDates.Following;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Limit.Duty;
import org.fandown.rulebook.Limit.Lifts;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanadaRecordsReferenceTest {
    @Source(
            work =
                    "Commercial Driver's Guide (Alberta); Manitoba government page on trip"
                            + " inspections;"
                            + " trip inspection standards (Saskatchewan)",
            edition = "texts read 2026-11-25",
            where = "an inspection holds for 24 hours",
            kind = Kind.AGENCY,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "CA-AB, -07:00, ca-ab.inspection-validity, Alberta: 24 h at most",
        "CA-MB, -06:00, ca-mb.inspection-validity, Manitoba: each 24 h in service",
        "CA-SK, -06:00, ca-sk.inspection-validity, Saskatchewan: once in each 24 h in use"
    })
    void inspection_of_monday_0710_holds_to_tuesday_0710(
            String place, String offset, String rule, String where) {
        Judged judged = Judged.at(place, "2026-11-23T07:10:00" + offset, CanadaVehicles.TRUCK, "");

        List<Following> valid =
                FollowingDates.of(judged.judgement()).stream()
                        .filter(f -> f.sense() == TermSense.LASTS)
                        .toList();
        OffsetDateTime last = OffsetDateTime.parse("2026-11-24T07:10:00" + offset);
        assertThat(valid).extracting(f -> f.ruling().rule().id()).contains(rule);
        assertThat(valid).extracting(Following::until).containsOnly(last);
        assertThat(valid)
                .allMatch(
                        f ->
                                OffsetDateTime.parse("2026-11-24T07:11:00" + offset)
                                        .isAfter(f.until()));
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "version of 2020-09-16",
            where = "s. 197.0.3: odometer reading if the vehicle has one",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void quebec_report_needs_the_odometer_reading_of_a_vehicle_that_has_an_odometer() {
        Finding unread = quebecReport(CanadaVehicles.TRUCK, "");
        Finding read = quebecReport(CanadaVehicles.TRUCK, ", odometer: 210 345 km");
        Finding without = quebecReport(CanadaVehicles.TRUCK_WITHOUT_ODOMETER, "");

        assertThat(unread.status()).isEqualTo(Status.NOT_CHECKED);
        assertThat(unread.why().reason()).contains("incomplete", "odometer");
        assertThat(read.status()).isEqualTo(Status.MET);
        assertThat(without.status()).isEqualTo(Status.MET);
        assertThat(Judged.section(unread)).isEqualTo("section 197.0.3");
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "version of 2020-09-16",
            where =
                    "s. 197.0.3: operator, municipality or place on the road, name of the"
                            + " inspector",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "without {0}")
    @CsvSource({
        "operator, operator, s. 197.0.3",
        "location, place, s. 197.0.3",
        "inspector, inspector, s. 197.0.3"
    })
    void quebec_report_needs_operator_place_and_inspector(String left, String named, String where) {
        String report =
                "operator: Yard Haulage, location: Km 12, inspector: P. EXAMPLE, odometer: 210"
                        + " 345 km";
        StringBuilder kept = new StringBuilder();
        for (String entry : report.split(", ", -1)) {
            kept.append(entry.startsWith(left) ? "" : "  " + entry + "\n");
        }
        Judged judged = Judged.inspection("CA-QC", TODAY, CanadaVehicles.TRUCK, "report:\n" + kept);

        Finding finding = judged.finding("ca-qc.report-contents");
        assertThat(finding.status()).isEqualTo(Status.NOT_CHECKED);
        assertThat(finding.why().reason()).contains(named);
    }

    @Source(
            work = "O. Reg. 134/21, amending O. Reg. 199/07 (Ontario)",
            edition = "2021",
            where =
                    "s. 18(3): display readable from outside, or signed print; sent as soon as"
                            + " possible",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void ontario_officer_is_shown_a_display_from_outside_or_a_signed_print() {
        Duty duty = duty("CA-ON", "ca-on.electronic-record.production");

        assertThat(duty.options()).hasSize(2);
        assertThat(duty.options().get(0)).contains("display", "outside the vehicle");
        assertThat(duty.options().get(1)).contains("printed", "signed by the driver");
        assertThat(duty.text())
                .contains("demands that it be sent")
                .contains("as soon as reasonably possible");
    }

    @Source(
            work = "N.B. Reg. 94-77; a compliance publisher's summary of Manitoba's rules",
            edition = "current to 1 January 2024; December 2024",
            where = "s. 3(5), within 160 km and back before release; Manitoba, within 160 km",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "Manitoba was read at second hand")
    @Test
    void within_160_km_new_brunswick_lifts_the_inspection_and_manitoba_the_report_only() {
        Limit.Exemption newBrunswick = exemption("CA-NB", "ca-nb.exemption.radius");
        Limit.Exemption manitoba = exemption("CA-MB", "ca-mb.exemption");

        assertThat(newBrunswick.within()).isEqualTo(Quantity.parse("160 km"));
        assertThat(newBrunswick.lifts()).isEqualTo(Lifts.ALL);
        assertThat(manitoba.within()).isEqualTo(Quantity.parse("160 km"));
        assertThat(manitoba.lifts()).isEqualTo(Lifts.REPORT);
    }

    @Source(
            work = "N.B. Reg. 94-77 (New Brunswick)",
            edition = "current to 1 January 2024",
            where = "ss. 2 and 3(1): before the first trip of the day, midnight to midnight",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void new_brunswick_counts_days_and_not_24_hours() {
        Judged judged = Judged.inspection("CA-NB", TODAY, CanadaVehicles.TRUCK, "");

        List<String> rules =
                judged.judgement().rules().of(Check.INSPECTION_VALIDITY).stream()
                        .map(r -> r.rule().id())
                        .toList();
        assertThat(rules).containsExactly("ca-nb.inspection-validity");
        assertThat(duty("CA-NB", "ca-nb.inspection-validity").term()).isEmpty();
    }

    @Source(
            work = "O. Reg. 199/07 (Ontario)",
            edition = "sections not read, from memory",
            where = "s. 9, handed in within 20 days; s. 15, kept 6 months",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "both figures rest on memory of medium confidence")
    @Test
    void ontario_report_of_25_november_is_handed_in_by_15_december_and_kept_to_25_may() {
        Judged judged = Judged.at("CA-ON", "2026-11-25T07:10:00-05:00", CanadaVehicles.TRUCK, "");

        assertThat(until(judged, "ca-on.report-submission"))
                .isEqualTo(OffsetDateTime.parse("2026-12-15T07:10:00-05:00"));
        assertThat(until(judged, "ca-on.report-retention"))
                .isEqualTo(OffsetDateTime.parse("2027-05-25T07:10:00-05:00"));
    }

    private static OffsetDateTime until(Judged judged, String rule) {
        return FollowingDates.of(judged.judgement()).stream()
                .filter(f -> f.ruling().rule().id().equals(rule))
                .findFirst()
                .orElseThrow()
                .until();
    }

    private static Finding quebecReport(String vehicle, String more) {
        String evidence =
                "report: { operator: Yard Haulage, location: Km 12, inspector: P. EXAMPLE%s }\n"
                        .formatted(more);
        return Judged.inspection("CA-QC", TODAY, vehicle, evidence)
                .finding("ca-qc.report-contents");
    }

    private static Limit.Exemption exemption(String place, String rule) {
        return duty(place, rule).exemption().orElseThrow();
    }

    private static Duty duty(String place, String rule) {
        Ruling ruling =
                Judged.inspection(place, TODAY, CanadaVehicles.TRUCK, "")
                        .judgement()
                        .rules()
                        .byId(rule)
                        .orElseThrow();
        return (Duty) ruling.limit();
    }
}
