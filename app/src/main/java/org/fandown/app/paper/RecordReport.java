package org.fandown.app.paper;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.app.files.RulePacks;
import org.fandown.app.files.Sha256;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.evidence.EarlierDefect;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.record.CanonicalJson;

/**
 * The report of a record, made from its canonical JSON and nothing else, so that whoever has the
 * JSON can make the same report.
 */
public final class RecordReport {
    private RecordReport() {}

    /**
     * Judges a record and gives what its report is printed from.
     *
     * @param record a record, or a map with an {@code inspection} alone
     * @param packs the rules
     * @return empty if the place has no rule pack
     * @throws DocumentException if it is no such record
     */
    public static Optional<ReportContent> of(Node record, RulePacks packs) {
        return of(record, List.of(), packs);
    }

    /**
     * The same where the site knew more than the record says.
     *
     * @param earlier what was still open from earlier reports when the record arrived; empty for
     *     what the record says itself
     */
    public static Optional<ReportContent> of(
            Node record, List<EarlierDefect> earlier, RulePacks packs) {
        return of(CanonicalJson.write(record), earlier, packs);
    }

    static Optional<ReportContent> of(
            String canonical, List<EarlierDefect> earlier, RulePacks packs) {
        Fields fields = Fields.of(Json.read("record.json", canonical));
        Inspection own = inspection(fields.node("inspection"));
        return Judged.of(earlier.isEmpty() ? own : own.withEarlier(earlier), packs)
                .map(
                        judged ->
                                judged.content()
                                        .with(photos(fields))
                                        .signedBy(DrawnSignature.of(fields))
                                        .from(canonical));
    }

    /** The inspection of a record, its vehicle written out. */
    public static Inspection inspection(Node node) {
        return new InspectionReader(VehicleSource.NONE).read(node);
    }

    /**
     * Looks at what is drawn and photographed in a record.
     *
     * @throws DocumentException if the signature is not made of strokes, or a photo is no JPEG
     */
    public static void requirePictures(Fields record) {
        DrawnSignature.of(record);
        photos(record);
    }

    private static List<Photo> photos(Fields record) {
        List<Photo> photos = new ArrayList<>();
        for (Node node : record.optionalList("photos")) {
            Fields fields = Fields.of(node);
            fields.choice("type", Map.of("image/jpeg", true));
            try {
                photos.add(new Photo(fields.text("of"), fields.text("data")));
            } catch (IllegalArgumentException e) {
                throw fields.refuse(
                        "data",
                        "this is no photo",
                        "a JPEG in base64",
                        "leave it out, or take it again");
            }
            fields.end();
        }
        return photos;
    }

    /** The hash of a record: the SHA-256 of its canonical JSON. */
    static String hash(String canonical) {
        return Sha256.of(canonical.getBytes(StandardCharsets.UTF_8));
    }
}
