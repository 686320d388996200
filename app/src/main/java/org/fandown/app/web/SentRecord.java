package org.fandown.app.web;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fandown.app.files.RulePacks;
import org.fandown.app.paper.Judged;
import org.fandown.app.paper.RecordReport;
import org.fandown.app.store.Arrival;
import org.fandown.app.store.RecordHead;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Report;
import org.fandown.record.VehicleKey;
import org.jspecify.annotations.Nullable;

/**
 * A record as a device sends it: {@code format}, {@code id}, {@code kind}, {@code made}, and an
 * inspection, with what was drawn and photographed, an {@linkplain SentPractice exercise}, or
 * {@linkplain SentSettlement what follows} an inspection. The verdict is not taken from the device;
 * it is judged here.
 *
 * @param head what it is found by
 * @param content the whole of it
 * @param judgement what the judge makes of it now, null if there is nothing to judge
 * @param chain the key of its vehicle's chain
 */
record SentRecord(RecordHead head, Node content, @Nullable Node judgement, String chain) {
    static final String FORMAT = "fandown-record/1";
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT);

    /** What a record can be. */
    enum Kind {
        /** The inspection of a real vehicle. */
        INSPECTION,
        /** An exercise on the practice truck. */
        PRACTICE,
        /** What was done about defects of an inspection. */
        REPAIR,
        /** The next driver's review of an inspection. */
        REVIEW
    }

    private static final List<Report.Entry> FOUND_BY =
            List.of(
                    Report.Entry.PLATE,
                    Report.Entry.TRAILER_PLATES,
                    Report.Entry.OPERATOR,
                    Report.Entry.LOCATION,
                    Report.Entry.INSPECTOR,
                    Report.Entry.DRIVER);

    /**
     * Reads one.
     *
     * @throws DocumentException if it is not such a record
     */
    static SentRecord read(Node node, RulePacks packs, SentSettlement after) {
        Fields fields = Fields.of(node);
        fields.choice("format", Map.of(FORMAT, FORMAT));
        String id = fields.text("id");
        if (!ID.matcher(id).matches()) {
            throw fields.refuse(
                    "id", "this is no id", "a UUID in lower case", "let the page make one");
        }
        Kind kind = fields.choice("kind", Kind.values());
        OffsetDateTime made = fields.moment("made");
        Summary summary =
                switch (kind) {
                    case PRACTICE -> SentPractice.read(fields, made.toLocalDate(), packs);
                    case INSPECTION -> ofInspection(fields, packs, after);
                    case REPAIR -> after.settlement(fields);
                    case REVIEW -> after.review(fields);
                };
        fields.optionalNode("signature");
        fields.end();
        RecordHead head =
                new RecordHead(
                        id,
                        Names.kebab(kind),
                        utc(made.toInstant()),
                        utc(Instant.now()),
                        summary.place(),
                        summary.vehicle(),
                        summary.verdict(),
                        summary.words());
        return new SentRecord(head, node, summary.judgement(), summary.chain());
    }

    private static Summary ofInspection(Fields fields, RulePacks packs, SentSettlement after) {
        Optional<String> corrects = after.corrects(fields, Kind.INSPECTION);
        Inspection inspection =
                after.known(RecordReport.inspection(fields.node("inspection")), corrects);
        Judged judged =
                Judged.of(inspection, packs)
                        .orElseThrow(
                                () ->
                                        fields.refuse(
                                                "inspection",
                                                "its place has no rule pack",
                                                packs.places().toString(),
                                                "take one of these places"));
        RecordReport.requirePictures(fields);
        fields.optionalNode("log");
        return new Summary(
                inspection.place().code(),
                inspection.vehicle().name(),
                judged.judgement().verdict().title(),
                words(inspection),
                SentSettlement.with(judged.document(), corrects),
                VehicleKey.of(inspection));
    }

    /** The record as the store takes it from an account, or from nobody known: an empty text. */
    Arrival from(String sender) {
        return new Arrival(head, content, judgement, chain, sender);
    }

    /** A moment in a form whose order as text is its order in time. */
    private static String utc(Instant moment) {
        return UTC.format(moment.atOffset(ZoneOffset.UTC));
    }

    private static String words(Inspection inspection) {
        List<String> words = new ArrayList<>();
        for (Report.Entry entry : FOUND_BY) {
            String text = inspection.report().entries().get(entry);
            if (text != null) {
                words.add(text);
            }
        }
        return String.join(" ", words);
    }
}
