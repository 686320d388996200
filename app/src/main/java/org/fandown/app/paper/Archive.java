package org.fandown.app.paper;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Calendar;
import java.util.Locale;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/**
 * Makes a document one that can be read alike for decades: PDF/A-3, with what its colours mean and
 * with the same metadata twice, as the standard wants.
 *
 * <p><i>Source:</i> ISO 19005-3:2012, 6.2.3 (output intent) and 6.6 (metadata).
 */
final class Archive {
    /** How much of the standard a document keeps. */
    enum Level {
        /** Its text can be read aloud in order: it is marked up. */
        ACCESSIBLE("A"),
        /** Its text can be found and copied. */
        UNICODE("U");

        private final String letter;

        Level(String letter) {
            this.letter = letter;
        }
    }

    private static final int MS_PER_SECOND = 1000;
    private static final float VERSION = 1.7f;
    private static final String COLOURS = "sRGB IEC61966-2.1";

    /** Dates as in metadata: the same moment as in the other place, to the second. */
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    private Archive() {}

    /** Marks a document whose title, dates and maker are set. */
    static void mark(PDDocument document, Level level) throws IOException {
        document.setVersion(VERSION);
        PDMarkInfo marks = new PDMarkInfo();
        marks.setMarked(level == Level.ACCESSIBLE);
        document.getDocumentCatalog().setMarkInfo(marks);
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(
                xmp(document.getDocumentInformation(), level).getBytes(StandardCharsets.UTF_8));
        document.getDocumentCatalog().setMetadata(metadata);
        try (InputStream profile = Archive.class.getResourceAsStream("colour/srgb.icc")) {
            PDOutputIntent intent =
                    new PDOutputIntent(document, Objects.requireNonNull(profile, "srgb.icc"));
            intent.setInfo(COLOURS);
            intent.setOutputCondition(COLOURS);
            intent.setOutputConditionIdentifier(COLOURS);
            intent.setRegistryName("http://www.color.org");
            document.getDocumentCatalog().addOutputIntent(intent);
        }
    }

    private static String xmp(PDDocumentInformation said, Level level) {
        boolean marked = level == Level.ACCESSIBLE;
        return "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                + part("pdfaid", "http://www.aiim.org/pdfa/ns/id/")
                + value("pdfaid:part", "3")
                + value("pdfaid:conformance", level.letter)
                + END
                + part("dc", "http://purl.org/dc/elements/1.1/")
                + "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">"
                + plain(said.getTitle())
                + "</rdf:li></rdf:Alt></dc:title>\n"
                + END
                + part("pdf", "http://ns.adobe.com/pdf/1.3/")
                + value("pdf:Producer", said.getProducer())
                + END
                + part("xmp", "http://ns.adobe.com/xap/1.0/")
                + value("xmp:CreatorTool", said.getCreator())
                + value("xmp:CreateDate", date(said.getCreationDate()))
                + value("xmp:ModifyDate", date(said.getModificationDate()))
                + END
                + (marked ? ACCESS : "")
                + "</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
    }

    private static final String END = "</rdf:Description>\n";

    /**
     * Says that it also keeps PDF/UA-1, in the words that PDF/A wants for what it does not know.
     */
    private static final String ACCESS =
            part("pdfuaid", "http://www.aiim.org/pdfua/ns/id/")
                    + value("pdfuaid:part", "1")
                    + END
                    + "<rdf:Description rdf:about=\"\""
                    + " xmlns:pdfaExtension=\"http://www.aiim.org/pdfa/ns/extension/\""
                    + " xmlns:pdfaSchema=\"http://www.aiim.org/pdfa/ns/schema#\""
                    + " xmlns:pdfaProperty=\"http://www.aiim.org/pdfa/ns/property#\">\n"
                    + "<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType=\"Resource\">\n"
                    + value("pdfaSchema:schema", "PDF/UA identification schema")
                    + value("pdfaSchema:namespaceURI", "http://www.aiim.org/pdfua/ns/id/")
                    + value("pdfaSchema:prefix", "pdfuaid")
                    + "<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType=\"Resource\">\n"
                    + value("pdfaProperty:name", "part")
                    + value("pdfaProperty:valueType", "Integer")
                    + value("pdfaProperty:category", "internal")
                    + value("pdfaProperty:description", "Part of the standard")
                    + "</rdf:li></rdf:Seq></pdfaSchema:property>\n"
                    + "</rdf:li></rdf:Bag></pdfaExtension:schemas>\n"
                    + END;

    private static String part(String prefix, String space) {
        return "<rdf:Description rdf:about=\"\" xmlns:" + prefix + "=\"" + space + "\">\n";
    }

    private static String value(String name, String value) {
        return "<" + name + ">" + plain(value) + "</" + name + ">\n";
    }

    private static String plain(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** The moment with its distance from UTC; the library names no zone. */
    private static String date(Calendar moment) {
        int ms = moment.get(Calendar.ZONE_OFFSET) + moment.get(Calendar.DST_OFFSET);
        return DATE.format(
                moment.toInstant().atOffset(ZoneOffset.ofTotalSeconds(ms / MS_PER_SECOND)));
    }
}
