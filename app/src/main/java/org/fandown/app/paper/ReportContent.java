package org.fandown.app.paper;

import java.util.Optional;
import org.fandown.judgement.Judgement;
import org.fandown.record.BrakingSummary;

/**
 * What a report is printed from.
 *
 * @param judgement the inspection, the rules and what the judge says
 * @param strokesMean what the strokes mean for braking, empty if it was not worked out
 * @param json the same judgement as JSON, put into the document as the file {@code inspection.json}
 */
public record ReportContent(
        Judgement judgement, Optional<BrakingSummary> strokesMean, String json) {}
