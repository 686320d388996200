package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import java.util.List;
import org.fandown.check.Severity;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.judgement.Verdict;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanadaStrokeReferenceTest {
    private static final String QC_COUNT = "ca-qc.brakes-over-limit";
    private static final String QC_STROKE = "ca-qc.pushrod-applied-stroke";
    private static final String ON_STROKE = "ca-on.pushrod-applied-stroke";
    private static final List<String> TEN =
            List.of("1L", "1R", "2L", "2R", "3L", "3R", "4L", "4R", "5L", "5R");
    private static final List<String> FOUR = List.of("1L", "1R", "2L", "2R");

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2, r. 32",
            edition = "version of 2024-11-26",
            where =
                    "s. 166(9): 20 % or more of the chambers over the maker's value by 6.4 mm or more",
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

    @Source(
            work =
                    "Air Brake Manual (Saskatchewan), within an inch of your life; Driving Commercial"
                            + " Vehicles (British Columbia)",
            edition = "texts read 2026-11-25",
            where =
                    "type 30, at 3/4 in (19 mm) it must be adjusted; pages 202 and 203, over 3/4 in (20 mm)",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}, {2}: {3}")
    @CsvSource({
        "CA-SK, ca-sk.pushrod-free-stroke.type-30, 3/4 in, NOT_MET, within an inch, Saskatchewan",
        "CA-SK, ca-sk.pushrod-free-stroke.type-30, 19 mm, NOT_MET, within an inch, Saskatchewan",
        "CA-SK, ca-sk.pushrod-free-stroke.type-30, 11/16 in, MET, within an inch, Saskatchewan",
        "CA-BC, ca-bc.pushrod-free-stroke, 3/4 in, MET, pages 202 and 203, British Columbia",
        "CA-BC, ca-bc.pushrod-free-stroke.good, 3/4 in, MET, pages 202 and 203, British Columbia",
        "CA-BC, ca-bc.pushrod-free-stroke, 20 mm, MET, pages 202 and 203, British Columbia",
        "CA-BC, ca-bc.pushrod-free-stroke.good, 20 mm, MET, pages 202 and 203, British Columbia",
        "CA-BC, ca-bc.pushrod-free-stroke, 21 mm, NOT_MET, pages 202 and 203, British Columbia",
        "CA-BC, ca-bc.pushrod-free-stroke.good, 21 mm, NOT_MET, pages 202 and 203, British Columbia"
    })
    void free_stroke_of_three_quarters_of_an_inch_is_too_much_in_saskatchewan_only(
            String place, String rule, String free, Status expected, String section, String where) {
        Judged judged = wheel(place, CanadaVehicles.TRUCK, "free: " + free);

        CanadaFindings.require(judged.finding(rule, "2L"), expected, free, section);
    }

    @Source(
            work = "Driving Commercial Vehicles (British Columbia)",
            edition = "pages read 2026-11-25",
            where = "page 202: good 25 to 38 mm (1 to 1 1/2 in), adjust over 45 mm (1 3/4 in)",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "45 mm, MET, NOT_MET, page 202: no adjustment required",
        "46 mm, NOT_MET, NOT_MET, page 202: adjust",
        "38 mm, MET, MET, page 202: good",
        "40 mm, MET, NOT_MET, 'page 202: inside the limit, outside the good range'"
    })
    void british_columbia_type_30_is_adjusted_over_45_mm_and_good_to_38_mm(
            String applied, Status limit, Status good, String where) {
        Judged judged = wheel("CA-BC", CanadaVehicles.TRUCK, "applied: " + applied);
        String rule = "ca-bc.pushrod-applied-stroke.type-30";

        CanadaFindings.require(judged.finding(rule, "2L"), limit, applied, "pages 202 and 203");
        CanadaFindings.require(judged.finding(rule + "-good", "2L"), good, applied, "page 202");
        if (limit == Status.NOT_MET) {
            CanadaFindings.requireDefect(judged, rule, Severity.MINOR);
        } else {
            CanadaFindings.requireNoDefect(judged);
        }
    }

    @Source(
            work =
                    "Official Air Brake Handbook (Ontario), 11-2 push-rod stroke, method 2; shared North"
                            + " American stroke table",
            edition = "method read 2026-11-25; table from memory",
            where = "stroke = 92 mm - 45 mm; clamp 24 standard 44 mm, long stroke 51 mm",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = "the chart of the handbook was not seen, so the limits rest on memory")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "clamp 24, NOT_MET, 44 mm, 47 mm is over 44 mm",
        "clamp 24 long, MET, 51 mm, 47 mm is within 51 mm"
    })
    void ontario_stroke_by_subtraction_of_47_mm_fails_a_standard_type_24_and_passes_a_long_one(
            String chamber, Status expected, String limit, String where) {
        Judged judged =
                wheel(
                        "CA-ON",
                        CanadaVehicles.truckWithRear(chamber),
                        "released: 45 mm, fully-applied-length: 92 mm");

        Finding finding = judged.finding(ON_STROKE, "2L");
        CanadaFindings.require(finding, expected, "47 mm", "method in section 11-2");
        assertThat(finding.why().reason()).contains("47 mm", limit);
        if (expected == Status.NOT_MET) {
            CanadaFindings.requireDefect(judged, ON_STROKE, Severity.MAJOR);
        } else {
            assertThat(judged.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        }
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

    private static Judged wheel(String place, String vehicle, String noted) {
        return Judged.inspection(place, TODAY, vehicle, "wheels:\n  2L: { " + noted + " }\n");
    }
}
