package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import org.fandown.check.Severity;
import org.fandown.check.Verdict;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanadaStrokeReferenceTest {
    private static final String ON_STROKE = "ca-on.pushrod-applied-stroke";

    @Source(
            work =
                    "Air Brake Manual (Saskatchewan), within an inch of your life; Driving"
                            + " Commercial"
                            + " Vehicles (British Columbia)",
            edition = "texts read 2026-11-25",
            where =
                    "type 30, at 3/4 in (19 mm) it must be adjusted; pages 202 and 203, over"
                            + " 3/4 in (20 mm)",
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
                    "Official Air Brake Handbook (Ontario), 11-2 push-rod stroke, method 2;"
                            + " shared North"
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

    @Source(
            work =
                    "Driving Commercial Vehicles (British Columbia); Official Air Brake Handbook"
                            + " (Ontario), 11-2 push-rod stroke",
            edition = "texts read 2026-11-25",
            where =
                    "pages 202 and 203: at least 100 psi (690 kPa), held at 90 to 100 psi (620"
                            + " to 690 kPa),"
                            + " prying over 100 psi; 11-2: above 90 psi (621 kPa), then 90 to"
                            + " 100 psi",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(
            delimiter = ';',
            value = {
                "CA-BC; applied: 40 mm; start-pressure: 99 psi; 99 psi; type-30; page 202: 100 psi",
                "CA-BC; applied: 40 mm; start-pressure: 689 kPa; 689 kPa; type-30; page 202:"
                        + " 690 kPa",
                "CA-BC; applied: 40 mm; reservoir-pressure: 89 psi; 89 psi; type-30; page 202:"
                        + " 90 psi",
                "CA-BC; applied: 40 mm; reservoir-pressure: 101 psi; 101 psi; type-30; page"
                        + " 202: 100 psi",
                "CA-BC; applied: 40 mm; reservoir-pressure: 619 kPa; 619 kPa; type-30; page"
                        + " 202: 620 kPa",
                "CA-BC; applied: 40 mm; engine: running; running; type-30; page 202: engine off",
                "CA-BC; free: 15 mm; start-pressure: 100 psi; 100 psi; free; page 202: over 100"
                        + " psi",
                "CA-BC; free: 15 mm; parking-brake: set; set; free; page 202: parking brakes"
                        + " released",
                "CA-ON; applied: 40 mm; start-pressure: 90 psi; 90 psi; on; 11-2: above 90 psi",
                "CA-ON; applied: 40 mm; reservoir-pressure: 620 kPa; 620 kPa; on; 11-2: 621 kPa",
                "CA-ON; applied: 40 mm; reservoir-pressure: 101 psi; 101 psi; on; 11-2: 100 psi",
                "CA-ON; applied: 40 mm; wheels: free; free; on; 11-2: chocked"
            })
    void stroke_measured_at_another_pressure_or_with_brakes_set_otherwise_says_nothing(
            String place, String length, String noted, String named, String which, String where) {
        Judged judged = wheel(place, CanadaVehicles.TRUCK, length + ", " + noted);
        String rule =
                switch (which) {
                    case "type-30" -> "ca-bc.pushrod-applied-stroke.type-30";
                    case "free" -> "ca-bc.pushrod-free-stroke";
                    default -> ON_STROKE;
                };

        Finding finding = judged.finding(rule, "2L");
        assertThat(finding.status()).isEqualTo(Status.SPOILED);
        CanadaFindings.requireNoted(finding, named);
    }

    private static Judged wheel(String place, String vehicle, String noted) {
        return Judged.inspection(place, TODAY, vehicle, "wheels:\n  2L: { " + noted + " }\n");
    }
}
