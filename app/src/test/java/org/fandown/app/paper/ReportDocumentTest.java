package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.junit.jupiter.api.Test;

class ReportDocumentTest {
    private final ReportContent content = Samples.sample(Samples.ONTARIO_TRACTOR_TRAILER);
    private final PrintedReport report = PrintedReport.of(content);

    @Test
    void judgement_is_attached_byte_for_byte() throws IOException {
        try (PDDocument document = report.open()) {
            PDComplexFileSpecification file = attachment(document.getDocumentCatalog());

            assertThat(file.getFilename()).isEqualTo("inspection.json");
            assertThat(file.getEmbeddedFile().getSubtype()).isEqualTo("application/json");
            assertThat(file.getEmbeddedFile().toByteArray())
                    .isEqualTo(content.json().getBytes(StandardCharsets.UTF_8));
        }
    }

    @Test
    void attachment_is_marked_as_data_that_belongs_to_the_document() throws IOException {
        try (PDDocument document = report.open()) {
            COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
            COSArray associated = catalog.getCOSArray(COSName.getPDFName("AF"));

            assertThat(associated.size()).isEqualTo(1);
            COSDictionary file = (COSDictionary) associated.getObject(0);
            assertThat(file.getNameAsString("AFRelationship")).isEqualTo("Data");
        }
    }

    @Test
    void any_text_can_be_attached() throws IOException {
        String odd = "{\"note\": \"d\u00e9j\u00e0 vu \\u0000 \ud83d\ude9b\"}\n";
        ReportContent other = new ReportContent(content.judgement(), content.strokesMean(), odd);

        try (PDDocument document = PrintedReport.of(other).open()) {
            byte[] read = attachment(document.getDocumentCatalog()).getEmbeddedFile().toByteArray();
            assertThat(new String(read, StandardCharsets.UTF_8)).isEqualTo(odd);
        }
    }

    @Test
    void same_content_gives_the_same_bytes() {
        ReportContent again = Samples.sample(Samples.ONTARIO_TRACTOR_TRAILER);

        assertThat(PrintedReport.of(again).bytes()).isEqualTo(report.bytes());
    }

    @Test
    void document_says_what_it_is_and_when_the_inspection_was() throws IOException {
        assertThat(report.info("Title"))
                .isEqualTo(
                        "Air-brake inspection report, Yard tractor 7 with box trailer,"
                                + " 2026-11-25 07:10");
        assertThat(report.info("Producer")).isEqualTo("Fandown");
        assertThat(report.info("Tagged")).isEqualTo("yes");
        try (PDDocument document = report.open()) {
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo("2026-11-25T12:10:00Z");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
    }

    @Test
    void every_font_is_embedded() throws IOException {
        int fonts = 0;
        try (PDDocument document = report.open()) {
            PDResources resources = document.getPage(0).getResources();
            for (COSName name : resources.getFontNames()) {
                assertThat(resources.getFont(name).isEmbedded()).as(name.getName()).isTrue();
                fonts++;
            }
        }
        assertThat(fonts).isEqualTo(2);
    }

    private static PDComplexFileSpecification attachment(PDDocumentCatalog catalog)
            throws IOException {
        return catalog.getNames()
                .getEmbeddedFiles()
                .getKids()
                .get(0)
                .getNames()
                .get("inspection.json");
    }
}
