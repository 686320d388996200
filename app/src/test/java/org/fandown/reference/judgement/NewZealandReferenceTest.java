package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewZealandReferenceTest {
    private static final String TODAY = "2026-03-02";
    private static final String WORK =
            "Vehicle inspection requirements manual (New Zealand): heavy vehicle specialist"
                    + " certification";
    private static final String EDITION = "text of 2026-11-25";

    @Source(
            work = WORK,
            edition = EDITION,
            where = "5-2, items 2(a) and 4(a)",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} from warning off to maximum: {1}")
    @CsvSource({
        "180 s, MET, '5-2, item 4(a): 3 min = 180 s'",
        "181 s, NOT_MET, '5-2, item 4(a)'",
        "3 min, MET, '5-2, item 4(a)'"
    })
    void compressor_takes_pressure_from_the_warning_to_its_maximum_in_3_minutes(
            String time, Status expected, String where) {
        Finding finding =
                judged("readings: { build-up-from-warning: %s }".formatted(time))
                        .finding("nz.build-up-from-warning");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(time).contains("at most 3 min");
        assertThat(Judged.section(finding)).contains("4(a)");
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "5-2, item 4(b)",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} after five applications: {1}")
    @CsvSource({"90 s, MET, '5-2, item 4(b)'", "91 s, NOT_MET, '5-2, item 4(b)'"})
    void compressor_is_back_at_its_maximum_90_seconds_after_five_applications(
            String time, Status expected, String where) {
        Finding finding =
                judged(
                                "readings: { build-up-after-applications: { time: %s, applications: 5 } }"
                                        .formatted(time))
                        .finding("nz.build-up-after-applications.property");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(time).contains("at most 90 s");
        assertThat(Judged.section(finding)).contains("4(b)");
    }

    private static Judged judged(String evidence) {
        return Judged.inspection("NZ", TODAY, OverseasVehicles.TRUCK, evidence);
    }
}
