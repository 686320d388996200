package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.cert.X509Certificate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.fandown.app.files.DocumentText;
import org.fandown.app.files.RulePacks;
import org.fandown.app.keys.SiteKey;
import org.fandown.app.keys.SiteKeyFile;
import org.fandown.app.paper.CheckLine.Outcome;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.record.CanonicalJson;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportCheckTest {
    private static final OffsetDateTime MOMENT = OffsetDateTime.parse("2030-01-02T03:04:05Z");
    private static final RulePacks PACKS = RulePacks.builtIn();

    @TempDir private static Path folder;
    @TempDir private static Path elsewhere;

    private static SiteKey site;
    private static SiteKey stranger;
    private static byte[] signed;

    @BeforeAll
    static void print() {
        site = SiteKeyFile.openOrMake(folder, "North yard", Optional.empty());
        stranger = SiteKeyFile.openOrMake(elsewhere, "North yard", Optional.empty());
        signed = ReportPdf.signed(content(record()), site, MOMENT);
    }

    /** A record as the pages send it: signed by hand, with a photo. */
    private static Node record() {
        Node inspection = DocumentText.yaml("sample.yaml", Samples.text(Samples.QUEBEC_TRUCK));
        try {
            return Tree.map()
                    .put("format", "fandown-record/1")
                    .put("id", "00000000-0000-4000-8000-000000000001")
                    .put("kind", "inspection")
                    .put("made", "2026-11-26T07:05:00-05:00")
                    .put("inspection", inspection)
                    .put(
                            "signature",
                            Json.read(
                                    "s",
                                    "{\"name\":\"Ann Ink\",\"statement\":\"I looked myself.\","
                                            + "\"strokes\":[[10,20,100,150,300,40],[5,5]]}"))
                    .put(
                            "photos",
                            Json.read(
                                    "p",
                                    "[{\"of\":\"tyres\",\"type\":\"image/jpeg\",\"data\":\""
                                            + ArchiveTest.photo()
                                            + "\"}]"))
                    .build();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static ReportContent content(Node record) {
        return RecordReport.of(record, PACKS).orElseThrow();
    }

    private static CheckedReport check(byte[] pdf) {
        return ReportCheck.of(pdf, PACKS, List.of(site.certificate()));
    }

    private static CheckLine line(CheckedReport report, String check) {
        return report.lines().stream()
                .filter(each -> each.check().equals(check))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void report_of_a_known_site_holds_in_all() {
        CheckedReport report = check(signed);

        assertThat(report.lines()).extracting(CheckLine::outcome).containsOnly(Outcome.OK);
        assertThat(report.lines())
                .extracting(CheckLine::check)
                .containsExactly("signature", "record", "page");
        assertThat(line(report, "signature").says())
                .contains("'North yard'", "2030-01-02T03:04:05Z", "which is known");
        assertThat(report.record()).contains(CanonicalJson.write(record()));
    }

    @Test
    void it_keeps_the_standard_with_photo_and_drawn_signature() {
        assertThat(VeraPdf.claim(signed)).isEqualTo("3a");
        assertThat(VeraPdf.problems(signed, "3a")).isEmpty();
    }

    @Test
    void page_tells_who_drew_the_signature_what_was_stated_and_by_which_key() {
        String text = PrintedReport.of(signed).text();

        assertThat(text)
                .contains("ANN INK", "I looked myself.", "2026-11-26 07:05 UTC-05:00")
                .contains("Signed by the site North yard:", "fandown verify REPORT.pdf");
        assertThat(text.replaceAll("\\s", ""))
                .contains(Signer.of(site).fingerprint())
                .contains(RecordReport.hash(CanonicalJson.write(record())));
    }

    @Test
    void printed_twice_it_says_the_same() {
        byte[] again = ReportPdf.signed(content(record()), site, MOMENT);

        assertThat(again).isEqualTo(signed);
    }

    @Test
    void unknown_signer_is_named_by_fingerprint() {
        CheckLine line = line(ReportCheck.of(signed, PACKS, List.of()), "signature");

        assertThat(line.outcome()).isEqualTo(Outcome.NOT_CHECKED);
        assertThat(line.says())
                .contains("not known", Signer.of(site).fingerprint(), "--certificate");
    }

    @Test
    void unsigned_report_is_not_proven() {
        CheckedReport report = check(ReportPdf.bytes(content(record())));

        assertThat(line(report, "signature").outcome()).isEqualTo(Outcome.NOT_CHECKED);
        assertThat(line(report, "page").outcome()).isEqualTo(Outcome.OK);
    }

    @Test
    void one_changed_bit_anywhere_is_found() {
        Random random = new Random(20261201);
        for (int i = 0; i < 300; i++) {
            byte[] changed = flipped(random.nextInt(signed.length), random.nextInt(8));
            assertThat(isProven(changed)).as("try " + i).isFalse();
        }
    }

    /** Where a change would be easiest to miss: in the signature and in the words around it. */
    @Test
    void one_changed_bit_around_the_signature_is_found() {
        int length = ReportPdf.bytes(content(record()).to(Optional.of(Signer.of(site)))).length;
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            int at = length + random.nextInt(signed.length - length);
            assertThat(isProven(flipped(at, random.nextInt(8)))).as("byte " + at).isFalse();
        }
    }

    @Test
    void whole_check_finds_changed_bytes_too() {
        Random random = new Random(3);
        for (int i = 0; i < 5; i++) {
            byte[] changed = flipped(random.nextInt(signed.length), random.nextInt(8));
            assertThat(holds(changed)).as("try " + i).isFalse();
        }
    }

    private static byte[] flipped(int at, int bit) {
        byte[] changed = signed.clone();
        changed[at] ^= (byte) (1 << bit);
        return changed;
    }

    private static boolean holds(byte[] pdf) {
        try {
            return check(pdf).lines().stream().allMatch(each -> each.outcome() == Outcome.OK);
        } catch (UnreadableReportException e) {
            return false;
        }
    }

    /** The check of the signature alone, which is quick. */
    private static boolean isProven(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Optional<X509Certificate> signer =
                    SignatureField.of(document, pdf).flatMap(field -> field.check().signer());
            return signer.isPresent();
        } catch (IOException | SignatureField.UnsoundException | RuntimeException e) {
            return false;
        }
    }

    @Test
    void changed_record_attached_anew_is_not_what_the_page_says() throws IOException {
        byte[] forged =
                forged(
                        document ->
                                attach(
                                        document,
                                        new String(
                                                Attached.of(document).get(Finish.RECORD),
                                                StandardCharsets.UTF_8),
                                        text -> text.replace("gravier", "GRAVIER")));

        CheckedReport report = check(forged);

        assertThat(line(report, "record").outcome()).isEqualTo(Outcome.OK);
        assertThat(line(report, "page").outcome()).isEqualTo(Outcome.NOT_OK);
        assertThat(line(report, "page").says()).contains("page 1 says", "GRAVIER");
        assertThat(line(report, "signature").says()).contains("not known");
    }

    @Test
    void record_that_is_not_canonical_is_refused() throws IOException {
        byte[] forged =
                forged(
                        document ->
                                attach(
                                        document,
                                        new String(
                                                Attached.of(document).get(Finish.RECORD),
                                                StandardCharsets.UTF_8),
                                        text -> text.replaceFirst("\\{", "{ ")));

        assertThat(line(check(forged), "record").says()).contains("is not canonical JSON");
    }

    @Test
    void changed_words_of_a_page_signed_anew_are_found() throws IOException {
        CheckedReport report = check(forged(ReportCheckTest::changeLetters));

        assertThat(line(report, "page").outcome()).isEqualTo(Outcome.NOT_OK);
        assertThat(line(report, "page").says()).contains("page 1 says", "where the record gives");
        assertThat(line(report, "signature").outcome()).isEqualTo(Outcome.NOT_CHECKED);
    }

    @Test
    void changed_drawing_signed_anew_is_found() throws IOException {
        CheckedReport report =
                check(
                        forged(
                                document -> {
                                    PDPage page = document.getPage(0);
                                    PDStream more = new PDStream(document);
                                    try (OutputStream out = more.createOutputStream()) {
                                        out.write(
                                                "q 0 0 0 rg 100 100 50 50 re f Q"
                                                        .getBytes(StandardCharsets.US_ASCII));
                                    }
                                    COSArray both = new COSArray();
                                    both.add(page.getCOSObject().getItem(COSName.CONTENTS));
                                    both.add(more.getCOSObject());
                                    page.getCOSObject().setItem(COSName.CONTENTS, both);
                                }));

        assertThat(line(report, "page").outcome()).isEqualTo(Outcome.NOT_OK);
        assertThat(line(report, "page").says()).contains("it differs at", "/Contents");
    }

    @Test
    void bytes_added_behind_are_found() throws IOException {
        ByteArrayOutputStream more = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(signed)) {
            document.getDocumentCatalog().setLanguage("fr");
            document.getDocumentCatalog().getCOSObject().setNeedToBeUpdated(true);
            document.saveIncremental(more);
        }

        CheckLine line = line(check(more.toByteArray()), "signature");

        assertThat(line.outcome()).isEqualTo(Outcome.NOT_OK);
        assertThat(line.says()).contains("bytes were put behind the signed part");
    }

    @Test
    void second_signature_behind_the_first_is_found() throws IOException {
        CheckLine line = line(check(Signing.sign(signed, stranger, MOMENT)), "signature");

        assertThat(line.outcome()).isEqualTo(Outcome.NOT_OK);
        assertThat(line.says()).contains("2 signatures where one is expected");
    }

    @Test
    void moment_before_the_certificate_began_is_not_believed() {
        byte[] early =
                ReportPdf.signed(
                        content(record()), site, OffsetDateTime.parse("2001-01-01T00:00:00Z"));

        assertThat(line(check(early), "signature").says()).contains("not valid at that moment");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "no document",
                "%PDF-1.7\n",
                "%PDF-1.7\n1 0 obj\n<< /Type /Catalog >>\nendobj\nstartxref\n9\n%%EOF",
                "%PDF-1.7\nxref\n0 1\n0000000000 65535 f \ntrailer\n<< /Size 1 /Root 1 0 R /Prev 9"
                        + " >>\nstartxref\n9\n%%EOF"
            })
    void what_is_no_report_is_refused_or_proves_nothing(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);

        assertThat(holds(bytes)).isFalse();
    }

    @Test
    void endless_nesting_is_refused() {
        byte[] deep =
                ("%PDF-1.7\n1 0 obj\n" + "[".repeat(2_000_000) + "\nendobj\nstartxref\n9\n%%EOF")
                        .getBytes(StandardCharsets.ISO_8859_1);

        assertThat(holds(deep)).isFalse();
    }

    @Test
    void attached_file_that_unpacks_to_more_than_any_record_is_refused() throws IOException {
        byte[] bomb =
                forged(
                        document -> {
                            byte[] zeros = new byte[65 * 1024 * 1024];
                            replace(document, zeros);
                        });

        assertThatThrownBy(() -> check(bomb))
                .isInstanceOf(UnreadableReportException.class)
                .hasMessageContaining("larger than any record")
                .hasMessageContaining("Next: ");
    }

    // --- how a forger would go about it ---

    @FunctionalInterface
    private interface Forger {
        void change(PDDocument document) throws IOException;
    }

    /** The report without its signature, changed, and signed by another key of the same name. */
    private static byte[] forged(Forger forger) throws IOException {
        byte[] plain = ReportPdf.bytes(content(record()).to(Optional.of(Signer.of(stranger))));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(plain)) {
            forger.change(document);
            document.save(out);
        }
        return Signing.sign(out.toByteArray(), stranger, MOMENT);
    }

    private static void attach(PDDocument document, String text, UnaryOperator<String> change)
            throws IOException {
        assertThat(change.apply(text)).isNotEqualTo(text);
        replace(document, change.apply(text).getBytes(StandardCharsets.UTF_8));
    }

    private static void replace(PDDocument document, byte[] bytes) throws IOException {
        PDEmbeddedFile file =
                new PDEmbeddedFile(document, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE);
        PDComplexFileSpecification found =
                document.getDocumentCatalog()
                        .getNames()
                        .getEmbeddedFiles()
                        .getKids()
                        .get(0)
                        .getNames()
                        .get(Finish.RECORD);
        found.setEmbeddedFile(file);
        found.setEmbeddedFileUnicode(file);
    }

    /** Turns the letters of the first text of the page round. */
    private static void changeLetters(PDDocument document) throws IOException {
        PDPage page = document.getPage(0);
        List<Object> tokens = new PDFStreamParser(page).parse();
        for (int i = 1; i < tokens.size(); i++) {
            boolean shows =
                    tokens.get(i) instanceof Operator operator
                            && operator.getName().equals("Tj")
                            && tokens.get(i - 1) instanceof COSString text
                            && text.getBytes().length >= 8;
            if (shows) {
                byte[] letters = ((COSString) tokens.get(i - 1)).getBytes();
                byte[] turned = new byte[letters.length];
                for (int k = 0; k < letters.length; k += 2) {
                    turned[k] = letters[letters.length - 2 - k];
                    turned[k + 1] = letters[letters.length - 1 - k];
                }
                tokens.set(i - 1, new COSString(turned));
                break;
            }
        }
        PDStream stream = new PDStream(document);
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            new ContentStreamWriter(out).writeTokens(tokens);
        }
        page.setContents(stream);
    }
}
