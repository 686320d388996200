package org.fandown.app.paper;

import java.util.Optional;
import org.fandown.judgement.Judgement;
import org.fandown.record.BrakingSummary;

/**
 * What a report is printed from.
 *
 * @param judgement the inspection, the rules and what the judge says
 * @param strokesMean what the strokes mean for braking, empty if it was not worked out
 * @param trace the trace it was judged by, empty if a person read the instruments
 * @param json the same judgement as JSON, put into the document as the file {@code inspection.json}
 */
public record ReportContent(
        Judgement judgement,
        Optional<BrakingSummary> strokesMean,
        Optional<TraceContent> trace,
        String json) {
    /** What a report without a trace is printed from. */
    public ReportContent(Judgement judgement, Optional<BrakingSummary> strokesMean, String json) {
        this(judgement, strokesMean, Optional.empty(), json);
    }

    /** The same without its trace. */
    ReportContent withoutTrace() {
        return new ReportContent(judgement, strokesMean, json);
    }
}
