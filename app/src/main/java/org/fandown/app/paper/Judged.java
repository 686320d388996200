package org.fandown.app.paper;

import java.util.Optional;
import org.fandown.app.files.RulePacks;
import org.fandown.braking.BrakingEstimate;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.evidence.Inspection;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.record.BrakingSummary;
import org.fandown.record.JudgementDocument;
import org.fandown.record.MeasuredStrokes;
import org.fandown.rulebook.RulesInForce;

/**
 * An inspection with everything that is said of it.
 *
 * @param judgement findings and verdict
 * @param summary what the strokes mean for stopping, empty if none were measured
 * @param document both, for programs
 */
public record Judged(Judgement judgement, Optional<BrakingSummary> summary, MapNode document) {
    /**
     * The place whose law limits stops from 20 mph: the yardstick for the estimate, wherever the
     * vehicle is.
     */
    private static final PlaceCode YARDSTICK = new PlaceCode("US");

    /** Judges an inspection by the rules of its place; empty if the place has no rule pack. */
    public static Optional<Judged> of(Inspection inspection, RulePacks packs) {
        return packs.rulebookFor(inspection.place())
                .map(rulebook -> of(Judge.judge(rulebook, inspection), inspection, packs));
    }

    private static Judged of(Judgement judgement, Inspection inspection, RulePacks packs) {
        Optional<BrakingEstimate> braking = MeasuredStrokes.estimate(inspection);
        return new Judged(
                judgement,
                braking.map(b -> BrakingSummary.of(b, yardstick(inspection, packs))),
                JudgementDocument.of(judgement, braking));
    }

    private static Optional<RulesInForce> yardstick(Inspection inspection, RulePacks packs) {
        return packs.rulebookFor(YARDSTICK)
                .map(
                        book ->
                                book.inForce(
                                        YARDSTICK,
                                        inspection.vehicle(),
                                        inspection.moment().toLocalDate()));
    }

    /** What the report prints. */
    public ReportContent content() {
        return new ReportContent(judgement, summary, Json.write(document));
    }
}
