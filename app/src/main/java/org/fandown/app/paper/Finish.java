package org.fandown.app.paper;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.fandown.app.files.ProgramVersion;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.evidence.Inspection;
import org.fandown.judgement.Judgement;
import org.fandown.record.CanonicalJson;
import org.fandown.record.RulesDocument;

/** What a document carries besides its pages: metadata, the attached file, a fixed identity. */
final class Finish {
    /** The name of the attached file. */
    static final String ATTACHMENT = "inspection.json";

    /** The name of the attached file about the trace. */
    static final String TRACE = "trace.json";

    /** The name of the attached file from which the report was made. */
    static final String RECORD = "record.json";

    /** The name of the attached file about the record's place in the chains of the site. */
    static final String SEAL = "seal.json";

    /** The key in the information about a document of the hash of its rules. */
    static final String RULES = "FandownRules";

    private static final Map<String, String> SAYS =
            Map.of(
                    ATTACHMENT, "The same judgement as data",
                    TRACE, "The trace as data",
                    RECORD, "What the report was made from",
                    SEAL, "The place of the record in the chains of the site");

    private Finish() {}

    static void apply(PDDocument document, ReportContent content, Archive.Level level)
            throws IOException {
        Inspection inspection = content.judgement().inspection();
        GregorianCalendar moment = GregorianCalendar.from(inspection.moment().toZonedDateTime());
        name(document, ReportPage.title(inspection), moment);
        document.getDocumentInformation().setCustomMetadataValue(RULES, rules(content.judgement()));
        Map<String, String> files = files(content);
        attach(document, files, moment);
        Archive.mark(document, level);
        // The library makes the document's identity from this number and the metadata.
        document.setDocumentId(identity(String.join("", files.values())));
    }

    /** Which program sets documents. */
    static String creator() {
        return "Fandown " + ProgramVersion.text();
    }

    /** What tells whether two programs judge by the same rules, whatever they are applied to. */
    static String rules(Judgement judgement) {
        MapNode all = RulesDocument.of(judgement.rules());
        Tree.MapBuilder rules = Tree.map();
        for (String key : List.of("rules", "set-aside", "coverage")) {
            rules.put(key, all.get(key).orElseThrow());
        }
        return RecordReport.hash(CanonicalJson.write(rules.build()));
    }

    /** The attached files by name. */
    static Map<String, String> files(ReportContent content) {
        Map<String, String> files = new TreeMap<>();
        files.put(ATTACHMENT, content.json());
        content.trace().ifPresent(trace -> files.put(TRACE, trace.json()));
        content.origin().record().ifPresent(record -> files.put(RECORD, record));
        content.origin().seal().ifPresent(seal -> files.put(SEAL, seal));
        return files;
    }

    /**
     * Gives a document its title and a fixed moment, so that the same content gives the same bytes.
     */
    static void name(PDDocument document, String title, Calendar moment) {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(title);
        information.setProducer("Fandown");
        information.setCreator(creator());
        information.setCreationDate(moment);
        information.setModificationDate(moment);
    }

    private static void attach(PDDocument document, Map<String, String> files, Calendar moment)
            throws IOException {
        Map<String, PDComplexFileSpecification> named = new TreeMap<>();
        COSArray associated = new COSArray();
        for (Map.Entry<String, String> file : files.entrySet()) {
            PDComplexFileSpecification specification =
                    specification(document, file.getKey(), file.getValue(), moment);
            named.put(file.getKey(), specification);
            associated.add(specification);
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        PDEmbeddedFilesNameTreeNode leaf = new PDEmbeddedFilesNameTreeNode();
        leaf.setNames(named);
        tree.setKids(List.of(leaf));
        PDDocumentNameDictionary names =
                new PDDocumentNameDictionary(document.getDocumentCatalog());
        names.setEmbeddedFiles(tree);
        document.getDocumentCatalog().setNames(names);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("AF"), associated);
    }

    private static PDComplexFileSpecification specification(
            PDDocument document, String name, String json, Calendar moment) throws IOException {
        byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
        PDEmbeddedFile file = new PDEmbeddedFile(document, new ByteArrayInputStream(bytes));
        file.setSubtype("application/json");
        file.setSize(bytes.length);
        file.setCreationDate(moment);
        file.setModDate(moment);
        PDComplexFileSpecification specification = new PDComplexFileSpecification();
        specification.setFile(name);
        specification.setFileUnicode(name);
        specification.setFileDescription(SAYS.get(name));
        specification.setEmbeddedFile(file);
        specification.setEmbeddedFileUnicode(file);
        specification
                .getCOSObject()
                .setName(
                        COSName.getPDFName("AFRelationship"),
                        name.equals(RECORD) ? "Source" : "Data");
        return specification;
    }

    private static long identity(String json) {
        long hash = 1125899906842597L;
        for (int i = 0; i < json.length(); i++) {
            hash = 31 * hash + json.charAt(i);
        }
        return hash;
    }
}
