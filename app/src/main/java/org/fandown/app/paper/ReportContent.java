package org.fandown.app.paper;

import java.util.List;
import java.util.Optional;
import org.fandown.judgement.Judgement;
import org.fandown.record.BrakingSummary;

/**
 * What a report is printed from.
 *
 * @param judgement the inspection, the rules and what the judge says
 * @param strokesMean what the strokes mean for braking, empty if it was not worked out
 * @param trace the trace it was judged by, empty if a person read the instruments
 * @param photos photos of what is wrong
 * @param json the same judgement as JSON, put into the document as the file {@code inspection.json}
 */
public record ReportContent(
        Judgement judgement,
        Optional<BrakingSummary> strokesMean,
        Optional<TraceContent> trace,
        List<Photo> photos,
        String json) {
    /** Copies the list. */
    public ReportContent {
        photos = List.copyOf(photos);
    }

    /** What a report without photos is printed from. */
    public ReportContent(
            Judgement judgement,
            Optional<BrakingSummary> strokesMean,
            Optional<TraceContent> trace,
            String json) {
        this(judgement, strokesMean, trace, List.of(), json);
    }

    /** What a report without a trace is printed from. */
    public ReportContent(Judgement judgement, Optional<BrakingSummary> strokesMean, String json) {
        this(judgement, strokesMean, Optional.empty(), json);
    }

    /** The same with photos. */
    public ReportContent with(List<Photo> pictures) {
        return new ReportContent(judgement, strokesMean, trace, pictures, json);
    }

    /** Whether pages of its own follow the report. */
    boolean hasPagesBehind() {
        return trace.isPresent() || !photos.isEmpty();
    }

    /** The report itself, without the pages behind it. */
    ReportContent alone() {
        return new ReportContent(judgement, strokesMean, json);
    }
}
