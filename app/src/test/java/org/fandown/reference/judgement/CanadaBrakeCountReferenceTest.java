package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import java.util.List;
import org.fandown.check.Severity;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanadaBrakeCountReferenceTest {
    private static final String QC_COUNT = "ca-qc.brakes-over-limit";
    private static final String QC_STROKE = "ca-qc.pushrod-applied-stroke";
    private static final String ON_STROKE = "ca-on.pushrod-applied-stroke";
    private static final List<String> TEN =
            List.of("1L", "1R", "2L", "2R", "3L", "3R", "4L", "4R", "5L", "5R");
    private static final List<String> FOUR = List.of("1L", "1R", "2L", "2R");

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "version of 2024-11-26",
            where =
                    "s. 166(9): 20 % or more of the chambers over the maker's value by 6.4 mm"
                            + " or more",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the maker's value of 50 mm is our own invention")
    @ParameterizedTest(name = "{1} of {0} over by {2}: {3}")
    @CsvSource({
        "10, 2, 6.4 mm, NOT_MET, 20 %, s. 166(9): 20 % is major",
        "10, 1, 6.4 mm, MET, 10 %, s. 166(9): less than 20 %",
        "4, 1, 6.4 mm, NOT_MET, 25 %, s. 166(9): 25 % is major",
        "10, 2, 6.3 mm, MET, 0 %, s. 166(9): by less than 6.4 mm"
    })
    void quebec_strokes_are_a_major_defect_from_a_fifth_of_the_chambers(
            int brakes, int over, String by, Status expected, String share, String where) {
        String stroke = by.equals("6.4 mm") ? "56.4 mm" : "56.3 mm";
        Judged judged = strokes("CA-QC", brakes, over, stroke);

        CanadaFindings.require(judged.finding(QC_COUNT), expected, share, "section 166(9)");
        if (expected == Status.NOT_MET) {
            CanadaFindings.requireDefect(judged, QC_COUNT, Severity.MAJOR);
        } else {
            CanadaFindings.requireDefect(judged, QC_STROKE, Severity.MINOR);
        }
    }

    @Source(
            work = "O. Reg. 199/07 (Ontario), Schedule 1",
            edition = "table read 2026-11-25",
            where = "Part 1, major (a): push-rod stroke of any brake beyond its limit",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the maker's value of 50 mm is our own invention")
    @Test
    void one_of_ten_strokes_over_that_is_minor_in_quebec_is_major_in_ontario() {
        Judged quebec = strokes("CA-QC", 10, 1, "56.4 mm");
        Judged ontario = strokes("CA-ON", 10, 1, "56.4 mm");

        CanadaFindings.requireDefect(quebec, QC_STROKE, Severity.MINOR);
        CanadaFindings.require(
                ontario.finding(ON_STROKE, "1L"),
                Status.NOT_MET,
                "56.4 mm",
                "Schedule 1, Part 1, major (a)");
        CanadaFindings.requireDefect(ontario, ON_STROKE, Severity.MAJOR);
        assertThat(ontario.notMet()).containsOnlyOnce(ON_STROKE);
    }

    /** The first so many brakes of the vehicle have the stroke, the others 45 mm. */
    private static Judged strokes(String place, int brakes, int over, String stroke) {
        List<String> wheels = brakes == 10 ? TEN : FOUR;
        StringBuilder evidence = new StringBuilder("wheels:\n");
        for (int i = 0; i < brakes; i++) {
            String applied = i < over ? stroke : "45 mm";
            evidence.append("  " + wheels.get(i))
                    .append(": { makers-limit: 50 mm, applied: " + applied + " }\n");
        }
        String vehicle = brakes == 10 ? CanadaVehicles.TRACTOR_TRAILER : CanadaVehicles.TRUCK;
        return Judged.inspection(place, TODAY, vehicle, evidence.toString());
    }
}
