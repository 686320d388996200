package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;

class ReportJudgeTest {
    private static final String REPORT =
            rule(
                    "xa.report",
                    "report-contents",
                    "'limit': {'report-holds': ['plate', 'operator', 'location', 'inspector-name',"
                            + " 'odometer-if-fitted', 'date-and-time', 'inspector-signature']}");

    private static final String FULL =
            "'plate': 'XX 0000', 'operator': 'Yard Haulage', 'location': 'Yard, Nowhere',"
                    + " 'inspector': 'A. Person'";

    @Test
    void report_with_every_item_is_met() {
        Trial trial = Trial.of(REPORT, "'report': {" + FULL + ", 'odometer': '123 456 km'}");

        assertThat(trial.status()).isEqualTo(Status.MET);
        assertThat(trial.reason()).isEqualTo("The report holds what the place asks for.");
    }

    @Test
    void missing_items_are_named() {
        Trial trial = Trial.of(REPORT, "'report': {'plate': 'XX 0000', 'inspector': 'A. Person'}");

        assertThat(trial.status()).isEqualTo(Status.NOT_CHECKED);
        assertThat(trial.reason())
                .isEqualTo(
                        "The report is incomplete: name of the operator or carrier, place of the"
                                + " inspection, odometer reading, if the vehicle has one missing.");
        assertThat(trial.only().why().advice()).isEqualTo("Add it under report.");
    }

    @Test
    void odometer_is_not_missed_on_a_vehicle_without_one() {
        String without =
                Trucks.vehicle(
                        Trucks.unit(
                                "truck", "U3", "'odometer': false", Trucks.STEER, Trucks.DRIVE));
        String odometer =
                rule("xa.report", "report-contents", "'limit': {'report-holds': ['odometer']}");

        assertThat(Trial.of(Packs.of(REPORT), without, "'report': {" + FULL + "}").status())
                .isEqualTo(Status.MET);
        assertThat(Trial.of(Packs.of(odometer), without, "").status())
                .isEqualTo(Status.NOT_CHECKED);
    }

    @Test
    void signatures_and_statements_are_printed_for_signing_and_not_missed() {
        String signed =
                rule(
                        "xa.report",
                        "report-contents",
                        "'limit': {'report-holds': ['inspector-signature', 'inspector-statement',"
                                + " 'driver-signature-if-different', 'repair-statement',"
                                + " 'plate-or-unit', 'defects-or-none']}");

        assertThat(Trial.of(signed, "").status()).isEqualTo(Status.MET);
    }
}
