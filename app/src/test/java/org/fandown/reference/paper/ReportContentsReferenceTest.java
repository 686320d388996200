package org.fandown.reference.paper;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.app.paper.PrintedReport;
import org.fandown.app.paper.Samples;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;

class ReportContentsReferenceTest {
    private static final String VEHICLE =
            """
            vehicle:
              name: Gravel truck
              use: property
              units:
                - kind: truck
                  id: "12"
                  built: 2020-04
                  gross-mass: 26000 kg
                  axles:
                    - { position: steer, brake: drum, chamber: clamp 24, spring-brake: false }
                    - { position: drive, brake: drum, chamber: clamp 30, spring-brake: true }
            conditions: as-printed
            """;
    private static final String ENTRIES =
            """
            report:
              plate: LEX 001
              operator: Example Gravel
              location: Milltown, yard gate
              odometer: 88 214 km
              inspector: Zo\u00e9 Lef\u00e8vre
              driver: Sam Sample
            """;

    @Source(
            work = "Regulation respecting safety standards for road vehicles, C-24.2, r. 32",
            edition = "version of 2020-09-16",
            where = "section 197.0.3: the items of the report",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void quebec_report_holds_every_item_of_the_regulation() {
        String text = printed("CA-QC", ENTRIES);

        assertThat(text)
                .contains("LEX 001", "Example Gravel", "2026-11-25 07:30 UTC-05:00")
                .contains("Milltown, yard gate", "No defects were found.", "88 214 km")
                .contains("The inspection was made as the rules of Quebec require.")
                .contains("I have read this report.")
                .contains("Name in capitals ZO\u00c9 LEF\u00c8VRE", "Name in capitals SAM SAMPLE");
        assertThat(text.split("Signature", -1)).hasSize(3);
    }

    @Source(
            work = "Regulation respecting safety standards for road vehicles, C-24.2, r. 32",
            edition = "version of 2020-09-16",
            where = "section 197.0.3: what is not entered has a place to be written",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void quebec_report_has_a_line_for_each_item_not_entered() {
        String text = printed("CA-QC", "");

        assertThat(text)
                .contains("Operator or carrier required here, fill in")
                .contains("Place of the inspection required here, fill in")
                .contains("Odometer required here, fill in")
                .contains("Inspected by required here, fill in")
                .doesNotContain("Date and time required here");
    }

    @Source(
            work =
                    "National Safety Code Standard 13, contents of the report, as summed up for"
                            + " Yukon and completed from Quebec's regulation",
            edition = "summary of 2024; regulation of 2020-09-16",
            where = "plate or unit, carrier, date and time, place, defects or none, statement",
            kind = Kind.AGENCY,
            accessed = "2026-11-25",
            note = "Second-hand; the body of Ontario's own section was not read.")
    @Test
    void ontario_report_holds_every_item_of_the_national_list() {
        String text = printed("CA-ON", ENTRIES);

        assertThat(text)
                .contains("LEX 001", "Example Gravel", "2026-11-25 07:30 UTC-05:00")
                .contains("Milltown, yard gate", "No defects were found.", "88 214 km")
                .contains("The inspection was made as the rules of Ontario require.")
                .contains("I have read this report.")
                .contains("Name in capitals ZO\u00c9 LEF\u00c8VRE", "Name in capitals SAM SAMPLE");
    }

    @Source(
            work = "49 CFR 396.11, driver vehicle inspection reports",
            edition = "2014 and 2018 texts",
            where = "(a)(2) identify the vehicle, list defects, sign; (a)(3) certify repairs",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void federal_report_names_vehicle_and_defects_and_has_lines_for_driver_and_carrier() {
        String text =
                printed("US", ENTRIES + "parts: { horn: { condition: dead, severity: major } }\n");

        assertThat(text)
                .contains("truck 12", "LEX 001", "Horn: dead")
                .contains("Each defect listed: \u2610 was put right \u2610 needs no repair")
                .contains("Keep until 2027-02-25 (3 months)");
        assertThat(text.split("Signature", -1)).hasSizeGreaterThanOrEqualTo(4);
    }

    @Source(
            work = "49 CFR 396.13, driver inspection",
            edition = "text of 2020",
            where = "the next driver reviews the last report and signs",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void federal_report_has_a_line_for_the_next_driver() {
        assertThat(printed("US", ENTRIES))
                .contains("Next driver's review I have reviewed this report");
    }

    @Source(
            work = "Being a goods vehicle operator: maintaining your vehicles (UK government page)",
            edition = "text read 2026-11-25",
            where =
                    "content of an inspection record: vehicle, items, when and by whom, result, work",
            kind = Kind.AGENCY,
            accessed = "2026-11-25")
    @Test
    void british_record_holds_items_result_and_work_done() {
        String text =
                printed("GB", ENTRIES + "parts: { horn: ok, tires: ok, service-brakes: ok }\n");

        assertThat(text)
                .contains("LEX 001", "2026-11-25 07:30 UTC-05:00", "ZO\u00c9 LEF\u00c8VRE")
                .contains("Parts inspected: Service brakes, Tires, Horn.")
                .containsPattern("FIT TO MOVE|NOT PROVEN")
                .contains("was put right", "Work done:");
    }

    private static String printed(String place, String rest) {
        return PrintedReport.of(
                        Samples.yaml(
                                "place: "
                                        + place
                                        + "\nmoment: 2026-11-25T07:30:00-05:00\n"
                                        + VEHICLE
                                        + rest))
                .text();
    }
}
