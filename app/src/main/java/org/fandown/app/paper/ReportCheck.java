package org.fandown.app.paper;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.cert.CertificateException;
import java.security.cert.X509Certificate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fandown.app.files.ProgramVersion;
import org.fandown.app.files.RulePacks;
import org.fandown.app.keys.Certificates;
import org.fandown.app.keys.Checked;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.evidence.EarlierDefect;
import org.fandown.record.CanonicalJson;

/**
 * Checks a printed report without trust in it: who signed it, that nothing was changed since, and
 * that its pages say what the record in it says.
 */
public final class ReportCheck {
    private final byte[] file;
    private final RulePacks packs;
    private final List<X509Certificate> known;
    private final List<CheckLine> lines = new ArrayList<>();

    private ReportCheck(byte[] file, RulePacks packs, List<X509Certificate> known) {
        this.file = file;
        this.packs = packs;
        this.known = known;
    }

    /**
     * Checks a report.
     *
     * @param file the bytes of the document
     * @param packs the rules to judge its record by
     * @param known certificates of sites that are known
     * @throws UnreadableReportException if it is no PDF document, or asks for more work than a
     *     report does
     */
    public static CheckedReport of(byte[] file, RulePacks packs, List<X509Certificate> known) {
        Press.prepare();
        return Bounded.run(
                () -> {
                    try (PDDocument document = Loader.loadPDF(file)) {
                        return new ReportCheck(file, packs, known).check(document);
                    }
                });
    }

    private CheckedReport check(PDDocument document) throws IOException {
        Optional<SignatureField> field = field(document);
        field.ifPresent(this::signer);
        Map<String, byte[]> files = Attached.of(document);
        Optional<String> record = record(files);
        Optional<String> seal =
                Optional.ofNullable(files.get(Finish.SEAL))
                        .map(bytes -> new String(bytes, StandardCharsets.UTF_8));
        if (record.isPresent()) {
            page(document, record.get(), files, seal, field);
        } else {
            lines.add(
                    CheckLine.notChecked(
                            "page",
                            files.containsKey(Finish.TRACE)
                                    ? "it rests on a recorded log, which is not in the document;"
                                            + " Next: give the log to fandown trace once more"
                                    : "without its record nothing can be compared"));
        }
        return new CheckedReport(lines, record, seal);
    }

    // --- the signature ---

    private Optional<SignatureField> field(PDDocument document) throws IOException {
        try {
            Optional<SignatureField> field = SignatureField.of(document, file);
            if (field.isEmpty()) {
                lines.add(CheckLine.notChecked("signature", "the document is not signed"));
            }
            return field;
        } catch (SignatureField.UnsoundException e) {
            lines.add(CheckLine.notOk("signature", String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    private void signer(SignatureField field) {
        Checked checked = field.check();
        if (checked.signer().isEmpty()) {
            lines.add(CheckLine.notOk("signature", checked.problem()));
            return;
        }
        X509Certificate signer = checked.signer().get();
        String who =
                "signed by '"
                        + Clean.cut(Clean.text(Certificates.name(signer)), Clean.LONGEST_ENTRY)
                        + "', as it says on "
                        + field.moment()
                        + ", over all bytes of the file; ";
        String print = "certificate SHA-256 " + Certificates.fingerprint(signer);
        if (!wasValid(signer, field.moment())) {
            lines.add(CheckLine.notOk("signature", who + print + " was not valid at that moment"));
        } else if (known.contains(signer)) {
            lines.add(CheckLine.ok("signature", who + print + ", which is known"));
        } else {
            lines.add(
                    CheckLine.notChecked(
                            "signature",
                            who
                                    + "the signer is not known: "
                                    + print
                                    + ". Next: compare it with what the site says of itself, or"
                                    + " give its certificate with --certificate"));
        }
    }

    private static boolean wasValid(X509Certificate signer, OffsetDateTime moment) {
        try {
            signer.checkValidity(Date.from(moment.toInstant()));
            return true;
        } catch (CertificateException e) {
            return false;
        }
    }

    // --- the record ---

    private Optional<String> record(Map<String, byte[]> files) {
        byte[] bytes = files.get(Finish.RECORD);
        if (bytes == null) {
            lines.add(CheckLine.notChecked("record", "no record.json is in the document"));
            return Optional.empty();
        }
        try {
            String text = new String(bytes, StandardCharsets.UTF_8);
            String canonical = CanonicalJson.write(Json.read(Finish.RECORD, text));
            if (Arrays.equals(canonical.getBytes(StandardCharsets.UTF_8), bytes)) {
                lines.add(
                        CheckLine.ok(
                                "record",
                                "record.json is canonical JSON, SHA-256 "
                                        + RecordReport.hash(canonical)));
                return Optional.of(canonical);
            }
            lines.add(CheckLine.notOk("record", "record.json is not canonical JSON"));
        } catch (DocumentException | IllegalArgumentException e) {
            lines.add(
                    CheckLine.notOk(
                            "record",
                            "record.json cannot be read: "
                                    + Clean.text(String.valueOf(e.getMessage()))));
        }
        return Optional.empty();
    }

    // --- the page ---

    private void page(
            PDDocument document,
            String record,
            Map<String, byte[]> files,
            Optional<String> seal,
            Optional<SignatureField> field)
            throws IOException {
        Optional<ReportContent> content;
        try {
            content = RecordReport.of(record, earlier(files), packs);
        } catch (DocumentException | IllegalArgumentException e) {
            lines.add(
                    CheckLine.notOk(
                            "page",
                            "record.json is no record: "
                                    + Clean.text(String.valueOf(e.getMessage()))));
            return;
        }
        if (content.isEmpty()) {
            lines.add(
                    CheckLine.notChecked(
                            "page",
                            "there is no rule pack for its place now. Next: name the folder of"
                                    + " the pack with --packs"));
            return;
        }
        compare(document, content.get().sealed(seal), field);
    }

    /**
     * What the site knew to be open from earlier reports, as the judgement in the document says.
     */
    private static List<EarlierDefect> earlier(Map<String, byte[]> files) {
        byte[] judgement = files.getOrDefault(Finish.ATTACHMENT, new byte[] {'{', '}'});
        String text = new String(judgement, StandardCharsets.UTF_8);
        return EarlierDefect.list(Fields.of(Json.read(Finish.ATTACHMENT, text)));
    }

    private void compare(PDDocument document, ReportContent content, Optional<SignatureField> field)
            throws IOException {
        byte[] anew = anew(content, field);
        Optional<String> difference = Optional.empty();
        if (!Arrays.equals(anew, file)) {
            try (PDDocument expected = Loader.loadPDF(anew)) {
                difference = SameDocument.difference(expected, document);
            }
        }
        if (difference.isEmpty()) {
            lines.add(
                    CheckLine.ok(
                            "page",
                            "judged and set anew from record.json, every page and attached file is"
                                    + " the same"));
            return;
        }
        Optional<String> excuse = excuse(document, content);
        lines.add(
                excuse.isPresent()
                        ? CheckLine.notChecked("page", excuse.get())
                        : CheckLine.notOk("page", difference.get()));
    }

    private static byte[] anew(ReportContent content, Optional<SignatureField> field)
            throws IOException {
        Optional<X509Certificate> signer = field.flatMap(found -> Checked.named(found.signature()));
        if (field.isEmpty() || signer.isEmpty()) {
            return ReportPdf.bytes(content);
        }
        Signer site = Signer.of(signer.get());
        return Signing.again(
                ReportPdf.bytes(content.to(Optional.of(site))),
                site.site(),
                field.get().moment(),
                field.get().signature());
    }

    /** Why a page may be otherwise although nobody changed it. */
    private static Optional<String> excuse(PDDocument document, ReportContent content) {
        String creator = String.valueOf(document.getDocumentInformation().getCreator());
        if (!creator.equals(Finish.creator())) {
            return Optional.of(
                    "it was set by '"
                            + Clean.cut(Clean.text(creator), Clean.LONGEST_ENTRY)
                            + "', and this is version "
                            + ProgramVersion.text()
                            + ", which sets it otherwise. Next: check it with that version");
        }
        String rules = document.getDocumentInformation().getCustomMetadataValue(Finish.RULES);
        return Finish.rules(content.judgement()).equals(rules)
                ? Optional.empty()
                : Optional.of(
                        "it was judged by other rules than this program has for its place. Next:"
                                + " check it with the rule packs of then");
    }
}
