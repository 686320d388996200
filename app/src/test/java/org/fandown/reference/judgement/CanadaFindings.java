package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.fandown.check.Severity;
import org.fandown.check.Verdict;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Measurement;
import org.fandown.judgement.Status;
import org.fandown.units.Quantity;

/** What the worked examples of Canada ask of a finding. */
final class CanadaFindings {
    /** A day on which every text cited was in force as read. */
    static final String TODAY = "2026-11-25";

    /** Subtracting two readings costs a few units in the last place. */
    private static final double ROUNDING = 1e-9;

    private CanadaFindings() {}

    /** The finding has the status, names what was measured, and where its limit stands. */
    static void require(Finding finding, Status expected, String measured, String section) {
        Quantity value = Quantity.parse(measured);
        Measurement found = finding.measured().orElseThrow();
        assertThat(finding.status()).as(finding.why().reason()).isEqualTo(expected);
        assertThat(found.unit()).isEqualTo(value.unit());
        assertThat(found.value()).isEqualTo(value.value(), within(ROUNDING));
        assertThat(found.uncertainty()).isZero();
        assertThat(finding.why().reason()).isNotBlank();
        assertThat(Judged.section(finding)).contains(section);
    }

    /** The defect the rule makes has the severity; a major one keeps the vehicle from moving. */
    static void requireDefect(Judged judged, String rule, Severity expected) {
        assertThat(severity(judged, rule)).contains(expected);
        if (expected == Severity.MAJOR) {
            assertThat(judged.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
        } else {
            assertThat(judged.verdict()).isNotEqualTo(Verdict.NOT_FIT_TO_MOVE);
        }
    }

    /** There is no defect of any kind. */
    static void requireNoDefect(Judged judged) {
        assertThat(judged.judgement().defects()).isEmpty();
        assertThat(judged.verdict()).isNotEqualTo(Verdict.NOT_FIT_TO_MOVE);
    }

    /** The reading was not made as the text demands, and the reason names what was noted. */
    static void requireSpoiled(Judged judged, String rule, String noted) {
        Finding finding = judged.finding(rule);
        assertThat(finding.status()).isEqualTo(Status.SPOILED);
        requireNoted(finding, noted);
        assertThat(finding.why().advice()).isNotBlank();
        requireNoDefect(judged);
    }

    /** The reason begins with what was noted, before what was needed. */
    static void requireNoted(Finding finding, String noted) {
        String reason = finding.why().reason();
        assertThat(reason).startsWith("Noted: ").contains(". Needed: ");
        assertThat(reason.substring(0, reason.indexOf(". Needed: "))).endsWith(noted);
    }

    private static Optional<Severity> severity(Judged judged, String rule) {
        return judged.judgement().defects().stream()
                .filter(d -> d.rule().map(r -> r.id().equals(rule)).orElse(false))
                .findFirst()
                .flatMap(d -> d.severity());
    }
}
