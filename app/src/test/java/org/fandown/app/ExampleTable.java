package org.fandown.app;

import static org.fandown.app.Example.fit;
import static org.fandown.app.Example.notFit;
import static org.fandown.app.Example.notProven;

import java.util.List;

/**
 * The examples as worked through by hand from the files and the printed limits.
 *
 * <p>Uncertainties: one reading made to a step q lies within q / 2; the difference of two readings
 * within 2 q sqrt(2 / 12), from two independent readings each with variance q^2 / 12 and a coverage
 * factor of 2; a loss over T minutes has that divided by T. The clock's part (1 s) is added where
 * it is not lost in the last digit.
 */
final class ExampleTable {
    private static final double TWO_READINGS = 2 * Math.sqrt(2.0 / 12);

    private ExampleTable() {}

    static final List<Example> ALL =
            List.of(
                    fit("ontario-truck-in-order")
                            .measured("ca-on.governor-cut-out", 128, "psi", 1 / 2.0)
                            .measured("ca-on.low-air-warning", 64, "psi", 1 / 2.0)
                            // 120 - 118 psi in 2 min
                            .measured("ca-on.air-loss-applied.class-d", 1, "psi", TWO_READINGS / 2)
                            // 4 1/2 - 3 1/4 in, two readings of a rule with sixteenths
                            .measured(
                                    "ca-on.pushrod-applied-stroke 1L",
                                    1.25,
                                    "in",
                                    TWO_READINGS / 16)
                            .measured(
                                    "ca-on.pushrod-applied-stroke 2L",
                                    1.875,
                                    "in",
                                    TWO_READINGS / 16)
                            .words("128 psi", "1 1/4 in", "Valid until 2026-11-25T06:15-05:00"),
                    fit("us-coach-in-order")
                            // the lower of two needles
                            .measured("us.governor-cut-in.bus", 106, "psi", 1 / 2.0)
                            .measured("us.low-air-warning.fmvss-121", 68, "psi", 1 / 2.0)
                            .measured(
                                    "us.air-loss-applied.single", 3 / 3.0, "psi", TWO_READINGS / 3)
                            .words("Motor coach 61", "at least 85 psi"),
                    fit("california-doubles-in-order")
                            .defects("tires minor")
                            .measured("us-ca.governor-cut-out.handbook", 124, "psi", 2 / 2.0)
                            .measured(
                                    "us-ca.air-loss-released.three",
                                    4 / 3.0,
                                    "psi",
                                    2 * TWO_READINGS / 3)
                            .words("low tread: inner right of the dolly, 5/32 in left"),
                    fit("western-australia-artic-in-order")
                            .measured("au.governor-cut-out", 850, "kPa", 10 / 2.0)
                            .measured("au.air-loss-applied", 20 / 3.0, "kPa", 10 * TWO_READINGS / 3)
                            .measured("au.pushrod-applied-stroke 6L", 41, "mm", 1 / 2.0)
                            .words("at most 80 % of the rated stroke"),
                    notFit("ontario-stroke-over")
                            .open("ca-on.pushrod-applied-stroke 4R not-met")
                            .defects("pushrod-applied-stroke 4R major ca-on.pushrod-applied-stroke")
                            .words("2 1/4 in", "clamp 30", "2 in"),
                    notFit("us-flat-bed-warning-late")
                            .open("us.low-air-warning.fmvss-121 not-met")
                            .defects("low-air-warning major us.low-air-warning.fmvss-121")
                            .words("51 psi", "at least 60 psi"),
                    notFit("georgia-old-gravel-truck")
                            .open(
                                    "us.pushrod-applied-stroke.law 2R not-met",
                                    "us.pushrod-applied-stroke.law 3R not-met",
                                    "us.lining-thickness.other-drum 3R not-met",
                                    "us.brakes-over-limit.twenty-percent not-met",
                                    "us.chamber-match.law 2L not-met")
                            .defects(
                                    "pushrod-applied-stroke 2R major us.pushrod-applied-stroke.law",
                                    "pushrod-applied-stroke 3R major us.pushrod-applied-stroke.law",
                                    "lining-thickness 3R major us.lining-thickness.other-drum",
                                    "brakes-over-limit major us.brakes-over-limit.twenty-percent",
                                    "chamber-match 2L major us.chamber-match.law",
                                    "service-brakes 3R major")
                            .words("2 of 6 brakes", "left clamp 24, right clamp 30"),
                    notFit("great-britain-leak-on-walk-round")
                            .defects("lamps-and-reflectors minor", "air-system major")
                            .words("audible air leak: hissing at the supply coupling"),
                    notProven("british-columbia-strokes-at-full-pressure")
                            .open(
                                    "ca-bc.pushrod-applied-stroke.type-30 4L spoiled",
                                    "ca-bc.pushrod-applied-stroke.type-30 4R spoiled",
                                    "ca-bc.pushrod-applied-stroke.type-30 5L spoiled",
                                    "ca-bc.pushrod-applied-stroke.type-30 5R spoiled",
                                    "ca.pushrod-applied-stroke 1L spoiled",
                                    "ca.pushrod-applied-stroke 1R spoiled",
                                    "ca.pushrod-applied-stroke 2L spoiled",
                                    "ca.pushrod-applied-stroke 2R spoiled",
                                    "ca.pushrod-applied-stroke 3L spoiled",
                                    "ca.pushrod-applied-stroke 3R spoiled",
                                    "ca.pushrod-applied-stroke 4L spoiled",
                                    "ca.pushrod-applied-stroke 4R spoiled",
                                    "ca.pushrod-applied-stroke 5L spoiled",
                                    "ca.pushrod-applied-stroke 5R spoiled")
                            // the lowest and the highest needle; the rule counts the highest
                            .measured("ca-bc.trailer-supply-closing", 38, "psi", 1 / 2.0)
                            .words("Noted: reservoir pressure 118 psi", "Do the test again"),
                    notProven("quebec-bus-coarse-gauge")
                            .open("ca-qc.air-loss-applied.one-vehicle undetermined")
                            .measured("ca-qc.governor-cut-out", 860, "kPa", 20 / 2.0)
                            .measured("ca-qc.pushrod-applied-stroke 2R", 48, "mm", 1 / 2.0)
                            .words("30 kPa", "too close to the limit", "two minutes"),
                    notProven("newfoundland-ran-out-of-time")
                            .open(
                                    "ca-nl.parking-valve-closing not-checked",
                                    "ca-nl.air-loss-applied not-checked",
                                    "ca.pushrod-applied-stroke 2L not-checked",
                                    "ca.pushrod-applied-stroke 2R not-checked",
                                    "ca-nl.parking-brake-hold not-checked",
                                    "ca-nl.service-brake-response not-checked",
                                    "ca.walk-round not-checked")
                            .words("Nothing was noted", "Brake adjustment"),
                    notProven("ontario-governor-between-two-pages")
                            .open("ca-on.governor-cut-out undetermined")
                            .words("Sources disagree", "at most 135 psi", "at most 145 psi"),
                    notProven("nunavut-limit-from-memory")
                            .open("ca.low-air-warning.nsc-11 not-met")
                            .words("not met, but the limit is unconfirmed", "at least 55 psi"),
                    notProven("new-zealand-milk-truck")
                            .words(
                                    "No pressure, air loss or low-air warning was measured against a"
                                            + " rule"));
}
