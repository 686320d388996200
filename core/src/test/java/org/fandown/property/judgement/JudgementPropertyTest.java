package org.fandown.property.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.fandown.check.Check;
import org.fandown.document.Json;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Instruments;
import org.fandown.evidence.Observations;
import org.fandown.evidence.Reading;
import org.fandown.judgement.Allowed;
import org.fandown.judgement.Edge;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Measurement;
import org.fandown.judgement.Status;
import org.fandown.record.JudgementDocument;
import org.fandown.rulebook.Rulebook;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;

class JudgementPropertyTest {
    private static final double ROUNDING = 1e-6;

    private static final Rulebook BOOK =
            Packs.of(
                    rule("xa.cut-in", "governor-cut-in", "'limit': {'at-least': '85 psi'}"),
                    rule(
                            "xa.cut-out",
                            "governor-cut-out",
                            "'limit': {'range': ['105 psi', '135 psi']}"),
                    rule(
                            "xa.low",
                            "low-air-warning",
                            "'limit': {'at-least': {'percent': 50, 'of': 'governor-cut-out'}}"),
                    rule(
                            "xa.build-up",
                            "build-up",
                            "'window': {'from': '85 psi', 'to': '100 psi'}, 'limit': {'at-most':"
                                    + " '2 min'}"),
                    rule(
                            "xa.loss",
                            "air-loss-applied",
                            "'limit': {'at-most': '3 psi', 'per': '1 min'}"),
                    rule(
                            "xa.points",
                            "air-loss-released",
                            "'limit': {'less-than': '2 psi', 'per': '1 min'}"),
                    rule(
                            "xa.reserve",
                            "reservoir-reserve",
                            "'limit': {'at-least': {'percent': 60, 'of': 'before'}}"),
                    rule(
                            "xa.stroke",
                            "pushrod-applied-stroke",
                            "'limit': {'stroke-table': {'clamp': {'20': '1 3/4 in', '30': '2"
                                    + " in'}}}, 'evidence': 'if-observed'"),
                    rule(
                            "xa.count",
                            "brakes-over-limit",
                            "'limit': {'brakes-over': {'share': '20 %'}}"));

    /** Gauge, clock and rule as they are, or each read more coarsely. */
    @Property(tries = 500)
    void coarser_instruments_never_decide_what_was_open(
            @ForAll("evidence") RandomEvidence evidence,
            @ForAll @IntRange(min = 0, max = 40) int fine,
            @ForAll @IntRange(min = 0, max = 40) int coarser) {
        List<Status> before = statuses(evidence, fine / 10.0);
        List<Status> after = statuses(evidence, (fine + coarser) / 10.0);

        for (int i = 0; i < before.size(); i++) {
            if (before.get(i) == Status.UNDETERMINED) {
                assertThat(after.get(i)).isNotIn(Status.MET, Status.NOT_MET);
            }
            assertThat(List.of(before.get(i), after.get(i)))
                    .isNotEqualTo(List.of(Status.MET, Status.NOT_MET))
                    .isNotEqualTo(List.of(Status.NOT_MET, Status.MET));
        }
    }

    @Property(tries = 500)
    void met_means_the_whole_interval_inside_and_not_met_the_whole_outside(
            @ForAll("evidence") RandomEvidence evidence) {
        for (Finding finding : judge(evidence, 1).findings()) {
            Optional<Measurement> measured = finding.measured();
            if (measured.isPresent() && finding.allowed().isPresent()) {
                boolean inside = isInside(measured.get(), finding.allowed().get());
                assertThat(finding.status() == Status.MET).isEqualTo(inside && isSure(finding));
                if (finding.status() == Status.NOT_MET) {
                    assertThat(isOutside(measured.get(), finding.allowed().get())).isTrue();
                }
            }
        }
    }

    @Property(tries = 200)
    void order_of_the_evidence_changes_nothing(
            @ForAll("evidence") RandomEvidence evidence, @ForAll Random random) {
        String inOrder = Json.write(JudgementDocument.of(judge(evidence, 1), Optional.empty()));
        String shuffled =
                Json.write(
                        JudgementDocument.of(
                                judge(evidence.shuffled(random), 1), Optional.empty()));

        assertThat(shuffled).isEqualTo(inOrder);
    }

    @Property(tries = 500)
    void longer_stroke_never_improves_a_finding(
            @ForAll @IntRange(min = 0, max = 40) int sixteenths,
            @ForAll @IntRange(min = 0, max = 40) int more,
            @ForAll @IntRange(min = 0, max = 4) int step) {
        String shorter = RandomEvidence.stroke(Math.min(sixteenths, 36));
        String longer = RandomEvidence.stroke(Math.min(sixteenths + more, 36));
        List<Finding> before = strokes(shorter, step / 16.0);
        List<Finding> after = strokes(longer, step / 16.0);

        for (int i = 0; i < before.size(); i++) {
            Status status = before.get(i).status();
            assertThat(after.get(i).status()).isGreaterThanOrEqualTo(status);
        }
    }

    @Property(tries = 500)
    void unit_of_a_reading_there_and_back_changes_no_finding(
            @ForAll @IntRange(min = 500, max = 1500) int tenths) {
        Quantity psi = Quantity.of(tenths / 10.0, Unit.PSI);
        Quantity back = Quantity.of(psi.valueIn(Unit.KPA), Unit.KPA).in(Unit.PSI);
        Rulebook book =
                Packs.of(rule("xa.cut-in", "governor-cut-in", "'limit': {'at-least': '85 psi'}"));

        assertThat(cutIn(book, back)).isEqualTo(cutIn(book, psi));
        assertThat(cutIn(book, psi.in(Unit.KPA))).isEqualTo(cutIn(book, psi));
        assertThat(cutIn(book, psi.in(Unit.BAR))).isEqualTo(cutIn(book, psi));
    }

    @Provide
    Arbitrary<RandomEvidence> evidence() {
        return RandomEvidence.any();
    }

    // Judging

    private static List<Status> statuses(RandomEvidence evidence, double steps) {
        return judge(evidence, steps).findings().stream().map(Finding::status).toList();
    }

    private static Judgement judge(RandomEvidence evidence, double steps) {
        Inspection read = Trial.inspection("XA", Trucks.TRUCK, evidence.text());
        return Judge.judge(BOOK, with(read, steps));
    }

    private static Inspection with(Inspection inspection, double steps) {
        return with(inspection, steps, inspection.readings());
    }

    private static Inspection with(
            Inspection inspection, double steps, Map<Check, Reading> readings) {
        Instruments instruments =
                steps == 0
                        ? Instruments.EXACT
                        : new Instruments(
                                Map.of(
                                        Dimension.GAUGE_PRESSURE,
                                        Quantity.of(steps, Unit.PSI),
                                        Dimension.TIME,
                                        Quantity.of(steps, Unit.SECOND),
                                        Dimension.LENGTH,
                                        Quantity.of(steps / 16, Unit.INCH)));
        return new Inspection(
                inspection.place(),
                inspection.moment(),
                inspection.vehicle(),
                inspection.report(),
                instruments,
                inspection.conditionsAsPrinted(),
                new Observations(
                        readings,
                        inspection.wheels(),
                        inspection.parts(),
                        inspection.allOtherPartsSeen()),
                inspection.notes(),
                inspection.simulated());
    }

    private static List<Finding> strokes(String stroke, double step) {
        String wheel = "{'applied': '" + stroke + "'}";
        Inspection read =
                Trial.inspection(
                        "XA", Trucks.TRUCK, "'wheels': {'1L': " + wheel + ", '2R': " + wheel + "}");
        return Judge.judge(BOOK, with(read, step * 16)).findings().stream()
                .filter(f -> f.ruling().rule().id().equals("xa.stroke"))
                .toList();
    }

    private static Status cutIn(Rulebook book, Quantity reading) {
        Inspection empty = Trial.inspection("XA", Trucks.TRUCK, "");
        Reading noted =
                new Reading.Value(
                        Check.GOVERNOR_CUT_IN,
                        List.of(reading),
                        Optional.empty(),
                        Circumstances.NONE,
                        "");
        return Trial.of(book, with(empty, 0, Map.of(Check.GOVERNOR_CUT_IN, noted))).status();
    }

    /** Findings whose limit is itself in doubt, or that were softened, may be open inside it. */
    private static boolean isSure(Finding finding) {
        return finding.status() != Status.UNDETERMINED;
    }

    private static boolean isInside(Measurement measured, Allowed allowed) {
        return allowed.lower().map(e -> measured.low() >= e.value() - ROUNDING).orElse(true)
                && allowed.upper().map(e -> isBelow(measured.high(), e)).orElse(true);
    }

    private static boolean isBelow(double value, Edge edge) {
        return edge.passes() ? value <= edge.value() + ROUNDING : value < edge.value();
    }

    private static boolean isOutside(Measurement measured, Allowed allowed) {
        boolean below =
                allowed.lower().map(e -> measured.high() < e.value() + ROUNDING).orElse(false);
        boolean above =
                allowed.upper().map(e -> measured.low() > e.value() - ROUNDING).orElse(false);
        return below || above;
    }
}
