package org.fandown.app.paper;

import java.util.List;
import java.util.Optional;
import org.fandown.document.Node;
import org.fandown.judgement.Judgement;
import org.fandown.record.BrakingSummary;
import org.fandown.record.CanonicalJson;

/** What a report is printed from. Immutable; what is added makes another. */
public final class ReportContent {
    private final Judgement judgement;
    private final Optional<BrakingSummary> strokesMean;
    private final String json;
    private final Optional<TraceContent> trace;
    private final List<Photo> photos;
    private final Optional<DrawnSignature> drawn;
    private final Origin origin;

    /**
     * What a report without a trace is printed from.
     *
     * @param judgement the inspection, the rules and what the judge says
     * @param strokesMean what the strokes mean for braking, empty if it was not worked out
     * @param json the same judgement as JSON, put into the document as the file {@code
     *     inspection.json}
     */
    public ReportContent(Judgement judgement, Optional<BrakingSummary> strokesMean, String json) {
        this(judgement, strokesMean, Optional.empty(), json);
    }

    /** The same with the trace it was judged by, empty if a person read the instruments. */
    public ReportContent(
            Judgement judgement,
            Optional<BrakingSummary> strokesMean,
            Optional<TraceContent> trace,
            String json) {
        this(judgement, strokesMean, json, trace, List.of(), Optional.empty(), Origin.UNKNOWN);
    }

    private ReportContent(
            Judgement judgement,
            Optional<BrakingSummary> strokesMean,
            String json,
            Optional<TraceContent> trace,
            List<Photo> photos,
            Optional<DrawnSignature> drawn,
            Origin origin) {
        this.judgement = judgement;
        this.strokesMean = strokesMean;
        this.json = json;
        this.trace = trace;
        this.photos = List.copyOf(photos);
        this.drawn = drawn;
        this.origin = origin;
    }

    /** The same with photos. */
    public ReportContent with(List<Photo> pictures) {
        return new ReportContent(judgement, strokesMean, json, trace, pictures, drawn, origin);
    }

    /** The same with what the inspector drew to sign. */
    ReportContent signedBy(Optional<DrawnSignature> signature) {
        return new ReportContent(judgement, strokesMean, json, trace, photos, signature, origin);
    }

    /** The same with the canonical JSON it was made from. */
    ReportContent from(String canonical) {
        return with(new Origin(Optional.of(canonical), origin.seal(), origin.signer()));
    }

    /** The same with the record's link in the chains of the site. */
    public ReportContent sealed(Node seal) {
        return sealed(Optional.of(CanonicalJson.write(seal)));
    }

    ReportContent sealed(Optional<String> seal) {
        return with(new Origin(origin.record(), seal, origin.signer()));
    }

    /** The same, to be signed by a site, which the page tells. */
    ReportContent to(Optional<Signer> signer) {
        return with(new Origin(origin.record(), origin.seal(), signer));
    }

    private ReportContent with(Origin from) {
        return new ReportContent(judgement, strokesMean, json, trace, photos, drawn, from);
    }

    /** The inspection, the rules and what the judge says. */
    public Judgement judgement() {
        return judgement;
    }

    Optional<BrakingSummary> strokesMean() {
        return strokesMean;
    }

    /** The same judgement as JSON. */
    public String json() {
        return json;
    }

    Optional<TraceContent> trace() {
        return trace;
    }

    List<Photo> photos() {
        return photos;
    }

    Optional<DrawnSignature> drawn() {
        return drawn;
    }

    Origin origin() {
        return origin;
    }

    /** Whether pages of its own follow the report. */
    boolean hasPagesBehind() {
        return trace.isPresent() || !photos.isEmpty();
    }

    /** The report itself, without the pages behind it. */
    ReportContent alone() {
        return new ReportContent(
                judgement, strokesMean, json, Optional.empty(), List.of(), drawn, origin);
    }
}
